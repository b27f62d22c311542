import { availableParallelism } from 'node:os';
import { parseArgs } from 'node:util';
import { killAtEachStep, type StepReport } from '../step/run.ts';
import { WORKS } from '../step/works.ts';
import { runKills, type KillReport } from './run.ts';

const HELP = `npm run faults -- [--kills N] [--seed N] [--json]

Starts the program under a writing load, kills it (SIGKILL) at a random moment, opens the records again and compares
every row with what was told to be committed; looks through all backups, exports and saved files. Again and again.

--kills N   how often (default 1000)
--seed N    other moments and edits (default 1)
--steps     instead: each work (first opening, upgrade, backup, restore, ...) killed before each of its steps
--json      the counts as JSON

Exit code 0 when nothing was lost, damaged or half written.`;

function text(report: KillReport): string {
  const { kills, seed, commits, rows, files, untold, lost, damaged, half, seconds } = report;
  const during = Object.entries(report.during)
    .sort((a, b) => b[1] - a[1])
    .map(([what, count]) => `  ${String(count).padStart(6)}  ${what}`);
  return [
    `${String(kills)} kills in ${String(seconds)} s (seed ${String(seed)})`,
    `${String(commits)} commits told, ${String(rows)} rows compared, ${String(untold)} edits were committed and not told yet`,
    `${String(files)} backups, exports and saved files looked through`,
    'killed during:',
    ...during,
    `lost ${String(lost)}, damaged ${String(damaged)}, half-written files ${String(half)}`,
  ].join('\n');
}

/** @returns whether all is well. */
async function steps(json: boolean): Promise<boolean> {
  const reports: StepReport[] = [];
  for (const work of WORKS) {
    const report = await killAtEachStep(work);
    for (const problem of report.problems) process.stderr.write(`${work.name}, ${problem}\n`);
    if (!json) process.stdout.write(`${String(report.killed).padStart(6)}  ${work.name}\n`);
    reports.push(report);
  }
  const killed = reports.reduce((sum, report) => sum + report.killed, 0);
  const problems = reports.reduce((sum, report) => sum + report.problems.length, 0);
  process.stdout.write(
    json
      ? `${JSON.stringify(reports, null, 2)}\n`
      : `${String(killed)} kills, one before each step; ${String(problems)} left something else than before or after\n`,
  );
  return problems === 0;
}

/** A whole number above 0. */
function count(flag: string, given: string): number {
  if (!/^[1-9]\d{0,8}$/.test(given)) throw new Error(`${flag} ${given} is no whole number above 0.\n${HELP}`);
  return Number(given);
}

try {
  const { values } = parseArgs({
    options: {
      kills: { type: 'string', default: '1000' },
      seed: { type: 'string', default: '1' },
      json: { type: 'boolean', default: false },
      steps: { type: 'boolean', default: false },
      help: { type: 'boolean', default: false },
    },
  });
  if (values.help) process.stdout.write(`${HELP}\n`);
  else if (values.steps) process.exitCode = (await steps(values.json)) ? 0 : 1;
  else {
    const report = await runKills({
      kills: count('--kills', values.kills),
      seed: count('--seed', values.seed),
      atOnce: Math.min(2, availableParallelism()),
      say: (line) => void process.stderr.write(`${line}\n`),
    });
    process.stdout.write(values.json ? `${JSON.stringify(report, null, 2)}\n` : `${text(report)}\n`);
    const isFine = report.lost + report.damaged + report.half === 0;
    process.exitCode = isFine ? 0 : 1;
  }
} catch (error) {
  process.stderr.write(`${error instanceof Error ? error.message : String(error)}\n`);
  process.exitCode = 1;
}
