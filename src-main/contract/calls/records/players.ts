import { z } from 'zod';
import { bagFileSchema } from '../../formats/bag-file.ts';
import { planStatusSchema } from '../../formats/plan-file.ts';
import { localeSchema, textSchema } from '../../primitives.ts';
import { read, undoable, write } from '../spec.ts';

export const rowId = z.int().positive();

export const moneySchema = z.strictObject({ minor: z.int(), currency: z.string() });

export const rosterLineSchema = z.strictObject({
  id: rowId,
  bagId: rowId,
  name: z.string(),
  handicap: z.number(),
  clubs: z.int(),
  lastLookedAt: z.string().optional(),
  openFindings: z.int().optional(),
  /** Of the newest answer, and when that was made. */
  status: planStatusSchema.optional(),
  plannedAt: z.string().optional(),
  budget: moneySchema.optional(),
  /** Day of the newest diary entry. */
  notedOn: z.iso.date().optional(),
});
export type RosterLine = z.infer<typeof rosterLineSchema>;

const opened = z.strictObject({ playerId: rowId, bagId: rowId });

/** Null clears an optional field. Units are those of the player's bag. */
const playerFields = bagFileSchema.shape.player.shape;
export const playerPatchSchema = z
  .strictObject({
    name: playerFields.name,
    handicap: playerFields.handicap,
    targetHandicap: playerFields.targetHandicap.nullable(),
    driverSpeed: playerFields.driverSpeed.nullable(),
    handed: playerFields.handed,
    ground: playerFields.ground,
    flighted: playerFields.flighted.nullable(),
    miss: playerFields.miss.nullable(),
    missNote: playerFields.missNote.nullable(),
    pain: playerFields.pain.nullable(),
  })
  .partial();
export type PlayerPatch = z.infer<typeof playerPatchSchema>;

export const playerCalls = {
  'players.roster': read(z.strictObject({ archived: z.boolean().optional() }), z.array(rosterLineSchema)),
  /** A new player with a usual bag of pre-ruled rows (typical lofts, no carries). */
  'players.create': undoable(
    z.strictObject({
      name: textSchema(200).min(1),
      handicap: playerFields.handicap,
      units: bagFileSchema.shape.units,
      /** Of the rows' names. */
      locale: localeSchema.optional(),
    }),
    opened,
  ),
  'players.update': undoable(z.strictObject({ playerId: rowId, patch: playerPatchSchema }), z.null()),
  'players.duplicate': undoable(z.strictObject({ playerId: rowId, locale: localeSchema.optional() }), opened),
  'players.archive': undoable(z.strictObject({ playerId: rowId }), z.null()),
  'players.unarchive': undoable(z.strictObject({ playerId: rowId }), z.null()),
  /** Notes that the player was looked at now. */
  'players.look': write(z.strictObject({ playerId: rowId }), z.null()),
  /** Takes a bag file's text in as a new player with this bag. */
  'players.importBag': undoable(z.strictObject({ text: z.string() }), opened),
  /** One of the demos that ship with the program; opens the one that is there already. */
  'players.openDemo': undoable(z.strictObject({ demo: z.enum(['invented-bag', 'range-bag']) }), opened),
  /**
   * Erases a player for good, with every byte and the undo history of all; cannot be undone. Backups and exports are
   * other files: `backups` says how many are kept here.
   */
  'players.erase': write(
    z.strictObject({ playerId: rowId }),
    z.strictObject({
      /**
       * Every byte is gone. False while another program reads the records, or while the disk is too full to rebuild
       * them: the rows are erased, and what is left of their bytes goes at the next start.
       */
      logEmptied: z.boolean(),
      backups: z.int(),
    }),
  ),
};
