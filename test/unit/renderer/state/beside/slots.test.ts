import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { BesideClub } from '../../../../../src-main/contract/calls/answers/beside.ts';
import { slotsOf } from '../../../../../src-renderer/state/beside/slots.ts';

type Kind = BesideClub['kind'];
const club = (id: string, kind: Kind, loftDeg: number | null, short: string | null = null): BesideClub => ({
  id,
  name: id,
  kind,
  short,
  loftDeg,
  loftAssumed: false,
});
const iron = (name: string, loftDeg: number | null) => club(name, 'iron', loftDeg, name);
const shape = (left: BesideClub[], right: BesideClub[]) =>
  slotsOf(left, right).map((slot) => `${slot.left?.id ?? '–'} ${slot.right?.id ?? '–'}`);

describe('clubs side by side', () => {
  test('drivers and putters whatever their loft, groups in the order of a bag', () => {
    const left = [club('p', 'putter', null), club('d', 'driver', 9)];
    const right = [club('D', 'driver', 13), club('P', 'putter', 3)];
    expect(shape(left, right)).toEqual(['d D', 'p P']);
    expect(slotsOf(left, right).map(({ group }) => group)).toEqual(['driver', 'putter']);
  });

  test('by the trade’s name before loft: a 7-iron beside a 7-iron, however strong', () => {
    const weak = [iron('6i', 30), iron('7i', 34), iron('8i', 38)];
    const strong = [iron('6i', 26), iron('7i', 29), iron('8i', 33)];
    expect(shape(weak, strong)).toEqual(['6i 6i', '7i 7i', '8i 8i']);
  });

  test('else by loft, where they are near enough; a pair of one name wins it', () => {
    expect(shape([club('a', 'hybrid', 19)], [club('b', 'hybrid', 21.5)])).toEqual(['a b']);
    expect(shape([club('a', 'hybrid', 19)], [club('b', 'hybrid', 21.6)])).toEqual(['a –', '– b']);
    expect(shape([club('b', 'hybrid', 23)], [club('a', 'hybrid', 19)])).toEqual(['– a', 'b –']);
    expect(shape([iron('5i', 26)], [iron('6i', 26), iron('5i', 23)])).toEqual(['5i 5i', '– 6i']);
  });

  test('a pitching wedge is paired whether it is called an iron or a wedge; kinds else stay apart', () => {
    expect(shape([club('pw', 'iron', 45, 'pw')], [club('PW', 'wedge', 46, 'pw')])).toEqual(['pw PW']);
    expect(shape([club('h', 'hybrid', 22)], [iron('4i', 22)])).toEqual(['h –', '– 4i']);
  });

  test('bags of different lengths: what one has more stands alone, in its place', () => {
    const left = [iron('5i', 26), iron('6i', 30), iron('7i', 34), club('gw', 'wedge', 50, 'gw')];
    const right = [iron('7i', 34), club('gw', 'wedge', 52, 'gw'), club('lw', 'wedge', 60, 'lw')];
    expect(shape(left, right)).toEqual(['5i –', '6i –', '7i 7i', 'gw gw', '– lw']);
  });

  test('without loft and name only the very same name pairs', () => {
    const old = (name: string) => club(name, 'iron', null);
    expect(shape([old('Old one')], [old('old ONE')])).toEqual(['Old one old ONE']);
    expect(shape([old('Old one')], [iron('7i', 34)])).toEqual(['– 7i', 'Old one –']);
  });

  test('an empty bag beside a full one, and two empty ones', () => {
    expect(shape([], [iron('7i', 34)])).toEqual(['– 7i']);
    expect(shape([iron('7i', 34)], [])).toEqual(['7i –']);
    expect(shape([], [])).toEqual([]);
  });

  test('of any two bags: each club once, a bag beside itself paired throughout, pages turned alike', () => {
    const kinds: Kind[] = ['driver', 'fairway', 'hybrid', 'iron', 'wedge', 'putter'];
    const bag = fc
      .array(
        fc.record({
          kind: fc.constantFrom(...kinds),
          loftDeg: fc.option(fc.integer({ min: 8, max: 64 })),
          short: fc.option(fc.constantFrom('5i', '6i', '7i', 'pw', '3w', '4h')),
        }),
        { maxLength: 14 },
      )
      .map((clubs) =>
        clubs.map(({ kind, loftDeg, short }, i) => club(`c${String(i)}`, kind, loftDeg, short)),
      );
    fc.assert(
      fc.property(bag, bag, (left, right) => {
        const slots = slotsOf(left, right);
        const on = (page: 'left' | 'right') => slots.flatMap((slot) => slot[page]?.id ?? []).sort();
        expect(on('left')).toEqual(left.map(({ id }) => id).sort());
        expect(on('right')).toEqual(right.map(({ id }) => id).sort());
        expect(slots.every((slot) => slot.left !== null || slot.right !== null)).toBe(true);
        expect(slotsOf(left, left).every((slot) => slot.left !== null && slot.right !== null)).toBe(true);
        const paired = (some: typeof slots) => some.filter((slot) => slot.left && slot.right).length;
        expect(paired(slotsOf(right, left))).toBe(paired(slots));
      }),
      { seed: 20261126, numRuns: 300 },
    );
  });
});
