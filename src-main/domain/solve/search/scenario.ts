import type { Ladder } from '../model/ladder.ts';
import { shareOf, type StatefulLot } from '../model/lots.ts';
import type { PutterChoice } from '../model/putters.ts';

/** Decisions about the stateful lots, as indices into `Ladder.lots`. */
export type Decisions = {
  /** Not decided: labels remember them, or further decisions follow. */
  open: readonly number[];
  /** Candidate lots that are paid for, whichever of their members are kept. */
  paid: readonly number[];
  /** Lots of which no member may be kept: not bought, or left out whole. */
  barred: readonly number[];
  /** True when at least one open candidate lot is bought too. For bounds alone: a run takes no notice. */
  more: boolean;
};

/** A way to begin a bag: the putter, and the money of what is decided. */
export type Start = PutterChoice & {
  /** Lower bound of `cost` with the rest of the bag's open lots shared out. */
  leastCost: number;
  /** Open lots, by index into `Scenario.lots`, of which this keeps a member. */
  kept: readonly number[];
};

/** The ladder under decisions. Columns are by position. */
export type Scenario = {
  decisions: Decisions;
  /** Open lots, and the index of each club's among them; -1: none. */
  lots: readonly StatefulLot[];
  lotAt: Int32Array;
  /** Price of the club's open candidate lot beyond what `Start.leastCost` counts already. */
  lotPrice: Float64Array;
  /** 0: the position may not be kept. */
  allowed: Uint8Array;
  /** Lower bounds of what keeping the club costs, and [i] of leaving out all before i: open lots shared out. */
  leastPrice: Float64Array;
  leastSkipCost: Float64Array;
  starts: readonly Start[];
};

export const undecided = (ladder: Ladder): Decisions => ({
  open: ladder.lots.map((_, l) => l),
  paid: [],
  barred: [],
  more: false,
});

export const scenarioOf = (ladder: Ladder, decisions: Decisions): Scenario => {
  const n = ladder.clubs.length;
  const lots = decisions.open.map((l) => ladder.lots[l] as StatefulLot);
  const cheapest = cheapestMore(lots, decisions.more);
  const lotAt = new Int32Array(n).fill(-1);
  const lotPrice = new Float64Array(n);
  const leastPrice = ladder.price.slice();
  const gains = new Float64Array(n);
  lots.forEach((lot, index) => {
    for (const i of lot.at) {
      if (i < 0) continue;
      lotAt[i] = index;
      if (!lot.candidate) gains[i] = shareOf(lot);
      else {
        lotPrice[i] = lot.price - cheapest;
        leastPrice[i] = shareOf(lot, cheapest);
      }
    }
  });
  const leastSkipCost = ladder.skipCost.slice();
  let gained = 0;
  for (let i = 0; i < n; i++) {
    gained += gains[i] as number;
    leastSkipCost[i + 1] = (leastSkipCost[i + 1] as number) - gained;
  }
  const allowed = new Uint8Array(n).fill(1);
  for (const l of decisions.barred) {
    for (const i of (ladder.lots[l] as StatefulLot).at) if (i >= 0) allowed[i] = 0;
  }
  const starts = startsOf(ladder, decisions, lots, cheapest);
  return { decisions, lots, lotAt, lotPrice, allowed, leastPrice, leastSkipCost, starts };
};

/** What one more lot costs at least when one more is bought; 0 otherwise. */
const cheapestMore = (lots: readonly StatefulLot[], more: boolean): number =>
  more ? lots.reduce((least, lot) => (lot.candidate ? Math.min(least, lot.price) : least), Infinity) : 0;

const startsOf = (
  ladder: Ladder,
  { open, paid, barred }: Decisions,
  lots: readonly StatefulLot[],
  cheapest: number,
): Start[] => {
  const moneyOf = (list: readonly number[], money: (lot: StatefulLot) => number): number =>
    list.reduce((sum, l) => sum + money(ladder.lots[l] as StatefulLot), 0);
  const decided = moneyOf(paid, (lot) => lot.price) - moneyOf(barred, (lot) => lot.gain);
  const owned = lots
    .filter((lot) => !lot.candidate)
    .map((lot) => ({ lot, putters: lot.at.filter((i) => i < 0).length }));
  return ladder.putters
    .filter((putter) => !barred.includes(putter.lot))
    .map((putter) => {
      const own = open.indexOf(putter.lot);
      const chosen = lots[own];
      let cost = putter.cost + decided;
      let leastCost = cost + cheapest;
      if (chosen?.candidate) {
        cost += chosen.price;
        leastCost += shareOf(chosen, cheapest);
      }
      for (const { lot, putters } of owned) {
        leastCost -= (lot === chosen ? putters - 1 : putters) * shareOf(lot);
        // A lot of putters alone is decided with the putter.
        if (lot !== chosen && lot.last < 0) cost -= lot.gain;
      }
      const bought = paid.length + (chosen?.candidate ? 1 : 0);
      return {
        ...putter,
        cost,
        leastCost,
        changes: putter.changes + bought,
        purchases: putter.purchases + bought,
        kept: own < 0 ? [] : [own],
      };
    });
};
