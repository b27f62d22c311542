import type { Instance, Item, Lot, Origin } from '../../../src-main/domain/solve/instance.ts';

/** mulberry32, a public-domain generator by Tommy Ettinger. */
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

export type Dice = {
  whole: (lo: number, hi: number) => number;
  pick: <T>(list: readonly T[]) => T;
  chance: (p: number) => boolean;
  shuffle: <T>(list: readonly T[]) => T[];
};

export const dice = (seed: number): Dice => {
  const random = seeded(seed);
  const whole = (lo: number, hi: number): number => lo + Math.floor(random() * (hi - lo + 1));
  return {
    whole,
    pick: (list) => list[whole(0, list.length - 1)]!,
    chance: (p) => random() < p,
    shuffle: (list) => {
      const out = [...list];
      for (let i = out.length - 1; i > 0; i--) {
        const j = whole(0, i);
        [out[i], out[j]] = [out[j]!, out[i]!];
      }
      return out;
    },
  };
};

// Ids that trip up objects used as maps, and that sort otherwise by code unit than by code point or locale.
const ODD_IDS = [
  '__proto__',
  'constructor',
  'toString',
  'é',
  'Z',
  'a',
  'a0',
  'a:',
  '\u{1F3CC}',
  '\uFFFD',
  'own:a',
  ' ',
];

const KINDS = ['driver', 'driver', 'fairway', 'iron', 'wedge', 'toString'];

const ids = (d: Dice): ((prefix: string) => string) => {
  const odd = d.shuffle(ODD_IDS);
  let next = 0;
  return (prefix) =>
    d.chance(0.25)
      ? (odd.pop() ?? `x${next++}`)
      : `${prefix}${String.fromCharCode(97 + d.whole(0, 20))}${next++}`;
};

/**
 * An instance small enough to try every bag, with few distinct numbers so that ties abound.
 * @param size about how many items
 */
export const smallInstance = (seed: number, size: number): Instance => {
  const d = dice(seed);
  const id = ids(d);
  // Large figures bring the headline's rules for a penalty of 100 and more into play.
  const scale = d.pick([1, 10, 25]);
  const carry = (): number => (d.chance(0.25) ? d.pick([8, 12, 16]) : d.whole(0, 30));
  const items: Item[] = [];
  const lots: Lot[] = [];

  const lot = (origin: Origin): string | null => {
    const mine = lots.filter((l) => l.origin === origin);
    return mine.length > 0 && d.chance(0.55) ? d.pick(mine).id : null;
  };
  const ownedLots = d.pick([0, 0, 1, 1, 2]);
  const boughtLots = d.pick([0, 0, 1, 1, 2, 3]);
  for (let i = 0; i < ownedLots; i++)
    lots.push({ id: id('L'), origin: 'owned', price: d.whole(0, 3), resale: d.whole(0, 9) });
  for (let i = 0; i < boughtLots; i++)
    lots.push({ id: id('L'), origin: 'candidate', price: d.whole(0, 9), resale: d.whole(0, 2) });

  const add = (origin: Origin, kind: string): void => {
    const of = lot(origin);
    const free = origin === 'candidate' && of !== null;
    items.push({
      id: id(origin === 'owned' ? 'o' : 'c'),
      origin,
      kind,
      carryDy: carry(),
      tier: d.pick([null, 1, 1, 2, 3, 4]),
      misfit: d.pick([0, 0, 0, 1, 2, 5]) * scale,
      locked: false,
      lot: of,
      price: free ? 0 : d.pick([0, 1, 2, 2, 3, 5, 8, 11]),
      resale: d.pick([0, 0, 0, 1, 2, 4]),
    });
  };
  const bare = d.chance(0.1);
  const putters: Origin[] = bare
    ? d.pick([[], ['candidate']])
    : d.pick([
        [],
        [],
        ['owned'],
        ['owned'],
        ['owned', 'owned'],
        ['candidate'],
        ['owned', 'candidate'],
        ['candidate', 'candidate'],
        ['owned', 'owned', 'candidate'],
      ]);
  for (const origin of putters) add(origin, 'putter');
  const owned = bare || d.chance(0.03) ? 0 : d.whole(1, Math.max(1, size - 3));
  for (let i = 0; i < owned; i++) add('owned', d.pick(KINDS));
  while (items.length < size) add('candidate', d.pick(KINDS));

  const limit = d.pick([14, d.whole(0, 3), d.whole(3, 8), d.whole(3, 8)]);
  const lockRate = d.pick([0, 0, 0.15, 0.4]);
  let locked = 0;
  let putterLocked = false;
  for (const item of items) {
    if (item.origin !== 'owned' || locked >= limit || !d.chance(lockRate)) continue;
    if (item.kind === 'putter' && putterLocked) continue;
    item.locked = true;
    locked++;
    putterLocked ||= item.kind === 'putter';
  }

  const ladder = items
    .filter((item) => item.kind !== 'putter')
    .sort((a, b) => b.carryDy - a.carryDy || (a.id < b.id ? -1 : 1));
  const excused: [string, string][] = [];
  for (let i = d.pick([0, 0, 1, 3]); i > 0 && ladder.length > 1; i--) {
    const from = d.whole(0, ladder.length - 2);
    excused.push([ladder[from]!.id, ladder[d.whole(from + 1, Math.min(ladder.length - 1, from + 3))]!.id]);
  }

  const band = (fromDy: number): Instance['bands'][number] => ({
    fromDy,
    wideDy: d.whole(3, 9),
    crowdedDy: d.whole(0, 5),
    wideWeight: d.pick([0, 1, 2, 2]) * scale,
    crowdWeight: d.pick([0, 1, 1, 2]) * scale,
  });
  const bands = d.pick([[], [band(0)], [band(0), band(12)], [band(0), band(8), band(16)]]);
  // With nothing owned something must be bought, so that a small budget can be too small for any bag.
  if (bare)
    for (const x of [...lots, ...items])
      if (x.origin === 'candidate' && !('lot' in x && x.lot !== null)) x.price += 2;
  const budget = bare
    ? d.pick([null, 0, 1, 1, 12])
    : d.pick([null, null, 0, d.whole(0, 3), d.whole(0, 12), 40]);
  if (d.chance(0.08)) return dropOrBuy(d, id, size, budget);
  return {
    limit,
    items: d.shuffle(items),
    lots: d.shuffle(lots),
    bands,
    firstPair: d.chance(0.5) ? { wideDy: d.whole(0, 14), secondAtLeastDy: d.whole(0, 20) } : null,
    top: { atLeastDy: d.whole(10, 30), weight: d.pick([0, 1, 2]) * scale },
    bottom: { atMostDy: d.whole(0, 15), weight: d.pick([0, 1, 2]) * scale },
    excused,
    leastTier: d.chance(0.6) ? { iron: d.whole(1, 3), driver: d.whole(1, 3), toString: 2 } : {},
    tierWeight: d.pick([0, 1, 3]) * scale,
    budget,
    basis: d.pick(['net', 'net', 'cash']),
  };
};

/** A hole that is mended as well by dropping a club as by buying one for nothing: purchases decide. */
const dropOrBuy = (
  d: Dice,
  id: (prefix: string) => string,
  size: number,
  budget: number | null,
): Instance => {
  const none = { kind: 'iron', tier: null, misfit: 0, locked: false, lot: null, price: 0, resale: 0 };
  const far = d.whole(12, 30);
  const extra = Array.from({ length: d.whole(0, size - 3) }, () => ({
    ...none,
    id: id('c'),
    origin: 'candidate' as const,
    carryDy: d.whole(0, 30),
    price: d.whole(1, 4),
  }));
  const between = { ...none, id: id('c'), origin: 'candidate' as const, carryDy: far >> 1 };
  return {
    limit: 14,
    items: d.shuffle<Item>([
      { ...none, id: id('o'), origin: 'owned', carryDy: far },
      { ...none, id: id('o'), origin: 'owned', carryDy: 0 },
      between,
      ...extra,
    ]),
    lots: [],
    bands: [{ fromDy: 0, wideDy: (far + 1) >> 1, crowdedDy: 0, wideWeight: d.pick([1, 30]), crowdWeight: 0 }],
    firstPair: null,
    top: { atLeastDy: 0, weight: 0 },
    bottom: { atMostDy: 0, weight: 0 },
    excused: [],
    leastTier: {},
    tierWeight: 0,
    budget,
    basis: d.pick(['net', 'cash']),
  };
};

/** The same question in another order. */
export const shuffled = (instance: Instance, seed: number): Instance => {
  const d = dice(seed);
  return {
    ...instance,
    items: d.shuffle(instance.items),
    lots: d.shuffle(instance.lots),
    excused: d.shuffle(instance.excused),
  };
};
