import { z } from 'zod';
import { CONDITIONS } from '../../../domain/prices/condition.ts';
import { bandFileSchema } from '../../formats/bag-file.ts';
import { currencySchema, idSchema, localeSchema, textSchema } from '../../primitives.ts';
import { rowId } from '../records/players.ts';
import { read, undoable } from '../spec.ts';

/** Money is in major units, of the note's own currency or of the bag's. */
const money = bandFileSchema.shape.low;

export const conditionSchema = z.enum(CONDITIONS);

/** One used price that somebody saw. With a bagId it speaks for that bag alone. */
const noteFields = {
  archetype: idSchema,
  bagId: rowId.exactOptional(),
  low: money,
  likely: money,
  high: money,
  currency: currencySchema,
  seen: z.iso.date().exactOptional(),
  condition: conditionSchema.exactOptional(),
  /** Where, in the user's own words. */
  place: textSchema(1000).exactOptional(),
  remark: textSchema(2000).exactOptional(),
};
export const newNoteSchema = z.strictObject(noteFields);
export type NewNote = z.infer<typeof newNoteSchema>;

export const noteSchema = z.strictObject({
  ...noteFields,
  id: rowId,
  /** The day it was written down; it counts where no day was given. */
  written: z.iso.date(),
  stale: z.boolean(),
});
export type Note = z.infer<typeof noteSchema>;

/**
 * A note that goes into the bag's band: its part of the whole, whether it lies too far from the others to count, and
 * its prices as they go in, for a club in the condition that the band speaks of.
 */
const countedNoteSchema = noteSchema.extend({
  share: z.number(),
  outlier: z.boolean(),
  inBand: z.strictObject({ low: z.number(), likely: z.number(), high: z.number() }),
});
export type CountedNote = z.infer<typeof countedNoteSchema>;

/** Null clears what may be left out. A new currency needs its band with it. */
const notePatchSchema = z
  .strictObject({
    low: money,
    likely: money,
    high: money,
    currency: currencySchema,
    seen: z.iso.date().nullable(),
    condition: conditionSchema.nullable(),
    place: textSchema(1000).nullable(),
    remark: textSchema(2000).nullable(),
  })
  .partial();

export const bandSchema = z.strictObject({
  archetype: z.string(),
  low: z.number(),
  likely: z.number(),
  high: z.number(),
  /** one: the note itself; two: their mean and all that was seen; many: weighted median and tails. */
  method: z.enum(['one', 'two', 'many']),
  /** Notes that count, and notes that were marked as outliers. */
  counted: z.int(),
  outliers: z.int(),
  /** The newest day among those that count. */
  newest: z.iso.date(),
  stale: z.boolean(),
  /** The bag's own notes alone made it. */
  own: z.boolean(),
});
export type BandAnswer = z.infer<typeof bandSchema>;

const share = z.number().min(0.01).max(1);
export const assumptionsSchema = z.strictObject({
  /** Price in each condition as a share of an unmarked club's. */
  factors: z.strictObject({
    unmarked: share,
    'light wear': share,
    played: share,
    worn: share,
    damaged: share,
  }),
  condition: conditionSchema,
  staleDays: z.int().min(1).max(3650),
  halfLifeDays: z.int().min(1).max(3650),
});

export const seenOneSchema = z.strictObject({
  verdict: z.enum(['buy', 'haggle', 'leave']),
  /** Only with haggle: the most to pay for one in the condition seen. */
  haggleTo: z.number().exactOptional(),
  /** For one in the condition seen, the club alone; null: no ceiling, the budget is the limit. */
  walkAway: z.number().nullable(),
  /** Ids of the owned clubs whose job it would take. */
  inPlaceOf: z.array(z.string()),
  why: z.enum([
    'in-plan',
    'no-ceiling',
    'near',
    'too-dear',
    'above-band',
    'not-even-free',
    'less-than-delivery',
    'not-usable',
    'putter-stays',
    'too-little-known',
    'stopped',
    'coach-first',
    'ask-first',
  ]),
  reason: z.string(),
});
export type SeenOne = z.infer<typeof seenOneSchema>;

export const watchItemSchema = z.strictObject({
  archetype: z.string(),
  name: z.string(),
  /** Worth looking up below this, the club alone; null: no ceiling, the budget is the limit. */
  below: z.number().nullable(),
  inPlaceOf: z.array(z.string()),
  /** What is still wrong with the bag when it is bought at that price, and what is wrong today. */
  penalty: z.int(),
  /** Near duplicates, the better first. */
  alike: z.array(z.strictObject({ archetype: z.string(), below: z.number().nullable() })),
});
export type WatchItem = z.infer<typeof watchItemSchema>;

export const priceCalls = {
  /** What is noted on one archetype: what counts for the bag, and apart from it what is in other currencies. */
  'prices.notes': read(
    z.strictObject({ bagId: rowId, archetype: idSchema }),
    z.strictObject({ notes: z.array(countedNoteSchema), otherCurrencies: z.array(noteSchema) }),
  ),
  /** Everybody's notes, the newest first. */
  'prices.list': read(
    z.strictObject({ limit: z.int().min(1).max(500), offset: z.int().min(0).max(10_000_000).optional() }),
    z.array(noteSchema),
  ),
  'prices.add': undoable(z.strictObject({ note: newNoteSchema }), z.strictObject({ noteId: rowId })),
  'prices.update': undoable(z.strictObject({ noteId: rowId, patch: notePatchSchema }), z.null()),
  'prices.remove': undoable(z.strictObject({ noteId: rowId }), z.null()),
  /** The band of each archetype that the bag's currency has notes on. Nothing is converted between currencies. */
  'prices.bands': read(
    z.strictObject({ bagId: rowId }),
    z.strictObject({
      condition: conditionSchema,
      bands: z.array(bandSchema),
      otherCurrencies: z.array(
        z.strictObject({ archetype: z.string(), currency: z.string(), notes: z.int(), newest: z.iso.date() }),
      ),
    }),
  ),
  'prices.assumptions': read(z.strictObject({}), assumptionsSchema),
  'prices.setAssumptions': undoable(assumptionsSchema.partial(), z.null()),
  /** "Seen one at X?": the price in the bag's currency, of one in that condition (left out: as the bands are). */
  'prices.seenOne': read(
    z.strictObject({
      bagId: rowId,
      archetype: idSchema,
      price: money,
      condition: conditionSchema.optional(),
      locale: localeSchema.optional(),
    }),
    seenOneSchema,
  ),
  /** Archetypes without a price that would enter the plan, by the price at which they do. `job` lets it be cancelled. */
  'prices.watchList': read(
    z.strictObject({ bagId: rowId, job: idSchema.optional(), locale: localeSchema.optional() }),
    z.strictObject({ cancelled: z.boolean(), items: z.array(watchItemSchema) }),
  ),
  /** Ends a long read that was started under this name. */
  'jobs.cancel': read(z.strictObject({ job: idSchema }), z.strictObject({ cancelled: z.boolean() })),
};
