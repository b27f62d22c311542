import type { Columns, Money } from '../row.ts';
import { fromRow, toRow } from '../row.ts';
import type { Db } from '../sqlite.ts';
import { all, deleteRow, get, insertRow, missing, run } from '../statement.ts';

export type PlanStatus =
  'nothing-needed' | 'ok' | 'partly' | 'over-budget' | 'ask-first' | 'coach-first' | 'stopped';

/** An answer with the question it answers, so that it can be understood, and made again, later. */
export type PlanFields = {
  bagId: number;
  name?: string;
  status: PlanStatus;
  openFindings: number;
  cash?: Money;
  /** Negative where sales bring in more than the purchases cost. */
  net?: Money;
  /** The whole input, as JSON. */
  input: NonNullable<unknown>;
  /** The plan file, as JSON. */
  output: NonNullable<unknown>;
  programVersion: string;
};

/** One stage of a path: now, or when a condition holds. */
export type Stage = {
  stage: 'now' | 'handicap' | 'sale' | 'season';
  handicapAtMost?: number;
  season?: string;
  cash: Money;
  net: Money;
  swaps: readonly unknown[];
  ladder?: readonly unknown[];
  /** YYYY-MM-DD. */
  doneOn?: string;
};

export type PlanLine = Omit<PlanFields, 'input' | 'output'> & { id: number; madeAt: string; picked: boolean };
export type Plan = PlanFields & { id: number; madeAt: string; picked: boolean; stages: Stage[] };

const FIELDS: Columns<PlanFields> = {
  bagId: ['bag_id', 'int'],
  name: ['name', 'text'],
  status: ['status', 'text'],
  openFindings: ['open_findings', 'int'],
  cash: ['cash', 'money'],
  net: ['net', 'money'],
  input: ['input_json', 'json'],
  output: ['output_json', 'json'],
  programVersion: ['program_version', 'text'],
};
const { input: _input, output: _output, ...SHORT } = FIELDS;
const LINE: Columns<PlanLine> = {
  ...SHORT,
  id: ['id', 'int'],
  madeAt: ['made_at', 'text'],
  picked: ['picked', 'flag'],
};
const PLAN: Columns<Omit<Plan, 'stages'>> = {
  ...FIELDS,
  id: ['id', 'int'],
  madeAt: ['made_at', 'text'],
  picked: ['picked', 'flag'],
};
const STAGE: Columns<Stage> = {
  stage: ['stage', 'text'],
  handicapAtMost: ['handicap_at_most', 'real'],
  season: ['season', 'text'],
  cash: ['cash', 'money'],
  net: ['net', 'money'],
  swaps: ['swaps_json', 'json'],
  ladder: ['ladder_json', 'json'],
  doneOn: ['done_on', 'text'],
};

/** Saves a plan for good. @returns its id. */
export function savePlan(db: Db, plan: PlanFields, stages: readonly Stage[], at: string): number {
  return insertPlan(db, 'saved', plan, stages, at);
}

/** Keeps the newest answer for a bag in the place of the one before. A cache: call it outside of any undo step. */
export function keepLatestPlan(db: Db, plan: PlanFields, at: string): number {
  return db.transaction(() => {
    run(db, `DELETE FROM plan WHERE bag_id = @bagId AND kind = 'latest'`, { bagId: plan.bagId });
    return insertPlan(db, 'latest', plan, [], at);
  })();
}

function insertPlan(
  db: Db,
  kind: 'saved' | 'latest',
  plan: PlanFields,
  stages: readonly Stage[],
  at: string,
): number {
  return db.transaction(() => {
    const id = insertRow(db, 'plan', { ...toRow(FIELDS, plan), kind, made_at: at });
    stages.forEach((stage, position) => {
      insertRow(db, 'path_stage', { ...toRow(STAGE, stage), plan_id: id, position });
    });
    return id;
  })();
}

/** @throws StorageError 'missing'. */
export function readPlan(db: Db, id: number): Plan {
  const row = get(db, 'SELECT * FROM plan WHERE id = @id', { id });
  if (row === undefined) throw missing(db, 'plan', id);
  return { ...fromRow(PLAN, row), stages: stagesOf(db, id) };
}

/** The cached answer for a bag, or undefined. */
export function readLatestPlan(db: Db, bagId: number): Plan | undefined {
  const sql = `SELECT id FROM plan WHERE bag_id = @bagId AND kind = 'latest'`;
  const row = get<{ id: number }>(db, sql, { bagId });
  return row === undefined ? undefined : readPlan(db, row.id);
}

function stagesOf(db: Db, planId: number): Stage[] {
  const sql = 'SELECT * FROM path_stage WHERE plan_id = @planId ORDER BY position';
  return all(db, sql, { planId }).map((row) => fromRow(STAGE, row));
}

/** The saved plans of a bag, newest first, without their input and output. */
export function listPlans(db: Db, bagId: number): PlanLine[] {
  const sql = `SELECT * FROM plan WHERE bag_id = @bagId AND kind = 'saved' ORDER BY made_at DESC, id DESC`;
  return all(db, sql, { bagId }).map((row) => fromRow(LINE, row));
}

/** Picks one of a bag's saved plans; the others are not picked any more. */
export function pickPlan(db: Db, id: number): void {
  const { bagId } = readPlan(db, id);
  const sql = `UPDATE plan SET picked = (id = @id)
               WHERE bag_id = @bagId AND kind = 'saved' AND picked IS NOT (id = @id)`;
  run(db, sql, { id, bagId });
}

export function deletePlan(db: Db, id: number): void {
  deleteRow(db, 'plan', id);
}
