import type { Block, Data, HandOver, Line, Section } from '../model.ts';

/**
 * The document as one table: a row for each purchase, club, remark and figure, the section in the first column.
 * RFC 4180: comma, CRLF, quotes doubled. Numbers are plain (a point, no grouping); a text that a spreadsheet might run
 * as a formula gets a leading apostrophe. It starts with a byte order mark, or spreadsheets misread "°".
 */
export function csv(document: HandOver): string {
  const head = [document.sectionLabel, ...document.columns.map(({ label }) => label)];
  const rows = rowsOf(document).map(({ section, data }) => [
    section,
    ...document.columns.map(({ key }) => data[key] ?? ''),
  ]);
  return `\uFEFF${[head, ...rows].map((row) => `${row.map(cell).join(',')}\r\n`).join('')}`;
}

type Row = { section: string; data: Data };

function rowsOf(document: HandOver): Row[] {
  const { letterhead, coverNote, title, madeOn } = document;
  return [
    { section: title, data: { text: madeOn } },
    ...(letterhead ? [{ section: title, data: { item: letterhead.name, text: letterhead.contact } }] : []),
    ...coverNote.map((text) => ({ section: title, data: { text } })),
    ...document.sections.flatMap((section) =>
      dataOf(section).map((data) => ({ section: section.title, data })),
    ),
  ];
}

function dataOf({ blocks }: Section): Data[] {
  return blocks.flatMap((block) => blockData(block));
}

function blockData(block: Block): Data[] {
  switch (block.kind) {
    case 'paragraph':
      return [{ text: block.text }];
    case 'lines':
      return block.lines.map(lineData);
    case 'facts':
      return block.facts.map(({ label, text, data }) => ({ item: label, text, ...data }));
    case 'entries':
      return block.entries.map(({ no, title, why, groups }) => ({
        no,
        item: title,
        ...lineData(why),
        ...Object.assign({}, ...groups.flatMap(({ facts }) => facts.map(({ data }) => data ?? {}))),
      }));
    case 'table':
      return block.rows.map(({ data }) => data);
    case 'blanks':
    case 'chart':
      return []; // boxes are for paper; the chart's table has its figures
  }
}

function lineData({ subject, text, data }: Line): Data {
  return { ...(subject === undefined ? {} : { item: subject }), text, ...data };
}

/** What spreadsheets read as the start of a formula, full-width forms included. */
const FORMULA = /^[=+\-@\t\r\n\uFF1D\uFF0B\uFF0D\uFF20]/;

function cell(value: number | string): string {
  if (typeof value === 'number') return String(value);
  const safe = FORMULA.test(value) ? `'${value}` : value;
  return /[",\r\n]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}
