import type { Instance, Item } from './instance.ts';

/** What is different when a later stage of a path comes. */
export type LaterStage = {
  /** Ids of the bag that the stage before leaves. */
  bag: readonly string[];
  /** Money left, minor units; null without a budget. */
  budget: number | null;
  leastTier: Record<string, number>;
  tierWeight: number;
};

/**
 * The instance of a later stage: the bag of the stage before is what is owned now, what left it is gone, and what was
 * not bought can still be. A set that was bought is single clubs from then on.
 */
export function laterStage(instance: Instance, { bag, budget, leastTier, tierWeight }: LaterStage): Instance {
  const kept = new Set(bag);
  const boughtLots = new Set(
    instance.items.flatMap((item) =>
      item.origin === 'candidate' && item.lot !== null && kept.has(item.id) ? [item.lot] : [],
    ),
  );
  const ownedSets = wholeSets(instance, kept);
  const items = instance.items.flatMap((item): Item[] => {
    if (kept.has(item.id)) {
      const lot = item.origin === 'owned' && item.lot !== null && ownedSets.has(item.lot) ? item.lot : null;
      return [{ ...item, origin: 'owned', price: 0, lot, resale: item.origin === 'owned' ? item.resale : 0 }];
    }
    if (item.origin === 'owned' || (item.lot !== null && boughtLots.has(item.lot))) return [];
    return [item];
  });
  const ids = new Set(items.map((item) => item.id));
  return {
    ...instance,
    items,
    lots: instance.lots.filter((lot) =>
      lot.origin === 'owned' ? ownedSets.has(lot.id) : !boughtLots.has(lot.id),
    ),
    excused: instance.excused.filter(([longer, shorter]) => ids.has(longer) && ids.has(shorter)),
    leastTier,
    tierWeight,
    budget,
  };
}

/** Owned sets of which nothing left the bag can still be sold whole. */
function wholeSets(instance: Instance, kept: ReadonlySet<string>): Set<string> {
  return new Set(
    instance.lots
      .filter((lot) => lot.origin === 'owned')
      .map((lot) => lot.id)
      .filter((id) => instance.items.every((item) => item.lot !== id || kept.has(item.id))),
  );
}
