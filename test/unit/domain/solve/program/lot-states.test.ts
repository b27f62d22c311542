import { expect, test } from 'vitest';
import { shareOf, type StatefulLot } from '../../../../../src-main/domain/solve/model/lots.ts';
import { LotStates } from '../../../../../src-main/domain/solve/program/lot-states.ts';
import { type Dice, dice } from '../../../../reference/solve/small-instances.ts';

// Source of every expected value: what README, "Lots" and "Dominance", says of the clubs that are kept, told over from
// the list of them. The table remembers no more than it must; here everything is remembered.

const SIZE = 9;

/** Lots over the positions, and a putter's place for some; each position in one lot at most. */
const randomLots = (d: Dice): { lots: StatefulLot[]; lotAt: Int32Array } => {
  const lotAt = Int32Array.from({ length: SIZE }, () => d.whole(-1, 3));
  const lots = [0, 1, 2, 3].map((l): StatefulLot => {
    const at = [...(d.chance(0.3) ? [-1] : []), ...[...lotAt.keys()].filter((i) => lotAt[i] === l)];
    const candidate = d.chance(0.5);
    const money = candidate ? { price: d.whole(0, 50), gain: 0 } : { price: 0, gain: d.whole(-30, 30) };
    return { candidate, ...money, at, last: at.at(-1) ?? -1 };
  });
  return { lots, lotAt };
};

/** A bag as the list of its positions, begun with lots of which the putter is one. */
type Walk = { starts: number[]; kept: number[] };

const stateOf = (states: LotStates, { starts, kept }: Walk): number => {
  let state = states.first(starts);
  for (const i of kept) {
    states.fill(state, i);
    state = states.steps(state).after[i] ?? -1;
  }
  return state;
};
const keeps = (lot: StatefulLot, l: number, { starts, kept }: Walk): boolean =>
  starts.includes(l) || kept.some((i) => lot.at.includes(i));

test('states tell of the lots what the list of kept clubs tells', () => {
  const d = dice(3);
  const met = { opened: 0, again: 0, credit: 0, gain: 0, owed: 0 };
  for (let round = 0; round < 300; round++) {
    const { lots, lotAt } = randomLots(d);
    const states = new LotStates(lots, lotAt);
    const walk = (): Walk => ({
      starts: [...lots.keys()].filter((l) => lots[l]?.at[0] === -1).slice(0, d.whole(0, 1)),
      kept: [...Array(SIZE).keys()].filter(() => d.chance(0.4)),
    });
    const one = walk();
    one.kept.forEach((i, at) => {
      const before = { starts: one.starts, kept: one.kept.slice(0, at) };
      const after = { starts: one.starts, kept: one.kept.slice(0, at + 1) };
      const state = stateOf(states, before);
      states.fill(state, i);
      const { opens, price, credit } = states.steps(state);
      const l = lotAt[i] ?? -1;
      const lot = lots[l];
      const isOpened = lot?.candidate === true && !keeps(lot, l, before);
      expect([opens[i], price[i]]).toEqual(isOpened ? [1, lot.price] : [0, 0]);
      if (isOpened) met.opened++;
      else if (lot?.candidate === true) met.again++;
      // What the bounds will count though the label has paid it, or has not been given it for certain.
      let overstated = 0;
      lots.forEach((each, index) => {
        const ahead = each.at.filter((p) => p > i).length;
        if (ahead === 0 || keeps(each, index, after) !== each.candidate) return;
        overstated += shareOf(each) * (each.candidate ? ahead : each.at.length - ahead);
      });
      expect(credit[i]).toBe(overstated);
      if (overstated > 0) met.credit++;
      // Owned lots that ended between this club and the one before, with none of them kept.
      const from = one.kept[at - 1] ?? -1;
      let gained = 0;
      lots.forEach((each, index) => {
        const ended = each.last > from && each.last < i;
        if (!each.candidate && ended && !keeps(each, index, before)) gained += each.gain;
      });
      const told = states.endings[i] === states.endings[from + 1] ? 0 : states.leftOut(state, from, i);
      expect(told + 0).toBe(0 - gained + 0);
      if (gained !== 0) met.gain++;
    });

    // Two bags that have come to the same club: what one may still have to pay more than the other.
    const [a, b] = [walk(), walk()];
    const end = d.whole(0, SIZE - 1);
    const upTo = ({ starts, kept }: Walk): Walk => ({
      starts,
      kept: [...new Set([...kept.filter((i) => i < end), end])],
    });
    const [shortA, shortB] = [upTo(a), upTo(b)];
    let owed = 0;
    let opened = 0;
    lots.forEach((each, index) => {
      if (each.last <= end) return;
      const [inA, inB] = [keeps(each, index, shortA), keeps(each, index, shortB)];
      if (inA === inB) return;
      if (each.candidate) {
        if (inB) {
          owed += each.price;
          opened++;
        }
        // With all that is ahead left out, only the one that kept none is given the gain.
      } else owed += Math.max(0, inA ? each.gain : -each.gain);
    });
    const [stateA, stateB] = [stateOf(states, shortA), stateOf(states, shortB)];
    expect([states.owed(stateA, stateB), states.opened(stateA, stateB)]).toEqual([owed, opened]);
    if (owed > 0) met.owed++;
    // Lots that are over are forgotten: bags that differ in nothing else have one state.
    const live = (walked: Walk) =>
      lots.map((each, index) => each.last > end && keeps(each, index, walked)).join();
    expect(stateA === stateB).toBe(live(shortA) === live(shortB));
  }
  for (const times of Object.values(met)) expect(times).toBeGreaterThan(30);
});
