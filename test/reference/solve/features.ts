import type { Instance } from '../../../src-main/domain/solve/instance.ts';
import type { Answers, Bag, Expected } from './brute-force.ts';

/** What an instance exercises, by name; the test asks that each be met often enough. */
export const featuresOf = (
  instance: Instance,
  answers: Answers,
  expected: Expected,
): Record<string, boolean> => {
  const { items, lots, limit, budget } = instance;
  const { legal, frontier, idsOf } = answers;
  const owned = items.filter((x) => x.origin === 'owned');
  const putters = items.filter((x) => x.kind === 'putter');
  const ladder = items.filter((x) => x.kind !== 'putter');
  const membersOf = (id: string) => items.filter((x) => x.lot === id);
  const ownedLots = lots.filter((l) => l.origin === 'owned' && membersOf(l.id).length > 1);
  const apart = (id: string): number => membersOf(id).reduce((sum, x) => sum + x.resale, 0);
  const tiesOf = (point: Bag): Bag[] =>
    legal.filter(
      (bag) => bag.cost === point.cost && bag.penalty === point.penalty && bag.mask !== point.mask,
    );
  const ties = frontier.map((point) => ({ point, ties: tiesOf(point) }));
  const withChanges = ties.map(({ point, ties: t }) => ({
    point,
    t: t.filter((b) => b.changes === point.changes),
  }));
  const withPurchases = withChanges.map(({ point, t }) => ({
    point,
    t: t.filter((b) => b.purchases === point.purchases),
  }));
  const count = (mask: number): number => mask.toString(2).replaceAll('0', '').length;
  const today = expected.today as { penalty: number } | null;
  const before = today?.penalty ?? frontier[0]?.penalty ?? 0;

  return {
    'net basis': instance.basis === 'net',
    'cash basis': instance.basis === 'cash',
    'no budget': budget === null,
    'budget 0': budget === 0,
    'a budget that cuts the curve': budget !== null && frontier.some((p) => p.cost > budget),
    'nothing within budget': expected.headline === null && frontier.length > 0,
    'no legal bag': legal.length === 0,
    'nothing owned': owned.length === 0,
    'more owned than the limit': owned.length > limit,
    'today is no legal bag': today === null,
    'no putter': putters.length === 0,
    'a candidate putter alone': putters.length > 0 && putters.every((x) => x.origin === 'candidate'),
    'several owned putters': putters.filter((x) => x.origin === 'owned').length > 1,
    'a putter in an owned lot': putters.some((x) => x.lot !== null && x.origin === 'owned'),
    'a putter in a candidate lot': putters.some((x) => x.lot !== null && x.origin === 'candidate'),
    'an owned set that gains whole': ownedLots.some((l) => l.resale > apart(l.id)),
    'an owned set that loses whole': ownedLots.some((l) => l.resale < apart(l.id)),
    'a candidate set of several': lots.some((l) => l.origin === 'candidate' && membersOf(l.id).length > 1),
    'a set of one': lots.some((l) => membersOf(l.id).length === 1),
    'a set of none': lots.some((l) => membersOf(l.id).length === 0),
    'several candidate sets': lots.filter((l) => l.origin === 'candidate').length > 1,
    spares: frontier.some((p) =>
      lots.some((l) => {
        const kept = membersOf(l.id).filter((x) => idsOf(p).includes(x.id)).length;
        return l.origin === 'candidate' && kept > 0 && kept < membersOf(l.id).length;
      }),
    ),
    locks: items.some((x) => x.locked),
    'a locked club below tier or misfit': items.some(
      (x) => x.locked && x.kind !== 'putter' && (x.misfit > 0 || x.tier === 1),
    ),
    'excused pairs': instance.excused.length > 0,
    'a first pair': instance.firstPair !== null && ladder.some((x) => x.kind === 'driver'),
    misfits: ladder.some((x) => x.misfit > 0),
    tiers: instance.tierWeight > 0 && Object.keys(instance.leastTier).length > 0,
    'no bands': instance.bands.length === 0,
    'several bands': instance.bands.length > 1,
    'equal carries': new Set(ladder.map((x) => x.carryDy)).size < ladder.length,
    'a candidate for nothing': items.some((x) => x.origin === 'candidate' && x.lot === null && x.price === 0),
    'negative cost': frontier.some((p) => p.cost < 0),
    'a curve of four and more': frontier.length >= 4,
    'a full bag on the curve': frontier.some((p) => count(p.mask) === limit),
    'equal cost and penalty': ties.some(({ ties: t }) => t.length > 0),
    'ties decided by changes': ties.some(({ point, ties: t }) => t.some((b) => b.changes > point.changes)),
    'ties decided by purchases': withChanges.some(({ point, t }) =>
      t.some((b) => b.purchases > point.purchases),
    ),
    'ties decided by ids': withPurchases.some(({ t }) => t.length > 0),
    'ties of unequal length': withPurchases.some(({ point, t }) =>
      t.some((b) => count(b.mask) !== count(point.mask)),
    ),
    'a bag in need of mending': before >= 100,
    'mended within budget':
      before >= 100 &&
      frontier.filter((p) => budget === null || p.cost <= budget).some((p) => p.penalty <= 20),
    'a purchase with a walk-away price': expected.walkAway.some(([, price]) => price !== null),
    'a purchase without ceiling': expected.walkAway.some(([, price]) => price === null),
    'a set with a walk-away price': expected.walkAway.some(([id]) => lots.some((l) => l.id === id)),
    'odd ids': items.some((x) => ['__proto__', 'constructor', 'toString'].includes(x.id)),
  };
};
