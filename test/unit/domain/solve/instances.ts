import type { Instance, Item, Lot } from '../../../../src-main/domain/solve/instance.ts';

/** An item with nothing special about it: owned, a wedge of 100 yd, worth nothing. */
export const item = (id: string, rest: Partial<Item> = {}): Item => ({
  id,
  origin: 'owned',
  kind: 'wedge',
  carryDy: 1000,
  tier: null,
  misfit: 0,
  locked: false,
  lot: null,
  price: 0,
  resale: 0,
  ...rest,
});

export const candidate = (id: string, price: number, rest: Partial<Item> = {}): Item =>
  item(id, { origin: 'candidate', price, ...rest });

export const lot = (id: string, rest: Partial<Lot> = {}): Lot => ({
  id,
  origin: 'candidate',
  price: 0,
  resale: 0,
  ...rest,
});

/** No penalties but those asked for. */
export const instance = (items: Item[], rest: Partial<Instance> = {}): Instance => ({
  limit: 14,
  items,
  lots: [],
  bands: [],
  firstPair: null,
  top: { atLeastDy: 0, weight: 0 },
  bottom: { atMostDy: 0, weight: 0 },
  excused: [],
  leastTier: {},
  tierWeight: 0,
  budget: null,
  basis: 'net',
  ...rest,
});
