import { describe, expect, it } from 'vitest';
import { courseOf } from '../../../src-main/domain/player/need/courses.ts';
import { gapNeed, needPerRound, type Need } from '../../../src-main/domain/player/need/need.ts';
import { simulate, type Counted, type Golfer } from './support/simulate.ts';

// Source of every expectation: the round simulator in ./support, own work, no code shared with the product.
// The bound of 2 % is the product's promise (need per round sums to the expected number of full shots within 2 %).
const WITHIN = 0.02;
/** Enough that the noise of an interval met 0.2 times a round stays near half a percent. */
const ROUNDS = 200_000;
const WIDTH_YD = 20;
const FARTHEST_YD = 320;

const lengths = (totalYd: number) => courseOf(totalYd).holes.map((hole) => hole.lengthYd);
const golfers: Golfer[] = [
  {
    name: 'usual',
    seed: 1,
    driverYd: 201,
    longestYd: 177,
    rollYd: 20,
    share: 0.06,
    lengthsYd: lengths(5900),
  },
  {
    name: 'far too long a course',
    seed: 2,
    driverYd: 201,
    longestYd: 177.4,
    rollYd: 20,
    share: 0.06,
    lengthsYd: lengths(7200),
  },
  {
    name: 'no wood below the driver',
    seed: 3,
    driverYd: 240.3,
    longestYd: 181.7,
    rollYd: 20,
    share: 0.05,
    lengthsYd: lengths(6300),
  },
  {
    name: 'long and straight',
    seed: 4,
    driverYd: 276,
    longestYd: 247.3,
    rollYd: 20,
    share: 0.03,
    lengthsYd: lengths(6800),
  },
  {
    name: 'slow and wild',
    seed: 5,
    driverYd: 131.6,
    longestYd: 117.2,
    rollYd: 15,
    share: 0.15,
    lengthsYd: lengths(4500),
  },
  {
    name: 'a course of par 3s',
    seed: 6,
    driverYd: 190,
    longestYd: 165.5,
    rollYd: 20,
    share: 0.1,
    lengthsYd: [60, 80, 95, 110, 125, 140, 150, 180, 230],
  },
];

function needOf(golfer: Golfer): Need {
  return needPerRound({
    holes: golfer.lengthsYd.map((lengthYd) => ({ par: 4, lengthYd })),
    ladder: [
      { clubId: 'driver', kind: 'driver', carryYd: golfer.driverYd },
      { clubId: 'longest', kind: 'fairway', carryYd: golfer.longestYd },
      { clubId: 'wedge', kind: 'wedge', carryYd: 70 },
    ],
    dispersionShare: golfer.share,
  });
}

function expectClose(actual: number, expected: number): void {
  expect(Math.abs(actual / expected - 1)).toBeLessThan(WITHIN);
}

describe.each(golfers)('$name', (golfer) => {
  const need = needOf(golfer);
  const counted: Counted = simulate(golfer, ROUNDS);

  it('full shots agree with the simulated rounds', () => {
    expectClose(need.fullShots, counted.fullShots);
    expect(need.teeShots).toBe(counted.teeShots);
  });

  it('every 20 yd that are wanted at least 0.2 times a round agree', () => {
    let compared = 0;
    for (let low = 40; low < FARTHEST_YD; low += WIDTH_YD) {
      const simulated = counted.between(low, low + WIDTH_YD);
      if (simulated < 0.2) continue;
      expectClose(need.between(low, low + WIDTH_YD), simulated);
      compared++;
    }
    expect(compared).toBeGreaterThanOrEqual(3);
  });

  it('intervals seldom wanted are as seldom', () => {
    for (let low = 40; low < FARTHEST_YD; low += WIDTH_YD) {
      const simulated = counted.between(low, low + WIDTH_YD);
      if (simulated >= 0.2) continue;
      expect(Math.abs(need.between(low, low + WIDTH_YD) - simulated)).toBeLessThan(0.2 * WITHIN);
    }
  });

  it('the intervals sum to the simulated number of full shots', () => {
    let sum = 0;
    for (let low = 40; low < FARTHEST_YD; low += WIDTH_YD) sum += need.between(low, low + WIDTH_YD);
    expectClose(sum, counted.fullShots);
  });

  it('the first gap is asked for as often as simulated', () => {
    const simulated = counted.firstGap;
    expect(Math.abs(gapNeed(need, golfer.driverYd, golfer.longestYd) - simulated)).toBeLessThan(
      Math.max(0.2, simulated) * WITHIN,
    );
  });
});
