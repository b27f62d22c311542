import type { Instance, Item } from '../instance.ts';

/** What a bag buys: ids of single candidates and of candidate lots, each once, in code-unit order. */
export function purchasesOf(instance: Instance, bag: readonly string[]): string[] {
  const items = new Map(instance.items.map((item) => [item.id, item]));
  const bought = bag.flatMap((id) => {
    const item = items.get(id);
    return item?.origin === 'candidate' ? [item.lot ?? item.id] : [];
  });
  return [...new Set(bought)].sort();
}

/** The instance without some candidates; a banned lot takes all its members with it. */
export function withoutPurchases(instance: Instance, banned: ReadonlySet<string>): Instance {
  const stays = (item: Item) => !banned.has(item.id) && !(item.lot !== null && banned.has(item.lot));
  const items = instance.items.filter((item) => item.origin === 'owned' || stays(item));
  const ids = new Set(items.map((item) => item.id));
  return {
    ...instance,
    items,
    excused: instance.excused.filter((pair) => pair.every((id) => ids.has(id))),
    lots: instance.lots.filter((lot) => lot.origin === 'owned' || !banned.has(lot.id)),
  };
}
