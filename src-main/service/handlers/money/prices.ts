import type { BandAnswer } from '../../../contract/calls/money/prices.ts';
import { minorDigits, toMajor, toMinor } from '../../../contract/money.ts';
import { RefusedInput, shownValue } from '../../../contract/refusal.ts';
import { isStale } from '../../../domain/prices/band.ts';
import { findBag } from '../../../../db/repositories/bags/bags.ts';
import { readLatestPlan } from '../../../../db/repositories/plans.ts';
import {
  addPriceNote,
  countInOthers,
  deletePriceNote,
  newestNotes,
  notesInOthers,
  notesOfBag,
  readPriceNote,
  sharedNotes,
  updatePriceNote,
} from '../../../../db/repositories/prices/price-notes.ts';
import { setSetting } from '../../../../db/repositories/settings.ts';
import type { BagTask } from '../../../worker/bag-task.ts';
import { nearestIds } from '../../../worker/seen-one/nearest-ids.ts';
import { fromBand, toBand } from '../../bags/bag-rows.ts';
import type { Db } from '../../../../db/sqlite.ts';
import type { Context, Handlers, Subject } from '../../handler.ts';
import { noteFields, noteOf, refuseWrongMoney } from '../../prices/note-rows.ts';
import {
  ASSUMPTIONS_KEY,
  dayOfNote,
  noted,
  notedBands,
  NOTES_COUNTED,
  readAssumptions,
  type NotedBand,
} from '../../prices/price-bands.ts';
import { isSameQuestion, questionOf } from '../../answers/question.ts';
import { bagStep, type StepParts } from '../../records/steps.ts';
import { withoutUndefined } from '../../without-undefined.ts';

/** Notes in other currencies that are listed apart on one archetype. */
const MOST_OTHERS = 100;

export const priceHandlers: Handlers<Subject<'prices'> | Subject<'jobs'>> = {
  'prices.notes': ({ db, today }, { bagId, archetype }) => {
    const { currency } = findBag(db, bagId);
    const assumptions = readAssumptions(db);
    const own = notesOfBag(db, bagId).filter((note) => note.archetypeId === archetype);
    const inCurrency = own.filter((note) => note.band.currency === currency);
    const counting =
      inCurrency.length > 0
        ? inCurrency
        : newestNotes(db, currency, { most: NOTES_COUNTED, archetypeId: archetype });
    const shown = (note: (typeof own)[number]) => noteOf(note, today(), assumptions);
    const band = counting.length === 0 ? null : noted(archetype, counting, false, assumptions).derived;
    return {
      notes: counting.map((note, i) => ({
        ...shown(note),
        share: band?.notes[i]?.share ?? 0,
        outlier: band?.notes[i]?.outlier ?? false,
        inBand: fromBand({ ...(band?.notes[i]?.band ?? note.band), currency }),
      })),
      otherCurrencies: [
        ...own.filter((note) => note.band.currency !== currency),
        ...notesInOthers(db, archetype, currency, MOST_OTHERS),
      ].map(shown),
    };
  },
  'prices.list': ({ db, today }, { limit, offset }) => {
    const assumptions = readAssumptions(db);
    return sharedNotes(db, { limit, offset: offset ?? 0 }).map((note) => noteOf(note, today(), assumptions));
  },
  'prices.add': {
    step: ({ note: { archetype, bagId } }, { db }) => noteStep(db, { archetypeId: archetype, bagId }),
    run: ({ db, now, catalogue }, { note }) => {
      refuseUnknown({ catalogue }, note.archetype, '$.note.archetype');
      refuseWrongMoney(note, '$.note');
      if (note.bagId !== undefined) findBag(db, note.bagId);
      return { noteId: addPriceNote(db, noteFields(note), now()) };
    },
  },
  'prices.update': {
    step: ({ noteId }, { db }) => noteStep(db, readPriceNote(db, noteId)),
    run: ({ db }, { noteId, patch }) => {
      const before = readPriceNote(db, noteId);
      const money = { ...fromBand(before.band), currency: before.band.currency };
      const { low, likely, high, currency, seen, ...same } = patch;
      const given = Object.entries({ low, likely, high, currency }).filter(
        ([, value]) => value !== undefined,
      );
      const after = { ...money, ...(Object.fromEntries(given) as Partial<typeof money>) };
      if (currency !== undefined && currency !== money.currency && given.length < 4) {
        throw new RefusedInput('This price cannot be used:', [
          {
            path: '$.patch.currency',
            value: shownValue(currency),
            message: `nothing is converted: the price is in ${money.currency}`,
            remedy: `Give low, likely and high in ${currency} with it.`,
          },
        ]);
      }
      refuseWrongMoney(after, '$.patch');
      updatePriceNote(db, noteId, {
        ...(given.length > 0 ? { band: toBand(after, after.currency) } : {}),
        ...(seen === undefined ? {} : { seenOn: seen }),
        ...withoutUndefined(same),
      });
      return null;
    },
  },
  'prices.remove': {
    step: ({ noteId }, { db }) => noteStep(db, readPriceNote(db, noteId)),
    run: ({ db }, { noteId }) => {
      deletePriceNote(db, noteId);
      return null;
    },
  },
  'prices.bands': ({ db, today }, { bagId }) => {
    const { currency } = findBag(db, bagId);
    const assumptions = readAssumptions(db);
    const own = notesOfBag(db, bagId).filter((note) => note.band.currency !== currency);
    return {
      condition: assumptions.condition,
      bands: notedBands(db, bagId, currency).map((band) => bandAnswer(band, currency, today(), assumptions)),
      otherCurrencies: [
        ...own.map((note) => ({
          archetype: note.archetypeId,
          currency: note.band.currency,
          notes: 1,
          newest: dayOfNote(note),
        })),
        ...countInOthers(db, currency).map((count) => ({
          archetype: count.archetypeId,
          currency: count.currency,
          notes: count.notes,
          newest: count.newestOn,
        })),
      ],
    };
  },
  'prices.assumptions': ({ db }) => readAssumptions(db),
  'prices.setAssumptions': {
    step: () => ({}),
    run: ({ db }, changes) => {
      const before = readAssumptions(db);
      setSetting(db, ASSUMPTIONS_KEY, { ...before, ...withoutUndefined(changes) });
      return null;
    },
  },
  'prices.seenOne': async (context, { bagId, archetype, price, condition, locale }) => {
    const { db, answerer } = context;
    refuseUnknown(context, archetype, '$.archetype');
    const question = questionOf(context, bagId, locale);
    const { currency } = question.file.units;
    const priceMinor = toMinor(price, currency);
    if (priceMinor === null) {
      throw new RefusedInput('This price cannot be used:', [
        {
          path: '$.price',
          value: shownValue(price),
          message: `${currency} has ${String(minorDigits(currency))} digits after the point`,
          remedy: 'Round the amount.',
        },
      ]);
    }
    const assumptions = readAssumptions(db);
    return answerer.seenOne({
      ...question,
      archetype,
      priceMinor,
      condition: condition ?? assumptions.condition,
      assumptions,
      status: knownStatus(context, bagId, question),
    });
  },
  'prices.watchList': async (context, { bagId, job, locale }) => {
    const { answerer, jobs } = context;
    const task = questionOf(context, bagId, locale);
    return job === undefined
      ? answerer.watchList(task)
      : jobs.run(job, ({ cells }) => answerer.watchList({ ...task, cells }));
  },
  'jobs.cancel': ({ jobs }, { job }) => ({ cancelled: jobs.cancel(job) }),
};

/** A note of one bag tells whose; everybody's only of what it is. */
function noteStep(db: Db, note: { archetypeId: string; bagId?: number | undefined }): StepParts {
  const { archetypeId, bagId } = note;
  return { archetype: archetypeId, ...(bagId === undefined ? {} : bagStep(db, bagId)) };
}

function bandAnswer(
  { archetypeId, own, derived }: NotedBand,
  currency: string,
  today: string,
  assumptions: ReturnType<typeof readAssumptions>,
): BandAnswer {
  const { band, method, counted, notes, newestOn } = derived;
  const major = (minor: number) => toMajor(minor, currency);
  return {
    archetype: archetypeId,
    low: major(band.lowMinor),
    likely: major(band.likelyMinor),
    high: major(band.highMinor),
    method,
    counted,
    outliers: notes.filter((note) => note.outlier).length,
    newest: newestOn,
    stale: isStale(newestOn, today, assumptions),
    own,
  };
}

/** @throws RefusedInput for an archetype that is not offered, with what looks like it. */
function refuseUnknown({ catalogue }: Pick<Context, 'catalogue'>, id: string, path: string): void {
  const ids = catalogue().map((archetype) => archetype.id);
  if (ids.includes(id)) return;
  const near = nearestIds(id, ids);
  throw new RefusedInput('This price cannot be used:', [
    {
      path,
      value: shownValue(id),
      message: 'the catalogue has no such archetype',
      remedy: near.length > 0 ? `Near it: ${near.join(', ')}.` : 'Choose one that the catalogue lists.',
    },
  ]);
}

/** What the newest answer said, when it was for the bag, limits and air just as they are. */
function knownStatus({ db }: Context, bagId: number, question: BagTask) {
  const latest = readLatestPlan(db, bagId);
  return latest !== undefined && isSameQuestion(latest.input, question) ? latest.status : null;
}
