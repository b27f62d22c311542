import { z } from 'zod';
import { currencySchema, localeSchema, unitsSchema } from '../../primitives.ts';
import { badRowSchema, callErrorSchema, fileSourceSchema, incomingSchema } from './incoming.ts';
import { newNoteSchema } from '../money/prices.ts';
import { rowId } from '../records/players.ts';
import { read, undoable, write } from '../spec.ts';

/** What a table would bring: rows that can be used, the first of those that cannot, headings that mean nothing here. */
const previewFields = {
  ready: z.int(),
  bad: z.array(badRowSchema),
  badRows: z.int(),
  unknownColumns: z.array(z.string()),
  /** As it was read. */
  decimal: z.enum(['.', ',']),
};

/** How the file writes decimals. Left out: a preview goes by what the figures show, an import reads a point. */
const decimal = z.enum(['.', ',']).optional();
const priceOptions = { source: fileSourceSchema, decimal, currency: currencySchema.optional() };
const rosterOptions = { source: fileSourceSchema, decimal, units: unitsSchema };

const savedText = z.strictObject({ name: z.string(), text: z.string() });

/** What stands in a whole database, by table. */
const databaseReport = z.strictObject({ version: z.int(), rows: z.record(z.string(), z.int()) });

export const fileCalls = {
  /** What a bag file would bring; nothing is stored. */
  'files.previewBag': read(
    z.strictObject({ source: fileSourceSchema }),
    z.strictObject({
      name: z.string(),
      handicap: z.number(),
      clubs: z.int(),
      prices: z.int(),
      /** Players of that name on the roster. */
      known: z.array(rowId),
    }),
  ),
  'files.importBag': undoable(
    z.strictObject({ source: fileSourceSchema }),
    z.strictObject({ playerId: rowId, bagId: rowId }),
  ),
  /** Several at once, each a new player: all of them, or none where one cannot be used. */
  'files.importBags': undoable(
    z.strictObject({ sources: z.array(fileSourceSchema).min(1).max(500) }),
    z.strictObject({ players: z.array(z.strictObject({ playerId: rowId, bagId: rowId })) }),
  ),
  /** `same`: notes that are there already, which an import leaves as they are. */
  'files.previewPrices': read(
    z.strictObject(priceOptions),
    z.strictObject({
      ...previewFields,
      same: z.int(),
      archetypes: z.int(),
      currencies: z.array(z.string()),
      sample: z.array(newNoteSchema),
    }),
  ),
  /** Bad rows are skipped only when `skipBad` says so; else nothing is imported. */
  'files.importPrices': undoable(
    z.strictObject({ ...priceOptions, skipBad: z.boolean() }),
    z.strictObject({ added: z.int(), same: z.int(), skipped: z.int() }),
  ),
  'files.exportPrices': read(z.strictObject({}), savedText),
  /** `known`: rows whose name is on the roster already. */
  'files.previewRoster': read(
    z.strictObject(rosterOptions),
    z.strictObject({
      ...previewFields,
      known: z.int(),
      sample: z.array(z.strictObject({ name: z.string(), handicap: z.number(), known: z.boolean() })),
    }),
  ),
  /** `locale`: what the clubs of the new bags are called in. */
  'files.importRoster': undoable(
    z.strictObject({
      ...rosterOptions,
      skipBad: z.boolean(),
      skipKnown: z.boolean(),
      locale: localeSchema.optional(),
    }),
    z.strictObject({ added: z.int(), known: z.int(), skipped: z.int() }),
  ),
  'files.exportRoster': read(z.strictObject({}), savedText),
  /** Whether an uploaded `.loftledger` file can be taken in, what it holds, and what it would take the place of. */
  'files.checkDatabase': read(
    z.strictObject({ upload: z.uuid() }),
    databaseReport.extend({ here: z.record(z.string(), z.int()), isOlder: z.boolean() }),
  ),
  /** Replaces all records by those of the file, after a backup. The window must read everything anew. */
  'files.importDatabase': write(
    z.strictObject({ upload: z.uuid() }),
    databaseReport.extend({ restart: z.literal(true) }),
  ),
  /** Writes a `.loftledger` file into the data folder's `exports`. */
  'files.exportDatabase': write(z.strictObject({}), z.strictObject({ file: z.string(), bytes: z.int() })),
  'files.dropUpload': read(z.strictObject({ upload: z.uuid() }), z.null()),
  /**
   * The files that were opened from outside of the window (a double click, a start with files) since the last time this
   * was asked; whoever asks first has them.
   */
  'files.opened': read(
    z.strictObject({}),
    z.array(z.union([incomingSchema, z.strictObject({ name: z.string(), error: callErrorSchema })])),
  ),
};

export const backupSchema = z.strictObject({
  sequence: z.int().positive(),
  /** As its name has it. */
  takenAt: z.string(),
  reason: z.string(),
  bytes: z.int(),
});
export type BackupLine = z.infer<typeof backupSchema>;

export const backupCalls = {
  /** The newest first. */
  'backups.list': read(z.strictObject({}), z.array(backupSchema)),
  'backups.make': write(z.strictObject({}), backupSchema),
  /** Deletes one for good: an erased player lives on in those made before. */
  'backups.remove': write(z.strictObject({ sequence: z.int().positive() }), z.null()),
  /** Puts a backup in the place of the records, which are backed up before. The window must read everything anew. */
  'backups.restore': write(
    z.strictObject({ sequence: z.int().positive() }),
    z.strictObject({ restart: z.literal(true), kept: backupSchema.nullable() }),
  ),
};
