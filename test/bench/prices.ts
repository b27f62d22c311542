import { loadCatalogue } from '../../db/catalogue/index.ts';
import { demoBag } from '../../db/demo/index.ts';
import type { BagFile } from '../../src-main/contract/bag-file.ts';
import { calls, type CallArgs, type CallName, type CallResult } from '../../src-main/contract/calls/index.ts';
import { createService } from '../../src-main/service/service.ts';

/** Milliseconds over `n` rounds after warm-up, and a checksum of the answers, taken outside the timing. */
export type PriceBench = {
  name: 'edit-answer-150' | 'seen-one-150' | 'watch-list-26' | 'watch-list-176' | 'bands-150';
  n: number;
  medianMs: number;
  p95Ms: number;
  maxMs: number;
  checksum: string;
};

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

/** Through the gate and the worker threads, as the window asks: nothing is left out but the drawing. */
export async function benchPrices(rounds = 60): Promise<PriceBench[]> {
  const gate = await createService({ dataDir: ':memory:', version: '0.0.0-bench' });
  const call = async <K extends CallName>(name: K, args: CallArgs<K>): Promise<CallResult<K>> => {
    const answer = await gate.call({ call: name, args });
    if (!answer.ok) throw new Error(`${name}: ${answer.error.message}`);
    return calls[name].result.parse(answer.value) as CallResult<K>;
  };
  const open = async (count: number) =>
    (await call('players.importBag', { text: JSON.stringify(bagWith(count)) })).bagId;
  const results: PriceBench[] = [];
  const bench = async (name: PriceBench['name'], n: number, round: (i: number) => Promise<string>) => {
    for (let i = 0; i < 4; i += 1) await round(i);
    const times: number[] = [];
    for (let i = 0; i < n; i += 1) {
      const start = performance.now();
      await round(i);
      times.push(performance.now() - start);
    }
    times.sort((a, b) => a - b);
    const at = (share: number) => times[Math.min(n - 1, Math.floor(share * n))] as number;
    const checksum = await round(1);
    results.push({ name, n, medianMs: at(0.5), p95Ms: at(0.95), maxMs: at(1), checksum });
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
