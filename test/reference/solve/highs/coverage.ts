import type { Instance, Item, Lot, Solution } from '../../../../src-main/domain/solve/instance.ts';
import { isPutter, ladderOrder, ownPenaltyOf, pairPenaltyOf } from './judge.ts';

type Neighbours = { longer: Item; shorter: Item; twoLongest: boolean };

/** An instance, its answers, and what the bags on its curve are made of. */
type Seen = {
  instance: Instance;
  solution: Solution;
  owned: Item[];
  ownedPutters: Item[];
  bags: ReadonlySet<string>[];
  ladders: Item[][];
  neighbours: Neighbours[];
};

function lookAt(instance: Instance, solution: Solution): Seen {
  const owned = instance.items.filter((item) => item.origin === 'owned');
  const bags = solution.frontier.map((point) => new Set(point.items));
  const ladders = bags.map((bag) =>
    instance.items.filter((item) => bag.has(item.id) && !isPutter(item)).sort(ladderOrder),
  );
  const neighbours = ladders.flatMap((ladder) =>
    ladder.slice(1).map((shorter, i) => ({ longer: ladder[i] ?? shorter, shorter, twoLongest: i === 0 })),
  );
  return { instance, solution, owned, ownedPutters: owned.filter(isPutter), bags, ladders, neighbours };
}

function someLot(
  { instance, bags }: Seen,
  origin: Lot['origin'],
  holds: (inside: number, all: number) => boolean,
): boolean {
  return instance.lots.some((lot) => {
    const members = instance.items.filter((item) => item.lot === lot.id);
    return (
      lot.origin === origin &&
      bags.some((bag) => holds(members.filter((item) => bag.has(item.id)).length, members.length))
    );
  });
}

const isSingle = (item: Item): boolean => item.origin === 'candidate' && item.lot === null;

const FEATURES: Record<string, (seen: Seen) => boolean> = {
  'owned set left out whole': (seen) => someLot(seen, 'owned', (inside) => inside === 0),
  'owned set kept in part': (seen) => someLot(seen, 'owned', (inside, all) => inside > 0 && inside < all),
  'set bought and all of it used': (seen) =>
    someLot(seen, 'candidate', (inside, all) => inside > 1 && inside === all),
  'set bought with spares': (seen) => someLot(seen, 'candidate', (inside, all) => inside > 0 && inside < all),
  'club bought singly': ({ instance, bags }) =>
    instance.items.some((item) => isSingle(item) && bags.some((bag) => bag.has(item.id))),
  'locked club': ({ owned }) => owned.some((item) => item.locked && !isPutter(item)),
  'locked putter': ({ ownedPutters }) => ownedPutters.some((item) => item.locked),
  'locked club spared its own penalty': ({ instance, owned }) =>
    owned.some((item) => item.locked && ownPenaltyOf(instance, { ...item, locked: false }) > 0),
  'excused neighbours': ({ instance, neighbours }) =>
    neighbours.some(({ longer, shorter }) =>
      instance.excused.some(([long, short]) => long === longer.id && short === shorter.id),
    ),
  'two longest within their own limit': ({ instance, neighbours }) =>
    neighbours.some(
      ({ longer, shorter, twoLongest }) =>
        pairPenaltyOf(instance, longer, shorter, twoLongest) !==
        pairPenaltyOf(instance, longer, shorter, false),
    ),
  'driver not the longest': ({ neighbours }) => neighbours.some(({ shorter }) => shorter.kind === 'driver'),
  'equal carries side by side': ({ neighbours }) =>
    neighbours.some(({ longer, shorter }) => longer.carryDy === shorter.carryDy),
  'one ladder club': ({ ladders }) => ladders.some((ladder) => ladder.length === 1),
  'misfit kept': ({ ladders }) =>
    ladders.some((ladder) => ladder.some((item) => item.misfit > 0 && !item.locked)),
  'over the limit as owned': ({ instance, owned }) => owned.length > instance.limit,
  'bag full': ({ instance, bags }) => bags.some((bag) => bag.size === instance.limit),
  'no putter at all': ({ instance }) => !instance.items.some(isPutter),
  'putter only to buy': ({ instance, ownedPutters }) =>
    ownedPutters.length === 0 && instance.items.some(isPutter),
  'several putters owned': ({ ownedPutters }) => ownedPutters.length > 1,
  'putter changed': ({ bags, ownedPutters }) =>
    ownedPutters.length > 0 && bags.some((bag) => ownedPutters.every((item) => !bag.has(item.id))),
  'nothing owned': ({ owned }) => owned.length === 0,
  'no band': ({ instance }) => instance.bands.length === 0,
  'no anchor': ({ instance }) => instance.top.weight === 0 || instance.bottom.weight === 0,
  net: ({ instance }) => instance.basis === 'net',
  cash: ({ instance }) => instance.basis === 'cash',
  'no budget': ({ instance }) => instance.budget === null,
  'budget 0': ({ instance }) => instance.budget === 0,
  'budget met exactly': ({ instance, solution }) =>
    solution.frontier.some((point) => point.cost === instance.budget),
  'budget short by one': ({ instance, solution }) =>
    solution.frontier.some((point) => point.cost - 1 === instance.budget),
  'negative cost': ({ solution }) => solution.frontier.some((point) => point.cost < 0),
  'no legal bag': ({ solution }) => solution.frontier.length === 0,
  'no bag within budget': ({ solution }) => solution.frontier.length > 0 && solution.headline === null,
  'no legal bag today': ({ solution }) => solution.frontier.length > 0 && solution.today === null,
  clean: ({ solution }) => solution.cheapestClean !== null,
  'never clean': ({ solution }) => solution.frontier.length > 0 && solution.cheapestClean === null,
  'mended within a yard': ({ solution: { today, headline } }) =>
    today !== null &&
    today.penalty >= 100 &&
    headline !== null &&
    headline.penalty > 0 &&
    headline.penalty <= 20,
  'long curve': ({ solution }) => solution.frontier.length > 8,
};

/** Counts, over the instances given so far, how many have each feature of DESIGN §8 or use it in an answer. */
export class Coverage {
  readonly #counts = new Map(Object.keys(FEATURES).map((name) => [name, 0]));

  add(instance: Instance, solution: Solution): void {
    const seen = lookAt(instance, solution);
    for (const [name, has] of Object.entries(FEATURES))
      if (has(seen)) this.#counts.set(name, (this.#counts.get(name) ?? 0) + 1);
  }

  /** The features seen in fewer than `least` instances, with their counts. */
  rarerThan(least: number): [string, number][] {
    return [...this.#counts].filter(([, count]) => count < least);
  }
}
