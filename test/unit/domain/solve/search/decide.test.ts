import { describe, expect, test } from 'vitest';
import { layOut } from '../../../../../src-main/domain/solve/model/ladder.ts';
import { type Arcs, tabulateArcs } from '../../../../../src-main/domain/solve/program/arcs.ts';
import { childrenOf, decidable } from '../../../../../src-main/domain/solve/search/decide.ts';
import { type Decisions, undecided } from '../../../../../src-main/domain/solve/search/scenario.ts';
import { candidate, instance, item, lot } from '../instances.ts';

const two = (id: string, from: number) => [
  candidate(`${id}1`, 0, { lot: id, carryDy: from }),
  candidate(`${id}2`, 0, { lot: id, carryDy: from - 50 }),
];
const owned = (id: string, from: number, resale: number) => [
  item(`${id}1`, { lot: id, carryDy: from, resale }),
  item(`${id}2`, { lot: id, carryDy: from - 50, resale }),
];
// Lots 0 to 3 are for sale; 4 brings more whole than apart, 5 less.
const ladder = layOut(
  instance(
    [
      ...['a', 'b', 'c', 'd'].flatMap((id, i) => two(id, 2000 - 100 * i)),
      ...owned('more', 1500, 10),
      ...owned('less', 1300, 10),
      item('alone', { carryDy: 1000 }),
    ],
    {
      lots: [
        ...['a', 'b', 'c', 'd'].map((id) => lot(id, { price: 40 })),
        lot('more', { origin: 'owned', resale: 50 }),
        lot('less', { origin: 'owned', resale: 5 }),
      ],
    },
  ),
);
const arcsFor = (allows: (id: string) => boolean): Arcs =>
  tabulateArcs(
    ladder,
    Uint8Array.from(ladder.clubs, ({ id }) => (allows(id) ? 1 : 0)),
    null,
  );

describe('the lots that are decided', () => {
  const all = undecided(ladder);
  test('are those for sale, and the owned ones that bring more whole than apart', () => {
    expect(
      decidable(
        ladder,
        all,
        arcsFor(() => true),
      ),
    ).toEqual([0, 1, 2, 3, 4]);
  });
  test('are open, and have a club that can still be kept', () => {
    const some = arcsFor((id) => !id.startsWith('b') && id !== 'c1' && !id.startsWith('more'));
    expect(decidable(ladder, all, some)).toEqual([0, 2, 3]);
    expect(decidable(ladder, { ...all, open: [1, 2, 5] }, some)).toEqual([2]);
  });
  test('have a club that can be kept if it can only be the longest', () => {
    expect(
      decidable(
        ladder,
        all,
        arcsFor((id) => id === 'd2'),
      ),
    ).toEqual([3]);
  });
});

const FOR_SALE = [0, 1, 2, 3];
/** What is bought, of the lots for sale: every way. */
const ways = Array.from({ length: 16 }, (_, mask) => FOR_SALE.filter((l) => (mask >> l) & 1));
const holds = ({ open, paid, barred, more }: Decisions, bought: readonly number[]): boolean =>
  paid.every((l) => bought.includes(l)) &&
  !barred.some((l) => bought.includes(l)) &&
  (!more || open.some((l) => bought.includes(l)));

describe('ways to decide about sets for sale', () => {
  const parents: [string, Decisions][] = [
    ['none decided', { open: [0, 1, 2, 3], paid: [], barred: [], more: false }],
    ['at least one is bought', { open: [0, 1, 2, 3], paid: [], barred: [], more: true }],
    ['one is paid, one barred', { open: [0, 3], paid: [1], barred: [2], more: false }],
    ['one is paid and more are bought', { open: [0, 2, 3], paid: [1], barred: [], more: true }],
    ['one is left', { open: [2], paid: [0], barred: [1, 3], more: true }],
  ];
  test.each(parents)('%s: each way to buy is in just one of them', (_, parent) => {
    const children = childrenOf(ladder, parent, parent.open);
    for (const bought of ways) {
      const times = children.filter((child) => holds(child, bought)).length;
      expect(times, bought.join()).toBe(holds(parent, bought) ? 1 : 0);
    }
    // Each decides something, so that it comes to an end.
    for (const child of children) expect(child.open.length).toBeLessThan(parent.open.length);
  });
  test('lots that are not asked about, for which no club can be kept, stay open', () => {
    const parent: Decisions = { open: [0, 1, 2, 5], paid: [3], barred: [], more: false };
    const children = childrenOf(ladder, parent, [0, 2]);
    expect(children.every(({ open }) => open.includes(1) && open.includes(5))).toBe(true);
    for (const bought of ways.filter((way) => !way.includes(1))) {
      const times = children.filter((child) => holds(child, bought)).length;
      expect(times, bought.join()).toBe(holds(parent, bought) ? 1 : 0);
    }
  });
});

test('an owned set comes first: kept in part, or left out whole', () => {
  const parent: Decisions = { open: [0, 1, 4, 5], paid: [2], barred: [3], more: true };
  expect(childrenOf(ladder, parent, [0, 1, 4])).toEqual([
    { open: [0, 1, 5], paid: [2], barred: [3], more: true },
    { open: [0, 1, 5], paid: [2], barred: [3, 4], more: true },
  ]);
});
