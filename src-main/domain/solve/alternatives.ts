import type { Instance, Item, Point } from './instance.ts';
import { purchasesOf, withoutPurchases } from './purchases.ts';

/** One other way to mend the bag as well, and how many nearly the same ones stand behind it. */
export type Alternative = { point: Point; similar: Point[] };

export type AlternativeOptions = {
  /** How many different ones. */
  most: number;
  /** A bag with at most this penalty mends as well as the plan. */
  penalty: number;
  /** The least cost of a bag with at most that penalty, of an instance; null when there is none. */
  cheapest: (instance: Instance, penalty: number) => Point | null;
  shouldStop?: () => boolean;
};

/** What costs more than this times the plan is no alternative. */
const MOST_COST = 1.25;
/** Clubs of one kind this close in carry (tenths of a yard) do the same job. Common practice, no source. */
const ALIKE_DY = 40;
/** Bounds the search where hundreds of archetypes are alike. */
const MOST_SOLVES = 60;

/**
 * Different ways to the same end, the cheapest first: each forbids the whole purchase of every earlier one, near
 * duplicates are grouped, and it stops above 1.25 × the plan's cost. Best first over sets of banned purchases: the
 * children of a plan ban one of its purchases each, so the next cheapest plan that holds no earlier purchase whole is
 * always among the leaves.
 */
export function alternatives(instance: Instance, plan: Point, options: AlternativeOptions): Alternative[] {
  const limit = Math.max(0, plan.cost) * MOST_COST;
  const kinds = new Map(instance.items.map((item) => [item.id, item]));
  const groups: Alternative[] = [{ point: plan, similar: [] }];
  const seen = new Set([purchasesOf(instance, plan.items).join('\n')]);
  const open = childrenOf(instance, plan, new Set());
  const tried = new Set<string>();
  const solved: { point: Point; banned: ReadonlySet<string> }[] = [];
  let solves = 0;
  for (;;) {
    while (open.length > 0 && solves < MOST_SOLVES && options.shouldStop?.() !== true) {
      const banned = open.pop();
      if (!banned) break;
      const key = [...banned].sort().join('\n');
      if (tried.has(key)) continue;
      tried.add(key);
      solves++;
      const point = options.cheapest(withoutPurchases(instance, banned), options.penalty);
      if (point && point.cost <= limit && purchasesOf(instance, point.items).length > 0)
        solved.push({ point, banned });
    }
    solved.sort((a, b) => byWorth(b.point, a.point));
    const next = solved.pop();
    if (!next || groups.length > options.most) break;
    const purchases = purchasesOf(instance, next.point.items);
    const key = purchases.join('\n');
    if (!seen.has(key)) {
      seen.add(key);
      const alike = groups.find((group) => isAlike(kinds, instance, group.point, next.point));
      if (alike) alike.similar.push(next.point);
      else groups.push({ point: next.point, similar: [] });
    }
    open.push(...childrenOf(instance, next.point, next.banned));
  }
  return groups.slice(1, options.most + 1);
}

function childrenOf(instance: Instance, point: Point, banned: ReadonlySet<string>): Set<string>[] {
  return purchasesOf(instance, point.items).map((id) => new Set([...banned, id]));
}

function byWorth(a: Point, b: Point): number {
  return (
    a.cost - b.cost ||
    a.penalty - b.penalty ||
    a.changes - b.changes ||
    (a.items.join('\n') < b.items.join('\n') ? -1 : 1)
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
