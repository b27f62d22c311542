import { bagFromFile } from '../../contract/formats/read-bag.ts';
import { readerFor } from '../../contract/reader.ts';
import { excusedPairs } from '../../domain/advice/question/excused.ts';
import { misfitsOf } from '../../domain/advice/question/misfits.ts';
import { prepare, type Prepared } from '../../domain/advice/question/prepare.ts';
import { adviceWords } from '../../domain/advice/words/index.ts';
import type { Bag } from '../../domain/bag/types.ts';
import { buildInstance, buyId } from '../../domain/solve/build/instance.ts';
import { frontier, type Hooks, type Point } from '../../domain/solve/index.ts';
import { withoutPurchases } from '../../domain/solve/model/purchases.ts';
import type { BagTask } from '../bag-task.ts';
import { pricedCurve, type PricedCurve } from './seen-one-entry.ts';

/** A bag in which every archetype that the player can use is a candidate. */
export type WatchedBag = {
  bag: Bag;
  prepared: Prepared;
  /** Purchases that have no price, by id in code-unit order: none of them is in the plan as it stands. */
  unpriced: readonly string[];
  /** The spend curve without them. */
  curve: readonly Point[];
};

/** The question of the bag as it stands, limits and weights alike, with the unpriced beside it. Throws as `frontier` does. */
export function watchedBag({ file, catalogue, today, locale, reckoning }: BagTask, hooks: Hooks): WatchedBag {
  const bag = bagFromFile(file);
  const reader = readerFor(file.units, locale);
  const prepared = prepare({ bag, catalogue, reader, words: adviceWords(locale), today, reckoning }, hooks);
  const { view } = prepared;
  const { bands, tierWeight } = prepared.built.instance;
  const priced = new Set(bag.prices.map(({ archetype }) => archetype));
  const nothing = { lowMinor: 0, likelyMinor: 0, highMinor: 0 };
  const more = catalogue
    .filter(({ id }) => !priced.has(id))
    .map(({ id }) => ({ archetype: id, band: nothing }));
  const built = buildInstance({
    bag: { ...bag, prices: [...bag.prices, ...more] },
    model: view.model,
    ladder: view.ladder,
    catalogue,
    limits: view.limits,
    weights: view.conventions.weights,
    least: view.least,
    excused: excusedPairs(view),
    ...misfitsOf(view),
    wideWeights: bands.map(({ fromDy, wideWeight }) => ({ fromYd: fromDy / 10, weight: wideWeight })),
    tierWeight,
  });
  const unpriced = more
    .map(({ archetype }) => buyId(archetype))
    .filter((id) => built.candidates.has(id))
    .sort();
  const curve = frontier(withoutPurchases(built.instance, new Set(unpriced)), hooks);
  return { bag, prepared: { ...prepared, built }, unpriced, curve };
}

/** The plan as a function of the price of one of the unpriced, alone beside what is priced. Throws as `frontier` does. */
export function curveOf({ prepared, unpriced, curve }: WatchedBag, id: string, hooks: Hooks): PricedCurve {
  const others = new Set(unpriced);
  others.delete(id);
  const instance = withoutPurchases(prepared.built.instance, others);
  return pricedCurve(instance, id, { hooks, without: curve });
}
