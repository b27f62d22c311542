import { describe, expect, it } from 'vitest';
import { loadCatalogue } from '../../../db/catalogue/index.ts';
import { answerSchema, type Answer } from '../../../src-main/contract/calls/answers/answers.ts';
import { calls } from '../../../src-main/contract/calls/index.ts';
import { answerForWindow } from '../../../src-main/worker/answer-view.ts';
import { flightsOf } from '../../../src-main/worker/flights.ts';
import type { BagFile } from '../../../src-main/contract/formats/bag-file.ts';
import { bagFile, without } from '../../support/bags.ts';

const answerTo = (file: BagFile): Answer =>
  answerSchema.parse(answerForWindow(file, loadCatalogue(), { today: '2026-11-26' }));

describe('the need in intervals', () => {
  it('are ten of the bag’s unit wide, without a hole, from the shortest full shot past the longest carry', () => {
    for (const distance of ['yd', 'm'] as const) {
      const file = bagFile({ units: { distance, speed: 'mph', currency: 'GBP' } });
      const intervals = answerTo(file).need?.intervals ?? [];
      // A full shot is 40 yd or more: 36.6 m.
      expect(intervals[0]?.low).toBe(distance === 'yd' ? 40 : 30);
      expect(intervals.at(-1)).toMatchObject({ low: 200, high: 210 });
      for (const { low, high } of intervals) expect(high - low).toBe(10);
      expect(intervals.slice(1).map(({ low }) => low)).toEqual(
        intervals.slice(0, -1).map(({ high }) => high),
      );
      const byClub = Object.values(answerTo(file).need?.byClub ?? {});
      const sum = (values: number[]) => values.reduce((total, value) => total + value, 0);
      // Each club's share is rounded to a tenth.
      expect(Math.abs(sum(intervals.map(({ shots }) => shots)) - sum(byClub))).toBeLessThan(0.6);
    }
  });
  it('a longest carry at an edge has the interval above it', () => {
    const longest = without(bagFile(), 'driver', '5w', '4h', '5i', '6i', '7i', '8i', '9i');
    expect(answerTo(longest).need?.intervals.at(-1)).toMatchObject({ low: 100, high: 110 });
  });
});

describe('what the plan may cost', () => {
  const file = without(
    bagFile({ prices: [{ archetype: 'hybrid-25-t3', low: 30, likely: 45, high: 70 }] }),
    '5i',
    '4h',
  );
  it('holds the plan’s own cost', () => {
    const { costSpread, plan } = answerTo(file);
    expect(plan.plan.swaps.some(({ action }) => action === 'buy')).toBe(true);
    expect(costSpread?.low).toBeLessThan(plan.plan.net);
    expect(costSpread?.high).toBeGreaterThan(plan.plan.net);
    expect(costSpread?.enough.share).toBe(0.8);
  });
  it('is nothing while the program gives no buying advice', () => {
    expect(answerTo({ ...file, player: { ...file.player, pain: true } }).costSpread).toBeNull();
  });
});

describe('the flights of a bag', () => {
  it('are in the bag’s unit, the longest club first, without the putter', () => {
    const yards = calls['answers.flight'].result.parse(flightsOf(bagFile()));
    const metres = flightsOf(bagFile({ units: { distance: 'm', speed: 'mph', currency: 'GBP' } }));
    expect(yards.flights.map(({ clubId }) => clubId).slice(0, 3)).toEqual(['driver', '5w', '4h']);
    expect(yards.flights).toHaveLength(11);
    expect(yards.without).toEqual([]);
    expect(yards.air).toEqual({ temperatureC: 15, altitudeM: 0 });
    // The same numbers in metres are longer clubs, which fly higher.
    const [here, there] = [yards.flights[0], metres.flights[0]];
    expect(here?.points.at(-1)).toEqual({ along: here?.carry, height: 0 });
    expect(there?.carry).toBe(here?.carry);
    expect(there?.apex).toBeGreaterThan(here?.apex ?? NaN);
  });
  it('names what cannot be flown', () => {
    const file = bagFile();
    const clubs = file.clubs.map((club) => (club.id === 'sw' ? { ...club, carry: 5 } : club));
    expect(flightsOf({ ...file, clubs }).without).toEqual([{ clubId: 'sw', name: 'sw' }]);
  });
});
