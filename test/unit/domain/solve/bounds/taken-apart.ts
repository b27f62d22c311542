import { evaluate, type Instance, type Lot } from '../../../../../src-main/domain/solve/index.ts';
import type { Ladder } from '../../../../../src-main/domain/solve/model/ladder.ts';
import type { Decisions } from '../../../../../src-main/domain/solve/search/scenario.ts';

/** One bag of the relaxed question that the bounds are exact for: README, "Bounds" and "Lots". */
export type LooseBag = { ids: ReadonlySet<string>; cost: number; penalty: number; count: number };

/** The lots that need a memory, in the order of the instance: README, "Lots". */
const statefulOf = ({ items, lots, basis }: Instance): Lot[] =>
  lots.filter(({ id, origin, resale }) => {
    const members = items.filter((x) => x.lot === id);
    if (members.length < 2) return false;
    const apart = members.reduce((sum, x) => sum + x.resale, 0);
    return origin === 'candidate' || (basis === 'net' && !members.some((x) => x.locked) && resale !== apart);
  });

/**
 * All bags of any size under decisions about lots, with every open lot taken apart: a bought member costs its share of the
 * price, rounded down; a member left out of an owned set brings its share of what the set brings beyond them, rounded up.
 * @param sets whether a bought set is taken apart too
 * Source: the plain evaluation, `evaluate`, of an instance without those lots.
 */
export const looseBags = (
  instance: Instance,
  { open, paid, barred, more }: Decisions,
  sets: 'apart' | 'bought whole' = 'apart',
): LooseBag[] => {
  const lots = statefulOf(instance);
  const membersOf = (l: number) => instance.items.filter((x) => x.lot === lots[l]?.id);
  const gainOf = (l: number): number =>
    (lots[l]?.resale ?? 0) - membersOf(l).reduce((sum, x) => sum + x.resale, 0);
  const isBought = (l: number): boolean => lots[l]?.origin === 'candidate';
  const priceOf = (l: number): number => lots[l]?.price ?? 0;
  const once = more ? Math.min(...open.filter(isBought).map(priceOf)) : 0;
  let decided = once;
  for (const l of paid) decided += priceOf(l);
  for (const l of barred) if (!isBought(l)) decided -= gainOf(l);

  const items = instance.items.map((item) => {
    const l = lots.findIndex(({ id }) => id === item.lot);
    if (l < 0 || (sets === 'bought whole' && isBought(l))) return item;
    const size = membersOf(l).length;
    const isOpen = open.includes(l);
    const price = isOpen && isBought(l) ? Math.floor((priceOf(l) - once) / size) : 0;
    const more = isOpen && !isBought(l) ? Math.ceil(Math.max(0, gainOf(l)) / size) : 0;
    return { ...item, lot: null, price, resale: item.resale + more };
  });
  const apart: Instance = { ...instance, limit: items.length, items };
  const gone = new Set(barred.flatMap((l) => membersOf(l).map(({ id }) => id)));
  const ids = items.map(({ id }) => id).filter((id) => !gone.has(id));
  return Array.from({ length: 2 ** ids.length }, (_, mask) => ids.filter((_, i) => (mask >> i) & 1)).flatMap(
    (bag): LooseBag[] => {
      const { legal, cost, penalty } = evaluate(apart, bag);
      return legal ? [{ ids: new Set(bag), cost: cost + decided, penalty, count: bag.length }] : [];
    },
  );
};

/** Nodes that a bag passes: its longest club's own where it leads, then positions. */
export const nodesOf = (ladder: Ladder, ids: ReadonlySet<string>): number[] => {
  const positions = ladder.clubs.flatMap((club, i) => (ids.has(club.id) ? [i] : []));
  return positions.map((i, at) => (at === 0 && ladder.leads[i] === 1 ? ladder.clubs.length + i : i));
};

/** Some ways to decide about an instance's lots: none yet, one more to be bought, and each lot decided at random. */
export const someDecisions = (ladder: Ladder, pick: <T>(list: readonly T[]) => T): Decisions[] => {
  const all = ladder.lots.map((_, l) => l);
  const undecided: Decisions = { open: all, paid: [], barred: [], more: false };
  const open: number[] = [];
  const paid: number[] = [];
  const barred: number[] = [];
  for (const l of all) {
    const bought = ladder.lots[l]?.candidate === true;
    // An owned lot that is in no list is kept in part.
    const list = pick(bought ? [open, paid, barred] : [open, barred, null]);
    if (list === paid) paid.push(l);
    else list?.push(l);
  }
  const mixed: Decisions = { open, paid, barred, more: false };
  return [undecided, mixed, { ...undecided, more: true }, { ...mixed, more: true }].filter(
    (one) => !one.more || one.open.some((l) => ladder.lots[l]?.candidate === true),
  );
};
