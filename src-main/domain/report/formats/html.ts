import { escapeHtml as esc } from './escape.ts';
import { styleFor, type Paper } from './html-style.ts';
import { ladderSvg } from './ladder-svg.ts';
import type { Block, Entry, Fact, HandOver, Line, Section, Table } from '../model.ts';

export type { Paper } from './html-style.ts';

export type HtmlOptions = {
  paper: Paper;
  /** The letterhead's picture as a `data:` address; no other is taken. */
  picture?: string;
};

/** Nothing but the page itself: no script, no address that could be fetched. */
const POLICY = "default-src 'none'; style-src 'unsafe-inline'; img-src data:";

/** What stands in the page's one style element. */
export function pageStyle(document: HandOver, paper: Paper): string {
  return styleFor(paper, document.pageOf);
}

/** The document as one self-contained print page: semantic, in its language, every text escaped. */
export function html(document: HandOver, { paper, picture }: HtmlOptions): string {
  const { language, title, madeOn, coverNote, sections } = document;
  const note = coverNote.map((text) => `<p>${esc(text)}</p>`).join('');
  return `<!doctype html>
<html lang="${esc(language)}">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${esc(POLICY)}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${esc(title)}</title>
<style>${pageStyle(document, paper)}</style>
</head>
<body>
${letterheadHtml(document, picture)}<main>
<h1>${esc(title)}</h1>
<p class="made">${esc(madeOn)}</p>
${note === '' ? '' : `<div class="note">${note}</div>\n`}${sections.map(sectionHtml).join('\n')}
</main>
</body>
</html>
`;
}

function letterheadHtml({ letterhead }: HandOver, picture: string | undefined): string {
  if (!letterhead) return '';
  const { name, contact } = letterhead;
  // The name stands beside it, so the picture says nothing more.
  const image = picture?.startsWith('data:image/') === true ? `<img src="${esc(picture)}" alt="">` : '';
  const nameHtml = name === '' ? '' : `<p>${esc(name)}</p>`;
  const contactHtml = contact === '' ? '' : `<p class="contact">${esc(contact)}</p>`;
  return `<header class="letterhead"><div>${nameHtml}${contactHtml}</div>${image}</header>\n`;
}

function sectionHtml(section: Section): string {
  const { id, title } = section;
  const body = id === 'verdict' ? verdictBlocks(section) : blocksHtml(section.blocks);
  return `<section id="${id}" aria-labelledby="${id}-head"><h2 id="${id}-head">${esc(title)}</h2>${body}</section>`;
}

function verdictBlocks({ blocks }: Section): string {
  return blocks
    .map((block, i) => {
      if (i === 0 && block.kind === 'paragraph') return `<p class="verdict">${prose(block.text)}</p>`;
      return block.kind === 'facts' ? stripHtml(block.facts) : blockHtml(block);
    })
    .join('');
}

/** Letters of a name from which the table needs the whole width. */
const LONG_NAME = 28;

/** A chart and the table after it stand side by side, where names are short enough. */
function blocksHtml(blocks: readonly Block[]): string {
  const parts: string[] = [];
  for (let i = 0; i < blocks.length; i++) {
    const [block, next] = [blocks[i], blocks[i + 1]];
    if (block?.kind === 'chart' && next?.kind === 'table') {
      const stacked = next.rows.some(({ cells }) => (cells[0] ?? '').length > LONG_NAME) ? ' stacked' : '';
      parts.push(`<div class="ladder-row${stacked}">${blockHtml(block)}${blockHtml(next)}</div>`);
      i++;
    } else if (block) parts.push(blockHtml(block));
  }
  return parts.join('');
}

function blockHtml(block: Block): string {
  switch (block.kind) {
    case 'paragraph':
      return `<p${lang(block)}>${prose(block.text)}</p>`;
    case 'lines':
      return `${block.title === undefined ? '' : `<h3 class="list">${esc(block.title)}</h3>`}<ul>${block.lines.map(lineHtml).join('')}</ul>`;
    case 'facts':
      return factsHtml(block.facts, 'facts');
    case 'entries':
      return block.entries.map(entryHtml).join('');
    case 'blanks':
      return blanksHtml(block.labels);
    case 'table':
      return tableHtml(block);
    case 'chart':
      return `<figure>${ladderSvg(block.chart)}</figure>`;
  }
}

/** A figure stays on one line with its unit. */
function prose(text: string): string {
  return esc(text).replace(
    /[\d.,]+ (?:yd|m|mph|km\/h|m\/s|cm)(?![\p{L}\p{N}])/gu,
    '<span class="nb">$&</span>',
  );
}

const lang = (part: { lang?: string }) => (part.lang === undefined ? '' : ` lang="${esc(part.lang)}"`);

function lineHtml(line: Line): string {
  const subject = line.subject === undefined ? '' : `<b>${esc(line.subject)}</b>: `;
  return `<li${lang(line)}>${subject}${prose(line.text)}</li>`;
}

/** A row a fact, its label as the row's head: Chromium tags that in a PDF, which it does not with a `dl`. */
function factsHtml(facts: readonly Fact[], name: string): string {
  const rows = facts.map(
    ({ label, text }) => `<tr><th scope="row">${esc(label)}</th><td>${prose(text)}</td></tr>`,
  );
  return `<table class="${name}"><tbody>${rows.join('')}</tbody></table>`;
}

/** The same as one ruled strip, a column a fact. */
function stripHtml(facts: readonly Fact[]): string {
  const heads = facts.map(({ label }) => `<th scope="col">${esc(label)}</th>`).join('');
  const cells = facts.map(({ text }) => `<td>${prose(text)}</td>`).join('');
  return `<table class="money"><thead><tr>${heads}</tr></thead><tbody><tr>${cells}</tr></tbody></table>`;
}

function entryHtml({ no, title, price, why, groups, blanks }: Entry): string {
  const heading = `<h3><span class="no">${String(no)}</span> ${esc(title)}</h3>`;
  const cost = price === undefined ? '' : `<span class="price">${esc(price)}</span>`;
  const columns = groups
    .map((group, i) => {
      // The boxes stand where there is room for them: under what the club does.
      const boxes = i === 1 ? blanksHtml(blanks) : '';
      return `<div><h4>${esc(group.title)}</h4>${factsHtml(group.facts, 'spec')}${boxes}</div>`;
    })
    .join('');
  return `<article class="entry"><div class="head">${heading}${cost}</div><p class="why"${lang(why)}>${prose(why.text)}</p><div class="groups">${columns}</div></article>`;
}

function blanksHtml(labels: readonly string[]): string {
  return `<div class="blanks">${labels.map((label) => `<p>${esc(label)}<i></i></p>`).join('')}</div>`;
}

function tableHtml({ caption, columns, rows }: Table): string {
  const side = (at: number) => {
    const column = columns[at];
    return column?.align === 'right' ? ' class="right"' : column?.prose === true ? ' class="prose"' : '';
  };
  const head = columns.map(({ label }, i) => `<th scope="col"${side(i)}>${esc(label)}</th>`).join('');
  const body = rows
    .map((row) => {
      const cells = row.cells.map((text, i) =>
        i === 0 ? `<th scope="row">${esc(text)}</th>` : `<td${side(i)}>${prose(text)}</td>`,
      );
      return `<tr${row.mark === undefined ? '' : ` class="${row.mark}"`}${lang(row)}>${cells.join('')}</tr>`;
    })
    .join('');
  return `<table><caption>${esc(caption)}</caption><thead><tr>${head}</tr></thead><tbody>${body}</tbody></table>`;
}
