import { mkdirSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { backupFolderOf, listBackups } from '../../../db/files/backup.ts';
import { logicalDump } from '../../../db/schema/dump.ts';
import { connect } from '../../../db/sqlite.ts';
import {
  calls,
  type CallArgs,
  type CallName,
  type CallResult,
} from '../../../src-main/contract/calls/index.ts';
import type { Gate } from '../../../src-main/contract/gate.ts';
import { saveWhole } from '../../../src-main/service/handover/save.ts';
import { bagFile } from '../../support/bags.ts';
import { fingerprint, stateOf, stateOfDump, type Back } from './protocol.ts';

/** The writing load: every kind of write that the program has, through the gate that the window uses. */
export type Load = { gate: Gate; folder: string; file: string; random: () => number };

/** One edit, found but not done yet. */
type Edit = { back: Back; saves?: string; run: () => Promise<unknown> };

export type Op = { name: string; weight: number; find: (load: Load) => Promise<Edit | null> };

/** Stands for the user's own folder, where a draft that a kill left is the user's to see and to delete. */
export const SAVED = 'saved';

const UNDO: Back = { by: 'undo' };
const units = { distance: 'yd', speed: 'mph', currency: 'GBP' } as const;
const ARCHETYPES = ['hybrid-22-t3', 'driver-9-t2-low', 'irons-5-pw-30-t3'];

async function ask<K extends CallName>({ gate }: Load, name: K, args: CallArgs<K>): Promise<CallResult<K>> {
  const answer = await gate.call({ call: name, args });
  if (!answer.ok) throw new Error(`${name}: ${answer.error.message}`);
  return calls[name].result.parse(answer.value) as CallResult<K>;
}

const below = ({ random }: Load, n: number): number => Math.floor(random() * n);
const oneOf = <T>(load: Load, list: readonly T[]): T | undefined => list[below(load, list.length)];

async function anybody(load: Load) {
  return oneOf(load, await ask(load, 'players.roster', {}));
}

/** An undoable call on somebody's bag. */
function onBag<K extends CallName>(
  name: K,
  weight: number,
  args: (load: Load, line: { id: number; bagId: number }, clubIds: string[]) => CallArgs<K> | null,
): Op {
  return {
    name,
    weight,
    async find(load) {
      const line = await anybody(load);
      if (line === undefined) return null;
      const { bag } = await ask(load, 'bags.read', { bagId: line.bagId });
      const given = args(
        load,
        line,
        bag.clubs.filter(({ kind }) => kind !== 'putter').map(({ id }) => id),
      );
      return given === null ? null : { back: UNDO, run: () => ask(load, name, given) };
    },
  };
}

const price = (load: Load) => {
  const likely = 20 + below(load, 200);
  return { low: likely - 10, likely, high: likely + 25 };
};

export const OPS: readonly Op[] = [
  {
    name: 'players.create',
    weight: 3,
    find: (load) => {
      const args = { name: `Invented ${String(below(load, 1e6))}`, handicap: below(load, 40), units };
      return Promise.resolve({ back: UNDO, run: () => ask(load, 'players.create', args) });
    },
  },
  {
    name: 'players.importBag',
    weight: 3,
    find: (load) => {
      const prices = ARCHETYPES.map((archetype) => ({ archetype, ...price(load) }));
      const text = JSON.stringify(bagFile({ prices, budget: { amount: below(load, 400) } }));
      return Promise.resolve({ back: UNDO, run: () => ask(load, 'players.importBag', { text }) });
    },
  },
  onBag('players.update', 3, (load, { id }) => ({
    playerId: id,
    patch: { missNote: 'n'.repeat(below(load, 1900)), handicap: below(load, 50) },
  })),
  onBag('bags.updateClub', 6, (load, { bagId }, ids) => {
    const clubId = oneOf(load, ids);
    return clubId === undefined ? null : { bagId, clubId, patch: { carry: 60 + below(load, 150) } };
  }),
  onBag('bags.removeClub', 1, (load, { bagId }, ids) => {
    const clubId = oneOf(load, ids);
    return clubId === undefined ? null : { bagId, clubId };
  }),
  onBag('clubs.recordCarry', 3, (load, { bagId }, ids) => {
    const clubId = oneOf(load, ids);
    const on = `2026-0${String(1 + below(load, 9))}-1${String(below(load, 9))}`;
    return clubId === undefined
      ? null
      : { bagId, clubId, on, carry: 60 + below(load, 150), shots: 9, carrySd: 5 };
  }),
  onBag('prices.add', 6, (load) => ({
    note: {
      archetype: oneOf(load, ARCHETYPES) ?? '',
      ...price(load),
      currency: 'GBP',
      remark: 'r'.repeat(below(load, 1900)),
    },
  })),
  onBag('files.importPrices', 3, (load) => {
    const rows = Array.from(
      { length: 60 },
      () => `hybrid-22-t3,${String(20 + below(load, 9e5) / 100)},GBP,,`,
    );
    return { source: { text: `archetype,price,currency,seen,remark\n${rows.join('\n')}` }, skipBad: true };
  }),
  onBag('shots.import', 3, (load, { bagId }, ids) => {
    const clubId = oneOf(load, ids);
    if (clubId === undefined) return null;
    const rows = Array.from({ length: 120 }, () => `a,${String(100 + below(load, 40))}`);
    return {
      bagId,
      source: { text: `club,carry\n${rows.join('\n')}\n` },
      mapping: {
        columns: { club: 0, carry: 1 },
        decimal: '.',
        distance: 'yd',
        speed: 'mph',
        clubs: { a: clubId },
      },
      leaveOut: [],
      skipBad: true,
      sessionOn: '2026-05-01',
    };
  }),
  {
    name: 'history.undo',
    weight: 2,
    find: (load) => Promise.resolve({ back: { by: 'redo' }, run: () => ask(load, 'history.undo', {}) }),
  },
  {
    name: 'history.redo',
    weight: 2,
    find: (load) => Promise.resolve({ back: { by: 'undo' }, run: () => ask(load, 'history.redo', {}) }),
  },
  {
    name: 'players.erase',
    weight: 1,
    async find(load) {
      const line = await anybody(load);
      if (line === undefined) return null;
      const hash = stateWithout(load.file, line.id);
      return { back: { by: 'after', hash }, run: () => ask(load, 'players.erase', { playerId: line.id }) };
    },
  },
  {
    name: 'backups.make',
    weight: 2,
    find: (load) => Promise.resolve({ back: { by: 'none' }, run: () => ask(load, 'backups.make', {}) }),
  },
  {
    name: 'files.exportDatabase',
    weight: 2,
    find: (load) =>
      Promise.resolve({ back: { by: 'none' }, run: () => ask(load, 'files.exportDatabase', {}) }),
  },
  {
    name: 'a price list saved over the last',
    weight: 2,
    async find(load) {
      const { text } = await ask(load, 'files.exportPrices', {});
      const save = () => {
        const folder = join(load.folder, SAVED);
        mkdirSync(folder, { recursive: true });
        saveWhole(join(folder, 'prices.csv'), text);
        return Promise.resolve();
      };
      return { back: { by: 'none' }, saves: fingerprint(text), run: save };
    },
  },
  {
    name: 'backups.restore',
    weight: 2,
    find: (load) => {
      const backup = oneOf(load, listBackups(backupFolderOf(load.file)));
      if (backup === undefined) return Promise.resolve(null);
      const { hash } = stateOf(backup.file);
      const run = () => ask(load, 'backups.restore', { sequence: backup.sequence });
      return Promise.resolve({ back: { by: 'after', hash }, run });
    },
  },
  {
    name: 'files.importDatabase',
    weight: 2,
    async find(load) {
      const exports = filesOf(join(load.folder, 'exports')).filter((name) => name.endsWith('.loftledger'));
      const file = oneOf(load, exports);
      if (file === undefined) return null;
      const upload = await sendFile(load, file);
      const back: Back = { by: 'after', hash: stateOf(file).hash };
      return { back, run: () => ask(load, 'files.importDatabase', { upload }) };
    },
  },
];

/** The files of a folder with their paths; none where there is no such folder. */
export function filesOf(folder: string): string[] {
  try {
    return readdirSync(folder).map((name) => join(folder, name));
  } catch {
    return [];
  }
}

async function sendFile({ gate }: Load, file: string): Promise<string> {
  const bytes = readFileSync(file);
  async function* stream() {
    yield bytes;
    await Promise.resolve();
  }
  const answer = await gate.upload('records.loftledger', stream());
  if (!answer.ok) throw new Error(answer.error.message);
  return (answer.value as { upload: string }).upload;
}

/** What the rows will be when this player is erased: tried in a transaction that is rolled back. */
function stateWithout(file: string, playerId: number): string {
  const db = connect(file, { mustExist: true });
  try {
    db.exec('BEGIN IMMEDIATE');
    db.prepare('DELETE FROM player WHERE id = ?').run(playerId);
    return stateOfDump(logicalDump(db)).hash;
  } finally {
    db.exec('ROLLBACK');
    db.close();
  }
}

/** @param draw in [0, 1). */
export function pickOp(draw: number, ops: readonly Op[] = OPS): Op {
  let left = draw * ops.reduce((sum, { weight }) => sum + weight, 0);
  for (const op of ops) {
    left -= op.weight;
    if (left < 0) return op;
  }
  throw new Error(`${String(draw)} is not below 1`);
}
