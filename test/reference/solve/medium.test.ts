import { expect, test } from 'vitest';
import { Watch } from '../../../src-main/domain/solve/hooks.ts';
import { solve } from '../../../src-main/domain/solve/index.ts';
import { layOut } from '../../../src-main/domain/solve/model/ladder.ts';
import { notBettered } from '../../../src-main/domain/solve/bounds/region.ts';
import { search } from '../../../src-main/domain/solve/search/search.ts';
import { TUNING, type Tuning } from '../../../src-main/domain/solve/search/tuning.ts';
import { every, expected } from './brute-force.ts';
import { smallInstance } from './small-instances.ts';

// Source of every expected value: all bags tried one by one (brute-force.ts), after DESIGN §8.

const MEDIUM = [...Array.from({ length: 48 }, (_, i) => 13 + (i % 4)), 17, 17, 18, 18, 19, 20];

test(`${MEDIUM.length} instances of 13 to 20 items: every answer`, () => {
  MEDIUM.forEach((size, i) => {
    const instance = smallInstance(900_000 + i, size);
    const { walkAway, ...answers } = solve(instance);
    const want = expected(instance);
    const got = { ...answers, walkAway: Object.entries(walkAway).sort() };
    expect(got, `instance ${i} of ${size} items`).toEqual({ ...want, walkAway: [...want.walkAway].sort() });
  });
});

// Sizes at which the product takes its shortcuts are made small, so that small instances take them too.
const TUNINGS: [string, Tuning][] = [
  [
    'every lot decided, every part run',
    {
      ...TUNING,
      fewArcs: 0,
      manyArcs: 0,
      manyToRun: 0,
      parts: [1, 2, 4],
      firstPart: 1,
      secondPart: 2,
      manyForSecond: 0,
    },
  ],
  ['every lot remembered by labels', { ...TUNING, fewArcs: 0, mostBranches: 0, manyArcs: 0, parts: [] }],
  ['some decided, the rest remembered', { ...TUNING, fewArcs: 0, mostBranches: 3, manyToRun: 3, parts: [2] }],
  ['no part first', { ...TUNING, firstPart: 0, manyForSecond: Infinity, parts: [] }],
];

test.each(TUNINGS)('600 instances with other tuning: %s', (_, tuning) => {
  for (let seed = 0; seed < 600; seed++) {
    const instance = smallInstance(500_000 + seed, 5 + (seed % 8));
    const { frontier, idsOf } = every(instance);
    const ladder = layOut(instance);
    const found = search(ladder, { accept: notBettered, slopes: null }, new Watch(), tuning);
    expect(
      found.map(({ ranks, ...rest }) => ({
        ...rest,
        ids: Array.from(ranks, (rank) => ladder.idByRank[rank]),
      })),
      `seed ${seed}`,
    ).toEqual(
      frontier.map((bag) => {
        const { cost, penalty, changes, purchases } = bag;
        return { cost, penalty, changes, purchases, ids: idsOf(bag) };
      }),
    );
  }
});
