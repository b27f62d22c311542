import { readFileSync } from 'node:fs';
import { z } from 'zod';

/** Ranges out of test/reference/data, the outside copy of the trade's figures; each block names its source there. */
export type Range = { low: number; high: number };
export type ClubRow = {
  club: string;
  traditional: Range | null;
  standard: Range | null;
  strong: Range | null;
  lengthIn: Range;
};

const readData = (name: string): unknown =>
  JSON.parse(readFileSync(new URL(`../data/${name}`, import.meta.url), 'utf8'));

/** "19-21", "15", 24 or "<=27.5" as a range; "-" is none. Anything else is an error, so no figure is lost unseen. */
export function parseRange(text: string | number): Range | null {
  if (typeof text === 'number') return { low: text, high: text };
  if (text === '-') return null;
  const atMost = /^<=?(\d+(?:\.\d+)?)$/.exec(text);
  if (atMost) return { low: 0, high: Number(atMost[1]) };
  const parts = /^(\d+(?:\.\d+)?)(?:-(\d+(?:\.\d+)?))?$/.exec(text);
  if (!parts) throw new Error(`club-specs: "${text}" is no range; teach parseRange to read it`);
  return { low: Number(parts[1]), high: Number(parts[2] ?? parts[1]) };
}

const cell = z.union([z.string(), z.number()]);
const specs = z
  .object({
    iron_lofts_by_era: z.array(z.object({ era: z.string(), lofts: z.record(z.string(), cell) })),
    categories: z.object({ '7i_loft_band': z.record(z.string(), z.string()) }),
    table: z.object({ rows: z.array(z.tuple([z.string(), cell, cell, cell, cell, cell], cell)) }),
    wedge_lofts: z.record(z.string(), z.string()),
  })
  .parse(readData('club-specs.json'));

const conventions = z
  .object({
    driver_loft_by_speed: z.object({ rows: z.array(z.tuple([z.string(), z.string()])) }),
    fairway_by_driver_speed: z.object({ rows: z.array(z.tuple([z.string(), z.string()])) }),
    wedge_steps: z.object({ sets: z.array(z.string()) }),
  })
  .parse(readData('conventions.json'));

function needRange(text: string | number, where: string): Range {
  const range = parseRange(text);
  if (!range) throw new Error(`club-specs: no range for ${where}`);
  return range;
}

export const clubRows: ClubRow[] = specs.table.rows.map(
  ([club, traditional, standard, strong, , length]) => ({
    club,
    traditional: parseRange(traditional),
    standard: parseRange(standard),
    strong: parseRange(strong),
    lengthIn: needRange(length, `the length of ${club}`),
  }),
);

/** The lofts of one era by club ("5i", "PW"), from the row of that name. */
export function eraLofts(era: string): Map<string, Range> {
  const row = specs.iron_lofts_by_era.find((candidate) => candidate.era === era);
  if (!row) throw new Error(`club-specs: no era "${era}"`);
  const clubs = Object.entries(row.lofts).filter(([club]) => club !== 'note');
  return new Map(clubs.map(([club, loft]) => [club, needRange(loft, `${club} of ${era}`)]));
}

/** The bands of 7-iron lofts by category, `traditional` to `super_strong`. */
export const sevenIronBands = new Map(
  Object.entries(specs.categories['7i_loft_band']).map(([name, band]) => [name, needRange(band, name)]),
);

/** Loft ranges of wedges sold singly: PW, GW, SW, LW. */
export const wedgeLofts = new Map(
  Object.entries(specs.wedge_lofts)
    .filter(([club]) => /^[A-Z]W$/.test(club))
    .map(([club, range]) => [club, needRange(range, club)]),
);

/** Lowest driver lofts to offer by club speed, slowest first, from conventions.json. */
export const driverLoftRows = conventions.driver_loft_by_speed.rows.map(([speed, lofts]) => ({
  speed,
  loftDeg: needRange(lofts, `driver at ${speed}`),
}));

/** Every wedge loft that the usual steps below a PW name: 48, 50, 52 … */
export const wedgeStepLofts = [
  ...new Set(
    conventions.wedge_steps.sets
      .flatMap((text) => (text.split('->')[1] ?? '').match(/\d+/g) ?? [])
      .map(Number),
  ),
];

/** The smallest range that holds all given ones; null when there are none. */
export function hull(...ranges: readonly (Range | null | undefined)[]): Range | null {
  const known = ranges.filter((range): range is Range => range !== null && range !== undefined);
  if (known.length === 0) return null;
  return { low: Math.min(...known.map(({ low }) => low)), high: Math.max(...known.map(({ high }) => high)) };
}

export const isWithin = (value: number, range: Range | null | undefined): boolean =>
  range !== null && range !== undefined && value >= range.low && value <= range.high;
