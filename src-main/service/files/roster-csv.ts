import type { BagFile } from '../../contract/formats/bag-file.ts';
import { distanceUnitSchema, speedUnitSchema, type Units } from '../../contract/primitives.ts';
import { checkBagFile } from '../../contract/formats/read-bag.ts';
import { RefusedInput } from '../../contract/refusal.ts';
import { toMajor } from '../../contract/money.ts';
import { fromMph } from '../../contract/units.ts';
import { findBag } from '../../../db/repositories/bags/bags.ts';
import { listPlayers, readPlayer, roster } from '../../../db/repositories/bags/players.ts';
import type { Db } from '../../../db/sqlite.ts';
import { addPlayer } from '../bags/add-player.ts';
import { usualBag } from '../bags/usual-bag.ts';
import { badRows, cellHandicap, cellNumber, cellText, writeCsv, type BadRow, type CsvSpec } from './csv.ts';
import { decimalOf, notNumber, readRows, type Bad } from './table-rows.ts';

type Column =
  | 'name'
  | 'handicap'
  | 'target'
  | 'driverSpeed'
  | 'handed'
  | 'ground'
  | 'budget'
  | 'distance'
  | 'speed'
  | 'currency'
  | 'clubs'
  | 'looked';

const FIGURES = ['handicap', 'target', 'driverSpeed', 'budget'] as const;

export const ROSTER_SPEC: CsvSpec<Column> = {
  what: 'roster',
  columns: {
    name: ['name', 'player'],
    handicap: ['handicap', 'hcp'],
    target: ['target handicap', 'target'],
    driverSpeed: ['driver speed'],
    handed: ['handed'],
    ground: ['ground'],
    budget: ['budget'],
    distance: ['distance unit'],
    speed: ['speed unit'],
    currency: ['currency'],
    // Written for people; not read back.
    clubs: ['clubs'],
    looked: ['last looked at'],
  },
  needed: ['name', 'handicap'],
  mostRows: 10_000,
};

/** The decimal mark that the file's figures show. @throws RefusedInput as readCsv */
export function rosterDecimal(text: string): '.' | ',' {
  return decimalOf(text, ROSTER_SPEC, FIGURES);
}

export type RosterOptions = {
  decimal: '.' | ',';
  /** For rows that name none. */
  units: Units;
  /** Of the clubs' names. */
  locale?: string | undefined;
};

export type RosterList = {
  players: { rowNumber: number; file: BagFile }[];
  bad: BadRow[];
  unknown: string[];
};

/** A roster as new players, each with the usual pre-ruled bag. @throws RefusedInput as readCsv */
export function readRoster(text: string, options: RosterOptions): RosterList {
  const { good, ...rest } = readRows(text, ROSTER_SPEC, (cells) => playerOfRow(cells, options));
  return { players: good.map(({ rowNumber, row }) => ({ rowNumber, file: row })), ...rest };
}

/** Where a refusal of the bag file points to, by the column that it came from. */
const COLUMN_AT: Readonly<Record<string, Column>> = {
  '$.player.name': 'name',
  '$.player.handicap': 'handicap',
  '$.player.targetHandicap': 'target',
  '$.player.driverSpeed': 'driverSpeed',
  '$.player.handed': 'handed',
  '$.player.ground': 'ground',
  '$.budget.amount': 'budget',
  '$.units.currency': 'currency',
};

function playerOfRow(
  cells: Partial<Record<Column, string>>,
  { decimal, units, locale }: RosterOptions,
): { row: BagFile } | Bad {
  const bad = (column: Column, message: string): Bad => ({
    column: ROSTER_SPEC.columns[column][0] ?? column,
    value: cells[column] ?? '',
    message,
  });
  const name = cellText(cells.name ?? '');
  if ('message' in name) return bad('name', name.message);
  const numbers: Partial<Record<Column, number>> = {};
  for (const column of FIGURES) {
    const cell = cells[column];
    if (cell === undefined) continue;
    const isHandicap = column === 'handicap' || column === 'target';
    const value = isHandicap ? cellHandicap(cell, decimal) : cellNumber(cell, decimal);
    if (value === null) return bad(column, notNumber(decimal));
    numbers[column] = value;
  }
  if (numbers.handicap === undefined) return bad('handicap', 'it is needed and is missing');
  const distance = distanceUnitSchema.safeParse(cells.distance ?? units.distance);
  if (!distance.success) return bad('distance', 'it must be yd or m');
  const speed = speedUnitSchema.safeParse(cells.speed ?? units.speed);
  if (!speed.success) return bad('speed', 'it must be mph, km/h or m/s');
  const own = { distance: distance.data, speed: speed.data, currency: cells.currency ?? units.currency };
  const usual = usualBag(name.text, numbers.handicap, own, locale);
  const { target, driverSpeed, budget } = numbers;
  const file = {
    ...usual,
    player: {
      ...usual.player,
      ...(cells.handed === undefined ? {} : { handed: cells.handed.toLowerCase() }),
      ...(cells.ground === undefined ? {} : { ground: cells.ground.toLowerCase() }),
      ...(target === undefined ? {} : { targetHandicap: target }),
      ...(driverSpeed === undefined ? {} : { driverSpeed }),
    },
    ...(budget === undefined ? {} : { budget: { amount: budget } }),
  };
  return checked(file, (path, message) => {
    const column = COLUMN_AT[path];
    return column === undefined
      ? { column: '', value: '', message: `${path}: ${message}` }
      : bad(column, message);
  });
}

function checked(file: object, refuse: (path: string, message: string) => Bad): { row: BagFile } | Bad {
  try {
    return { row: checkBagFile(file) };
  } catch (error) {
    if (!(error instanceof RefusedInput)) throw error;
    const [first] = error.refusals;
    return refuse(first?.path ?? '$', first?.message ?? error.message);
  }
}

/** The rows whose player's name is on the roster already, the archived too. */
export function knownPlayers(db: Db, list: RosterList): Set<number> {
  const names = new Set(
    [...listPlayers(db), ...listPlayers(db, { archived: true })].map(({ name }) => name.toLowerCase()),
  );
  return new Set(
    list.players
      .filter(({ file }) => names.has(file.player.name.toLowerCase()))
      .map(({ rowNumber }) => rowNumber),
  );
}

/** @throws RefusedInput for bad rows, unless they may be skipped. */
export function importRoster(
  db: Db,
  list: RosterList,
  options: { skipBad: boolean; skipKnown: boolean; at: string },
): { added: number; known: number; skipped: number } {
  if (list.bad.length > 0 && !options.skipBad) throw badRows(list.bad);
  const known = options.skipKnown ? knownPlayers(db, list) : new Set<number>();
  const fresh = list.players.filter(({ rowNumber }) => !known.has(rowNumber));
  for (const { file } of fresh) addPlayer(db, file, options.at);
  return { added: fresh.length, known: known.size, skipped: list.bad.length };
}

/** Everybody who is not archived. Pain and notes are health data and stay here. */
export function exportRoster(db: Db): string {
  const header = Object.values(ROSTER_SPEC.columns).map(([alias]) => alias ?? '');
  const rows = roster(db).map((line): (string | number)[] => {
    const player = readPlayer(db, line.id);
    const bag = line.bagId === undefined ? null : findBag(db, line.bagId);
    const speedUnit = bag?.speedUnit ?? 'mph';
    const { driverSpeedMph, targetHandicap } = player;
    return [
      player.name,
      player.handicap,
      targetHandicap ?? '',
      driverSpeedMph === undefined ? '' : Number(fromMph(driverSpeedMph, speedUnit).toPrecision(12)),
      player.handed,
      player.ground,
      line.budget === undefined ? '' : toMajor(line.budget.minor, line.budget.currency),
      bag?.distanceUnit ?? 'yd',
      speedUnit,
      bag?.currency ?? '',
      line.clubs,
      line.lastLookedAt ?? '',
    ];
  });
  return writeCsv(header, rows);
}
