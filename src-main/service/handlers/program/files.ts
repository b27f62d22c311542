import path from 'node:path';
import type { FileSource } from '../../../contract/calls/program/incoming.ts';
import type { Units } from '../../../contract/primitives.ts';
import { readBagFile } from '../../../contract/formats/read-bag.ts';
import { RefusedInput } from '../../../contract/refusal.ts';
import { exportDatabase, exportFolderOf, removeBackup } from '../../../../db/files/backup.ts';
import { makePrivateFolder, stampOf } from '../../../../db/files/files.ts';
import { checkImport, countRows, importDatabase } from '../../../../db/files/import.ts';
import { loadMigrations } from '../../../../db/migration-files.ts';
import { listPlayers } from '../../../../db/repositories/bags/players.ts';
import { refuseUnknownArchetypes } from '../../../worker/answer.ts';
import { addPlayer } from '../../bags/add-player.ts';
import { backupLine, backupOf, backupsOf, backUp, restore } from '../../records/backups.ts';
import type { BadRow } from '../../files/csv.ts';
import {
  exportPriceList,
  importPriceList,
  newNotes,
  priceDecimal,
  readPriceList,
} from '../../files/prices-csv.ts';
import {
  exportRoster,
  importRoster,
  knownPlayers,
  readRoster,
  rosterDecimal,
} from '../../files/roster-csv.ts';
import { bytesOf, tableTextOf } from '../../files/source.ts';
import type { Context, Handlers, Subject } from '../../handler.ts';
import { fileOf } from '../../records/records.ts';
import type { StepParts } from '../../records/steps.ts';

const SAMPLE = 8;
const SHOWN_BAD = 200;

export const fileHandlers: Handlers<Subject<'files'> | Subject<'backups'>> = {
  'files.previewBag': (context, { source }) => {
    const file = bagOf(context, source);
    const { name, handicap } = file.player;
    const known = listPlayers(context.db).filter(
      (player) => player.name.toLowerCase() === name.toLowerCase(),
    );
    const { clubs, prices } = file;
    return { name, handicap, clubs: clubs.length, prices: prices.length, known: known.map(({ id }) => id) };
  },
  'files.importBag': {
    step: ({ source }, context) => ({ player: bagOf(context, source).player.name }),
    run: (context, { source }) => addPlayer(context.db, bagOf(context, source), context.now()),
  },
  'files.importBags': {
    step: ({ sources }) => ({ named: String(sources.length) }),
    run: (context, { sources }) => ({
      players: sources.map((source, i) => addPlayer(context.db, oneOf(context, source, i), context.now())),
    }),
  },
  'files.previewPrices': (context, args) => {
    const text = tableTextOf(context.uploads, args.source, 'price list');
    const decimal = args.decimal ?? priceDecimal(text);
    const list = pricesOf(context, { ...args, source: { text }, decimal });
    const fresh = newNotes(context.db, list);
    const notes = list.notes.map(({ note }) => note);
    return {
      ...preview(list.bad, list.unknown),
      decimal,
      ready: fresh.length,
      same: list.notes.length - fresh.length,
      archetypes: new Set(notes.map(({ archetype }) => archetype)).size,
      currencies: [...new Set(notes.map(({ currency }) => currency))].sort(),
      sample: fresh.slice(0, SAMPLE).map(({ note }) => note),
    };
  },
  'files.importPrices': {
    step: ({ source }, context) => fileStep(context, source),
    run: (context, args) =>
      importPriceList(context.db, pricesOf(context, args), { skipBad: args.skipBad, at: context.now() }),
  },
  'files.exportPrices': ({ db, today }) => ({
    name: `loftledger-prices-${today()}.csv`,
    text: exportPriceList(db),
  }),
  'files.previewRoster': (context, args) => {
    const text = tableTextOf(context.uploads, args.source, 'roster');
    const decimal = args.decimal ?? rosterDecimal(text);
    const list = rosterOf(context, { ...args, source: { text }, decimal });
    const known = knownPlayers(context.db, list);
    return {
      ...preview(list.bad, list.unknown),
      decimal,
      ready: list.players.length,
      known: known.size,
      sample: list.players.slice(0, SAMPLE).map(({ rowNumber, file }) => ({
        name: file.player.name,
        handicap: file.player.handicap,
        known: known.has(rowNumber),
      })),
    };
  },
  'files.importRoster': {
    step: ({ source }, context) => fileStep(context, source),
    run: (context, args) => {
      const { skipBad, skipKnown, locale } = args;
      const list = rosterOf(context, args, locale);
      return importRoster(context.db, list, { skipBad, skipKnown, at: context.now() });
    },
  },
  'files.exportRoster': ({ db, today }) => ({
    name: `loftledger-roster-${today()}.csv`,
    text: exportRoster(db),
  }),
  'files.checkDatabase': ({ db, uploads }, { upload }) => {
    const { file } = uploads.find(upload);
    // Looked at beside the upload: in the private folder that a start empties.
    const migrations = loadMigrations();
    const report = checkImport(file, migrations, `${file}-`);
    return { ...report, here: countRows(db), isOlder: report.version < migrations.length };
  },
  'files.importDatabase': ({ records, uploads, now }, { upload }) => {
    const { file: source } = uploads.find(upload);
    const { version, rows } = records.replace((file) => importDatabase({ file, source, now: now() }));
    uploads.drop(upload);
    return { version, rows, restart: true as const };
  },
  'files.exportDatabase': ({ db, records, now }) => {
    const folder = exportFolderOf(fileOf(records));
    makePrivateFolder(folder);
    const file = path.join(folder, `loftledger-${stampOf(now())}.loftledger`);
    return { file, bytes: exportDatabase(db, file) };
  },
  'files.dropUpload': ({ uploads }, { upload }) => {
    uploads.drop(upload);
    return null;
  },
  'files.opened': ({ opened }) => opened.take(),
  'backups.list': ({ records }) => backupsOf(fileOf(records)).map(backupLine),
  'backups.make': ({ db, records, now }) => backupLine(backUp(db, fileOf(records), now())),
  'backups.remove': ({ records }, { sequence }) => {
    removeBackup(backupOf(fileOf(records), sequence));
    return null;
  },
  'backups.restore': ({ records, now }, { sequence }) => {
    const backup = backupOf(fileOf(records), sequence);
    const { backup: kept } = records.replace((file) => restore(file, backup.file, now()));
    return { restart: true as const, kept: kept === null ? null : backupLine(kept) };
  },
};

function fileStep({ uploads }: Context, source: FileSource): StepParts {
  return 'upload' in source ? { named: uploads.find(source.upload).name } : {};
}

function bagOf(context: Context, source: FileSource) {
  const file = readBagFile(bytesOf(context.uploads, source));
  refuseUnknownArchetypes(file, context.catalogue());
  return file;
}

/** One of several: what is wrong with it names which. */
function oneOf(context: Context, source: FileSource, at: number) {
  try {
    return bagOf(context, source);
  } catch (error) {
    if (!(error instanceof RefusedInput)) throw error;
    const name = 'text' in source ? `file ${String(at + 1)}` : context.uploads.find(source.upload).name;
    const refusals = error.refusals.map((one) => ({ ...one, path: `${name}: ${one.path}` }));
    throw new RefusedInput('One of these bag files cannot be used, so none was taken in:', refusals);
  }
}

type PriceArgs = { source: FileSource; decimal?: '.' | ',' | undefined; currency?: string | undefined };

function pricesOf(context: Context, { source, decimal = '.', currency }: PriceArgs) {
  const known = new Set(context.catalogue().map(({ id }) => id));
  const options = { decimal, ...(currency === undefined ? {} : { currency }) };
  return readPriceList(tableTextOf(context.uploads, source, 'price list'), options, known);
}

type RosterArgs = { source: FileSource; decimal?: '.' | ',' | undefined; units: Units };

function rosterOf(context: Context, { source, decimal = '.', units }: RosterArgs, locale?: string) {
  return readRoster(tableTextOf(context.uploads, source, 'roster'), { decimal, units, locale });
}

function preview(bad: readonly BadRow[], unknown: readonly string[]) {
  return { bad: bad.slice(0, SHOWN_BAD), badRows: bad.length, unknownColumns: [...unknown] };
}
