import { StorageError } from './errors.ts';
import type { Row, SqlValue } from './statement.ts';

/** An amount in minor units (pence, cents) of an ISO 4217 currency. */
export type Money = { minor: number; currency: string };

/** A used price as a range, low ≤ likely ≤ high, in minor units. */
export type Band = { lowMinor: number; likelyMinor: number; highMinor: number; currency: string };

/** Changes to some properties; null clears an optional one. */
export type Patch<T> = { [K in keyof T]?: T[K] | null };

type KindOf<V> = [V] extends [boolean]
  ? 'flag'
  : [V] extends [number]
    ? 'int' | 'real'
    : [V] extends [string]
      ? 'text'
      : [V] extends [Band]
        ? 'band'
        : [V] extends [Money]
          ? 'money'
          : 'json';

/** How each property of T is stored: its column (of money and bands: the prefix) and its kind. */
export type Columns<T> = {
  readonly [K in keyof T]-?: readonly [column: string, kind: KindOf<NonNullable<T[K]>>];
};

type Kind = 'flag' | 'int' | 'real' | 'text' | 'band' | 'money' | 'json';

/** The whole of a record as columns; what it leaves out becomes NULL. */
export function toRow<T extends object>(columns: Columns<T>, record: T): Row {
  return encode(columns, record, true);
}

/** Only what a patch names, as columns. */
export function toPatchRow<T extends object>(columns: Columns<T>, patch: Patch<T>): Row {
  return encode(columns, patch, false);
}

function encode(columns: object, record: object, whole: boolean): Row {
  const row: Row = {};
  const values = record as Record<string, unknown>;
  for (const [property, [column, kind]] of Object.entries(columns) as [string, [string, Kind]][]) {
    const value = values[property];
    if (value === undefined && !whole) continue;
    Object.assign(row, encodeOne(property, column, kind, value ?? null));
  }
  return row;
}

function encodeOne(property: string, column: string, kind: Kind, value: unknown): Row {
  switch (kind) {
    case 'band': {
      const band = value as Band | null;
      return {
        [joined(column, 'low_minor')]: integer(`${property}.lowMinor`, band?.lowMinor ?? null),
        [joined(column, 'likely_minor')]: integer(`${property}.likelyMinor`, band?.likelyMinor ?? null),
        [joined(column, 'high_minor')]: integer(`${property}.highMinor`, band?.highMinor ?? null),
        [joined(column, 'currency')]: band?.currency ?? null,
      };
    }
    case 'money': {
      const money = value as Money | null;
      return {
        [joined(column, 'minor')]: integer(`${property}.minor`, money?.minor ?? null),
        [joined(column, 'currency')]: money?.currency ?? null,
      };
    }
    case 'flag':
      return { [column]: value === null ? null : Number(value) };
    case 'json':
      return { [column]: value === null ? null : JSON.stringify(value) };
    case 'int':
      return { [column]: integer(property, value as number | null) };
    case 'real':
      return { [column]: finite(property, value as number | null) };
    case 'text':
      return { [column]: value as string | null };
  }
}

/** A row as a record; NULL columns are left out. */
export function fromRow<T extends object>(columns: Columns<T>, row: Row): T {
  const record: Record<string, unknown> = {};
  for (const [property, [column, kind]] of Object.entries(columns) as [string, [string, Kind]][]) {
    const value = decodeOne(column, kind, row);
    if (value !== null) record[property] = value;
  }
  return record as T;
}

function decodeOne(column: string, kind: Kind, row: Row): unknown {
  const value = row[kind === 'band' || kind === 'money' ? joined(column, 'currency') : column] ?? null;
  if (value === null) return null;
  switch (kind) {
    case 'band':
      return {
        lowMinor: row[joined(column, 'low_minor')],
        likelyMinor: row[joined(column, 'likely_minor')],
        highMinor: row[joined(column, 'high_minor')],
        currency: value,
      };
    case 'money':
      return { minor: row[joined(column, 'minor')], currency: value };
    case 'flag':
      return value === 1;
    case 'json':
      return JSON.parse(String(value)) as unknown;
    default:
      return value;
  }
}

function joined(prefix: string, name: string): string {
  return prefix === '' ? name : `${prefix}_${name}`;
}

// NaN would be stored as NULL, and so read as "not given".
function finite(property: string, value: number | null): SqlValue {
  if (value !== null && !Number.isFinite(value)) throw badValue(property, value, 'a finite number');
  return value;
}

function integer(property: string, value: number | null): SqlValue {
  if (value !== null && !Number.isSafeInteger(value)) throw badValue(property, value, 'a whole number');
  return value;
}

function badValue(property: string, value: unknown, wanted: string): StorageError {
  const message = `${property} is ${String(value)}, where ${wanted} is wanted`;
  return new StorageError('bad-value', message, 'Correct the value; nothing was changed.', '');
}
