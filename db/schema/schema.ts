import type { Migration } from '../migration-files.ts';
import { connect, quoteName, type Db } from '../sqlite.ts';

/** Every table that holds what the user entered, parents before children. */
export const USER_TABLES = [
  'setting',
  'player',
  'diary_entry',
  'course',
  'course_hole',
  'bag',
  'archetype',
  'price_note',
  'cost_line',
  'lot',
  'club',
  'shot_import',
  'shot',
  'club_carry',
  'plan',
  'path_stage',
  'handover',
] as const;

export type UserTable = (typeof USER_TABLES)[number];

/** One column. pk is its place in the primary key from 1, or 0; hidden is not 0 for a computed one. */
export type Column = { name: string; type: string; pk: number; hidden: number };

/** The columns of a table in their order; empty when there is no such table. */
export function columnsOf(db: Db, table: string, schema = 'main'): Column[] {
  const rows = db.pragma(`${quoteName(schema)}.table_xinfo(${quoteName(table)})`) as Column[];
  return rows.map(({ name, type, pk, hidden }) => ({ name, type, pk, hidden }));
}

/** The names of a table's key columns, in the order of the key. */
export function keyOf(columns: readonly Column[]): string[] {
  return columns
    .filter((column) => column.pk > 0)
    .sort((a, b) => a.pk - b.pk)
    .map((column) => column.name);
}

type SchemaObject = { type: string; name: string; sql: string | null };

function objectsOf(db: Db): SchemaObject[] {
  return db
    .prepare<[], SchemaObject>(
      `SELECT type, name, sql FROM sqlite_schema WHERE name NOT LIKE 'sqlite\\_%' ESCAPE '\\' ORDER BY type, name`,
    )
    .all();
}

/** `texts` holds the SQL of all that acts: views, triggers, virtual tables. Of a table only its columns matter. */
type Reference = {
  objects: ReadonlySet<string>;
  tables: ReadonlyMap<string, string>;
  texts: ReadonlyMap<string, string>;
};

// One for each list of migrations (the tests have several) and version.
const references = new WeakMap<readonly Migration[], Map<number, Reference>>();

function describe(columns: readonly Column[]): string {
  return columns
    .map(
      ({ name, type, pk, hidden }) =>
        `${name} ${type}${pk > 0 ? ` key ${pk}` : ''}${hidden > 0 ? ' computed' : ''}`,
    )
    .join(', ');
}

const keyOfObject = ({ type, name }: SchemaObject): string => `${type} ${name}`;

const isVirtual = ({ sql }: SchemaObject): boolean => /^\s*create\s+virtual/i.test(sql ?? '');

const acts = (object: SchemaObject): boolean =>
  object.type === 'view' || object.type === 'trigger' || isVirtual(object);

function referenceAt(migrations: readonly Migration[], version: number): Reference {
  const known = references.get(migrations) ?? new Map<number, Reference>();
  references.set(migrations, known);
  const cached = known.get(version);
  if (cached !== undefined) return cached;
  const db = connect(':memory:');
  try {
    for (const migration of migrations.slice(0, version)) db.exec(migration.sql);
    const objects = objectsOf(db);
    const tables = objects.filter((object) => object.type === 'table' && !isVirtual(object));
    const reference = {
      objects: new Set(objects.map(keyOfObject)),
      tables: new Map(tables.map(({ name }) => [name, describe(columnsOf(db, name))])),
      texts: new Map(objects.filter(acts).map((object) => [keyOfObject(object), object.sql ?? ''])),
    };
    known.set(version, reference);
    return reference;
  } finally {
    db.close();
  }
}

/**
 * What is missing or different in a database that says it has a version of our schema: one line each,
 * empty when all is well. `strange` also lists what is not ours: tables, triggers, views.
 */
export function schemaProblems(
  db: Db,
  migrations: readonly Migration[],
  version: number,
  options: { strange?: boolean } = {},
): string[] {
  const reference = referenceAt(migrations, version);
  const found = objectsOf(db);
  const byKey = new Map(found.map((object) => [keyOfObject(object), object]));
  const problems: string[] = [];
  for (const wanted of reference.objects) if (!byKey.has(wanted)) problems.push(`${wanted} is missing`);
  for (const [table, wanted] of reference.tables) {
    const object = byKey.get(`table ${table}`);
    if (object === undefined) continue;
    if (isVirtual(object)) {
      problems.push(`table ${table} is virtual`);
      continue;
    }
    const actual = describe(columnsOf(db, table));
    if (actual !== wanted) problems.push(`table ${table} has the columns (${actual}), not (${wanted})`);
  }
  for (const [key, wanted] of reference.texts) {
    const object = byKey.get(key);
    if (object !== undefined && object.sql !== wanted) problems.push(`${key} does not do what ours does`);
  }
  if (options.strange === true) {
    for (const name of byKey.keys()) if (!reference.objects.has(name)) problems.push(`${name} is not ours`);
  }
  return problems;
}
