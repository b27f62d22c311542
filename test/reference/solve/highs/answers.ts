import type { Instance } from '../../../../src-main/domain/solve/instance.ts';
import { judge } from './judge.ts';
import type { Oracle, OracleBag } from './oracle.ts';

/** DESIGN §8's answers, each from the oracle's programmes and from nothing the solver says. */

const BEST_CURVE = ['cost', 'penalty', 'changes', 'purchases'] as const;

/** Every nondominated (cost, penalty) with least changes, then least purchases, by ε-constraint steps of one. */
export function curveOf(oracle: Oracle): OracleBag[] {
  const curve: OracleBag[] = [];
  let caps = {};
  for (;;) {
    const bag = oracle.leastInOrder(BEST_CURVE, { caps });
    if (!bag) return curve;
    curve.push(bag);
    if (bag.penalty === 0) return curve;
    caps = { penalty: bag.penalty - 1 };
  }
}

export const cleanOf = (oracle: Oracle): OracleBag | null =>
  oracle.leastInOrder(['cost', 'changes', 'purchases'], { caps: { penalty: 0 } });

export const bestOf = (oracle: Oracle, budget: number | null): OracleBag | null =>
  oracle.leastInOrder(
    ['penalty', 'cost', 'changes', 'purchases'],
    budget === null ? {} : { caps: { cost: budget } },
  );

/** The bag as owned, or null when it is not legal. */
export function ownedOf(instance: Instance): OracleBag | null {
  const items = instance.items
    .filter((item) => item.origin === 'owned')
    .map((item) => item.id)
    .sort();
  const { faults, ...bag } = judge(instance, items);
  return faults.length === 0 ? { items, ...bag } : null;
}

/** The headline's rule on the oracle's own curve, its fractions cleared by multiplying out. */
export function headlineOf(
  curve: OracleBag[],
  owned: OracleBag | null,
  budget: number | null,
): OracleBag | null {
  const p0 = (owned ?? curve[0])?.penalty;
  if (p0 === undefined) return null;
  const cheapest = (bags: OracleBag[]): OracleBag | null =>
    bags.reduce<OracleBag | null>((best, bag) => (best && best.cost <= bag.cost ? best : bag), null);
  const isMended = (bag: OracleBag): boolean => bag.penalty <= 20;
  if (budget === null) {
    if (p0 < 100) return cheapest(curve.filter((bag) => bag.penalty <= p0));
    return cheapest(curve.filter(isMended)) ?? curve.at(-1) ?? null;
  }
  const within = curve.filter((bag) => bag.cost <= budget);
  const mended = p0 >= 100 ? cheapest(within.filter(isMended)) : null;
  if (mended) return mended;
  const scale = BigInt(Math.max(p0, 100));
  const score = ({ penalty, cost }: OracleBag): bigint =>
    budget === 0
      ? BigInt(p0 - penalty)
      : 2n * BigInt(budget) * BigInt(p0 - penalty) - scale * BigInt(Math.max(0, cost));
  return within.reduce<OracleBag | null>((best, bag) => {
    if (!best) return bag;
    const [a, b] = [score(bag), score(best)];
    return a > b || (a === b && bag.cost < best.cost) ? bag : best;
  }, null);
}

/** Of all bags with these measures, the one whose sorted ids come first. Asks one programme an id. */
export function firstById(instance: Instance, oracle: Oracle, bag: OracleBag): string[] {
  const { cost, penalty, changes, purchases } = bag;
  const caps = { cost, penalty, changes, purchases };
  const ids = instance.items.map((item) => item.id).sort();
  const chosen: string[] = [];
  const skipped: string[] = [];
  const exists = (require: readonly string[], ban: readonly string[]): boolean =>
    oracle.least('cost', { caps, require, ban }) !== null;
  for (const [i, id] of ids.entries()) {
    if (exists(chosen, [...skipped, ...ids.slice(i)])) break;
    if (exists([...chosen, id], skipped)) chosen.push(id);
    else skipped.push(id);
  }
  return chosen;
}

/** The instance with another price on one club or set. */
export const priced = (instance: Instance, id: string, price: number): Instance => ({
  ...instance,
  items: instance.items.map((item) => (item.id === id ? { ...item, price } : item)),
  lots: instance.lots.map((lot) => (lot.id === id ? { ...lot, price } : lot)),
});

/** A club's own id, or all members of a set's. */
export const membersOf = (instance: Instance, id: string): string[] =>
  instance.lots.some((lot) => lot.id === id)
    ? instance.items.filter((item) => item.lot === id).map((item) => item.id)
    : [id];

/** Does a bag with `id` (of a set: any member) reach the least cost of any bag with at most this penalty? */
export function isWorthBuying(oracle: Oracle, id: string, penalty: number): boolean {
  const caps = { penalty };
  const any = oracle.least('cost', { caps });
  const having = oracle.least('cost', { caps, require: [id] });
  return any !== null && having !== null && having.cost === any.cost;
}
