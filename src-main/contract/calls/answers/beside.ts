import { z } from 'zod';
import { clubFileSchema } from '../../formats/bag-file.ts';
import { findingSchema, ladderRowSchema } from '../../formats/plan-file.ts';
import { distanceUnitSchema, localeSchema, speedUnitSchema } from '../../primitives.ts';
import { markSchema } from './answers.ts';
import { rowId } from '../records/players.ts';
import { read } from '../spec.ts';

const bagStateSchema = z.enum(['now', 'planned', 'archived']);

/** A bag that can be set beside the open one. */
export const besideChoiceSchema = z.strictObject({
  bagId: rowId,
  playerId: rowId,
  player: z.string(),
  archived: z.boolean(),
  /** The bag's own name, where it has one, and whether it is the one of now. */
  bag: z.string().nullable(),
  state: bagStateSchema,
  clubs: z.int(),
});
export type BesideChoice = z.infer<typeof besideChoiceSchema>;

export const besideClubSchema = z.strictObject({
  id: z.string(),
  name: z.string(),
  kind: clubFileSchema.shape.kind,
  /** The trade's short name ("7i"), where its label or id tells. */
  short: z.string().nullable(),
  /** Its own, or the one that is typical of its name; null where nothing tells. */
  loftDeg: z.number().nullable(),
  loftAssumed: z.boolean(),
});
export type BesideClub = z.infer<typeof besideClubSchema>;

export const besideBagSchema = z.strictObject({
  ...besideChoiceSchema.omit({ clubs: true }).shape,
  /** In the order of the bag. */
  clubs: z.array(besideClubSchema),
  ladder: z.array(ladderRowSchema),
  /** Neighbour pairs of that ladder beyond a limit. */
  marks: z.array(markSchema),
  findings: z.array(findingSchema),
  /** Driver speed that was reckoned with, and where it comes from. */
  speed: z.strictObject({ value: z.number().nullable(), from: z.string() }),
  /** That its player's carries are spoken of in. */
  air: z.strictObject({ temperatureC: z.number(), altitudeM: z.number() }),
});
export type BesideBag = z.infer<typeof besideBagSchema>;

export const besideCalls = {
  /**
   * Two bags beside each other, of two players or of one. Distances and speeds are in the units of the first; money,
   * where a finding names any, stays in its own bag's currency.
   */
  'beside.bags': read(
    z.strictObject({ bagId: rowId, otherId: rowId, locale: localeSchema.optional() }),
    z.strictObject({
      units: z.strictObject({ distance: distanceUnitSchema, speed: speedUnitSchema }),
      bags: z.tuple([besideBagSchema, besideBagSchema]),
    }),
  ),
  /**
   * Bags that can be set beside this one. With nothing typed the player's own others, then those of players looked at
   * last; else the bags of the players whose names are found. `limit` is of all.
   */
  'beside.choices': read(
    z.strictObject({ bagId: rowId, text: z.string().max(200), limit: z.int().min(1).max(50) }),
    z.array(besideChoiceSchema),
  ),
};
