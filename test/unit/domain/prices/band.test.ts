import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isStale, priceBand, type SeenPrice } from '../../../../src-main/domain/prices/band.ts';
import {
  CONDITIONS,
  DEFAULT_ASSUMPTIONS,
  inCondition,
} from '../../../../src-main/domain/prices/condition.ts';
import { pertCdf, pertMean, pertShape } from '../../../../src-main/domain/prices/pert.ts';

const seen = (
  low: number,
  likely: number,
  high: number,
  onDate = '2026-11-01',
  condition?: SeenPrice['condition'],
): SeenPrice => ({
  band: { lowMinor: low, likelyMinor: likely, highMinor: high },
  onDate,
  ...(condition ? { condition } : {}),
});
const bandOf = (...notes: SeenPrice[]) => priceBand(notes, DEFAULT_ASSUMPTIONS);

describe('one note', () => {
  it('is the band', () => {
    expect(bandOf(seen(3000, 4500, 6000))).toEqual({
      band: { lowMinor: 3000, likelyMinor: 4500, highMinor: 6000 },
      method: 'one',
      newestOn: '2026-11-01',
      counted: 1,
      notes: [{ band: { lowMinor: 3000, likelyMinor: 4500, highMinor: 6000 }, share: 1, outlier: false }],
    });
  });
  it('of another condition is brought to the one asked for: 85 of light wear is 72 played', () => {
    expect(bandOf(seen(8500, 8500, 17000, '2026-11-01', 'light wear'))?.band).toEqual({
      lowMinor: 7200,
      likelyMinor: 7200,
      highMinor: 14400,
    });
    expect(bandOf(seen(8500, 8500, 8500, '2026-11-01', 'played'))?.band.likelyMinor).toBe(8500);
  });
});

describe('two notes', () => {
  // Worked: half-life 60 days. Seen on 1 November: 30, 40, 60 (weight 1). Seen 60 days before, on 2 September:
  // 20, 34, 50 (weight ½). likely = (1·40 + ½·34) / 1.5 = 38; low = min(30, 20) = 20; high = max(60, 50) = 60.
  it('give their weighted mean and all that was seen', () => {
    const band = bandOf(seen(3000, 4000, 6000), seen(2000, 3400, 5000, '2026-09-02'));
    expect(band).toMatchObject({
      band: { lowMinor: 2000, likelyMinor: 3800, highMinor: 6000 },
      method: 'two',
      newestOn: '2026-11-01',
    });
    expect(band?.notes.map((note) => note.share)).toEqual([2 / 3, 1 / 3]);
  });
});

describe('many notes', () => {
  // Worked: likely prices 50, 40, 44, 60, 30 seen 0, 0, 60, 120 and 180 days before the newest, so weights
  // 1, 1, ½, ¼, ⅛ (sum 2⅞, half of it 1.4375). By price: 30 (⅛), 40 (1⅛), 44 (1⅝ ≥ 1.4375): the median is 44.
  // The band's tails may hold a tenth of the weight, .2875: lows of 25 (⅛), 35 (1⅛ ≥ .2875): low is 35. From above:
  // highs of 70 (¼), 60 (1¼ ≥ .2875): high is 60.
  it('give weighted median and tails', () => {
    const notes = [
      seen(4500, 5000, 6000),
      seen(3500, 4000, 4500),
      seen(4000, 4400, 5000, '2026-09-02'),
      seen(5500, 6000, 7000, '2026-07-04'),
      seen(2500, 3000, 3500, '2026-05-05'),
    ];
    expect(bandOf(...notes)).toMatchObject({
      band: { lowMinor: 3500, likelyMinor: 4400, highMinor: 6000 },
      method: 'many',
      counted: 5,
    });
  });
  it('of three alike, the lowest low and the highest high still count', () => {
    expect(bandOf(seen(1, 20, 30), seen(10, 22, 33), seen(12, 24, 99))?.band).toEqual({
      lowMinor: 1,
      likelyMinor: 22,
      highMinor: 99,
    });
  });
});

describe('outliers', () => {
  const usual = [seen(40, 45, 50), seen(42, 48, 55), seen(41, 50, 60)];
  it('are marked, shown and left out', () => {
    const band = bandOf(...usual, seen(400, 450, 500));
    expect(band?.notes.map((note) => note.outlier)).toEqual([false, false, false, true]);
    expect(band?.notes[3]?.share).toBe(0);
    expect(band?.band).toEqual(bandOf(...usual)?.band);
    expect(band?.counted).toBe(3);
  });
  it('need three others, and half as much again', () => {
    expect(bandOf(seen(40, 45, 50), seen(42, 48, 55), seen(400, 450, 500))?.counted).toBe(3);
    const alike = [seen(50, 50, 50), seen(50, 50, 50), seen(50, 50, 50)];
    expect(bandOf(...alike, seen(74, 74, 74))?.counted).toBe(4);
    expect(bandOf(...alike, seen(76, 76, 76))?.counted).toBe(3);
  });
  it('by weight: new prices are not odd because old ones were lower', () => {
    const old = ['2025-01-01', '2025-01-02', '2025-01-03', '2025-01-04'].map((day) => seen(20, 22, 24, day));
    const band = bandOf(...old, seen(80, 90, 99), seen(85, 92, 99));
    expect(band?.notes.map((note) => note.outlier)).toEqual([true, true, true, true, false, false]);
    expect(band?.newestOn).toBe('2026-11-01');
  });
  it('a price of nothing can be one', () => {
    expect(bandOf(...usual, seen(0, 0, 0))?.counted).toBe(3);
  });
});

describe('any notes', () => {
  const note = fc
    .record({
      prices: fc.array(fc.integer({ min: 0, max: 10_000_000 }), { minLength: 3, maxLength: 3 }),
      day: fc.date({ min: new Date('2020-01-01'), max: new Date('2026-12-31'), noInvalidDate: true }),
      condition: fc.option(fc.constantFrom(...CONDITIONS), { nil: undefined }),
    })
    .map(({ prices, day, condition }) => {
      const [low = 0, likely = 0, high = 0] = [...prices].sort((a, b) => a - b);
      return seen(low, likely, high, day.toISOString().slice(0, 10), condition);
    });

  it('give whole minor units in order, whatever order they come in', () => {
    fc.assert(
      fc.property(fc.array(note, { minLength: 1, maxLength: 12 }), fc.nat(), (notes, turn) => {
        const derived = bandOf(...notes);
        if (derived === null) throw new Error('no band');
        const { lowMinor, likelyMinor, highMinor } = derived.band;
        expect([lowMinor, likelyMinor, highMinor].every(Number.isSafeInteger)).toBe(true);
        expect(lowMinor).toBeLessThanOrEqual(likelyMinor);
        expect(likelyMinor).toBeLessThanOrEqual(highMinor);
        const at = turn % notes.length;
        expect(bandOf(...notes.slice(at), ...notes.slice(0, at))?.band).toEqual(derived.band);
        expect(derived.notes.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 9);
      }),
      { seed: 6, numRuns: 300 },
    );
  });
  it('give a PERT band that reproduces low, likely and high', () => {
    fc.assert(
      fc.property(fc.array(note, { minLength: 1, maxLength: 8 }), (notes) => {
        const band = bandOf(...notes)?.band;
        if (!band || band.highMinor === band.lowMinor) return;
        const { alpha, beta } = pertShape(band);
        // The mode of a beta distribution is (α − 1) / (α + β − 2) of its width.
        const mode = band.lowMinor + ((alpha - 1) / (alpha + beta - 2)) * (band.highMinor - band.lowMinor);
        expect(mode).toBeCloseTo(band.likelyMinor, 3);
        expect(pertCdf(band, band.lowMinor)).toBe(0);
        expect(pertCdf(band, band.highMinor)).toBe(1);
        expect(pertMean(band)).toBeCloseTo((band.lowMinor + 4 * band.likelyMinor + band.highMinor) / 6, 6);
      }),
      { seed: 7, numRuns: 200 },
    );
  });
  it('none give none', () => {
    expect(priceBand([], DEFAULT_ASSUMPTIONS)).toBeNull();
  });
  it('of far apart days do not run out of weight', () => {
    const fast = { ...DEFAULT_ASSUMPTIONS, halfLifeDays: 1 };
    expect(priceBand([seen(1, 2, 3, '1990-01-01'), seen(10, 20, 30)], fast)?.band).toEqual({
      lowMinor: 1,
      likelyMinor: 20,
      highMinor: 30,
    });
  });
});

it('is stale on the 61st day', () => {
  expect(isStale('2026-11-01', '2026-12-31', DEFAULT_ASSUMPTIONS)).toBe(false);
  expect(isStale('2026-11-01', '2027-01-01', DEFAULT_ASSUMPTIONS)).toBe(true);
  expect(isStale('2026-11-01', '2026-10-01', DEFAULT_ASSUMPTIONS)).toBe(false);
});

it('a condition and back is the price again, to a unit', () => {
  const { factors } = DEFAULT_ASSUMPTIONS;
  expect(inCondition(10_000, 'unmarked', 'worn', factors)).toBe(5500);
  expect(inCondition(5500, 'worn', 'unmarked', factors)).toBe(10_000);
});
