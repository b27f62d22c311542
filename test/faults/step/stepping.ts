import fs from 'node:fs';
import { syncBuiltinESMExports } from 'node:module';
import Database from 'better-sqlite3';

/**
 * Kills this process (SIGKILL) just before its n-th step: a statement, a commit, or a call that changes files. With no n
 * it only counts.
 */
export type Steps = {
  /** Steps from here on. */
  begin(): void;
  taken(): number;
};

const FILE_CALLS = [
  'chmodSync',
  'copyFileSync',
  'fsyncSync',
  'mkdirSync',
  'mkdtempSync',
  'openSync',
  'renameSync',
  'rmSync',
  'writeFileSync',
  'writeSync',
] as const;

type AnyFunction = (this: unknown, ...args: unknown[]) => unknown;

export function stepThrough(killBefore: number | null): Steps {
  let begun = false;
  let taken = 0;
  const step = () => {
    if (!begun) return;
    taken += 1;
    if (taken === killBefore) process.kill(process.pid, 'SIGKILL');
  };
  const wrap = (owner: Record<string, unknown>, name: string, around: (call: AnyFunction) => AnyFunction) => {
    owner[name] = around(owner[name] as AnyFunction);
  };
  const counted = (call: AnyFunction): AnyFunction =>
    function (...args) {
      step();
      return call.apply(this, args);
    };

  for (const name of FILE_CALLS) wrap(fs as unknown as Record<string, unknown>, name, counted);
  syncBuiltinESMExports();

  const database = Database.prototype as unknown as Record<string, unknown>;
  for (const name of ['pragma', 'close']) wrap(database, name, counted);
  wrap(
    database,
    'exec',
    (exec) =>
      function (sql) {
        for (const statement of statementsOf(String(sql))) {
          step();
          exec.call(this, statement);
        }
        return this;
      },
  );
  const probe = new Database(':memory:');
  const statement = Object.getPrototypeOf(probe.prepare('SELECT 1')) as Record<string, unknown>;
  wrap(statement, 'run', counted);
  probe.close();
  return {
    begin: () => {
      begun = true;
      taken = 0;
    },
    taken: () => taken,
  };
}

/** SQL text parted after each statement, a trigger with its body as one. Semicolons in comments and texts part nothing. */
export function statementsOf(sql: string): string[] {
  const statements: string[] = [];
  let from = 0;
  let bare = '';
  for (const token of sql.matchAll(/--[^\n]*|'(?:[^']|'')*'|"[^"]*"|;|[^-'";]+|[-'"]/g)) {
    const [text] = token;
    if (!text.startsWith('--')) bare += text;
    const isTrigger = /^\s*CREATE\s+(?:TEMP\s+)?TRIGGER/i.test(bare);
    if (text !== ';' || (isTrigger && !/\bEND\s*;$/i.test(bare))) continue;
    const end = token.index + 1;
    statements.push(sql.slice(from, end));
    from = end;
    bare = '';
  }
  return bare.trim() === '' ? statements : [...statements, sql.slice(from)];
}
