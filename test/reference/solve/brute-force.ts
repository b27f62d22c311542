import type { Instance, Item } from '../../../src-main/domain/solve/instance.ts';

/**
 * Every bag of an instance, by the words of DESIGN §8, written apart from the product's own evaluation:
 * bags are bit masks over the items in ladder order, putters last.
 */
export type Bag = { mask: number; cost: number; penalty: number; changes: number; purchases: number };

export type Answers = {
  legal: Bag[];
  frontier: Bag[];
  idsOf: (bag: Bag) => string[];
  compare: (a: Bag, b: Bag) => number;
};

const order = (instance: Instance): Item[] => [
  ...instance.items
    .filter((x) => x.kind !== 'putter')
    .sort((a, b) => (a.carryDy === b.carryDy ? (a.id < b.id ? -1 : 1) : b.carryDy - a.carryDy)),
  ...instance.items.filter((x) => x.kind === 'putter'),
];

export const every = (instance: Instance): Answers => {
  const all = order(instance);
  const n = all.length;
  if (n > 24) throw new Error(`${n} items are too many to try every bag`);
  const bits = (test: (x: Item) => boolean): number =>
    all.reduce((m, x, i) => (test(x) ? m | (1 << i) : m), 0);
  const putter = bits((x) => x.kind === 'putter');
  const owned = bits((x) => x.origin === 'owned');
  const locked = bits((x) => x.locked);
  const lots = instance.lots
    .map((l) => ({ l, members: bits((x) => x.lot === l.id) }))
    .filter(({ members }) => members !== 0);
  const ownedPutters = (putter & owned) !== 0;

  // Pair penalties [longer][shorter], as the two longest and otherwise.
  const gapCost = (a: Item, b: Item, first: boolean): number => {
    if (instance.excused.some(([x, y]) => x === a.id && y === b.id)) return 0;
    let band = null;
    for (const candidate of instance.bands) if (candidate.fromDy <= a.carryDy) band = candidate;
    if (band === null) return 0;
    let wide = band.wideDy;
    const fp = instance.firstPair;
    if (first && fp && a.kind === 'driver' && b.carryDy >= fp.secondAtLeastDy) wide = fp.wideDy;
    const gap = a.carryDy - b.carryDy;
    let cost = 0;
    if (gap > wide) cost += (gap - wide) * band.wideWeight;
    if (gap < band.crowdedDy) cost += (band.crowdedDy - gap) * band.crowdWeight;
    return cost;
  };
  const pair = all.map((a) => all.map((b) => gapCost(a, b, false)));
  const lead = all.map((a) => all.map((b) => gapCost(a, b, true)));
  const alone = all.map((x) => {
    if (x.kind === 'putter' || x.locked) return 0;
    const least = Object.entries(instance.leastTier).find(([kind]) => kind === x.kind)?.[1];
    const below = least === undefined || x.tier === null ? 0 : Math.max(0, least - x.tier);
    return below * instance.tierWeight + x.misfit;
  });

  const worth = (mask: number): Bag | null => {
    if ((mask & locked) !== locked) return null;
    let count = 0;
    let putters = 0;
    let previous = -1;
    let ladder = 0;
    let penalty = 0;
    let spent = 0;
    let sold = 0;
    let changes = 0;
    let purchases = 0;
    for (let i = 0; i < n; i++) {
      const x = all[i]!;
      const inBag = (mask >> i) & 1;
      if (inBag === 0) {
        if (x.origin === 'owned') {
          changes++;
          sold += x.resale;
        }
        continue;
      }
      count++;
      if (x.origin === 'candidate' && x.lot === null) {
        spent += x.price;
        purchases++;
      }
      if (x.kind === 'putter') {
        putters++;
        continue;
      }
      if (ladder === 0) penalty += instance.top.weight * Math.max(0, instance.top.atLeastDy - x.carryDy);
      else penalty += (ladder === 1 ? lead : pair)[previous]![i]!;
      penalty += alone[i]!;
      previous = i;
      ladder++;
    }
    if (ladder === 0 || count > instance.limit) return null;
    if (ownedPutters ? putters !== 1 : putters > 1) return null;
    penalty += instance.bottom.weight * Math.max(0, all[previous]!.carryDy - instance.bottom.atMostDy);
    for (const { l, members } of lots) {
      const kept = mask & members;
      if (l.origin === 'candidate' && kept !== 0) {
        spent += l.price;
        purchases++;
      }
      if (l.origin === 'owned' && kept === 0) {
        for (let i = 0; i < n; i++) if ((members >> i) & 1) sold -= all[i]!.resale;
        sold += l.resale;
      }
    }
    changes += purchases;
    const cost = instance.basis === 'net' ? spent - sold : spent;
    return { mask, cost, penalty, changes, purchases };
  };

  const idsOf = (bag: Bag): string[] =>
    all
      .filter((_, i) => (bag.mask >> i) & 1)
      .map((x) => x.id)
      .sort();
  const compareIds = (a: Bag, b: Bag): number => {
    const x = idsOf(a);
    const y = idsOf(b);
    for (let i = 0; i < x.length && i < y.length; i++) if (x[i] !== y[i]) return x[i]! < y[i]! ? -1 : 1;
    return x.length - y.length;
  };
  const compare = (a: Bag, b: Bag): number =>
    a.cost - b.cost ||
    a.penalty - b.penalty ||
    a.changes - b.changes ||
    a.purchases - b.purchases ||
    compareIds(a, b);

  const legal: Bag[] = [];
  for (let mask = 0; mask < 2 ** n; mask++) {
    const bag = worth(mask);
    if (bag !== null) legal.push(bag);
  }
  // The least penalty at each cost decides which costs are on the curve, before ids are looked at.
  const byCost = new Map<number, Bag[]>();
  for (const bag of legal) {
    const best = byCost.get(bag.cost);
    if (best === undefined || bag.penalty < best[0]!.penalty) byCost.set(bag.cost, [bag]);
    else if (bag.penalty === best[0]!.penalty) best.push(bag);
  }
  const frontier: Bag[] = [];
  for (const cost of [...byCost.keys()].sort((a, b) => a - b)) {
    const bags = byCost.get(cost)!;
    if (frontier.length > 0 && bags[0]!.penalty >= frontier.at(-1)!.penalty) continue;
    frontier.push(bags.reduce((a, b) => (compare(b, a) < 0 ? b : a)));
  }
  return { legal, frontier, idsOf, compare };
};

export type Expected = {
  today: unknown;
  cheapestClean: unknown;
  bestWithinBudget: unknown;
  headline: unknown;
  frontier: unknown[];
  walkAway: [string, number | null][];
};

/** All answers of DESIGN §8 by trying every bag, and scoring with fractions of whole numbers. */
export const expected = (instance: Instance, answers = every(instance)): Expected => {
  const { legal, frontier, idsOf, compare } = answers;
  const point = (bag: Bag | undefined): unknown =>
    bag === undefined
      ? null
      : { cost: bag.cost, penalty: bag.penalty, changes: bag.changes, items: idsOf(bag) };
  const first = (bags: Bag[], by: (a: Bag, b: Bag) => number): Bag | undefined =>
    bags.length === 0 ? undefined : bags.reduce((a, b) => (by(b, a) < 0 ? b : a));
  const mine = instance.items
    .filter((x) => x.origin === 'owned')
    .map((x) => x.id)
    .sort();
  const today = legal.find((bag) => bag.changes === 0);
  const budget = instance.budget;
  const within = (bags: Bag[]): Bag[] => bags.filter((bag) => budget === null || bag.cost <= budget);
  const plan = headline(frontier, today?.penalty ?? frontier[0]?.penalty ?? 0, budget);
  return {
    today: today === undefined ? null : { ...(point(today) as object), items: mine },
    cheapestClean: point(
      first(
        legal.filter((bag) => bag.penalty === 0),
        compare,
      ),
    ),
    bestWithinBudget: point(first(within(legal), (a, b) => a.penalty - b.penalty || compare(a, b))),
    headline: point(plan),
    frontier: frontier.map((bag) => point(bag)),
    walkAway: plan === undefined ? [] : walkAway(instance, answers, plan),
  };
};

const headline = (frontier: Bag[], before: number, budget: number | null): Bag | undefined => {
  const within = frontier.filter((bag) => budget === null || bag.cost <= budget);
  const mended = within.filter((bag) => bag.penalty <= 20);
  if (before >= 100 && mended.length > 0) return mended[0];
  if (budget === null) return before >= 100 ? within.at(-1) : within.find((bag) => bag.penalty <= before);
  const scale = Math.max(before, 100);
  // (before - P) / scale - max(0, cost) / (2 budget), as numerator over one denominator.
  const value = (bag: Bag): number =>
    budget === 0 ? before - bag.penalty : 2 * budget * (before - bag.penalty) - scale * Math.max(0, bag.cost);
  return within.reduce<Bag | undefined>(
    (a, b) => (a === undefined || value(b) > value(a) ? b : a),
    undefined,
  );
};

/** What the plan buys: ids of items bought singly and of lots, with price and members. */
export const boughtIn = (
  instance: Instance,
  ids: string[],
): { id: string; price: number; members: string[] }[] => [
  ...instance.items
    .filter((x) => x.origin === 'candidate' && x.lot === null && ids.includes(x.id))
    .map((x) => ({ id: x.id, price: x.price, members: [x.id] })),
  ...instance.lots
    .filter((l) => l.origin === 'candidate')
    .map((l) => ({
      id: l.id,
      price: l.price,
      members: instance.items.filter((x) => x.lot === l.id).map((x) => x.id),
    }))
    .filter((l) => l.members.some((id) => ids.includes(id))),
];

export const leastCost = (bags: Bag[], penalty: number): number | null => {
  const costs = bags.filter((bag) => bag.penalty <= penalty).map((bag) => bag.cost);
  return costs.length === 0 ? null : Math.min(...costs);
};

const walkAway = (instance: Instance, { legal, idsOf }: Answers, plan: Bag): [string, number | null][] => {
  const enough = legal.filter((bag) => bag.penalty <= plan.penalty);
  const reached = leastCost(enough, plan.penalty)!;
  return boughtIn(instance, idsOf(plan)).map(({ id, price, members }) => {
    const without = leastCost(
      enough.filter((bag) => !idsOf(bag).some((x) => members.includes(x))),
      plan.penalty,
    );
    return [id, without === null ? null : without - (reached - price)];
  });
};
