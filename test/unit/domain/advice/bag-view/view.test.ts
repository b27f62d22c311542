import { describe, expect, it } from 'vitest';
import { USUAL_CONVENTIONS } from '../../../../../src-main/domain/bag/conventions.ts';
import { ownConventions, USUAL_RECKONING } from '../../../../../src-main/domain/advice/bag-view/reckoning.ts';
import { freePlaces, pairsOf, viewBag } from '../../../../../src-main/domain/advice/bag-view/view.ts';
import { excusedPairs } from '../../../../../src-main/domain/advice/question/excused.ts';
import { misfitsOf } from '../../../../../src-main/domain/advice/question/misfits.ts';
import type { BagFile } from '../../../../../src-main/contract/formats/bag-file.ts';
import { bagFile, viewOf, withClub, without } from '../../../../support/bags.ts';

const stateOf = (file: BagFile, longer: string) => {
  const pair = viewOf(file).pairs.find((one) => one.longer.clubId === longer);
  return pair?.state;
};

describe('a neighbour pair', () => {
  // 90 mph: crowded under 5, wide over 16, over 20 from 140.7 yd on, first pair 46. Stated carries: SD 3 yd.
  it.each([
    [69, 'wide'], // 21 yd: P = .952
    [71.4, 'wide'], // 18.6 yd: P(z < .867) = .807
    [71.6, 'unsure-wide'],
    [73.9, 'unsure-wide'],
    [74, 'fine'],
    [85, 'fine'],
    [85.1, 'unsure-crowded'],
    [87.4, 'unsure-crowded'], // 2.6 yd: P(z < .8) = .788
    [87.6, 'crowded'], // 2.4 yd: P(z < .867) = .807
  ])('gap wedge 90, sand wedge %d: %s', (carry, state) => {
    expect(stateOf(withClub(bagFile(), 'sw', { carry }), 'gw')).toBe(state);
  });
  it('is long from .70 of the driver’s carry on, and then has the wider limit', () => {
    const limit = (carry: number) =>
      viewOf(withClub(bagFile(), '6i', { carry })).pairs.find((pair) => pair.longer.clubId === '6i')?.wideYd;
    expect([limit(140.8), limit(140.6)]).toEqual([20, 16]);
    // The boundary itself is long: .70 × 200 yd.
    const at = withClub(withClub(bagFile(), 'driver', { carry: 200 }), '6i', { carry: 140 });
    expect(viewOf(at).pairs.find((pair) => pair.longer.clubId === '6i')?.wideYd).toBe(20);
    const short = viewOf(without(bagFile(), 'driver')).pairs;
    expect(short.map((pair) => pair.wideYd)).toEqual(short.map(() => 16));
  });
  it('of driver and next club has a limit of its own, but only when the driver leads', () => {
    const [first, second] = viewOf(bagFile()).pairs;
    expect([first?.first, first?.wideYd, second?.first]).toEqual([true, 46, false]);
    const behind = viewOf(withClub(bagFile(), 'driver', { carry: 170 })).pairs;
    expect(behind.map((pair) => pair.first)).not.toContain(true);
    const two = bagFile({
      clubs: [...bagFile().clubs, { id: 'mini', kind: 'driver', loftDeg: 13, carry: 190 }],
    });
    // The longest two are both drivers: the lenient limit is for driver and the next club that is none.
    expect(viewOf(two).pairs[0]?.first).toBe(true);
    expect(viewOf(two).pairs[1]?.first).toBe(false);
  });
  it('led by another club has none, even where two of those carry the same', () => {
    const level = viewOf(withClub(without(bagFile(), 'driver'), '4h', { carry: 177 })).pairs;
    expect(level[0]).toMatchObject({ gapYd: 0, first: false, wideYd: 16 });
  });
  it('there is none on a ladder of one or no club', () => {
    const { limits, ladder } = viewOf(bagFile());
    expect(pairsOf([], limits)).toEqual([]);
    expect(pairsOf(ladder.slice(0, 1), limits)).toEqual([]);
  });
});

describe('the view of a bag', () => {
  it('counts free places, and keeps one for a putter that is not listed', () => {
    expect(freePlaces(viewOf(bagFile()))).toBe(2);
    expect(freePlaces(viewOf(without(bagFile(), 'putter')))).toBe(2);
    expect(freePlaces(viewOf(without(bagFile(), 'sw')))).toBe(3);
  });
  it('knows its clubs by id, and says which it does not', () => {
    const view = viewOf(bagFile());
    expect(view.club('7i').loftDeg).toBe(33);
    expect(() => view.club('1i')).toThrow(/"1i"/);
  });
  it('has no need without a ladder, the given course with one', () => {
    const { driverSpeed: _speed, ...player } = bagFile().player;
    expect(viewOf({ ...bagFile({ clubs: [] }), player }).need).toBeNull();
    const holes = [{ par: 3, length: 150 }];
    expect(viewOf({ ...bagFile(), course: { holes } }).need?.assumption).toMatchObject({
      holes: 1,
      totalYd: 150,
      source: 'given',
    });
    expect(viewOf(bagFile()).need?.assumption).toMatchObject({ holes: 18, source: 'default' });
  });
  it('takes the middle row of the limits where no speed is known', () => {
    const { driverSpeed: _speed, ...player } = bagFile().player;
    expect(viewOf({ ...bagFile({ clubs: [] }), player }).limits).toMatchObject({
      wideYd: 16,
      firstPairYd: 46,
    });
  });
  it('names the user’s own limits and tiers as the source, where they are', () => {
    const { bag, catalogue, reader, words, today } = viewOf(bagFile());
    const conventions = {
      ...USUAL_CONVENTIONS,
      limits: USUAL_CONVENTIONS.limits.map((row) => ({ ...row, wideYd: row.wideYd + 1 })),
      tierUpTo: [4, 10, 18] as const,
    };
    const own = viewBag({
      bag,
      catalogue,
      reader,
      words,
      today,
      reckoning: { ...USUAL_RECKONING, conventions },
    });
    const usual = viewBag({ bag, catalogue, reader, words, today });
    expect([own.limitSource, own.tierSource]).toEqual([words.figures.ownSource, words.figures.ownSource]);
    expect([usual.limitSource, usual.tierSource]).toEqual([
      words.figures.limitSource,
      words.figures.tierSource,
    ]);
  });
});

describe('what is the user’s own', () => {
  const limits = { ...USUAL_CONVENTIONS.limits[2]!, longShare: 0.7 };
  const own = (more: Partial<typeof USUAL_CONVENTIONS> = {}, changed = limits) =>
    ownConventions({ ...USUAL_CONVENTIONS, ...more }, changed, 92);
  it('is told apart: limits that held for this player, tiers, weights', () => {
    expect(own()).toEqual({ limits: false, tiers: false, weights: false });
    expect(own({}, { ...limits, crowdedYd: 4 }).limits).toBe(true);
    expect(own({}, { ...limits, longShare: 0.6 }).limits).toBe(true);
    expect(own({ tierUpTo: [5.4, 12.4, 20] }).tiers).toBe(true);
    expect(own({ weights: { wide: 2, crowd: 1, tier: 30 } }).weights).toBe(true);
    // A row for other speeds does not count.
    const rows = USUAL_CONVENTIONS.limits.map((row, i) => (i === 0 ? { ...row, wideYd: 99 } : row));
    expect(own({ limits: rows })).toEqual({ limits: false, tiers: false, weights: false });
  });
});

describe('excused pairs', () => {
  const excused = (file: BagFile) => excusedPairs(viewOf(file));
  it('none in a usual bag, nor a sure one', () => {
    expect(excused(bagFile())).toEqual([]);
    expect(excused(withClub(bagFile(), 'sw', { carry: 69 }))).toEqual([]);
    expect(excused(withClub(bagFile(), '8i', { carry: 128 }))).toEqual([]);
  });
  it('unsure ones, on both sides', () => {
    expect(excused(withClub(bagFile(), 'sw', { carry: 73 }))).toEqual([['gw', 'sw']]);
    expect(excused(withClub(bagFile(), '9i', { carry: 115.5 }))).toEqual([['8i', '9i']]);
  });
  it('crowded ones only when both are kept; a hole between two go-tos can still be filled', () => {
    const close = withClub(bagFile(), '8i', { carry: 128, goTo: true });
    expect(excused(close)).toEqual([]);
    expect(excused(withClub(withClub(bagFile(), '8i', { carry: 128 }), '7i', { goTo: true }))).toEqual([]);
    expect(excused(withClub(close, '7i', { goTo: true }))).toEqual([['7i', '8i']]);
    const wide = withClub(withClub(without(bagFile(), 'gw'), 'pw', { goTo: true }), 'sw', {
      goTo: true,
      carry: 70,
    });
    expect(excused(wide)).toEqual([]);
  });
  it('all of a driver that is behind for a reason yet to be found', () => {
    // 150 yd where about 200 is usual: between 4-hybrid 162 and 5-iron 148.
    expect(excused(withClub(bagFile(), 'driver', { carry: 155 }))).toEqual([
      ['4h', 'driver'],
      ['driver', '5i'],
    ]);
  });
});

describe('misfits', () => {
  // 140 mph of ball speed: launch and spin of 20° and 5,000 rpm are both far above any window.
  const driver = (more: object) => withClub(bagFile(), 'driver', { ballSpeed: 140, ...more });
  const of = (file: BagFile) => misfitsOf(viewOf(file));
  it('a driver outside its window: both figures 120, one 60, none nothing', () => {
    expect(of(driver({ launchDeg: 22, spinRpm: 5000 })).misfits.get('driver')).toBe(120);
    expect(of(driver({ spinRpm: 5000 })).misfits.get('driver')).toBe(60);
    expect(of(driver({ launchDeg: 13, spinRpm: 2600 })).misfits.size).toBe(0);
    expect(of(bagFile()).misfits.size).toBe(0);
  });
  it('a candidate driver whose spin tier does not help carries the same', () => {
    const { candidateMisfits } = of(driver({ spinRpm: 5000 }));
    expect(candidateMisfits.get('driver-10.5-t3')).toBe(60);
    expect(candidateMisfits.get('driver-10.5-t3-low')).toBeUndefined();
    expect([...candidateMisfits.keys()].every((id) => id.startsWith('driver'))).toBe(true);
    expect(of(bagFile()).candidateMisfits.size).toBe(0);
  });
});
