import { expect, test } from 'vitest';
import type { Instance } from '../../../../../src-main/domain/solve/instance.ts';
import { compileLots, shareOf } from '../../../../../src-main/domain/solve/model/lots.ts';
import { LotStates } from '../../../../../src-main/domain/solve/program/lot-states.ts';
import { candidate, instance, item, lot } from '../instances.ts';

const compile = (of: Instance) => compileLots(of, (x) => of.items.indexOf(x));

test('a lot of one member is that member', () => {
  const of = instance([candidate('a', 0, { lot: 'x' }), item('b', { lot: 'y', resale: 3 })], {
    lots: [lot('x', { price: 40 }), lot('y', { origin: 'owned', resale: 7 })],
  });
  const money = compile(of);
  expect(money.lots).toEqual([]);
  expect([money.priceOf(of.items[0]!), money.resaleOf(of.items[1]!)]).toEqual([40, 7]);
});

test('a lot without members is nothing', () => {
  expect(
    compile(instance([], { lots: [lot('x', { price: 4 }), lot('y', { origin: 'owned', resale: 4 })] })).lots,
  ).toEqual([]);
});

const set = (resale: number, rest: Partial<Instance> = {}, locked = false): Instance =>
  instance([item('a', { lot: 'x', resale: 3, locked }), item('b', { lot: 'x', resale: 4 })], {
    lots: [lot('x', { origin: 'owned', resale })],
    ...rest,
  });

test.each([
  ['worth more whole', set(9), [2]],
  ['worth less whole', set(0), [-7]],
  ['worth as much whole', set(7), []],
  ['with a locked member', set(9, {}, true), []],
  ['on the cash basis', set(9, { basis: 'cash' }), []],
])('an owned set %s', (_, of, gains) => {
  expect(compile(of).lots.map((l) => l.gain)).toEqual(gains);
});

test('shares add up to no more than the price, and to no less than the gain', () => {
  const members = { at: [0, 1, 2], last: 2 };
  expect(shareOf({ ...members, candidate: true, price: 100, gain: 0 })).toBe(33);
  expect(shareOf({ ...members, candidate: true, price: 100, gain: 0 }, 40)).toBe(20);
  expect(shareOf({ ...members, candidate: false, price: 0, gain: 100 })).toBe(34);
  expect(shareOf({ ...members, candidate: false, price: 0, gain: -100 })).toBe(0);
});

test('states: 40 lots at once, each forgotten after its last member', () => {
  const n = 80;
  const lots = Array.from({ length: 40 }, (_, l) => ({
    candidate: true,
    price: l + 1,
    gain: 0,
    at: [l, l + 40],
    last: l + 40,
  }));
  const states = new LotStates(
    lots,
    Int32Array.from({ length: n }, (_, i) => i % 40),
  );
  let state = 0;
  for (let i = 0; i < n; i++) {
    states.fill(state, i);
    const steps = states.steps(state);
    expect([steps.opens[i], steps.price[i]], `position ${i}`).toEqual(i < 40 ? [1, i + 1] : [0, 0]);
    state = steps.after[i] as number;
    expect(states.owed(0, state), `position ${i}`).toBe(
      lots.reduce((sum, l, at) => (at <= i && l.last > i ? sum + l.price : sum), 0),
    );
  }
  expect(state).toBe(0);
});
