import { StorageError } from '../../errors.ts';
import type { Columns } from '../../row.ts';
import { fromRow, toRow } from '../../row.ts';
import type { Db } from '../../sqlite.ts';
import { all, get, missing, run, type Row } from '../../statement.ts';

export type ArchetypeKind = 'driver' | 'fairway' | 'hybrid' | 'iron' | 'irons' | 'wedge' | 'putter';

/** A club of a set. `number` is as the trade writes it: "5", "PW". */
export type Member = { kind: 'iron' | 'wedge'; number: string; loftDeg: number };

/** A generic club; a set (kind 'irons') has members, and the loft of its 7-iron. */
export type ArchetypeFields = {
  /** Readable: kind, loft, tier, and spin tier when not mid, as hybrid-22-t3. */
  id: string;
  kind: ArchetypeKind;
  loftDeg: number;
  /** 1 players', 2 players' distance, 3 game improvement, 4 super game improvement. */
  forgiveness: 1 | 2 | 3 | 4;
  spinTier: 'low' | 'mid' | 'high';
  lengthIn: number;
  members?: Member[];
  label?: string;
};

/** retiredAt: when it left the catalogue. */
export type Archetype = ArchetypeFields & { source: 'seed' | 'own'; retiredAt?: string };

const FIELDS: Columns<ArchetypeFields> = {
  id: ['id', 'text'],
  kind: ['kind', 'text'],
  loftDeg: ['loft_deg', 'real'],
  forgiveness: ['forgiveness', 'int'],
  spinTier: ['spin_tier', 'text'],
  lengthIn: ['length_in', 'real'],
  members: ['members_json', 'json'],
  label: ['label', 'text'],
};
const ARCHETYPE: Columns<Archetype> = {
  ...FIELDS,
  source: ['source', 'text'],
  retiredAt: ['retired_at', 'text'],
};

/** Ids by what happened to them; `own` are seeds whose id the user's own archetype has taken, left out. */
export type Seeded = { added: string[]; changed: string[]; retired: string[]; own: string[] };

/**
 * Brings the seed rows in line with the catalogue: adds, changes, and marks as retired what it no longer has.
 * Never touches the user's own. Writes nothing where nothing differs. Not undoable: call it outside a step.
 */
export function seedArchetypes(db: Db, list: readonly ArchetypeFields[], at: string): Seeded {
  return db
    .transaction(() => {
      const before = new Map(
        listArchetypes(db, { retired: true }).map((archetype) => [archetype.id, archetype]),
      );
      const seeded: Seeded = { added: [], changed: [], retired: [], own: [] };
      const wanted = new Set<string>();
      for (const fields of list) {
        if (wanted.has(fields.id)) throw twice(db, fields.id);
        wanted.add(fields.id);
        const old = before.get(fields.id);
        if (old?.source === 'own') seeded.own.push(fields.id);
        else if (old === undefined) {
          insert(db, fields, 'seed');
          seeded.added.push(fields.id);
        } else if (old.retiredAt !== undefined || differs(old, fields)) {
          replace(db, fields, 'seed');
          seeded.changed.push(fields.id);
        }
      }
      for (const old of before.values()) {
        if (old.source === 'own' || old.retiredAt !== undefined || wanted.has(old.id)) continue;
        run(db, 'UPDATE archetype SET retired_at = @at WHERE id = @id', { at, id: old.id });
        seeded.retired.push(old.id);
      }
      return seeded;
    })
    .immediate();
}

function differs(old: ArchetypeFields, fields: ArchetypeFields): boolean {
  const [a, b] = [toRow(FIELDS, old), toRow(FIELDS, fields)];
  return Object.keys(b).some((column) => a[column] !== b[column]);
}

function insert(db: Db, fields: ArchetypeFields, source: 'seed' | 'own'): void {
  const values: Row = { ...toRow(FIELDS, fields), source };
  const names = Object.keys(values);
  const marks = names.map((name) => `@${name}`).join(', ');
  run(db, `INSERT INTO archetype (${names.join(', ')}) VALUES (${marks})`, values);
}

function replace(db: Db, fields: ArchetypeFields, source: 'seed' | 'own'): void {
  const values = toRow(FIELDS, fields);
  const sets = Object.keys(values).map((name) => `${name} = @${name}`);
  const sql = `UPDATE archetype SET ${sets.join(', ')}, retired_at = NULL WHERE id = @id AND source = @source`;
  if (run(db, sql, { ...values, source }).changes === 0) throw missing(db, `${source} archetype`, fields.id);
}

function twice(db: Db, id: string): StorageError {
  const message = `The catalogue has the id ${id} twice`;
  return new StorageError('bad-value', message, 'Give every archetype an id of its own.', db.name);
}

/** By kind, loft, id; the retired ones only when asked for. */
export function listArchetypes(db: Db, options: { retired?: boolean } = {}): Archetype[] {
  const where = options.retired === true ? '' : 'WHERE retired_at IS NULL';
  const rows = all(db, `SELECT * FROM archetype ${where} ORDER BY kind, loft_deg, id`);
  return rows.map((row) => fromRow(ARCHETYPE, row));
}

/** Undefined when there is none of that id. Finds retired ones too. */
export function findArchetype(db: Db, id: string): Archetype | undefined {
  const row = get(db, 'SELECT * FROM archetype WHERE id = @id', { id });
  return row === undefined ? undefined : fromRow(ARCHETYPE, row);
}

/** Adds one of the user's own. @throws StorageError 'constraint' when the id is taken. */
export function addOwnArchetype(db: Db, fields: ArchetypeFields): void {
  insert(db, fields, 'own');
}

/** Replaces one of the user's own. @throws StorageError 'missing', also for a seed row. */
export function updateOwnArchetype(db: Db, fields: ArchetypeFields): void {
  replace(db, fields, 'own');
}

/** Deletes one of the user's own, with its price notes. @throws StorageError 'missing', also for a seed row. */
export function deleteOwnArchetype(db: Db, id: string): void {
  const { changes } = run(db, `DELETE FROM archetype WHERE id = @id AND source = 'own'`, { id });
  if (changes === 0) throw missing(db, 'own archetype', id);
}
