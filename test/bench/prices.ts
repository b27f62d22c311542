import { loadCatalogue } from '../../db/catalogue/index.ts';
import { demoBag } from '../../db/demo/index.ts';
import type { BagFile } from '../../src-main/contract/formats/bag-file.ts';
import type { CallArgs, CallName, CallResult } from '../../src-main/contract/calls/index.ts';
import { createService } from '../../src-main/service/service.ts';
import { processorMsSince, timesOf, type BenchResult } from './support/report.ts';

/** The demo bag with invented prices on so many archetypes of the catalogue. */
function bagWith(count: number): BagFile {
  const demo = JSON.parse(JSON.stringify(demoBag('invented-bag'))) as BagFile;
  const prices = loadCatalogue()
    .slice(0, count)
    .map(({ id }, i) => {
      const likely = 30 + ((i * 37) % 90);
      return { archetype: id, low: likely - 10, likely, high: likely + 15 };
    });
  return { ...demo, prices, budget: { amount: 180 } };
}

/**
 * Through the gate and the worker threads, as the window asks: nothing is left out but the drawing. The goals: a price
 * edit to its new answer p95 under 100 ms, "seen one" under 100 ms, the watch list under 2 s.
 */
export async function benchPrices(rounds = 60): Promise<BenchResult[]> {
  const gate = await createService({ dataDir: ':memory:', version: '0.0.0-bench' });
  const call = async <K extends CallName>(name: K, args: CallArgs<K>): Promise<CallResult<K>> => {
    const answer = await gate.call({ call: name, args });
    if (!answer.ok) throw new Error(`${name}: ${answer.error.message}`);
    return answer.value as CallResult<K>;
  };
  const open = async (count: number) =>
    (await call('players.importBag', { text: JSON.stringify(bagWith(count)) })).bagId;
  const results: BenchResult[] = [];
  const bench = async (name: string, n: number, round: (i: number) => Promise<string>) => {
    for (let i = 0; i < 4; i += 1) await round(i);
    const times: Parameters<typeof timesOf>[0] = { clockMs: [], processorMs: [] };
    for (let i = 0; i < n; i += 1) {
      const since = process.cpuUsage();
      const start = performance.now();
      await round(i);
      times.clockMs.push(performance.now() - start);
      times.processorMs.push(processorMsSince(since));
    }
    results.push({ name, ...timesOf(times), checksum: await round(1) });
  };
  try {
    const bagId = await open(150);
    const ids = loadCatalogue().map(({ id }) => id);
    const idAt = (i: number) => ids[(i * 29) % 150] as string;
    await bench('edit-answer-150', rounds, async (i) => {
      const likely = 20 + ((i * 7) % 80);
      await call('bags.setPrice', {
        bagId,
        archetype: idAt(i),
        band: { low: likely, likely, high: likely + 9 },
      });
      const { plan } = await call('answers.plan', { bagId });
      return `${plan.plan.status} ${String(plan.plan.cash)}`;
    });
    await bench('seen-one-150', rounds, async (i) => {
      const { verdict, walkAway } = await call('prices.seenOne', {
        bagId,
        archetype: idAt(i),
        price: 25 + (i % 40),
      });
      return `${verdict} ${String(walkAway)}`;
    });
    await bench('bands-150', rounds, async () =>
      String((await call('prices.bands', { bagId })).bands.length),
    );
    const watch = (id: number) => async () =>
      (await call('prices.watchList', { bagId: id })).items
        .map((item) => `${item.archetype} ${String(item.below)}`)
        .join();
    await bench('watch-list-26', Math.ceil(rounds / 6), watch(bagId));
    await bench('watch-list-176', Math.ceil(rounds / 6), watch(await open(0)));
    return results;
  } finally {
    await gate.close();
  }
}
