import { describe, expect, it } from 'vitest';
import { alternatives } from '../../../../src-main/domain/solve/alternatives.ts';
import { solve } from '../../../../src-main/domain/solve/index.ts';
import { candidate, instance, item, lot } from './instances.ts';

// A hole of 300 tenths, 160 allowed: one club between 1140 and 1160 mends it. Costs and kinds tell them apart.
const asked = instance(
  [
    item('a', { carryDy: 1300 }),
    item('z', { carryDy: 1000 }),
    candidate('plan', 40, { carryDy: 1150, kind: 'hybrid' }),
    candidate('twin', 44, { carryDy: 1155, kind: 'hybrid' }),
    candidate('iron', 45, { carryDy: 1150, kind: 'iron' }),
    candidate('iron-too', 46, { carryDy: 1145, kind: 'iron' }),
    candidate('wood', 50, { carryDy: 1150, kind: 'fairway' }),
    candidate('dear', 51, { carryDy: 1150, kind: 'driver' }),
    candidate('short', 41, { carryDy: 1050, kind: 'driver' }),
  ],
  {
    bands: [{ fromDy: 0, wideDy: 160, crowdedDy: 0, wideWeight: 2, crowdWeight: 0 }],
    top: { atLeastDy: 1300, weight: 2 },
    bottom: { atMostDy: 1000, weight: 2 },
  },
);
const { headline: plan, frontier: curve } = solve(asked);
const others = (most = 5, of = asked) => {
  if (plan === null) throw new Error('the hole can be mended');
  return alternatives(of, plan, { most, penalty: 0, curve }).map(({ point, similar }) => [
    point.items.filter((id) => !['a', 'z'].includes(id)).join('+'),
    similar.map(({ items }) => items.filter((id) => !['a', 'z'].includes(id)).join('+')),
  ]);
};

describe('alternatives', () => {
  it('stand beside the cheapest, up to a quarter dearer, the like of each behind it', () => {
    expect(plan?.items).toEqual(['a', 'plan', 'z']);
    // The twin of the plan stands behind the plan; 50 is 1.25 × 40, 51 is more; a club that mends half is none.
    expect(others()).toEqual([
      ['iron', ['iron-too']],
      ['wood', []],
    ]);
  });
  it('are as many as asked for', () => {
    expect(others(1).map(([first]) => first)).toEqual(['iron']);
    expect(others(0)).toEqual([]);
  });
  it('are none where nothing else mends', () => {
    const only = { ...asked, items: asked.items.filter(({ id }) => ['a', 'z', 'plan', 'dear'].includes(id)) };
    expect(others(5, only)).toEqual([]);
  });
  it('a set is an alternative to a club, and is not like it', () => {
    const set = {
      ...asked,
      items: [
        ...asked.items.filter(({ id }) => ['a', 'z', 'plan'].includes(id)),
        candidate('s:1', 0, { carryDy: 1150, kind: 'iron', lot: 's' }),
      ],
      lots: [lot('s', { price: 48 })],
    };
    expect(others(5, set)).toEqual([['s:1', []]]);
  });
  it('clubs are matched by carry, whatever their ids', () => {
    // Two holes of 300, each mended by one club; the second way has its ids the other way round.
    const holes = instance(
      [
        item('a', { carryDy: 1600 }),
        item('m', { carryDy: 1300 }),
        item('z', { carryDy: 1000 }),
        candidate('p1', 20, { carryDy: 1450, kind: 'hybrid' }),
        candidate('p2', 20, { carryDy: 1150, kind: 'iron' }),
        candidate('q2', 22, { carryDy: 1455, kind: 'hybrid' }),
        candidate('q1', 22, { carryDy: 1155, kind: 'iron' }),
        candidate('wood', 24, { carryDy: 1450, kind: 'fairway' }),
      ],
      { bands: asked.bands, top: { atLeastDy: 1600, weight: 2 }, bottom: { atMostDy: 1000, weight: 2 } },
    );
    const both = solve(holes);
    if (both.headline === null) throw new Error('both holes can be mended');
    const ways = alternatives(holes, both.headline, { most: 5, penalty: 0, curve: both.frontier }).map(
      ({ point, similar }) =>
        [point, ...similar].map(({ items }) => items.slice(1, -1).filter((id) => id !== 'm')),
    );
    expect(both.headline.items).toEqual(['a', 'm', 'p1', 'p2', 'z']);
    // All that buy a hybrid and an iron stand behind the plan; the others buy the wood, each once.
    expect(ways).toEqual([
      [
        ['p2', 'wood'],
        ['q1', 'wood'],
      ],
    ]);
  });
  it('clubs of four yards apart do the same job, and of a tenth more another', () => {
    const hole = (carryDy: number) =>
      instance(
        [
          item('a', { carryDy: 1300 }),
          item('z', { carryDy: 1000 }),
          candidate('p', 20, { carryDy: 1150, kind: 'iron' }),
          candidate('q', 22, { carryDy, kind: 'iron' }),
        ],
        {
          bands: [{ fromDy: 0, wideDy: 200, crowdedDy: 0, wideWeight: 2, crowdWeight: 0 }],
          top: { atLeastDy: 1300, weight: 2 },
          bottom: { atMostDy: 1000, weight: 2 },
        },
      );
    const ways = (carryDy: number) => {
      const of = hole(carryDy);
      const { headline, frontier } = solve(of);
      if (headline === null) throw new Error('the hole can be mended');
      return alternatives(of, headline, { most: 5, penalty: 0, curve: frontier }).map(
        ({ point }) => point.items,
      );
    };
    expect(ways(1190)).toEqual([]);
    expect(ways(1191)).toEqual([['a', 'q', 'z']]);
  });
  it('a set of the same two clubs is not like two single clubs', () => {
    const holes = instance(
      [
        item('a', { carryDy: 1600 }),
        item('m', { carryDy: 1300, locked: true }),
        item('z', { carryDy: 1000 }),
        candidate('p1', 20, { carryDy: 1450, kind: 'iron' }),
        candidate('p2', 20, { carryDy: 1150, kind: 'iron' }),
        candidate('s1', 0, { carryDy: 1450, kind: 'iron', lot: 's' }),
        candidate('s2', 0, { carryDy: 1150, kind: 'iron', lot: 's' }),
      ],
      {
        bands: asked.bands,
        top: { atLeastDy: 1600, weight: 2 },
        bottom: { atMostDy: 1000, weight: 2 },
        lots: [lot('s', { price: 45 })],
      },
    );
    const both = solve(holes);
    if (both.headline === null) throw new Error('both holes can be mended');
    const ways = alternatives(holes, both.headline, { most: 5, penalty: 0, curve: both.frontier });
    expect(ways.map(({ point, similar }) => [point.items, similar.length])).toEqual([
      [['a', 'm', 's1', 's2', 'z'], 0],
    ]);
  });
});
