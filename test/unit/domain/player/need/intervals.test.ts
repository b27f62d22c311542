import { expect, it } from 'vitest';
import { needIntervals } from '../../../../../src-main/domain/player/need/intervals.ts';
import { needPerRound } from '../../../../../src-main/domain/player/need/need.ts';

const ladder = [
  { clubId: 'driver', kind: 'driver', carryYd: 230 },
  { clubId: '5w', kind: 'fairway', carryYd: 200 },
  { clubId: '7i', kind: 'iron', carryYd: 150 },
  { clubId: 'sw', kind: 'wedge', carryYd: 90 },
];
const needed = () =>
  needPerRound({
    holes: [
      { par: 4, lengthYd: 420 },
      { par: 3, lengthYd: 150 },
    ],
    ladder,
    dispersionShare: 0.06,
  });

it('intervals that hold every carry share out all the full shots, none twice', () => {
  const need = needed();
  const intervals = needIntervals(need, [40, 90, 150, 200, 230, 240]);
  expect(intervals.reduce((sum, { shots }) => sum + shots, 0)).toBeCloseTo(need.fullShots, 9);
  expect(intervals.map(({ lowYd, highYd }) => [lowYd, highYd])).toEqual([
    [40, 90],
    [90, 150],
    [150, 200],
    [200, 230],
    [230, 240],
  ]);
});

it('a tee shot is in the interval that begins with its carry, apart from what the ground asks', () => {
  const [short, atPin, , atDriver] = needIntervals(needed(), [100, 150, 160, 230, 231]);
  expect(short?.teeShots).toBeCloseTo(0, 9);
  expect(atPin?.teeShots).toBeCloseTo(1, 9);
  // What a drive of 230 and 20 of roll leaves of 420, spread by the dispersion.
  expect(atPin?.shots).toBeGreaterThan(1.1);
  expect(atDriver).toMatchObject({ lowYd: 230, shots: 1, teeShots: 1 });
});

it('one edge or none makes no interval', () => {
  expect(needIntervals(needed(), [])).toEqual([]);
  expect(needIntervals(needed(), [100])).toEqual([]);
});
