import type { Instance, Item, Lot } from '../instance.ts';
import { PUTTER } from '../instance.ts';
import { compareLadder } from './order.ts';
import { at, InstanceError, type Refusal } from './refusal.ts';

/**
 * The most that all money of an instance, or the penalty of any bag, may add up to: 2^50.
 * Sums and differences of two such totals are whole numbers that a double holds exactly (below 2^53).
 */
export const LARGEST_TOTAL = 2 ** 50;

const ORIGINS: readonly string[] = ['owned', 'candidate'];
const BASES: readonly string[] = ['net', 'cash'];

type Refuse = (path: string, value: unknown, message: string, remedy: string) => void;

const isWhole = (value: unknown): boolean => Number.isSafeInteger(value) && (value as number) >= 0;

const checkWhole = (refuse: Refuse, path: string, value: unknown): void => {
  if (isWhole(value)) return;
  const large = typeof value === 'number' && value > Number.MAX_SAFE_INTEGER;
  refuse(
    path,
    value,
    large ? 'is too large to be counted exactly' : 'is not a whole number of at least 0',
    `Give a whole number from 0 to ${Number.MAX_SAFE_INTEGER}.`,
  );
};

/** Places are written only where something is wrong: most of a check's time would go into them. */
const checkAll = <T extends object>(refuse: Refuse, path: string, of: T, keys: (keyof T & string)[]): void =>
  keys.forEach((key) => {
    if (!isWhole(of[key])) checkWhole(refuse, at(path, key), of[key]);
  });

const checkIds = (refuse: Refuse, instance: Instance): void => {
  const seen = new Map<string, string>();
  const check = (id: string, path: string): void => {
    const before = seen.get(id);
    if (typeof id !== 'string' || id === '') refuse(path, id, 'is no id', 'Give a text that is not empty.');
    else if (before !== undefined) {
      refuse(
        path,
        id,
        `is the id of ${before} too`,
        'Give every item and lot its own id; they share one namespace.',
      );
    } else seen.set(id, path);
  };
  instance.items.forEach((item, i) => check(item.id, `$.items[${i}].id`));
  instance.lots.forEach((lot, i) => check(lot.id, `$.lots[${i}].id`));
};

const checkOrigin = (refuse: Refuse, path: string, origin: unknown): void => {
  if (!ORIGINS.includes(origin as string)) {
    refuse(at(path, 'origin'), origin, 'is no known origin', 'Give "owned" or "candidate".');
  }
};

const checkItem = (refuse: Refuse, item: Item, path: string, lots: Map<string, Lot>): void => {
  checkOrigin(refuse, path, item.origin);
  checkAll(refuse, path, item, ['carryDy', 'misfit', 'price', 'resale']);
  if (item.tier !== null) checkAll(refuse, path, item, ['tier']);
  if (item.locked && item.origin === 'candidate') {
    refuse(at(path, 'locked'), true, 'locks a candidate', 'Lock only clubs that are owned.');
  }
  if (item.lot === null) return;
  const lot = lots.get(item.lot);
  if (lot === undefined) {
    refuse(at(path, 'lot'), item.lot, 'is not the id of a lot', 'List the lot in lots, or give null.');
  } else if (lot.origin !== item.origin) {
    refuse(
      at(path, 'lot'),
      item.lot,
      `is a lot of origin ${lot.origin}`,
      `Give a lot of origin ${item.origin}.`,
    );
  }
  if (item.origin === 'candidate' && item.price !== 0) {
    refuse(
      at(path, 'price'),
      item.price,
      'prices a candidate of a lot',
      'Give 0: the lot carries the price.',
    );
  }
};

const checkBands = (refuse: Refuse, instance: Instance): void => {
  instance.bands.forEach((band, i) => {
    const path = `$.bands[${i}]`;
    checkAll(refuse, path, band, ['fromDy', 'wideDy', 'crowdedDy', 'wideWeight', 'crowdWeight']);
    const before = instance.bands[i - 1];
    if (before === undefined ? band.fromDy !== 0 : !(band.fromDy > before.fromDy)) {
      const least = before === undefined ? 'exactly 0' : `more than ${before.fromDy}`;
      refuse(`${path}.fromDy`, band.fromDy, 'is out of order', `Give ${least}: bands ascend from 0.`);
    }
  });
};

const checkExcused = (refuse: Refuse, instance: Instance): void => {
  const items = new Map(instance.items.map((item) => [item.id, item]));
  instance.excused.forEach((pair, i) => {
    const path = `$.excused[${i}]`;
    const [longer, shorter] = pair.map((id, side) => {
      const item = items.get(id);
      if (item === undefined) refuse(at(path, side), id, 'is not the id of an item', 'Name two items.');
      else if (item.kind === PUTTER) refuse(at(path, side), id, 'is a putter', 'Name ladder clubs.');
      return item;
    });
    if (longer === undefined || shorter === undefined) return;
    if (longer.kind === PUTTER || shorter.kind === PUTTER) return;
    if (longer === shorter) refuse(path, pair, 'names one item twice', 'Name two items.');
    else if (compareLadder(longer, shorter) > 0) {
      refuse(path, pair, 'is not in ladder order', 'Give the longer first; of equal carries the lesser id.');
    }
  });
};

const checkLocks = (refuse: Refuse, instance: Instance): void => {
  const locked = instance.items.filter((item) => item.locked);
  if (instance.limit >= 0 && locked.length > instance.limit) {
    refuse(
      '$.limit',
      instance.limit,
      `is less than the ${locked.length} locked items`,
      'Unlock some or raise it.',
    );
  }
  const putters = locked.filter((item) => item.kind === PUTTER).map((item) => item.id);
  if (putters.length > 1) refuse('$.items', putters, 'locks more than one putter', 'Lock one putter.');
};

/** The most that the money, and the penalty of any one bag, can add up to. */
export const largestTotals = (instance: Instance): { money: number; penalty: number } => {
  const { items, lots, bands, top, bottom } = instance;
  const most = (values: number[]): number => values.reduce((a, b) => Math.max(a, b), 0);
  const sum = (values: number[]): number => values.reduce((a, b) => a + b, 0);
  const carry = most(items.map((item) => item.carryDy));
  const pair = most(bands.map((b) => b.wideWeight * carry + b.crowdWeight * b.crowdedDy));
  const tier = instance.tierWeight * most(Object.values(instance.leastTier));
  return {
    money: sum([...items, ...lots].map((x) => x.price + x.resale)),
    penalty:
      items.length * (pair + tier) +
      sum(items.map((item) => item.misfit)) +
      top.weight * top.atLeastDy +
      bottom.weight * carry,
  };
};

const checkTotals = (refuse: Refuse, instance: Instance): void => {
  const { money, penalty } = largestTotals(instance);
  if (money > LARGEST_TOTAL) {
    refuse('$', money, 'has prices too large to add exactly', `Keep their sum to ${LARGEST_TOTAL}.`);
  }
  if (penalty > LARGEST_TOTAL) {
    refuse(
      '$',
      penalty,
      'has weights and carries too large to add exactly',
      `Keep them to ${LARGEST_TOTAL}.`,
    );
  }
};

/** Every reason to refuse an instance (DESIGN §8), by place; empty when it can be solved. */
export const checkInstance = (instance: Instance): Refusal[] => {
  const refusals: Refusal[] = [];
  const refuse: Refuse = (path, value, message, remedy) => refusals.push({ path, value, message, remedy });
  const lots = new Map(instance.lots.map((lot) => [lot.id, lot]));

  checkWhole(refuse, '$.limit', instance.limit);
  checkIds(refuse, instance);
  instance.items.forEach((item, i) => checkItem(refuse, item, `$.items[${i}]`, lots));
  instance.lots.forEach((lot, i) => {
    checkOrigin(refuse, `$.lots[${i}]`, lot.origin);
    checkAll(refuse, `$.lots[${i}]`, lot, ['price', 'resale']);
  });
  checkBands(refuse, instance);
  if (instance.firstPair !== null) {
    checkAll(refuse, '$.firstPair', instance.firstPair, ['wideDy', 'secondAtLeastDy']);
  }
  checkAll(refuse, '$.top', instance.top, ['atLeastDy', 'weight']);
  checkAll(refuse, '$.bottom', instance.bottom, ['atMostDy', 'weight']);
  checkExcused(refuse, instance);
  for (const [kind, tier] of Object.entries(instance.leastTier)) {
    checkWhole(refuse, at('$.leastTier', kind), tier);
  }
  checkWhole(refuse, '$.tierWeight', instance.tierWeight);
  if (instance.budget !== null) checkWhole(refuse, '$.budget', instance.budget);
  if (!BASES.includes(instance.basis)) {
    refuse('$.basis', instance.basis, 'is no known basis', 'Give "net" or "cash".');
  }
  checkLocks(refuse, instance);
  if (refusals.length === 0) checkTotals(refuse, instance);
  return refusals;
};

/** @throws InstanceError with every refusal of `checkInstance`. */
export const requireInstance = (instance: Instance): void => {
  const refusals = checkInstance(instance);
  if (refusals.length > 0) throw new InstanceError(refusals);
};
