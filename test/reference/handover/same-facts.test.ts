import Papa from 'papaparse';
import { describe, expect, it } from 'vitest';
import { csv } from '../../../src-main/domain/report/formats/csv.ts';
import { html } from '../../../src-main/domain/report/formats/html.ts';
import { markdown } from '../../../src-main/domain/report/formats/markdown.ts';
import { pipeTables } from '../../unit/domain/report/pipe-tables.ts';
import { make, NAMES, type Made } from '../../unit/domain/report/variants.ts';
import { figuresOf, holds, plain } from './figures.ts';

/** Undoes the escapes of each format, so that what is left is what a reader sees. */
const READ: Record<string, (made: Made) => string> = {
  markdown: ({ document }) => markdown(document).replace(/\\([!-/:-@[-`{-~])/g, '$1'),
  html: ({ document }) =>
    html(document, { paper: 'a4' })
      .replace(/<style>[\s\S]*?<\/style>/, '')
      .replace(/<\/?(?:span|b|i)\b[^>]*>/g, '')
      .replace(/<[^>]+>/g, ' ')
      .replace(
        /&(lt|gt|quot|#39|amp);/g,
        (_, name: string) => ({ lt: '<', gt: '>', quot: '"', '#39': "'" })[name] ?? '&',
      ),
  csv: ({ document }) =>
    Papa.parse<string[]>(csv(document))
      .data.map((row) => row.join(' '))
      .join('\n'),
};

describe.each(NAMES)('%s: the plan file’s facts in every format', (name) => {
  const made = make(name);
  const { plan, document } = made;
  const figures = figuresOf(plan, document.locale);

  it.each(Object.keys(READ))('%s holds every sum, price, reason, question and caution', (format) => {
    const text = plain(READ[format]?.(made) ?? '');
    // Prices are numbers in the CSV: looked for in their columns below.
    const money = format === 'csv' ? figures.sums : [...figures.sums, ...figures.prices];
    for (const figure of money) expect([figure, holds(text, figure)]).toEqual([figure, true]);
    for (const said of [...figures.reasons, ...figures.questions, ...figures.cautions])
      expect(text).toContain(said);
  });

  it('markdown and html hold each club with its carry and range in one row, and each walk-away price', () => {
    const page = html(document, { paper: 'a4' });
    const rows = [
      pipeTables(markdown(document)).flatMap(({ rows }) => rows.map((cells) => cells.join(' '))),
      [...page.matchAll(/<tr[ >][\s\S]*?<\/tr>/g)].map(([row]) => row.replace(/<[^>]+>/g, ' ')),
    ];
    for (const format of rows) {
      for (const club of figures.ladder) {
        expect([club, format.some((row) => club.every((figure) => holds(row, figure)))]).toEqual([
          club,
          true,
        ]);
      }
      for (const price of figures.walkAways) {
        expect([price, format.some((row) => holds(plain(row), price))]).toEqual([price, true]);
      }
    }
  });

  it('csv holds them as numbers, in their columns', () => {
    const { data } = Papa.parse<string[]>(csv(document));
    const heads = data[0] ?? [];
    const at = (key: string) =>
      heads.indexOf(document.columns.find((column) => column.key === key)?.label ?? '');
    const has = (wanted: [string, number][]) =>
      data.some((row) =>
        wanted.every(([key, value]) => row[at(key)] !== '' && Number(row[at(key)]) === value),
      );
    for (const [carry = 0, carryLow = 0, carryHigh = 0] of figures.ladderNumbers) {
      expect(
        has([
          ['carry', carry],
          ['carryLow', carryLow],
          ['carryHigh', carryHigh],
        ]),
      ).toBe(true);
    }
    for (const { action, price, walkAway } of plan.plan.swaps) {
      if (price !== undefined) expect(has([['priceLikely', price]])).toBe(true);
      if (action === 'buy' && typeof walkAway === 'number') expect(has([['walkAway', walkAway]])).toBe(true);
    }
    for (const sum of [plan.plan.cash, plan.plan.net, plan.plan.remaining]) {
      if (sum !== null) expect(has([['amount', sum]])).toBe(true);
    }
  });
});
