import { z } from 'zod';
import { distanceUnitSchema, idSchema, speedUnitSchema } from '../primitives.ts';
import { rowId } from './players.ts';
import { read, undoable } from './spec.ts';

const column = z.int().min(0).max(999);

/** Which column holds what, as the user says; remembered for files with the same header. */
export const shotMappingSchema = z.strictObject({
  columns: z.strictObject({
    club: column,
    carry: column,
    total: column.exactOptional(),
    ballSpeed: column.exactOptional(),
    launch: column.exactOptional(),
    spin: column.exactOptional(),
  }),
  decimal: z.enum(['.', ',']),
  distance: distanceUnitSchema,
  speed: speedUnitSchema,
  /** The file's word for a club → the club of the bag; a word that is not listed is left out. */
  clubs: z.record(z.string().max(200), idSchema),
});
export type ShotMapping = z.infer<typeof shotMappingSchema>;

const text = z.string();

const badRowSchema = z.strictObject({
  rowNumber: z.int(),
  column: z.string(),
  value: z.string(),
  message: z.string(),
});

export const shotClubSchema = z.strictObject({
  label: z.string(),
  clubId: z.string().nullable(),
  shots: z.int(),
  /** Mean carry, sample SD and 90 % t-interval in the bag's unit; null below two shots. */
  mean: z.number(),
  sd: z.number(),
  low: z.number().nullable(),
  high: z.number().nullable(),
  /** Row numbers marked as outliers; they count unless the user leaves them out. */
  outliers: z.array(z.int()),
});

export const shotCalls = {
  /** The header, the first rows, and the mapping that was used for this header before. */
  'shots.look': read(
    z.strictObject({ text }),
    z.strictObject({
      header: z.array(z.string()),
      sample: z.array(z.array(z.string())),
      rows: z.int(),
      remembered: shotMappingSchema.nullable(),
    }),
  ),
  /** What an import would bring; nothing is stored. */
  'shots.preview': read(
    z.strictObject({
      bagId: rowId,
      text,
      mapping: shotMappingSchema,
      leaveOut: z.array(z.int()).max(10_000),
    }),
    z.strictObject({ clubs: z.array(shotClubSchema), bad: z.array(badRowSchema), badRows: z.int() }),
  ),
  /** Stores the shots and gives each mapped club its mean. Bad rows are skipped only when `skipBad` says so. */
  'shots.import': undoable(
    z.strictObject({
      bagId: rowId,
      text,
      mapping: shotMappingSchema,
      leaveOut: z.array(z.int()).max(10_000),
      skipBad: z.boolean(),
      sessionOn: z.iso.date(),
      fileName: z.string().max(300).exactOptional(),
    }),
    z.strictObject({ shots: z.int(), skipped: z.int(), clubs: z.int() }),
  ),
};
