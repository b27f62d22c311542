import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { findChromium } from '../../build/find/find-chromium.mjs';
import type { CallName, CallArgs, CallResult } from '../../src-main/contract/calls/index.ts';
import type { Gate } from '../../src-main/contract/gate.ts';
import { openChromiumPrinter } from '../../src-main/host/print/chromium-printer.ts';
import { createService } from '../../src-main/service/service.ts';
import { timesOf, type BenchResult } from './support/report.ts';

type Sizes = { cold: number; warm: number; batch: number };

/** The hand-over through the service, with a real Chromium; nothing where there is none. */
export async function benchHandover({ quick = false }: { quick?: boolean } = {}): Promise<BenchResult[]> {
  const chromium = findChromium();
  if (chromium === null) return [];
  const sizes = quick ? { cold: 1, warm: 2, batch: 4 } : { cold: 5, warm: 20, batch: 50 };
  const results: BenchResult[] = [];
  const coldMs: number[] = [];
  for (let i = 0; i < sizes.cold; i++) {
    await withService(chromium, async (call, bagId) => {
      coldMs.push(await clock(() => call('handover.pdf', { bagId })));
      if (i === 0) results.push(...(await warm(call, bagId, sizes)));
    });
  }
  const inputs = 'the demo bag, two pages of A4';
  return [{ name: 'handover-pdf-cold', ...onClock(coldMs), inputs }, ...results];
}

type Call = <K extends CallName>(name: K, args: CallArgs<K>) => Promise<CallResult<K>>;

async function warm(call: Call, bagId: number, sizes: Sizes): Promise<BenchResult[]> {
  const times = async (of: () => Promise<unknown>, n: number) => {
    const clockMs: number[] = [];
    for (let i = 0; i < n; i++) clockMs.push(await clock(of));
    return onClock(clockMs);
  };
  const { playerId } = await call('bags.read', { bagId });
  const bagIds: number[] = [];
  for (let i = 0; i < sizes.batch; i++) bagIds.push((await call('players.duplicate', { playerId })).bagId);
  return [
    { name: 'handover-preview', ...(await times(() => call('handover.preview', { bagId }), sizes.warm)) },
    { name: 'handover-pdf-warm', ...(await times(() => call('handover.pdf', { bagId }), sizes.warm)) },
    {
      name: `handover-batch-${String(sizes.batch)}`,
      ...(await times(() => call('handover.batch', { bagIds, job: 'bench' }), 1)),
    },
  ];
}

/** Without processor time: most of the work is Chromium's. */
function onClock(clockMs: number[]): Omit<BenchResult, 'name'> {
  const { processorMs: _none, ...times } = timesOf({ clockMs, processorMs: [] });
  return times;
}

async function withService(
  chromium: string,
  work: (call: Call, bagId: number) => Promise<void>,
): Promise<void> {
  const dataDir = mkdtempSync(path.join(tmpdir(), 'loftledger-bench-'));
  const gate: Gate = await createService({
    ...{ dataDir, version: 'bench' },
    openPrinter: () => openChromiumPrinter({ chromium }),
  });
  const call: Call = async (name, args) => {
    const answer = await gate.call({ call: name, args });
    if (!answer.ok) throw new Error(`${name}: ${answer.error.message}`);
    return answer.value as never;
  };
  try {
    const { bagId } = await call('players.openDemo', { demo: 'invented-bag' });
    await call('answers.plan', { bagId }); // the threads are up, as they are when a window stands
    await work(call, bagId);
  } finally {
    await gate.close();
    rmSync(dataDir, { recursive: true, force: true });
  }
}

async function clock(work: () => Promise<unknown>): Promise<number> {
  const before = performance.now();
  await work();
  return performance.now() - before;
}
