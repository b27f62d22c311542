import type { Instance, Item, Lot } from '../../../src-main/domain/solve/instance.ts';

/** mulberry32, a public-domain generator by Tommy Ettinger: seeded, 32 bits of state. */
export const seeded = (seed: number): (() => number) => {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = state;
    t = Math.imul(t ^ (t >>> 15), t | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
};

// Carry as a share of the driver's, by loft: [common practice, no source].
const SHARE: [loft: number, share: number][] = [
  [9, 1],
  [13, 0.93],
  [16.5, 0.89],
  [19, 0.855],
  [22, 0.81],
  [25, 0.765],
  [28, 0.725],
  [31, 0.685],
  [34, 0.645],
  [38, 0.6],
  [42, 0.555],
  [46, 0.505],
  [50, 0.455],
  [54, 0.405],
  [58, 0.355],
  [64, 0.28],
];

const shareAt = (loft: number): number => {
  for (let i = 1; i < SHARE.length; i++) {
    const [l0, s0] = SHARE[i - 1]!;
    const [l1, s1] = SHARE[i]!;
    if (loft <= l1) return s0 + ((s1 - s0) * (Math.max(loft, l0) - l0)) / (l1 - l0);
  }
  return SHARE.at(-1)![1];
};

type Make = { kind: string; lofts: number[]; price: [number, number]; weight: number };

// Price ranges in minor units, pounds as an example: [common practice, no source].
const MAKES: Make[] = [
  { kind: 'driver', lofts: [9, 9.5, 10.5, 12], price: [6000, 40000], weight: 2 },
  { kind: 'fairway', lofts: [13.5, 15, 16.5, 18, 21, 23], price: [4000, 25000], weight: 3 },
  { kind: 'hybrid', lofts: [16, 17.5, 19, 20.5, 22, 23.5, 25, 27, 30], price: [3000, 20000], weight: 5 },
  { kind: 'iron', lofts: [18, 20, 21.5, 23, 24.5, 26, 28, 30.5], price: [2000, 9000], weight: 3 },
  { kind: 'wedge', lofts: [46, 48, 50, 52, 54, 56, 58, 60], price: [2500, 14000], weight: 4 },
];

const IRON_LOFTS = [21, 24, 27, 30.5, 34.5, 38.5, 43, 48];

/**
 * A player's bag of 14 with uneven gaps, an iron set, a putter, and `n` items in all: priced archetypes and
 * iron sets like a catalogue's. Bands, first pair, anchors and weights are DESIGN §8's defaults.
 */
export const realistic = (seed: number, n: number): Instance => {
  const random = seeded(seed * 7919 + n);
  const between = (lo: number, hi: number): number => lo + random() * (hi - lo);
  const pick = <T>(list: readonly T[]): T => list[Math.floor(random() * list.length)]!;
  const chance = (p: number): boolean => random() < p;
  const driverDy = Math.round(between(1800, 2750));
  const carry = (loft: number, noise: number): number =>
    Math.round(driverDy * shareAt(loft) * (1 + between(-noise, noise)));
  const items: Item[] = [];
  const lots: Lot[] = [];
  const item = (id: string, kind: string, carryDy: number, rest: Partial<Item>): Item => {
    const made: Item = {
      ...{
        id,
        origin: 'owned',
        kind,
        carryDy,
        tier: null,
        misfit: 0,
        locked: false,
        lot: null,
        price: 0,
        resale: 0,
      },
      ...rest,
    };
    items.push(made);
    return made;
  };

  const wantTier = pick([1, 2, 3, 4]);
  const owns = (id: string, kind: string, loft: number, rest: Partial<Item> = {}): Item =>
    item(`own:${id}`, kind, carry(loft, 0.025), {
      tier: pick([1, 2, 2, 3, null]),
      resale: chance(0.5) ? 100 * Math.round(between(5, 120)) : 0,
      ...rest,
    });
  owns('driver', 'driver', 9, { carryDy: driverDy, misfit: chance(0.2) ? pick([60, 120]) : 0 });
  owns('3w', 'fairway', pick([13.5, 15]), { misfit: chance(0.2) ? 60 : 0 });
  const woods = pick([0, 1, 2]);
  if (woods > 0) owns('hybrid', 'hybrid', pick([18, 19, 22]));
  if (woods > 1) owns('5w', 'fairway', pick([18, 19]));
  lots.push({ id: 'own-set:irons', origin: 'owned', price: 0, resale: 100 * Math.round(between(60, 300)) });
  const setTier = pick([1, 2, 3]);
  IRON_LOFTS.slice(woods === 0 ? 0 : 1).forEach((loft, i) =>
    owns(`i${i + (woods === 0 ? 4 : 5)}`, 'iron', loft, { lot: 'own-set:irons', tier: setTier, resale: 0 }),
  );
  item('own:putter', 'putter', 0, { locked: chance(0.9) });
  const wedges = [50, 52, 54, 56, 58, 60, 64].sort(() => random() - 0.5);
  while (items.length < 14)
    owns(`w${items.length}`, 'wedge', wedges.pop()!, { misfit: chance(0.1) ? 40 : 0 });
  if (chance(0.5)) items[5 + Math.floor(random() * 3)]!.locked = true;

  const sets = Math.min(10, 6 + Math.floor(random() * 5), Math.max(0, Math.floor((n - 20) / 10)));
  for (let s = 0; s < sets; s++) {
    const lot = `buy:irons-${s}`;
    lots.push({ id: lot, origin: 'candidate', price: 100 * Math.round(between(120, 400)), resale: 0 });
    const tier = pick([1, 2, 3, 4]);
    const strong = between(-2.5, 2.5);
    const first = pick([0, 1, 1, 2]);
    IRON_LOFTS.slice(first).forEach((loft, i) =>
      item(`${lot}:${i + first}`, 'iron', carry(loft + strong, 0.004), { origin: 'candidate', lot, tier }),
    );
  }
  const bag = MAKES.flatMap((make) => Array.from({ length: make.weight }, () => make));
  for (let i = 0; items.length < n; i++) {
    const make = pick(bag);
    item(`buy:${make.kind}-${i}`, make.kind, carry(pick(make.lofts), 0.003), {
      origin: 'candidate',
      tier: pick([1, 2, 3, 4]),
      price: 100 * Math.round(between(make.price[0], make.price[1]) / 100),
      misfit: make.kind === 'driver' && chance(0.3) ? 60 : 0,
    });
  }

  const [crowded, wide, wideLong, first] = pick([
    [40, 140, 160, 280],
    [50, 150, 180, 360],
    [50, 160, 200, 460],
    [60, 180, 220, 520],
  ] as const);
  const ladder = items.filter((x) => x.origin === 'owned' && x.kind !== 'putter');
  const longest = Math.max(...ladder.filter((x) => x.kind !== 'driver').map((x) => x.carryDy));
  const shortest = Math.min(...ladder.map((x) => x.carryDy));
  return {
    limit: 14,
    items: items.slice(0, n),
    lots,
    bands: [
      { fromDy: 0, wideDy: wide, crowdedDy: crowded, wideWeight: 2, crowdWeight: 1 },
      {
        fromDy: Math.round(0.7 * driverDy),
        wideDy: wideLong,
        crowdedDy: crowded,
        wideWeight: 2,
        crowdWeight: 1,
      },
    ],
    firstPair: { wideDy: first, secondAtLeastDy: longest },
    top: { atLeastDy: driverDy - Math.max(80, Math.round(driverDy * 0.04)), weight: 2 },
    bottom: { atMostDy: shortest + 50, weight: 2 },
    excused: [],
    leastTier: {
      iron: Math.max(1, wantTier - 1),
      hybrid: Math.max(1, wantTier - 1),
      driver: Math.max(1, wantTier - 2),
      fairway: Math.max(1, wantTier - 2),
    },
    tierWeight: 40,
    budget: 100 * Math.round(between(150, 400)),
    basis: chance(0.8) ? 'net' : 'cash',
  };
};
