import type { BagFile } from '../contract/formats/bag-file.ts';
import type { Archetype } from '../contract/formats/catalogue.ts';
import type { PlanFile } from '../contract/formats/plan-file.ts';
import type { Units } from '../contract/primitives.ts';
import { bagFromFile } from '../contract/formats/read-bag.ts';
import { withNames } from '../contract/formats/refused-places.ts';
import { readerFor } from '../contract/reader.ts';
import { jsonPath, RefusedInput, shownValue, type Refusal } from '../contract/refusal.ts';
import { advise, type Advice } from '../domain/advice/advise.ts';
import type { Watcher } from '../domain/advice/effort.ts';
import { adviceWords } from '../domain/advice/words/index.ts';
import { MOST_CLUBS } from '../domain/bag/conventions.ts';
import { planFile } from '../domain/report/plan-file.ts';
import type { BagTask } from './bag-task.ts';
import { nearestIds } from './seen-one/nearest-ids.ts';

export type AnswerOptions = Pick<BagTask, 'today' | 'locale' | 'reckoning'> & {
  withInstance: boolean;
  watcher?: Watcher;
  /** Item ids of a bag that was picked by hand, which is then told of instead of the plan. */
  picked?: readonly string[];
  /** See AdviseInput. */
  isBrief?: boolean;
  /** To print distances and speeds in; the bag's own units when left out. */
  shownIn?: Pick<Units, 'distance' | 'speed'>;
};

/** A checked bag file and the catalogue → the whole answer, and the plan file that says it. */
export function answerBag(
  file: BagFile,
  catalogue: readonly Archetype[],
  options: AnswerOptions,
): { advice: Advice; plan: PlanFile } {
  const refusals = [...unknownArchetypes(file, catalogue), ...tooManyKept(file)];
  if (refusals.length > 0) throw refusedBag('This bag cannot be planned:', refusals, file);
  const units = { ...file.units, ...options.shownIn };
  const advice = advise({
    bag: bagFromFile(file),
    catalogue,
    reader: readerFor(units, options.locale),
    words: adviceWords(options.locale),
    today: options.today,
    reckoning: options.reckoning,
    ...(options.watcher ? { watcher: options.watcher } : {}),
    ...(options.picked ? { picked: options.picked } : {}),
    isBrief: options.isBrief ?? false,
  });
  return { advice, plan: planFile(advice, { units, withInstance: options.withInstance }) };
}

/** @throws RefusedInput naming each price whose archetype the catalogue lacks. */
export function refuseUnknownArchetypes(file: BagFile, catalogue: readonly Archetype[]): void {
  const refusals = unknownArchetypes(file, catalogue);
  if (refusals.length > 0) throw refusedBag('This bag file cannot be used:', refusals, file);
}

function refusedBag(what: string, refusals: readonly Refusal[], file: BagFile): RefusedInput {
  return new RefusedInput(what, withNames(refusals.slice(0, 10), file));
}

function unknownArchetypes(file: BagFile, catalogue: readonly Archetype[]): Refusal[] {
  const ids = new Set(catalogue.map((archetype) => archetype.id));
  return file.prices.flatMap((price, i) => {
    if (ids.has(price.archetype)) return [];
    const near = nearestIds(price.archetype, [...ids]);
    return [
      {
        path: jsonPath(['prices', i, 'archetype']),
        value: shownValue(price.archetype),
        message: 'the catalogue has no such archetype',
        remedy: `Give the id of one that the catalogue lists${near.length > 0 ? `; near it: ${near.join(', ')}` : ''}.`,
      },
    ];
  });
}

/** What is marked to be kept must fit in a bag: at most 14 clubs and one putter. */
function tooManyKept(file: BagFile): Refusal[] {
  const kept = file.clubs.map((club, i) => ({ club, i })).filter(({ club }) => club.goTo === true);
  const putters = kept.filter(({ club }) => club.kind === 'putter');
  const extra = kept[MOST_CLUBS];
  const second = putters[1];
  const refusals: Refusal[] = [];
  if (extra) {
    refusals.push({
      path: jsonPath(['clubs', extra.i, 'goTo']),
      value: 'true',
      message: `${String(kept.length)} clubs are marked go-to and ${String(MOST_CLUBS)} fit in a bag`,
      remedy: 'Unmark those that may go.',
    });
  }
  if (second) {
    refusals.push({
      path: jsonPath(['clubs', second.i, 'goTo']),
      value: 'true',
      message: 'two putters are marked go-to and one fits in a bag',
      remedy: 'Unmark the one that may go.',
    });
  }
  return refusals;
}
