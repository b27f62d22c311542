import { describe, expect, test } from 'vitest';
import { shownAtFirst, shownFlights } from '../../../../src-renderer/state/ladder/flight-view.ts';
import { needView } from '../../../../src-renderer/state/spend/need-view.ts';
import { flightsOf } from '../../../../src-main/worker/flights.ts';
import { demoPriceBand } from '../charts/demo.ts';
import { answerTo, demoBag } from '../support.ts';

describe('the need per round', () => {
  const answer = answerTo(demoBag());
  test('has the longest carries first, and every club of the ladder in one interval', () => {
    const view = needView(answer);
    const lows = view?.rows.map(({ low }) => low) ?? [];
    expect(lows).toEqual([...lows].sort((a, b) => b - a));
    expect(view?.rows.flatMap(({ clubs }) => clubs.map(({ id }) => id))).toEqual(
      answer.plan.ladder.map(({ clubId }) => clubId),
    );
  });
  test('is nothing where no ladder tells, or no full shot is played', () => {
    expect(needView({ ...answer, need: null })).toBeNull();
    const need = { source: '', byClub: {}, intervals: [{ low: 40, high: 50, shots: 0, tee: 0 }] };
    expect(needView({ ...answer, need })).toBeNull();
    expect(needView({ ...answer, need: { ...need, intervals: [] } })).toBeNull();
  });
});

describe('the flights that are drawn at first', () => {
  test('are the longest, one in the middle and the shortest', () => {
    expect(shownAtFirst(['a', 'b', 'c', 'd', 'e'])).toEqual(['a', 'c', 'e']);
    expect(shownAtFirst(['a', 'b', 'c', 'd'])).toEqual(['a', 'c', 'd']);
  });
  test('are all where there are few', () => {
    expect(shownAtFirst(['a', 'b'])).toEqual(['a', 'b']);
    expect(shownAtFirst([])).toEqual([]);
  });
  test('a choice is drawn in the ladder’s order, and what has gone is left out', () => {
    const { flights } = flightsOf(demoBag());
    expect(shownFlights(flights, ['sw', 'gone', 'driver']).map(({ clubId }) => clubId)).toEqual([
      'driver',
      'sw',
    ]);
  });
});

describe('a price band', () => {
  test('has its notes as they went in, numbered as they are listed', () => {
    const { band, rows } = demoPriceBand();
    expect(rows.map(({ number }) => number)).toEqual([1, 2, 3, 4, 5]);
    expect(rows.filter(({ stale }) => stale).map(({ number }) => number)).toEqual([3]);
    expect(rows.filter(({ outlier }) => outlier).map(({ number }) => number)).toEqual([5]);
    expect(band.low <= band.likely && band.likely <= band.high).toBe(true);
    // Seen with light wear at 55: less for one that was played.
    expect(rows[1]?.likely).toBeLessThan(55);
  });
});
