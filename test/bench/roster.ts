import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { loadCatalogue } from '../../db/catalogue/index.ts';
import type { CallArgs, CallName, CallResult } from '../../src-main/contract/calls/index.ts';
import type { HostEvent } from '../../src-main/contract/gate.ts';
import { createService } from '../../src-main/service/service.ts';
import { rosterOf } from '../support/roster.ts';
import { digest, timesOf, type BenchResult, type Times } from './support/report.ts';

const RUNS = 3;
/** Archetypes with everybody's price notes, five each. */
const PRICED = 150;
const NOTES_EACH = 5;

/**
 * A whole roster planned anew through the service, as the window asks for it: records on disk, two threads, each plan
 * kept. The goal: 200 players in under 10 s on 2 cores.
 */
export async function benchRoster({ players = 200, runs = RUNS } = {}): Promise<BenchResult[]> {
  const dataDir = mkdtempSync(path.join(tmpdir(), 'loftledger-bench-'));
  const gate = await createService({ dataDir, version: '0.0.0-bench' });
  const call = async <K extends CallName>(name: K, args: CallArgs<K>): Promise<CallResult<K>> => {
    const answer = await gate.call({ call: name, args });
    if (!answer.ok) throw new Error(`${name}: ${answer.error.message}`);
    return answer.value as CallResult<K>;
  };
  try {
    const priced = loadCatalogue().slice(0, PRICED);
    await call('files.importPrices', { source: { text: priceList(priced) }, skipBad: false });
    const bagIds: number[] = [];
    for (const file of rosterOf(players, 20261126)) {
      bagIds.push((await call('players.importBag', { text: JSON.stringify(file) })).bagId);
    }
    let told = 0;
    gate.subscribe(({ event }: HostEvent) => (told += event === 'progress' ? 1 : 0));
    // Once before, so that both threads stand.
    await call('roster.plan', { bagIds: bagIds.slice(0, 2), job: 'warm' });
    const times: Times = { clockMs: [], processorMs: [] };
    for (let run = 0; run < runs; run += 1) {
      const [before, busy] = [performance.now(), process.cpuUsage()];
      const { planned, refused } = await call('roster.plan', { bagIds, job: `roster-${String(run)}` });
      times.clockMs.push(performance.now() - before);
      const { user, system } = process.cpuUsage(busy);
      times.processorMs.push((user + system) / 1000);
      if (planned !== players || refused.length > 0) throw new Error(`${String(planned)} were planned`);
    }
    const roster = await call('players.roster', {});
    return [
      {
        name: `roster-${String(players)}`,
        ...timesOf(times),
        inputs: `${String(PRICED)} archetypes priced, progress told ${String(told)} times`,
        checksum: digest(roster.map(({ name, status, openFindings }) => ({ name, status, openFindings }))),
      },
    ];
  } finally {
    await gate.close();
    rmSync(dataDir, { recursive: true, force: true });
  }
}

function priceList(archetypes: readonly { id: string; kind: string }[]): string {
  const lines = archetypes.flatMap(({ id, kind }, i) =>
    Array.from({ length: NOTES_EACH }, (_, n) => {
      const likely = (kind === 'irons' ? 150 : 30) + ((i * 37 + n * 11) % (kind === 'irons' ? 250 : 120));
      const seen = `2026-${String(10 - n).padStart(2, '0')}-15`;
      return [id, likely - 10, likely, likely + 25, 'GBP', seen].join(',');
    }),
  );
  return ['archetype,low,likely,high,currency,seen', ...lines].join('\n');
}
