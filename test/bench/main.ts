import { existsSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { digest, load, machine, table, type BenchResult } from './support/report.ts';

type Run = (...amount: unknown[]) => BenchResult[] | Promise<BenchResult[]>;

/**
 * The benches, each a file beside this one with a function that gives its results. A file not there yet is passed over;
 * `quick` null: too long for a short run.
 */
const BENCHES: { file: string; run: string; full: unknown[]; quick: unknown[] | null }[] = [
  { file: 'flight.ts', run: 'benchFlight', full: [], quick: [80] },
  { file: 'solve.ts', run: 'benchSolve', full: [], quick: [{ quick: true }] },
  { file: 'plan.ts', run: 'benchPlan', full: [], quick: [{ quick: true }] },
  { file: 'prices.ts', run: 'benchPrices', full: [], quick: [] },
  { file: 'handover.ts', run: 'benchHandover', full: [], quick: [{ quick: true }] },
  { file: 'roster.ts', run: 'benchRoster', full: [], quick: [{ players: 8, runs: 1 }] },
  { file: 'window.ts', run: 'benchWindow', full: [], quick: [{ quick: true }] },
  { file: 'search.ts', run: 'benchSearch', full: [], quick: null },
];

/** A checksum this long is shown as it is; a longer one as its digest. */
const LONGEST_CHECKSUM = 16;

async function resultsOf(file: string, run: string, amount: unknown[]): Promise<BenchResult[]> {
  const at = new URL(file, import.meta.url);
  if (!existsSync(at)) return [];
  const found = ((await import(at.href)) as Record<string, unknown>)[run];
  if (typeof found !== 'function') throw new Error(`${file} exports no function ${run}.`);
  const results = await (found as Run)(...amount);
  return results.map((result) =>
    (result.checksum?.length ?? 0) > LONGEST_CHECKSUM
      ? { ...result, checksum: digest(result.checksum) }
      : result,
  );
}

const HELP = `npm run bench -- [--json] [--quick] [--only <name>]

--json    machine and results as JSON instead of a table
--quick   few inputs: to see that it runs, not to quote
--only    only the bench file of this name: ${BENCHES.map(({ file }) => file.replace('.ts', '')).join(', ')}
`;

async function main(): Promise<void> {
  const { values } = parseArgs({
    options: {
      json: { type: 'boolean', default: false },
      quick: { type: 'boolean', default: false },
      only: { type: 'string' },
      help: { type: 'boolean', default: false },
    },
  });
  if (values.help) {
    process.stdout.write(HELP);
    return;
  }
  const chosen = BENCHES.filter(({ file }) => values.only === undefined || file === `${values.only}.ts`);
  if (chosen.length === 0) throw new Error(`No bench is named ${String(values.only)}; see --help.`);
  const loadBefore = load();
  const results: BenchResult[] = [];
  for (const { file, run, full, quick } of chosen) {
    const amount = values.quick ? quick : full;
    if (amount !== null) results.push(...(await resultsOf(file, run, amount)));
  }
  const about = machine(loadBefore);
  process.stdout.write(
    values.json ? `${JSON.stringify({ machine: about, results }, null, 2)}\n` : `${table(about, results)}\n`,
  );
}

try {
  await main();
} catch (error) {
  process.stderr.write(`${error instanceof Error ? error.message : String(error)}\n`);
  process.exitCode = 1;
}
