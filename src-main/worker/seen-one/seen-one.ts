import type { SeenOne } from '../../contract/calls/money/prices.ts';
import type { Archetype } from '../../contract/formats/catalogue.ts';
import { bagFromFile } from '../../contract/formats/read-bag.ts';
import { readerFor } from '../../contract/reader.ts';
import { changesOf } from '../../domain/advice/plan/changes.ts';
import { prepare, type Prepared } from '../../domain/advice/question/prepare.ts';
import type { Status } from '../../domain/advice/plan/status.ts';
import { adviceWords } from '../../domain/advice/words/index.ts';
import type { Bag } from '../../domain/bag/types.ts';
import { inCondition, type Condition, type PriceAssumptions } from '../../domain/prices/condition.ts';
import { extrasMinor } from '../../domain/prices/cost.ts';
import { buyId } from '../../domain/solve/build/instance.ts';
import { entryPrice, headlineAt, pricedCurve, walkAwayAt, type PricedCurve } from './seen-one-entry.ts';
import { seenOneWords } from '../seen-one-words/index.ts';
import type { BagTask } from '../bag-task.ts';

export type SeenOneTask = BagTask & {
  archetype: string;
  /** The club alone as seen, in minor units of the bag's currency. */
  priceMinor: number;
  condition: Condition;
  assumptions: PriceAssumptions;
  /** What the answer for just this bag said, where it is known. */
  status: Status | null;
};

/** Above the walk-away price by at most this share, haggling may get there. Common practice, no source. */
const HAGGLE_SHARE = 0.25;

/**
 * "Seen one at X?": buy when the plan at that price buys it and the price is at most the printed walk-away price;
 * haggle when it is at most a quarter above; else leave. Money in the answer is in the bag's major units and speaks
 * of one in the condition seen.
 */
export function seenOne(task: SeenOneTask): SeenOne {
  const { condition, assumptions } = task;
  const archetype = task.catalogue.find(({ id }) => id === task.archetype);
  if (!archetype) throw new RangeError(`the catalogue has no "${task.archetype}"`);
  const wanted = assumptions.condition;
  const toBands = (minor: number) => inCondition(minor, condition, wanted, assumptions.factors);
  const priceMinor = toBands(task.priceMinor);
  const known = bagFromFile(task.file);
  // The very question of the plan at that price: what it decides from prices is decided here too.
  const prepared = prepare({
    bag: withSeen(known, archetype.id, priceMinor),
    catalogue: task.catalogue,
    reader: readerFor(task.file.units, task.locale),
    words: adviceWords(task.locale),
    today: task.today,
    reckoning: task.reckoning,
  });
  const { view, built } = prepared;
  const { reader, words } = view;
  const name = words.archetypeName(archetype);
  const tell = (verdict: SeenOne['verdict'], why: SeenOne['why'], found: Found): SeenOne => {
    const walkAway = found.walkAwayMinor === null ? null : asSeen(found.walkAwayMinor, task, toBands);
    return {
      verdict,
      ...(verdict === 'haggle' && walkAway !== null ? { haggleTo: reader.money(walkAway) } : {}),
      walkAway: walkAway === null ? null : reader.money(walkAway),
      inPlaceOf: found.inPlaceOf,
      why,
      reason: seenOneWords(words.language)[why]({
        archetype: name,
        price: reader.moneyText(task.priceMinor),
        walkAway: walkAway === null ? '' : reader.moneyText(walkAway),
        clubs: found.inPlaceOf.map(view.name).join(', '),
      }),
    };
  };
  const nothing: Found = { walkAwayMinor: 0, inPlaceOf: [] };
  const id = buyId(archetype.id);
  if (prepared.found.some((finding) => finding.verdict === 'stop')) return tell('leave', 'stopped', nothing);
  if (!built.candidates.has(id)) return tell('leave', unusable(prepared, archetype), nothing);

  const extras = extrasMinor(archetype, known.costs);
  const highMinor = known.prices.find((price) => price.archetype === archetype.id)?.band.highMinor ?? null;
  const curve = pricedCurve(built.instance, id);
  const found = worth(prepared, curve, priceMinor + extras, extras);
  if (found === null) return tell('leave', 'not-even-free', nothing);
  if (found.walkAwayMinor === 0) return tell('leave', 'less-than-delivery', nothing);
  const capped = highMinor !== null && (found.walkAwayMinor ?? Infinity) > highMinor;
  const printed: Found = capped ? { ...found, walkAwayMinor: highMinor } : found;
  const hold = holdOf(prepared, task.status);
  if (hold !== null) return tell('leave', hold, printed);
  const most = printed.walkAwayMinor;
  if (most === null) return tell('buy', 'no-ceiling', printed);
  if (priceMinor <= most) return tell('buy', 'in-plan', printed);
  if (priceMinor <= most * (1 + HAGGLE_SHARE)) return tell('haggle', capped ? 'above-band' : 'near', printed);
  return tell('leave', capped ? 'above-band' : 'too-dear', printed);
}

type Found = {
  /** The club alone, in the condition of the bands. */
  walkAwayMinor: number | null;
  inPlaceOf: string[];
};

/** The walk-away price at this price, or where the plan does not buy it, the price at which it would; null: none. */
function worth(prepared: Prepared, curve: PricedCurve, price: number, extras: number): Found | null {
  const plan = headlineAt(curve, price);
  if (plan?.buys === true) {
    const most = walkAwayAt(curve, plan.point, price);
    return {
      walkAwayMinor: most === null ? null : Math.max(0, most - extras),
      inPlaceOf: inPlaceOf(prepared, curve.id, plan.point.items),
    };
  }
  const entry = entryPrice(curve);
  if (entry === undefined || entry === null) return null;
  if (entry <= extras) return { walkAwayMinor: 0, inPlaceOf: [] };
  const there = headlineAt(curve, entry);
  return {
    walkAwayMinor: entry - extras,
    inPlaceOf: inPlaceOf(prepared, curve.id, there?.point.items ?? []),
  };
}

/** The owned clubs whose job a purchase takes in a bag, by their ids. */
export function inPlaceOf({ view, built }: Prepared, id: string, items: readonly string[]): string[] {
  return changesOf(view, built, items).purchases.find((purchase) => purchase.id === id)?.inPlaceOf ?? [];
}

/** The bag with the archetype at the price seen, in the place of what was noted. */
function withSeen(bag: Bag, archetype: string, priceMinor: number): Bag {
  const band = { lowMinor: priceMinor, likelyMinor: priceMinor, highMinor: priceMinor };
  const others = bag.prices.filter((price) => price.archetype !== archetype);
  return { ...bag, prices: [...others, { archetype, band }] };
}

function unusable({ view }: Prepared, { kind }: Archetype): SeenOne['why'] {
  if (kind === 'putter') return 'putter-stays';
  return view.model.driverSpeedMph === null ? 'too-little-known' : 'not-usable';
}

function holdOf({ found }: Prepared, status: Status | null): 'coach-first' | 'ask-first' | null {
  if (found.some((finding) => finding.verdict === 'coach-first')) return 'coach-first';
  return status === 'ask-first' ? status : null;
}

/** The highest price in the condition seen that is worth no more than this in the condition of the bands. */
function asSeen(
  minor: number,
  { condition, assumptions }: SeenOneTask,
  toBands: (minor: number) => number,
): number {
  const { factors } = assumptions;
  let most = Math.ceil(((minor + 0.5) * factors[condition]) / factors[assumptions.condition]);
  while (most > 0 && toBands(most) > minor) most--;
  return most;
}
