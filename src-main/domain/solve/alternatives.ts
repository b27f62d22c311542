import type { Hooks } from './hooks.ts';
import { cheapestWithin } from './index.ts';
import type { Instance, Item, Point } from './instance.ts';
import { compareIds } from './model/order.ts';
import { purchasesOf, withoutPurchases } from './model/purchases.ts';

/** One other way to mend the bag as well, and how many nearly the same ones stand behind it. */
export type Alternative = { point: Point; similar: Point[] };

export type AlternativeOptions = {
  /** How many different ones. */
  most: number;
  /** A bag with at most this penalty mends as well as the plan. */
  penalty: number;
  /** The spend curve that the plan is on: where to look first. */
  curve: readonly Point[];
  hooks?: Hooks;
};

/** What costs more than this times the plan is no alternative. */
const MOST_COST = 1.25;
/** Clubs of one kind this close in carry (tenths of a yard) do the same job. Common practice, no source. */
const ALIKE_DY = 40;
/** Bounds the search where hundreds of archetypes are alike. */
const MOST_TRIES = 60;

/**
 * Different ways to the same end, the cheapest first: each forbids the whole purchase of every earlier one, near
 * duplicates are grouped, and it stops above 1.25 × the plan's cost. Best first over sets of banned purchases: the
 * children of a plan ban one of its purchases each, so the next cheapest plan that holds no earlier purchase whole is
 * always among the leaves.
 * @throws SolveStopped when a hook ends a solve.
 */
export function alternatives(instance: Instance, plan: Point, options: AlternativeOptions): Alternative[] {
  const { penalty, curve, hooks } = options;
  const mostCost = Math.floor(Math.max(0, plan.cost) * MOST_COST);
  const items = new Map(instance.items.map((item) => [item.id, item]));
  const groups: Alternative[] = [{ point: plan, similar: [] }];
  const seen = new Set<string>();
  const open = childrenOf(instance, plan, new Set());
  const tried = new Set<string>();
  const known: Solved[] = [];
  const waiting: Found[] = [];
  while (groups.length <= options.most) {
    while (open.length > 0 && tried.size < MOST_TRIES) {
      const banned = open.pop();
      if (!banned) break;
      const key = [...banned].sort().join('\n');
      if (tried.has(key)) continue;
      tried.add(key);
      const point = answerIn(known, banned, () =>
        cheapestWithin(withoutPurchases(instance, banned), { penalty, mostCost }, curve, hooks),
      );
      const buys = point ? purchasesOf(instance, point.items) : [];
      known.push({ banned, point, buys });
      if (point && buys.length > 0) waiting.push({ banned, point, buys });
    }
    waiting.sort((a, b) => byWorth(b.point, a.point));
    const next = waiting.pop();
    if (!next) break;
    const key = next.buys.join('\n');
    if (!seen.has(key)) {
      seen.add(key);
      const alike = groups.find((group) => isAlike(items, instance, group.point, next.point));
      if (alike) alike.similar.push(next.point);
      else groups.push({ point: next.point, similar: [] });
    }
    open.push(...childrenOf(instance, next.point, next.banned));
  }
  return groups.slice(1, options.most + 1);
}

/** The cheapest bag without some purchases, and what it buys; null: none that is cheap enough. */
type Solved = { banned: ReadonlySet<string>; point: Point | null; buys: readonly string[] };
type Found = Solved & { point: Point };

/**
 * What is best with fewer purchases banned, and buys none of the banned, is best here too: then nothing is solved. The
 * order of bags is total, so that this holds for ties as well.
 */
function answerIn(
  known: readonly Solved[],
  banned: ReadonlySet<string>,
  solveAnew: () => Point | null,
): Point | null {
  const same = known.find(
    (one) => [...one.banned].every((id) => banned.has(id)) && one.buys.every((id) => !banned.has(id)),
  );
  return same ? same.point : solveAnew();
}

function childrenOf(instance: Instance, point: Point, banned: ReadonlySet<string>): Set<string>[] {
  return purchasesOf(instance, point.items).map((id) => new Set([...banned, id]));
}

function byWorth(a: Point, b: Point): number {
  return (
    a.cost - b.cost ||
    a.penalty - b.penalty ||
    a.changes - b.changes ||
    compareIds(a.items.join('\n'), b.items.join('\n'))
  );
}

/** Club for club of one kind and nearly one carry, sets for sets. */
function isAlike(items: ReadonlyMap<string, Item>, instance: Instance, a: Point, b: Point): boolean {
  const boughtClubs = (point: Point) =>
    point.items
      .map((id) => items.get(id))
      .filter((item) => item?.origin === 'candidate')
      .sort((x, y) => (y?.carryDy ?? 0) - (x?.carryDy ?? 0));
  const [clubsA, clubsB] = [boughtClubs(a), boughtClubs(b)];
  if (clubsA.length !== clubsB.length) return false;
  if (purchasesOf(instance, a.items).length !== purchasesOf(instance, b.items).length) return false;
  return clubsA.every((club, i) => {
    const other = clubsB[i];
    if (!club || !other) return false;
    return club.kind === other.kind && Math.abs(club.carryDy - other.carryDy) <= ALIKE_DY;
  });
}
