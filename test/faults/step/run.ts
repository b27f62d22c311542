import { execFile, spawnSync } from 'node:child_process';
import { cpSync, existsSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { backupFolderOf, listBackups } from '../../../db/files/backup.ts';
import { checkImport } from '../../../db/files/import.ts';
import { loadMigrations } from '../../../db/migration-files.ts';
import { undo, history } from '../../../db/undo/undo.ts';
import { logicalDump } from '../../../db/schema/dump.ts';
import { verifyFile } from '../../../db/files/verify.ts';
import { openStore } from '../../../src-main/service/records/store.ts';
import { EXPORT, FILE, savedDocument, type Work } from './works.ts';

export type StepReport = { work: string; steps: number; killed: number; problems: string[] };

const NEITHER = 'neither what was there nor what the work makes';
const CHILD = join(import.meta.dirname, 'child.ts');

/**
 * Kills one work before each of its steps (or before `most` of them, spread evenly) and looks at what is left: it must
 * be what was there before or what the whole work makes.
 */
export async function killAtEachStep(
  work: Work,
  { most = Infinity, atOnce = 2 }: { most?: number; atOnce?: number } = {},
): Promise<StepReport> {
  const base = mkdtempSync(join(tmpdir(), 'loftledger-step-'));
  try {
    const before = join(base, 'before');
    work.prepare(before);
    const whole = join(base, 'whole');
    if (existsSync(before)) cpSync(before, whole, { recursive: true });
    const count = spawnSync(process.execPath, [CHILD, work.name, whole], { encoding: 'utf8' });
    if (count.status !== 0) throw new Error(`${work.name} does not even work undisturbed:\n${count.stderr}`);
    const allowed = new Set([contentOf(copy(before, base, 'as-it-was')), contentOf(whole)]);
    const report: StepReport = { work: work.name, steps: Number(count.stdout), killed: 0, problems: [] };
    const numbers = spread(report.steps, most);
    const oneAfterOther = async () => {
      for (let n = numbers.shift(); n !== undefined; n = numbers.shift()) {
        const folder = copy(before, base, `step-${String(n)}`);
        const signal = await killBefore(work.name, folder, n);
        if (signal !== 'SIGKILL')
          report.problems.push(`step ${String(n)}: was not killed (${String(signal)})`);
        report.killed += 1;
        report.problems.push(...look(work, folder, allowed).map((text) => `step ${String(n)}: ${text}`));
        rmSync(folder, { recursive: true, force: true });
      }
    };
    await Promise.all(Array.from({ length: atOnce }, oneAfterOther));
    return report;
  } finally {
    rmSync(base, { recursive: true, force: true });
  }
}

/** At most `most` of the numbers 1 to n, the last always among them. */
function spread(n: number, most: number): number[] {
  const wanted = Math.min(n, most);
  return Array.from({ length: wanted }, (_, i) => n - Math.floor((i * n) / wanted)).reverse();
}

function copy(before: string, base: string, name: string): string {
  const folder = join(base, name);
  if (existsSync(before)) cpSync(before, folder, { recursive: true });
  return folder;
}

function killBefore(work: string, folder: string, n: number): Promise<string | null> {
  return new Promise((resolve) => {
    const args = [CHILD, work, folder, String(n)];
    const child = execFile(process.execPath, args, (_error, _out, err) => {
      resolve(child.signalCode ?? (err === '' ? null : err));
    });
  });
}

/** All that a folder holds for its user: the rows as the next opening finds them, and the saved document. */
function contentOf(folder: string): string {
  const saved = savedDocument(folder);
  if (saved !== null) return saved;
  const { db } = openStore(folder);
  try {
    return logicalDump(db);
  } finally {
    db.close();
  }
}

function look(work: Work, folder: string, allowed: ReadonlySet<string>): string[] {
  const problems: string[] = [];
  const trying = (what: string, fn: () => void) => {
    try {
      fn();
    } catch (error) {
      problems.push(`${what}: ${error instanceof Error ? error.message : String(error)}`);
    }
  };
  trying('opening', () => {
    if (!allowed.has(contentOf(folder))) problems.push(NEITHER);
  });
  const after = work.after?.(folder) ?? null;
  if (after !== null) problems.push(after);
  if (savedDocument(folder) !== null) return problems;
  trying('checking', () => {
    const { db } = openStore(folder);
    const check = db.pragma('integrity_check', { simple: true });
    if (check !== 'ok') problems.push(`integrity_check: ${String(check)}`);
    if (history(db).undo.length > 0) undo(db);
    db.close();
  });
  for (const backup of listBackups(backupFolderOf(join(folder, FILE)))) {
    trying(backup.file, () => void verifyFile(backup.file, loadMigrations().length));
  }
  const exported = join(folder, EXPORT);
  if (existsSync(exported)) trying(exported, () => void checkImport(exported));
  return problems;
}
