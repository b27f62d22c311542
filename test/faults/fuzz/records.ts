import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { CallAnswer, Gate } from '../../../src-main/contract/gate.ts';
import { DATABASE_NAME } from '../../../src-main/service/records/data-folder.ts';
import { createService } from '../../../src-main/service/service.ts';
import { poolsOf, BAG_TEXT, PRICES_TEXT } from './pools.ts';
import type { Pools } from './from-schema.ts';
import { Watch } from './watch.ts';

/** The real service on records of its own, with somebody in them. */
export type Records = {
  folder: string;
  file: string;
  gate: Gate;
  watch: Watch;
  pools: Pools;
  /** Looks again at which rows there are. */
  learn(): Promise<void>;
  send(name: string, bytes: Uint8Array): Promise<CallAnswer>;
  close(): Promise<void>;
};

export async function openRecords(): Promise<Records> {
  const folder = mkdtempSync(join(tmpdir(), 'loftledger-fuzz-'));
  const file = join(folder, DATABASE_NAME);
  let lastFault: unknown = null;
  const service = await createService({
    dataDir: folder,
    version: '0.0.0',
    onFault: (error) => (lastFault = error),
  });
  // The answer to a fault says nothing of its cause: added here for whoever reads the findings.
  const withCause = async (asked: Promise<CallAnswer>): Promise<CallAnswer> => {
    const answer = await asked;
    // A plan is kept just after its answer: without this, the call that comes next would seem to have written it.
    await new Promise((done) => setImmediate(done));
    if (answer.ok || answer.error.kind !== 'bug') return answer;
    const cause = lastFault instanceof Error ? (lastFault.stack ?? lastFault.message) : String(lastFault);
    return { ok: false, error: { ...answer.error, message: cause } };
  };
  const gate: Gate = {
    ...service,
    call: (request) => withCause(service.call(request)),
    upload: (name, stream) => withCause(service.upload(name, stream)),
  };
  const ask = async (call: string, args: unknown): Promise<unknown> => {
    const answer = await gate.call({ call, args });
    if (!answer.ok) throw new Error(`${call}: ${answer.error.message}`);
    return answer.value;
  };
  const known = {
    bags: [] as number[],
    players: [] as number[],
    notes: [] as number[],
    uploads: [] as string[],
  };
  const watch = new Watch(file);
  const records: Records = {
    folder,
    file,
    gate,
    watch,
    pools: poolsOf(known),
    async learn() {
      const lines = (await ask('players.roster', {})) as { id: number; bagId: number }[];
      known.bags = lines.map(({ bagId }) => bagId);
      known.players = lines.map(({ id }) => id);
      known.notes = ((await ask('prices.list', { limit: 50 })) as { id: number }[]).map(({ id }) => id);
    },
    async send(name, bytes) {
      async function* stream() {
        yield bytes;
        await Promise.resolve();
      }
      const answer = await gate.upload(name, stream());
      const { upload } = answer.ok ? (answer.value as { upload?: string }) : {};
      if (upload !== undefined) known.uploads = [...known.uploads, upload].slice(-3);
      return answer;
    },
    async close() {
      watch.close();
      await gate.close();
      rmSync(folder, { recursive: true, force: true });
    },
  };
  await ask('players.importBag', { text: BAG_TEXT });
  await ask('players.openDemo', { demo: 'range-bag' });
  await ask('files.importPrices', { source: { text: PRICES_TEXT }, skipBad: true });
  await records.learn();
  return records;
}
