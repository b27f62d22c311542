import { describe, expect, it } from 'vitest';
import type { BagFile } from '../../../../../src-main/contract/formats/bag-file.ts';
import { changesOf, laterChanges } from '../../../../../src-main/domain/advice/plan/changes.ts';
import { bagFile, preparedOf, withClub, without } from '../../../../support/bags.ts';

const prices: BagFile['prices'] = [
  'hybrid-25-t3',
  'driver-10.5-t3',
  'wedge-50-t3',
  'irons-5-pw-33-t3',
  'putter-3-t4',
].map((archetype) => ({ archetype, low: 30, likely: 45, high: 70 }));
const usual = bagFile({ prices, choices: { changePutter: true } });

/** The changes of today's bag without some clubs and with some items. */
function changed(file: BagFile, out: string[], bought: string[] = []) {
  const { view, built } = preparedOf(file);
  const kept = built.instance.items.filter(
    ({ id, origin }) => origin === 'owned' && !out.includes(id.replace('own:', '')),
  );
  return changesOf(view, built, [...kept.map(({ id }) => id), ...bought]);
}

describe('what a plan changes', () => {
  it('is nothing for today’s bag', () => {
    const { purchases, leftOut, after } = changed(usual, []);
    expect([purchases, leftOut]).toEqual([[], []]);
    expect(after.map((rung) => rung.clubId)).toEqual(preparedOf(usual).view.ladder.map((r) => r.clubId));
  });
  it('puts what is bought on the ladder by its carry, with its range and source', () => {
    const { purchases, after } = changed(usual, ['5i'], ['buy:hybrid-25-t3']);
    const at = after.findIndex((rung) => rung.clubId === 'buy:hybrid-25-t3');
    const bought = after[at];
    expect(purchases).toMatchObject([{ id: 'buy:hybrid-25-t3', inPlaceOf: ['5i'], rungs: [bought] }]);
    expect(bought).toMatchObject({ kind: 'hybrid', family: 'hybrids', loftDeg: 25 });
    expect(bought?.lowYd).toBeLessThan(bought?.carryYd ?? 0);
    expect(bought?.highYd).toBeGreaterThan(bought?.carryYd ?? Infinity);
    const carries = after.map((rung) => rung.carryYd);
    expect(carries).toEqual([...carries].sort((a, b) => b - a));
    expect(after.map((rung) => rung.clubId)).not.toContain('5i');
  });
  it('a set brings those of its members that are in the bag', () => {
    const set = 'buy:irons-5-pw-33-t3';
    const { purchases } = changed(usual, ['7i', '9i'], [`${set}:7`, `${set}:9`]);
    expect(purchases.map(({ id, rungs }) => [id, rungs.map((rung) => rung.clubId)])).toEqual([
      [set, [`${set}:7`, `${set}:9`]],
    ]);
    expect(purchases[0]?.inPlaceOf).toEqual(['7i', '9i']);
  });
  it('the longest first; a putter, which is on no ladder, last', () => {
    for (const file of [usual, { ...usual, prices: prices.toReversed() }]) {
      const { purchases, after } = changed(
        file,
        ['putter'],
        ['buy:putter-3-t4', 'buy:wedge-50-t3', 'buy:hybrid-25-t3'],
      );
      expect(purchases.map(({ id }) => id)).toEqual([
        'buy:hybrid-25-t3',
        'buy:wedge-50-t3',
        'buy:putter-3-t4',
      ]);
      expect(purchases[2]).toMatchObject({ rungs: [], inPlaceOf: ['putter'] });
      expect(after.map((rung) => rung.clubId)).not.toContain('buy:putter-3-t4');
    }
  });
  it('of the same carry by their ids, however the prices stand', () => {
    const heads = ['hybrid-25-t4', 'hybrid-25-t3'].map((archetype) => ({ ...prices[0]!, archetype }));
    for (const list of [heads, heads.toReversed()]) {
      const { purchases } = changed(
        { ...usual, prices: list },
        [],
        heads.map(({ archetype }) => `buy:${archetype}`),
      );
      expect(purchases[0]?.rungs[0]?.carryYd).toBe(purchases[1]?.rungs[0]?.carryYd);
      expect(purchases.map(({ id }) => id)).toEqual(['buy:hybrid-25-t3', 'buy:hybrid-25-t4']);
    }
  });
  it('a club that nothing places stays, since the question did not have it', () => {
    const file = { ...usual, clubs: [...usual.clubs, { id: 'mystery', kind: 'hybrid' as const }] };
    expect(changed(file, []).leftOut).toEqual([]);
  });
});

describe('whose job a purchase takes', () => {
  const inPlaceOf = (out: string[], ...bought: string[]) =>
    changed(usual, out, bought).purchases.map(({ inPlaceOf: clubs }) => clubs);
  it('the nearest in carry', () => {
    // 50° wedge near 90 yd, 25° hybrid near 150.
    expect(inPlaceOf(['gw', '5i'], 'buy:hybrid-25-t3', 'buy:wedge-50-t3')).toEqual([['5i'], ['gw']]);
  });
  it('none when all are further away than a wide gap', () => {
    expect(inPlaceOf(['7i'], 'buy:wedge-50-t3')).toEqual([[]]);
  });
  it('a driver’s is a driver’s, however far; another club never takes it', () => {
    const short = withClub(usual, 'driver', { carry: 165 });
    expect(changed(short, ['driver'], ['buy:driver-10.5-t3']).purchases[0]?.inPlaceOf).toEqual(['driver']);
    expect(changed(short, ['driver'], ['buy:hybrid-25-t3']).purchases[0]?.inPlaceOf).toEqual([]);
    expect(changed(usual, ['5w'], ['buy:driver-10.5-t3']).purchases[0]?.inPlaceOf).toEqual([]);
  });
  it('a putter’s is a putter’s', () => {
    expect(inPlaceOf(['putter'], 'buy:wedge-50-t3')).toEqual([[]]);
  });
});

it('a later stage tells only what it adds', () => {
  const now = changed(usual, ['5i'], ['buy:hybrid-25-t3']);
  const then = changed(usual, ['5i', 'gw'], ['buy:hybrid-25-t3', 'buy:wedge-50-t3']);
  expect(laterChanges(now, then)).toMatchObject({
    purchases: [{ id: 'buy:wedge-50-t3', inPlaceOf: ['gw'] }],
    leftOut: ['gw'],
    after: then.after,
  });
  // What left the bag before is no purchase's to replace later.
  const first = changed(usual, ['gw']);
  expect(laterChanges(first, then).purchases.map((one) => one.inPlaceOf)).toEqual([['5i'], []]);
  expect(laterChanges(then, then)).toMatchObject({ purchases: [], leftOut: [] });
});

it('clubs of the same carry stand by their ids', () => {
  const twins = withClub(without(bagFile(), '8i'), '9i', { carry: 129 });
  expect(
    changed(twins, [])
      .after.map((rung) => rung.clubId)
      .slice(5, 7),
  ).toEqual(['7i', '9i']);
});
