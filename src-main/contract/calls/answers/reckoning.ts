import { z } from 'zod';
import { rowId } from '../records/players.ts';
import { read, undoable } from '../spec.ts';

/** Carry gaps in yards, whatever unit a bag is read in. */
const gapYd = z.number().min(0).max(150);

/** For drivers from this speed (mph) on. */
const speedRowSchema = z.strictObject({
  fromMph: z.number(),
  crowdedYd: gapYd,
  wideYd: gapYd,
  wideLongYd: gapYd,
  firstPairYd: gapYd,
});

const weight = z.int().min(0);

/** Limits and weights that plans are reckoned with: common practice, no source, until the user sets them. */
export const conventionsSchema = z.strictObject({
  /** One for each of the driver speeds, ascending; the speeds themselves stay. */
  limits: z.array(speedRowSchema).length(4),
  /** A pair is long when its longer club carries this share of the driver's carry. */
  longShare: z.number().min(0.4).max(1),
  /** The highest handicaps for which forgiveness tier 1, 2 and 3 are recommended; above the last it is 4. */
  tierUpTo: z.tuple([z.number(), z.number(), z.number()]),
  /** Penalty per tenth of a yard of a wide gap (average) and a crowded pair, and per step below the least tier. */
  weights: z.strictObject({ wide: weight.max(20), crowd: weight.max(20), tier: weight.max(400) }),
});
export type ConventionsFile = z.infer<typeof conventionsSchema>;

export const airSchema = z.strictObject({
  temperatureC: z.number().min(-30).max(50),
  altitudeM: z.number().min(-430).max(4500),
});

export const reckoningCalls = {
  /** What holds now, and what held if nothing had been set. */
  'limits.read': read(
    z.strictObject({}),
    z.strictObject({ now: conventionsSchema, usual: conventionsSchema }),
  ),
  'limits.set': undoable(conventionsSchema.partial(), z.null()),
  /** Back to common practice. */
  'limits.reset': undoable(z.strictObject({}), z.null()),
  /** The air that a player's carries are spoken of in, or with null that of all players who have none of their own. */
  'air.read': read(
    z.strictObject({ playerId: rowId.nullable() }),
    z.strictObject({ air: airSchema, from: z.enum(['player', 'program', 'usual']) }),
  ),
  /** Null for the air: the program's, or for the program the usual one. Carries that were given stay as they are. */
  'air.set': undoable(z.strictObject({ playerId: rowId.nullable(), air: airSchema.nullable() }), z.null()),
};
