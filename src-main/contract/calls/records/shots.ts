import { z } from 'zod';
import { distanceUnitSchema, idSchema, speedUnitSchema } from '../../primitives.ts';
import { badRowSchema, fileSourceSchema } from '../program/incoming.ts';
import { rowId } from './players.ts';
import { read, undoable } from '../spec.ts';

const column = z.int().min(0).max(999);

export const shotColumnsSchema = z.strictObject({
  club: column,
  carry: column,
  total: column.exactOptional(),
  ballSpeed: column.exactOptional(),
  launch: column.exactOptional(),
  spin: column.exactOptional(),
});

/** Row 1 is the first of the file; what stands above the header is not read. */
const headerRow = z.int().min(1).max(50);

/** Which column holds what, as the user says; remembered for files with the same header. */
export const shotMappingSchema = z.strictObject({
  /** Left out: the first row that names two columns. */
  headerRow: headerRow.exactOptional(),
  columns: shotColumnsSchema,
  decimal: z.enum(['.', ',']),
  distance: distanceUnitSchema,
  speed: speedUnitSchema,
  /** The file's word for a club → the club of the bag; a word that is not listed is left out. */
  clubs: z.record(z.string().max(200), idSchema),
});
export type ShotMapping = z.infer<typeof shotMappingSchema>;

const source = fileSourceSchema;
const leaveOut = z.array(z.int()).max(10_000);
const fileName = z.string().max(300).exactOptional();

/** A word of the club column. `proposed`: the one club of the bag that the trade would call so. */
export const shotWordSchema = z.strictObject({
  label: z.string(),
  shots: z.int(),
  clubId: z.string().nullable(),
  proposed: z.string().nullable(),
});

/** Carries are in the bag's unit. */
export const shotClubSchema = z.strictObject({
  clubId: z.string(),
  labels: z.array(z.string()),
  /** Those that count. */
  shots: z.int(),
  /** Null when every shot is left out; SD and 90 % t-interval are null below two shots. */
  mean: z.number().nullable(),
  sd: z.number().nullable(),
  low: z.number().nullable(),
  high: z.number().nullable(),
  /** The first of the shots far from the club's others, and of those left out. Outliers count unless they are left out. */
  marked: z.array(
    z.strictObject({
      rowNumber: z.int(),
      carry: z.number(),
      isOutlier: z.boolean(),
      isLeftOut: z.boolean(),
    }),
  ),
  /** How many are marked. */
  marks: z.int(),
});
export type ShotClub = z.infer<typeof shotClubSchema>;

export const shotCalls = {
  /** The header, the first rows, what its words propose, and the mapping that was used for this header before. */
  'shots.look': read(
    z.strictObject({ source, headerRow: headerRow.exactOptional() }),
    z.strictObject({
      headerRow,
      header: z.array(z.string()),
      sample: z.array(z.array(z.string())),
      rows: z.int(),
      proposed: z.strictObject({
        columns: shotColumnsSchema.partial(),
        decimal: z.enum(['.', ',']),
        /** Null where the header names none. */
        distance: distanceUnitSchema.nullable(),
        speed: speedUnitSchema.nullable(),
      }),
      remembered: shotMappingSchema.nullable(),
    }),
  ),
  /** What an import would bring; nothing is stored. */
  'shots.preview': read(
    z.strictObject({ bagId: rowId, source, mapping: shotMappingSchema, leaveOut, fileName }),
    z.strictObject({
      words: z.array(shotWordSchema),
      clubs: z.array(shotClubSchema),
      bad: z.array(badRowSchema),
      badRows: z.int(),
      /** The day of a session that was imported from a file of this name with as many rows. */
      before: z.iso.date().nullable(),
    }),
  ),
  /** Stores the shots and gives each mapped club its mean. Bad rows are skipped only when `skipBad` says so. */
  'shots.import': undoable(
    z.strictObject({
      bagId: rowId,
      source,
      mapping: shotMappingSchema,
      leaveOut,
      skipBad: z.boolean(),
      sessionOn: z.iso.date(),
      fileName,
    }),
    z.strictObject({ shots: z.int(), skipped: z.int(), clubs: z.int() }),
  ),
};
