import { z } from 'zod';
import { localeSchema } from '../../primitives.ts';
import { noteSchema } from '../money/prices.ts';
import { rowId } from '../records/players.ts';
import { read } from '../spec.ts';

export const searchAnswerSchema = z.strictObject({
  archetypes: z.array(z.strictObject({ id: z.string(), name: z.string() })),
  /** Archived players too, and said to be. */
  players: z.array(
    z.strictObject({ playerId: rowId, bagId: rowId.nullable(), name: z.string(), archived: z.boolean() }),
  ),
  clubs: z.array(
    z.strictObject({
      bagId: rowId,
      playerId: rowId,
      player: z.string(),
      clubId: z.string(),
      name: z.string(),
      place: z.enum(['bag', 'shelf', 'sold']),
    }),
  ),
  /** Entries of players' diaries; `text` is cut to the first place that was found, an ellipsis where it is cut. */
  diary: z.array(
    z.strictObject({
      entryId: rowId,
      playerId: rowId,
      bagId: rowId.nullable(),
      player: z.string(),
      on: z.iso.date(),
      text: z.string(),
    }),
  ),
  /** With the archetype's name. */
  notes: z.array(noteSchema.extend({ name: z.string() })),
});
export type SearchAnswer = z.infer<typeof searchAnswerSchema>;

export const searchCalls = {
  /**
   * Archetypes, players, clubs, price notes and diary entries that have all the words, the best first and always in the same order.
   * The trade's shorthand is understood (7i, 3w, PW, "gap wedge"), slips of the pen are forgiven. `limit` is for each.
   */
  'search.all': read(
    z.strictObject({
      text: z.string().max(200),
      limit: z.int().min(1).max(50),
      locale: localeSchema.optional(),
    }),
    searchAnswerSchema,
  ),
};
