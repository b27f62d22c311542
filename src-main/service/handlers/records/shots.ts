import { createHash } from 'node:crypto';
import type { FileSource } from '../../../contract/calls/program/incoming.ts';
import { shotMappingSchema, type ShotMapping } from '../../../contract/calls/records/shots.ts';
import { RefusedInput } from '../../../contract/refusal.ts';
import type { ShotRow } from '../../../domain/player/shots/shot-rows.ts';
import { summariseShots } from '../../../domain/player/shots/shots.ts';
import { getSetting, setSetting } from '../../../../db/repositories/settings.ts';
import { addShotImport, listShotImports, type NewShot } from '../../../../db/repositories/bags/shots.ts';
import type { Db } from '../../../../db/sqlite.ts';
import { checkedEdit, clubOf as rowOf, loadBag } from '../../bags/bag-store.ts';
import { recordDated } from '../../bags/club-carry.ts';
import { badRows } from '../../files/csv.ts';
import { tableTextOf } from '../../files/source.ts';
import type { Context, Handlers, Subject } from '../../handler.ts';
import { proposedMapping } from '../../shots/proposed.ts';
import { clubOf, readShots } from '../../shots/read.ts';
import { grouped, shotClubs, shotWords } from '../../shots/summary.ts';
import { headerSignature, SHOTS, shotTable, type ShotTable } from '../../shots/table.ts';
import { bagStep } from '../../records/steps.ts';

const SAMPLE_ROWS = 8;
const SHOWN_BAD = 200;
/** A cell in the sample is only looked at. */
const SHOWN_CELL = 200;

export const shotHandlers: Handlers<Subject<'shots'>> = {
  'shots.look': (context, { source, headerRow }) => {
    const table = tableOf(context, source, headerRow);
    const sample = table.rows.slice(0, SAMPLE_ROWS);
    const remembered = shotMappingSchema.safeParse(getSetting(context.db, mappingKey(table.header)));
    return {
      headerRow: table.headerRow,
      header: cut(table.header),
      sample: sample.map(cut),
      rows: table.rows.filter((row) => row.some((cell) => cell.trim() !== '')).length,
      proposed: proposedMapping(cut(table.header), sample.map(cut)),
      remembered: remembered.success ? remembered.data : null,
    };
  },
  'shots.preview': (context, { bagId, source, mapping, leaveOut, fileName }) => {
    const { playerId, file } = loadBag(context.db, bagId);
    const table = tableOf(context, source, mapping.headerRow);
    const { shots, bad } = readShots(table, mapping);
    return {
      words: shotWords(shots, mapping, file),
      clubs: shotClubs(shots, mapping, { file, leaveOut: new Set(leaveOut) }),
      bad: bad.slice(0, SHOWN_BAD),
      badRows: bad.length,
      before: before(context.db, playerId, { fileName, rowsRead: shots.length + bad.length, table }),
    };
  },
  'shots.import': {
    step: ({ bagId, fileName }, { db }) => ({
      ...bagStep(db, bagId),
      ...(fileName === undefined ? {} : { named: fileName }),
    }),
    run: (context, { bagId, source, mapping, leaveOut, skipBad, sessionOn, fileName }) => {
      const { db } = context;
      const { playerId } = loadBag(db, bagId);
      const table = tableOf(context, source, mapping.headerRow);
      const { shots, bad } = readShots(table, mapping);
      if (bad.length > 0 && !skipBad) throw badRows(bad);
      const at = context.now();
      const rowIds = clubRows(db, bagId, mapping);
      const out = new Set(leaveOut);
      const importId = addShotImport(
        db,
        {
          playerId,
          ...(fileName === undefined ? {} : { fileName }),
          headerSignature: headerSignature(table.header),
          distanceUnit: mapping.distance,
          speedUnit: mapping.speed,
          sessionOn,
          rowsRead: shots.length + bad.length,
          rowsSkipped: bad.length,
        },
        shots.map((shot): NewShot => {
          const clubId = rowIds.get(clubOf(shot, mapping) ?? '');
          const leftOut = out.has(shot.rowNumber);
          return { ...shot, leftOut, ...(clubId === undefined ? {} : { clubId }) };
        }),
        at,
      );
      const counted = grouped(shots, (shot) => (out.has(shot.rowNumber) ? null : clubOf(shot, mapping)));
      for (const [clubId, group] of counted) {
        const rowId = rowIds.get(clubId);
        if (rowId !== undefined) recordMean(db, rowId, { group, importId, sessionOn, at });
      }
      refuseUnusable(db, bagId);
      setSetting(db, mappingKey(table.header), mapping);
      return { shots: shots.length, skipped: bad.length, clubs: counted.size };
    },
  },
};

function tableOf({ uploads }: Context, source: FileSource, headerRow?: number): ShotTable {
  return shotTable(tableTextOf(uploads, source, SHOTS), headerRow);
}

const cut = (cells: readonly string[]) => cells.map((cell) => cell.slice(0, SHOWN_CELL));

function mappingKey(header: readonly string[]): string {
  return `shots.mapping.${createHash('sha256').update(headerSignature(header)).digest('hex')}`;
}

/** The day of a session that came from a file of this name, header and length. */
function before(
  db: Db,
  playerId: number,
  now: { fileName: string | undefined; rowsRead: number; table: ShotTable },
): string | null {
  if (now.fileName === undefined) return null;
  const same = listShotImports(db, playerId).find(
    ({ fileName, rowsRead, headerSignature: signature }) =>
      fileName === now.fileName &&
      rowsRead === now.rowsRead &&
      signature === headerSignature(now.table.header),
  );
  return same?.sessionOn ?? null;
}

/** @throws RefusedInput for the putter, StorageError 'missing' for a club that is not in the bag. */
function clubRows(db: Db, bagId: number, mapping: ShotMapping): Map<string, number> {
  const clubs = [...new Set(Object.values(mapping.clubs))].map((key) => rowOf(db, bagId, key, ['bag']));
  const putter = clubs.find(({ kind }) => kind === 'putter');
  if (putter !== undefined) {
    throw new RefusedInput('This mapping does not fit the bag:', [
      {
        path: 'mapping.clubs',
        value: putter.key,
        message: 'the putter is on no ladder',
        remedy: 'Leave its shots out.',
      },
    ]);
  }
  return new Map(clubs.map(({ key, id }) => [key, id]));
}

type Session = { group: readonly ShotRow[]; importId: number; sessionOn: string; at: string };

function recordMean(db: Db, rowId: number, { group, importId, sessionOn, at }: Session): void {
  const summary = summariseShots(group.map(({ carryYd }) => carryYd));
  if (summary === null) return;
  const { meanYd: carryYd, sdYd, shots } = summary;
  const spread = shots > 1 ? { carrySdYd: sdYd } : {};
  recordDated(db, rowId, { onDate: sessionOn, source: 'measured', carryYd, ...spread, shots, importId }, at);
}

/** What the means make of the bag passes its rules, or nothing comes in. @throws RefusedInput */
function refuseUnusable(db: Db, bagId: number): void {
  try {
    checkedEdit(db, bagId, (file) => file);
  } catch (error) {
    if (!(error instanceof RefusedInput)) throw error;
    const remedy = 'Check the columns and units, or leave out the shots that do not belong.';
    const refusals = error.refusals.map((refusal) => ({ ...refusal, remedy }));
    throw new RefusedInput('These shots make a bag that cannot be used:', refusals);
  }
}
