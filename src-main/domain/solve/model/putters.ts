import type { Instance, Item } from '../instance.ts';
import { PUTTER } from '../instance.ts';
import type { LotMoney } from './lots.ts';

/** One way to choose the putter, all others left out. Money without that of stateful lots. */
export type PutterChoice = {
  /** Of its id; -1: no putter. */
  rank: number;
  count: number;
  cost: number;
  changes: number;
  purchases: number;
  /** Its stateful lot as an index; -1: none. */
  lot: number;
};

const choiceOf = (
  owned: Item[],
  chosen: Item | null,
  money: LotMoney,
  rankOf: ReadonlyMap<string, number>,
): PutterChoice => {
  const out = owned.filter((item) => item !== chosen);
  const resale = out.reduce((sum, item) => sum + money.resaleOf(item), 0);
  if (chosen === null)
    return { rank: -1, count: 0, cost: -resale, changes: out.length, purchases: 0, lot: -1 };
  const lot = money.lotOf(chosen);
  const bought = chosen.origin === 'candidate' && lot < 0 ? 1 : 0;
  return {
    rank: rankOf.get(chosen.id) as number,
    count: 1,
    cost: (bought === 1 ? money.priceOf(chosen) : 0) - resale,
    changes: out.length + bought,
    purchases: bought,
    lot,
  };
};

/** A locked putter is kept; with an owned one, exactly one of all; else at most one. */
export const putterChoices = (
  instance: Instance,
  money: LotMoney,
  rankOf: ReadonlyMap<string, number>,
): PutterChoice[] => {
  const putters = instance.items.filter((item) => item.kind === PUTTER);
  const owned = putters.filter((item) => item.origin === 'owned');
  const locked = owned.filter((item) => item.locked);
  const open: (Item | null)[] = owned.length > 0 ? putters : [null, ...putters];
  return (locked.length > 0 ? locked : open).map((chosen) => choiceOf(owned, chosen, money, rankOf));
};
