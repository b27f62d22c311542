import { createHash } from 'node:crypto';
import { shotMappingSchema, type ShotMapping } from '../../contract/calls/shots.ts';
import type { BagFile } from '../../contract/bag-file.ts';
import { RefusedInput } from '../../contract/refusal.ts';
import { fromYards, toMph, toYards } from '../../contract/units.ts';
import { readShotRows, type BadRow, type ShotRow } from '../../domain/player/shot-rows.ts';
import { summariseShots } from '../../domain/player/shots.ts';
import { getSetting, setSetting } from '../../../db/repositories/settings.ts';
import { addShotImport, type ShotFields } from '../../../db/repositories/shots.ts';
import { clubRowId, loadBag } from '../bag-store.ts';
import { recordDated } from '../club-carry.ts';
import type { Handlers, Subject } from '../handler.ts';
import { bagStep } from '../steps.ts';
import { headerSignature, shotTable, type ShotTable } from '../shot-table.ts';

const SAMPLE_ROWS = 8;
const SHOWN_BAD = 200;

export const shotHandlers: Handlers<Subject<'shots'>> = {
  'shots.look': ({ db }, { text }) => {
    const { header, rows } = shotTable(text);
    const remembered = shotMappingSchema.safeParse(getSetting(db, mappingKey(header)));
    return {
      header,
      sample: rows.slice(0, SAMPLE_ROWS),
      rows: rows.length,
      remembered: remembered.success ? remembered.data : null,
    };
  },
  'shots.preview': ({ db }, { bagId, text, mapping, leaveOut }) => {
    const { file } = loadBag(db, bagId);
    const { shots, bad } = readTable(shotTable(text), mapping);
    return {
      clubs: clubsOf(shots, mapping, leaveOut, file),
      bad: bad.slice(0, SHOWN_BAD),
      badRows: bad.length,
    };
  },
  'shots.import': {
    step: ({ bagId, fileName }, { db }) => ({
      ...bagStep(db, bagId),
      ...(fileName === undefined ? {} : { named: fileName }),
    }),
    run: ({ db, now }, { bagId, text, mapping, leaveOut, skipBad, sessionOn, fileName }) => {
      const { playerId } = loadBag(db, bagId);
      const table = shotTable(text);
      const { shots, bad } = readTable(table, mapping);
      if (bad.length > 0 && !skipBad) throw badRows(bad);
      const at = now();
      const rowIds = new Map(
        [...new Set(Object.values(mapping.clubs))].map((clubId) => [clubId, clubRowId(db, bagId, clubId)]),
      );
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
        shots.map((shot): ShotFields => {
          const rowId = rowIds.get(clubOf(shot, mapping) ?? '');
          return { ...shot, ...(rowId === undefined ? {} : { clubId: rowId }) };
        }),
        at,
      );
      const byClub = new Map<string, number[]>();
      for (const shot of shots) {
        const clubId = clubOf(shot, mapping);
        if (clubId === null || leaveOut.includes(shot.rowNumber)) continue;
        byClub.set(clubId, [...(byClub.get(clubId) ?? []), shot.carryYd]);
      }
      for (const [clubId, carries] of byClub) {
        const summary = summariseShots(carries);
        const rowId = rowIds.get(clubId);
        if (!summary || rowId === undefined) continue;
        recordDated(
          db,
          rowId,
          {
            onDate: sessionOn,
            source: 'measured',
            carryYd: summary.meanYd,
            ...(summary.shots > 1 ? { carrySdYd: summary.sdYd } : {}),
            shots: summary.shots,
            importId,
          },
          at,
        );
      }
      setSetting(db, mappingKey(table.header), mapping);
      return { shots: shots.length, skipped: bad.length, clubs: byClub.size };
    },
  },
};

function mappingKey(header: readonly string[]): string {
  return `shots.mapping.${createHash('sha256').update(headerSignature(header)).digest('hex')}`;
}

function readTable(table: ShotTable, mapping: ShotMapping): { shots: ShotRow[]; bad: BadRow[] } {
  for (const [name, at] of Object.entries(mapping.columns)) {
    if (at >= table.header.length) {
      throw new RefusedInput('This mapping does not fit the file:', [
        {
          path: `mapping.columns.${name}`,
          value: String(at),
          message: `the file has ${String(table.header.length)} columns`,
          remedy: 'Choose one of its columns.',
        },
      ]);
    }
  }
  return readShotRows(table.rows, {
    columns: mapping.columns,
    decimal: mapping.decimal,
    toYards: (value) => toYards(value, mapping.distance),
    toMph: (value) => toMph(value, mapping.speed),
  });
}

function clubOf(shot: ShotRow, { clubs }: ShotMapping): string | null {
  return Object.hasOwn(clubs, shot.clubLabel) ? (clubs[shot.clubLabel] ?? null) : null;
}

function clubsOf(
  shots: readonly ShotRow[],
  mapping: ShotMapping,
  leaveOut: readonly number[],
  file: BagFile,
) {
  const groups = new Map<string, ShotRow[]>();
  for (const shot of shots) groups.set(shot.clubLabel, [...(groups.get(shot.clubLabel) ?? []), shot]);
  const shown = (yards: number) => Math.round(fromYards(yards, file.units.distance) * 10) / 10;
  return [...groups].flatMap(([label, group]) => {
    const kept = group.filter((shot) => !leaveOut.includes(shot.rowNumber));
    const summary = summariseShots(kept.map((shot) => shot.carryYd));
    const first = group[0];
    if (!summary || !first) return [];
    return [
      {
        label,
        clubId: clubOf(first, mapping),
        shots: summary.shots,
        mean: shown(summary.meanYd),
        sd: shown(summary.sdYd),
        low: summary.shots < 2 ? null : shown(summary.lowYd),
        high: summary.shots < 2 ? null : shown(summary.highYd),
        outliers: summary.outliers.map((i) => kept[i]?.rowNumber ?? 0),
      },
    ];
  });
}

function badRows(bad: readonly BadRow[]): RefusedInput {
  return new RefusedInput(
    `${String(bad.length)} rows cannot be used:`,
    bad.slice(0, 10).map(({ rowNumber, column, value, message }) => ({
      path: `row ${String(rowNumber)}, ${column}`,
      value: JSON.stringify(value),
      message,
      remedy: 'Mend the file or the columns, or skip these rows.',
    })),
  );
}
