import type { Block, Entry, Fact, HandOver, Line, Section, Table } from '../model.ts';

/** The document as Markdown (CommonMark with pipe tables); whatever a user typed is escaped. */
export function markdown(document: HandOver): string {
  const { letterhead, coverNote, title, madeOn, sections } = document;
  const parts = [
    ...(letterhead ? [`${escaped(letterhead.name)}  \n${escaped(letterhead.contact)}`] : []),
    `# ${escaped(title)}`,
    escaped(madeOn),
    ...coverNote.map((text) => `> ${escaped(text)}`),
    ...sections.flatMap(sectionParts),
  ];
  return `${parts.join('\n\n')}\n`;
}

function sectionParts(section: Section): string[] {
  const isVerdict = section.id === 'verdict';
  return [
    `## ${escaped(section.title)}`,
    ...section.blocks.map((block, i) =>
      isVerdict && i === 0 && block.kind === 'paragraph' ? `**${escaped(block.text)}**` : blockText(block),
    ),
  ].filter((part) => part !== '');
}

function blockText(block: Block): string {
  switch (block.kind) {
    case 'paragraph':
      return escaped(block.text);
    case 'lines':
      return linesText(block.title, block.lines);
    case 'facts':
      return block.facts.map((fact) => `- ${factText(fact)}`).join('\n');
    case 'entries':
      return block.entries.map(entryText).join('\n\n');
    case 'blanks':
      return block.labels.map(blank).join('  \n');
    case 'table':
      return tableText(block);
    case 'chart':
      return ''; // its table follows
  }
}

function linesText(title: string | undefined, lines: readonly Line[]): string {
  const list = lines
    .map(
      ({ subject, text }) => `- ${subject === undefined ? '' : `**${escaped(subject)}**: `}${escaped(text)}`,
    )
    .join('\n');
  return title === undefined ? list : `### ${escaped(title)}\n\n${list}`;
}

const factText = ({ label, text }: Fact) => `${escaped(label)}: **${escaped(text)}**`;
const blank = (label: string) => `${escaped(label)}: \\_\\_\\_\\_\\_\\_\\_\\_\\_\\_`;

/** A heading, the reason, and a table of two columns that a narrow screen can hold. */
function entryText({ no, title, price, why, groups, blanks }: Entry): string {
  const rows = groups.flatMap(({ facts }) => facts.map(({ label, text }) => [label, text]));
  return [
    `### ${String(no)}\\. ${escaped(title)}`,
    escaped(why.text),
    pipes([title, price ?? ''], ['left', 'left'], rows),
    blanks.map(blank).join('  \n'),
  ].join('\n\n');
}

function tableText({ caption, columns, rows }: Table): string {
  const table = pipes(
    columns.map(({ label }) => label),
    columns.map(({ align }) => align),
    rows.map(({ cells }) => cells),
  );
  return `*${escaped(caption)}*\n\n${table}`;
}

function pipes(
  head: readonly string[],
  aligns: readonly ('left' | 'right')[],
  rows: readonly (readonly string[])[],
): string {
  const line = (cells: readonly string[]) => `| ${cells.map(escaped).join(' | ')} |`;
  return [
    line(head),
    `| ${aligns.map((align) => (align === 'right' ? '--:' : ':--')).join(' | ')} |`,
    ...rows.map(line),
  ].join('\n');
}

/** One line without any mark-up of its own: CommonMark lets every ASCII punctuation mark be escaped. */
function escaped(text: string): string {
  return text
    .replace(/[\r\n]+/g, ' ')
    .replace(/[\\`*_[\]<>|~&#]/g, '\\$&')
    .replace(/:\/\/|www\./gi, (start) => start.replace(/[:.]/, '\\$&'))
    .replace(/^(\s*)([-+=])/, '$1\\$2')
    .replace(/^(\s*\d+)([.)])(?=\s)/, '$1\\$2');
}
