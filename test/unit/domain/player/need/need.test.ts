import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Hole } from '../../../../../src-main/domain/bag/types.ts';
import { gapNeed, needPerRound, type Need } from '../../../../../src-main/domain/player/need/need.ts';
import type { NeedClub } from '../../../../../src-main/domain/player/need/reach.ts';
import { normalCdf } from '../../../../../src-main/domain/player/statistics.ts';
import { runs } from '../../../../support/runs.ts';

const club = (clubId: string, kind: string, carryYd: number): NeedClub => ({ clubId, kind, carryYd });
const ladder = [
  club('driver', 'driver', 230),
  club('5w', 'fairway', 200),
  club('5i', 'iron', 170),
  club('7i', 'iron', 150),
  club('9i', 'iron', 128),
  club('sw', 'wedge', 90),
];
const of = (lengthsYd: number[], dispersionShare = 0.06, clubs = ladder): Need =>
  needPerRound({
    holes: lengthsYd.map((lengthYd) => ({ par: 4, lengthYd })),
    ladder: clubs,
    dispersionShare,
  });
/** The same holes for a player whose shots all carry what they should: counts known by hand. */
const exact = (...lengthsYd: number[]): Need => of(lengthsYd, 0);

describe('needPerRound without dispersion', () => {
  it('a drive and what it leaves: 420 − 230 − 20 of roll = 170', () => {
    const need = exact(420);
    expect(need.fullShots).toBeCloseTo(2, 9);
    expect(need.between(168, 172)).toBeCloseTo(1, 9);
    expect(need.between(230, 230.1)).toBe(1);
  });
  it('out of reach in two: all of the longest but the driver, then the rest', () => {
    // 540 − 250 = 290; − 200 = 90.
    const need = exact(540);
    expect(need.fullShots).toBeCloseTo(3, 9);
    expect(need.between(200, 200.1)).toBeCloseTo(1, 9);
    expect(need.between(88, 92)).toBeCloseTo(1, 9);
  });
  it('less than 40 yd is short game', () => {
    expect(exact(275).fullShots).toBeCloseTo(1, 9);
    expect(exact(39).fullShots).toBe(0);
    expect(exact(39).teeShots).toBe(0);
    expect(exact(40).fullShots).toBe(1);
  });
  it('a course of par 3s wants their lengths, once each', () => {
    const need = exact(95, 140, 140, 215);
    expect(need.fullShots).toBe(4);
    expect(need.teeShots).toBe(4);
    expect(need.between(140, 141)).toBe(2);
    expect([...need.byClub]).toEqual([
      ['driver', 1],
      ['5w', 0],
      ['5i', 0],
      ['7i', 2],
      ['9i', 0],
      ['sw', 1],
    ]);
  });
  it('a huge hole takes as many shots as it needs', () => {
    // 2000 − 250 = 1750; eight times 200; 150 left.
    const need = exact(2000);
    expect(need.fullShots).toBeCloseTo(10, 6);
    expect(need.byClub.get('5w')).toBeCloseTo(8, 6);
    expect(need.byClub.get('7i')).toBeCloseTo(1, 6);
  });
});

describe('needPerRound with dispersion', () => {
  it('a shot from the ground scatters by its share of the carry, and leaves another where that is 40 yd or more', () => {
    // 400 yd: the drive leaves 150 ± 34.5 yd. From there the next one, at the pin or all of 200, leaves 40 or more in:
    const share = 0.15;
    const sdYd = share * 230;
    let again = 0;
    for (let left = 40; left <= 300; left++) {
      const density = Math.exp(-(((left - 150) / sdYd) ** 2) / 2) / (Math.sqrt(2 * Math.PI) * sdYd);
      const carry = Math.min(left, 200);
      const rest = left - carry;
      const beyond = normalCdf((rest - 40) / (share * carry)) + normalCdf((-rest - 40) / (share * carry));
      again += density * beyond;
    }
    expect(again).toBeGreaterThan(0.07);
    expect(Math.abs(of([400], share).fullShots - (2 + again))).toBeLessThan(0.005);
  });
});

describe('gapNeed', () => {
  it('drives are no need of the first pair, long second shots none of the pair below', () => {
    const need = exact(540, 540, 540);
    expect(gapNeed(need, 230, 200)).toBe(0);
    expect(gapNeed(need, 200, 170)).toBe(0);
  });
  it('the first pair is asked for by a long par 3', () => {
    expect(gapNeed(exact(215), 230, 200)).toBe(1);
  });
  it('and by what a fairway wood could still carry, up to .9 of the drive', () => {
    // 455 − 250 = 205 ≤ 207; 465 − 250 = 215.
    expect(gapNeed(exact(455), 230, 200)).toBeCloseTo(1, 9);
    expect(gapNeed(exact(465), 230, 200)).toBe(0);
    expect(exact(465).between(200, 200.1)).toBeCloseTo(1, 9);
  });
  it('a bag without woods asks more of its first pair on a longer course', () => {
    const clubs = ladder.filter(({ clubId }) => clubId !== '5w');
    const first = (lengthYd: number) => gapNeed(of([lengthYd], 0.06, clubs), 230, 170);
    expect(first(440)).toBeGreaterThan(0.6);
    expect(first(360)).toBeLessThan(0.01);
  });
  it('approach shots fall into the gap they lie in', () => {
    const need = exact(410);
    expect(gapNeed(need, 170, 150)).toBeCloseTo(1, 9);
    expect(gapNeed(need, 200, 170)).toBe(0);
    expect(gapNeed(need, 150, 128)).toBe(0);
  });
});

describe('the assumption', () => {
  it('names the holes given', () => {
    const holes: Hole[] = [
      { par: 3, lengthYd: 150 },
      { par: 5, lengthYd: 500 },
    ];
    expect(needPerRound({ holes, ladder, dispersionShare: 0.06 }).assumption).toEqual({
      holes: 2,
      totalYd: 650,
      parTotal: 8,
      source: 'given',
    });
  });
  it('is the default course of the drive when none is given', () => {
    const expected = { holes: 18, totalYd: 6300, parTotal: 72, source: 'default' };
    expect(needPerRound({ ladder, dispersionShare: 0.06 }).assumption).toEqual(expected);
    expect(needPerRound({ holes: [], ladder, dispersionShare: 0.06 }).assumption).toEqual(expected);
  });
  it('goes by the driver even when another club is longer', () => {
    const clubs = [club('driver', 'driver', 180), club('3w', 'fairway', 230)];
    expect(needPerRound({ ladder: clubs, dispersionShare: 0.06 }).assumption.totalYd).toBe(5300);
    expect(needPerRound({ ladder: clubs.slice(1), dispersionShare: 0.06 }).assumption.totalYd).toBe(6300);
  });
});

describe('odd bags', () => {
  it('no club: no full shot', () => {
    const need = of([400, 160], 0.06, []);
    expect(need).toMatchObject({ fullShots: 0, teeShots: 0 });
    expect(need.between(0, Infinity)).toBe(0);
    expect(need.byClub.size).toBe(0);
    expect(gapNeed(need, 200, 100)).toBe(0);
    expect(need.assumption.holes).toBe(2);
  });
  it('one club takes every shot', () => {
    // Driver, 15 of roll: 400 → 235 → 85; 160; 520 → 355 → 205 → 55. Iron: 400 → 250 → 100; 160; 520 → 370 → 220 → 70.
    for (const kind of ['driver', 'iron']) {
      const need = of([400, 160, 520], 0, [club('only', kind, 150)]);
      expect(need.fullShots).toBeCloseTo(8, 9);
      expect(need.byClub.get('only')).toBeCloseTo(8, 9);
    }
  });
  it('a club that carries nothing', () => {
    expect(of([400], 0.06, [club('broken', 'iron', 0)]).fullShots).toBe(0);
  });
  it('two clubs of one carry share the shots round it', () => {
    const clubs = [club('a', 'iron', 150), club('b', 'hybrid', 150)];
    const need = of([400, 390], 0.1, clubs);
    expect((need.byClub.get('a') ?? 0) + (need.byClub.get('b') ?? 0)).toBeCloseTo(need.fullShots, 9);
    expect(need.byClub.get('b')).toBeGreaterThan(0);
  });
  it('the driver is no choice from the ground', () => {
    // 460 − 260 = 200, within .9 of the drive and nearer to it than to the iron; then 70.
    const clubs = [club('driver', 'driver', 240), club('9i', 'iron', 130)];
    const need = of([460], 0, clubs);
    expect(need.byClub.get('driver')).toBe(1);
    expect(need.byClub.get('9i')).toBeCloseTo(2, 9);
  });
  it.each([
    [{ dispersionShare: NaN }, 'The dispersion share is NaN: give a number from 0 to 1'],
    [{ dispersionShare: 1.5 }, 'The dispersion share is 1.5: give a number from 0 to 1'],
    [
      {
        holes: [
          { par: 4, lengthYd: 300 },
          { par: 4, lengthYd: Infinity },
        ],
      },
      'The length of hole 2 is Infinity: give a number from 0 to 2000 yd',
    ],
    [{ ladder: [club('7i', 'iron', -1)] }, 'The carry of club 7i is -1: give a number from 0 to 500 yd'],
  ])('refuses %j by name', (changes, message) => {
    const input = { holes: [{ par: 4, lengthYd: 300 }], ladder, dispersionShare: 0.06, ...changes };
    expect(() => needPerRound(input)).toThrow(new RangeError(message));
  });
});

describe('with dispersion, by the normal distribution', () => {
  it('a drive that falls short leaves a full shot: 250 yd, 201 carried and 20 rolled, 6 % of spread', () => {
    // 29 yd are left on the mean, SD 12.06: P(more than 40) = P(z > .912) = .1809; a second one is out of reach.
    const clubs = [club('driver', 'driver', 201), club('sw', 'wedge', 80)];
    expect(of([250], 0.06, clubs).fullShots).toBeCloseTo(1.1809, 3);
  });
  it('a par 3 that is reached wants a second full shot only from a great miss', () => {
    // 200 yd, SD 12: P(|z| > 40/12) = .00086
    expect(of([200], 0.06, [club('5w', 'fairway', 200)]).fullShots).toBeCloseTo(1.00086, 4);
    // SD 20: P(|z| > 2) = .0455, each of which wants one more, hardly ever two.
    expect(of([200], 0.1, [club('5w', 'fairway', 200)]).fullShots).toBeCloseTo(1.0455, 3);
  });
});

it('cells rise, and have borders at what the longest club but the driver has and could have', () => {
  const clubs = [club('driver', 'driver', 240.3), club('5w', 'fairway', 181.7), club('sw', 'wedge', 80)];
  const { edgesYd } = of([480], 0.06, clubs).wanted;
  expect(Array.from(edgesYd)).toEqual([...edgesYd].sort((a, b) => a - b));
  expect(Array.from(edgesYd)).toContain(181.7);
  expect(edgesYd.some((edge) => Math.abs(edge - 0.9 * 240.3) < 1e-9)).toBe(true);
  expect(edgesYd[0]).toBe(40);
  expect(edgesYd.at(-1)).toBeGreaterThanOrEqual(480);
});

describe('any bag on any course', () => {
  const clubs = fc
    .array(
      fc.record({
        kind: fc.constantFrom('driver', 'fairway', 'hybrid', 'iron', 'wedge'),
        carryYd: fc.double({ min: 0, max: 320, noNaN: true }),
      }),
      { maxLength: 14 },
    )
    .map((list) => list.map(({ kind, carryYd }, i) => club(`c${String(i)}`, kind, carryYd)));
  const holes = fc.array(
    fc.record({
      par: fc.integer({ min: 3, max: 6 }),
      lengthYd: fc.double({ min: 30, max: 1000, noNaN: true }),
    }),
    { minLength: 1, maxLength: 36 },
  );
  const share = fc.oneof(fc.constantFrom(0, 1), fc.double({ min: 0, max: 1, noNaN: true }));

  it("neighbouring intervals and the clubs' uses each add up to the full shots", () => {
    fc.assert(
      fc.property(clubs, holes, share, (bag, course, dispersionShare) => {
        const need = needPerRound({ holes: course, ladder: bag, dispersionShare });
        let sum = 0;
        for (let low = 0; low < 1100; low += 7.3) sum += need.between(low, low + 7.3);
        const near = 1e-9 * Math.max(1, need.fullShots);
        expect(Math.abs(sum - need.fullShots)).toBeLessThan(near);
        expect(need.between(40, Infinity)).toBe(need.fullShots);
        const uses = [...need.byClub.values()];
        expect(uses.every((count) => count >= 0)).toBe(true);
        if (bag.length > 0) {
          expect(Math.abs(uses.reduce((a, b) => a + b, 0) - need.fullShots)).toBeLessThan(near);
        }
        expect(need.fullShots).toBeGreaterThanOrEqual(need.teeShots);
        expect(Number.isFinite(need.fullShots)).toBe(true);
        expect(need.wanted.shots.every((shots) => shots >= 0)).toBe(true);
      }),
      { seed: 8, numRuns: runs(300) },
    );
  });

  it('neither the order of clubs or holes nor a club below the longest changes what is wanted', () => {
    fc.assert(
      fc.property(holes, share, (course, dispersionShare) => {
        const need = needPerRound({ holes: course, ladder, dispersionShare });
        const turned = needPerRound({
          holes: [...course].reverse(),
          ladder: [...ladder].reverse().concat(club('6i', 'iron', 160)),
          dispersionShare,
        });
        expect(turned.fullShots).toBeCloseTo(need.fullShots, 9);
        for (let low = 40; low < 300; low += 20) {
          expect(turned.between(low, low + 20)).toBeCloseTo(need.between(low, low + 20), 9);
        }
      }),
      { seed: 9, numRuns: runs(60) },
    );
  });
});
