import type { Band, Instance, Item, Lot } from '../../../../src-main/domain/solve/instance.ts';
import { mulberry32 } from '../../../support/random.ts';
import { judge, ladderOrder } from './judge.ts';

/**
 * Seeded instances of 8 to 24 items with every feature of DESIGN §8 in the mix, in figures small enough that costs,
 * penalties and changes tie often. Unlike a real bag on purpose: what a real bag never shows must hold too.
 */
type Dice = {
  whole: (from: number, to: number) => number;
  chance: (share: number) => boolean;
  pick: <T>(list: readonly [T, ...T[]]) => T;
};

function dice(seed: number): Dice {
  const random = mulberry32(seed * 2654435761);
  const whole = (from: number, to: number): number => from + Math.floor(random() * (to - from + 1));
  return {
    whole,
    chance: (share) => random() < share,
    pick: (list) => list[whole(0, list.length - 1)] ?? list[0],
  };
}

const KINDS = ['driver', 'fairway', 'hybrid', 'iron', 'iron', 'wedge'] as const;

export function sizeOf(seed: number): number {
  const { whole } = dice(seed + 7);
  const row = seed % 10;
  if (row < 7) return whole(8, 12);
  return row < 9 ? whole(13, 17) : whole(18, 24);
}

export function mixedInstance(seed: number): Instance {
  const d = dice(seed);
  const count = sizeOf(seed);
  // Few owned, about half, or nearly all; sometimes none at all.
  const owned = d.pick([
    0,
    d.whole(1, 3),
    Math.floor(count / 2),
    Math.floor(count / 2),
    Math.floor(count / 2),
    count - d.whole(0, 4),
  ]);
  const longestDy = 10 * d.whole(180, 270);
  const shortestDy = 10 * d.whole(50, 110);
  // Prices on a coarse grid tie often; on a fine one hardly ever.
  const step = d.pick([1, 10, 100, 2500]);
  const money = (most: number): number => step * d.whole(0, most);
  const evenly = d.chance(0.6);
  // Tame ones have little but gaps to mend, so that bags on both sides of a yard from clean come up.
  const tame = evenly && d.chance(0.5);
  const carryOf = (i: number): number => {
    if (evenly) {
      // Clubs down the bag, and candidates that nearly stand in for one another.
      const of = i < owned ? owned : Math.ceil((count - owned) / 2);
      const share = ((i < owned ? i : i - owned) % of) / Math.max(1, of - 1);
      return 10 * Math.round((longestDy - share * (longestDy - shortestDy)) / 10 + d.whole(-4, 4));
    }
    // Tens make equal carries and gaps right on a limit common.
    return d.chance(0.7) ? 10 * d.whole(shortestDy / 10, longestDy / 10) : d.whole(shortestDy, longestDy);
  };
  const items = Array.from({ length: count }, (_, i): Item => {
    const isOwned = i < owned;
    const kind = d.pick(KINDS);
    return {
      // Ids in an order of their own, so that neither origin nor carry follows from them.
      id: `${d.pick(['a', 'B', 'z', '_', 'ä'])}${String((i * 7 + seed) % 31)}${isOwned ? '' : 'c'}`,
      origin: isOwned ? 'owned' : 'candidate',
      kind,
      carryDy: carryOf(i),
      tier: d.chance(0.25) ? null : d.whole(1, 4),
      misfit: d.chance(tame ? 0.4 : 0.2) ? (tame ? d.pick([10, 20, 21]) : d.pick([40, 60, 120])) : 0,
      locked: false,
      lot: null,
      // An owned club's price and a candidate's resale mean nothing, and must not count.
      price: isOwned ? (d.chance(0.1) ? money(9) : 0) : d.chance(0.1) ? 0 : money(40),
      resale: isOwned ? (d.chance(0.6) ? money(25) : 0) : d.chance(0.1) ? money(9) : 0,
    };
  });
  items.forEach((item, i) => {
    item.id += String(i);
  });
  twinSome(d, items.slice(0, owned), 0.15);
  twinSome(d, items.slice(owned), 0.35);
  putPutters(d, items, owned);
  const lots = [
    ...putLots(d, items.slice(0, owned), 'owned', money),
    ...putLots(d, items.slice(owned), 'candidate', money),
  ];
  const limit = limitOf(d, owned);
  lockSome(d, items.slice(0, owned), limit);

  const ladder = items.filter((item) => item.kind !== 'putter').sort(ladderOrder);
  const [first, last] = [ladder[0]?.carryDy ?? 0, ladder.at(-1)?.carryDy ?? 0];
  const instance: Instance = {
    limit,
    items: shuffled(d, items),
    lots: shuffled(d, lots),
    bands: bandsOf(d),
    firstPair: d.chance(0.6)
      ? { wideDy: d.whole(200, 560), secondAtLeastDy: d.pick([0, d.whole(900, 2200)]) }
      : null,
    top: { atLeastDy: Math.max(0, first - d.whole(0, 300)), weight: d.pick([0, 2, 2, 3]) },
    bottom: { atMostDy: last + d.whole(0, 300), weight: d.pick([0, 2, 2, 3]) },
    excused: excusedOf(d, ladder),
    leastTier: Object.fromEntries(
      KINDS.filter(() => d.chance(0.6)).map((kind) => [kind, d.whole(1, 4)] as const),
    ),
    tierWeight: tame ? 0 : d.pick([0, 40, 40, 25]),
    budget: null,
    basis: d.chance(0.65) ? 'net' : 'cash',
  };
  instance.budget = budgetOf(d, instance, money);
  return instance;
}

/** Some are nearly another one at another price, so that what is bought has a rival. */
function twinSome({ chance, pick }: Dice, items: readonly Item[], share: number): void {
  items.forEach((item, i) => {
    const other = items[i - 1];
    if (!other || !chance(share)) return;
    const { kind, tier, misfit, carryDy } = other;
    Object.assign(item, { kind, tier, misfit, carryDy: carryDy + pick([0, 0, 5, 10]) });
  });
}

function putPutters({ pick, whole, chance }: Dice, items: Item[], owned: number): void {
  const [ownedPutters, otherPutters] = pick([
    [1, 0],
    [1, 0],
    [1, 1],
    [0, 0],
    [0, 1],
    [0, 2],
    [2, 1],
    [3, 0],
  ] as const);
  const turn = (item: Item | undefined): void => {
    if (!item) return;
    item.kind = 'putter';
    item.carryDy = chance(0.7) ? 0 : whole(0, 2500);
  };
  for (let i = 0; i < Math.min(ownedPutters, owned); i += 1) turn(items[i]);
  for (let i = 0; i < otherPutters; i += 1) turn(items[Math.max(owned, items.length - 1 - i)]);
}

/** Up to two lots of neighbouring items; a putter may be a member, and members may have resale of their own. */
function putLots(
  { whole, chance, pick }: Dice,
  items: Item[],
  origin: Lot['origin'],
  money: (most: number) => number,
): Lot[] {
  const lots: Lot[] = [];
  const most = pick([0, 1, 1, 2, 3]);
  let from = whole(0, 2);
  for (let i = 0; i < most; i += 1) {
    const members = items.slice(from, from + whole(1, 5));
    from += members.length + whole(0, 1);
    if (members.length === 0) break;
    const id = `${origin === 'owned' ? 'm' : 'K'}-lot${String(i)}`;
    for (const item of members) {
      item.lot = id;
      if (origin === 'candidate') item.price = 0;
      else if (chance(0.5)) item.resale = 0;
    }
    const isOwned = origin === 'owned';
    lots.push({
      id,
      origin,
      price: isOwned ? (chance(0.2) ? money(9) : 0) : money(80),
      resale: isOwned ? money(60) : chance(0.2) ? money(9) : 0,
    });
  }
  return lots;
}

/** The usual one, one that fits the bag owned, one it is over, or hardly any. */
function limitOf({ whole }: Dice, owned: number): number {
  const way = whole(0, 19);
  if (way < 6) return 14;
  if (way < 13) return owned + whole(0, 2);
  return way < 18 ? whole(3, Math.max(4, owned)) : whole(0, 3);
}

/** Locks that leave a legal bag possible as far as the limit and the putter go. */
function lockSome({ chance, whole }: Dice, owned: Item[], limit: number): void {
  if (!chance(0.5)) return;
  let left = Math.min(limit, whole(1, 4));
  let putterLocked = false;
  for (const item of owned) {
    if (left === 0 || !chance(0.4)) continue;
    if (item.kind === 'putter' && putterLocked) continue;
    if (item.kind === 'putter') putterLocked = true;
    item.locked = true;
    left -= 1;
  }
}

function bandsOf({ chance, whole, pick }: Dice): Band[] {
  const count = pick([1, 2, 2, 2, 3]);
  if (chance(0.03)) return [];
  let fromDy = 0;
  return Array.from({ length: count }, (): Band => {
    const band = {
      fromDy,
      wideDy: 10 * whole(10, 24),
      crowdedDy: chance(0.05) ? whole(150, 300) : 10 * whole(0, 9),
      wideWeight: pick([2, 2, 2, 1, 3, 0]),
      crowdWeight: pick([1, 1, 1, 2, 0]),
    };
    fromDy += whole(300, 1300);
    return band;
  });
}

function excusedOf({ chance, whole }: Dice, ladder: readonly Item[]): [string, string][] {
  if (!chance(0.5)) return [];
  const pairs: [string, string][] = [];
  for (let i = 0; i < 4; i += 1) {
    const at = whole(0, Math.max(0, ladder.length - 2));
    const [longer, shorter] = [ladder[at], ladder[at + whole(1, 3)]];
    if (longer && shorter && !pairs.some(([a, b]) => a === longer.id && b === shorter.id))
      pairs.push([longer.id, shorter.id]);
  }
  return pairs;
}

/** None, nothing, a sum met exactly by some bag or short of it by one, or any. */
function budgetOf(d: Dice, instance: Instance, money: (most: number) => number): number | null {
  if (instance.items.every((item) => item.origin === 'candidate') && d.chance(0.4)) return d.whole(0, 1);
  const way = d.whole(0, 11);
  if (way < 2) return null;
  if (way < 5) return 0;
  if (way < 10) {
    // The bag as owned with a club or two taken out and put in, or any bag.
    const swap = d.chance(0.7) ? 1 / instance.items.length : 0.5;
    const some = instance.items.filter((item) => item.locked || (item.origin === 'owned') !== d.chance(swap));
    const { cost } = judge(
      instance,
      some.map((item) => item.id),
    );
    return Math.max(0, cost - d.whole(0, 1));
  }
  return money(120);
}

function shuffled<T>({ whole }: Dice, list: readonly T[]): T[] {
  const copy = [...list];
  for (let i = copy.length - 1; i > 0; i -= 1) {
    const j = whole(0, i);
    [copy[i], copy[j]] = [copy[j] as T, copy[i] as T];
  }
  return copy;
}
