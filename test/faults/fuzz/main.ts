import { parseArgs } from 'node:util';
import { fuzz, type FuzzReport } from './run.ts';
import { TARGETS } from './targets/index.ts';
import { watchdog } from './watchdog.ts';

const HELP = `npm run fuzz -- [--cases N] [--seed N] [--target NAME] [--from N --count N] [--json]

Gives broken input to everything that takes input: every schema, every call through the real dispatch, every importer,
every command (in this process), the readers of bags and solver instances, the HTTP server, app:// and IPC. Each case
must be taken or refused in plain words within 2 s, with no fault of the program; a refusal, and a call that only reads,
must leave the records as they are.

--cases N     in all (default 100000)
--seed N      other cases (default 1)
--target NAME one of: ${TARGETS.map(({ name }) => name).join(', ')}
--from N --count N   these cases of each target alone, to play one again
--json        the counts as JSON

Exit code 0 when no fault was found.`;

function text({ seed, cases, targets, faults, seconds }: FuzzReport): string {
  const lines = targets.map(
    ({ name, cases: count, taken, slowestMs, slowOnce, seconds: took }) =>
      `${String(count).padStart(8)}  ${name.padEnd(18)} ${String(taken).padStart(7)} taken ${String(count - taken).padStart(7)} refused  ` +
      `slowest ${String(slowestMs).padStart(5)} ms${slowOnce === 0 ? '' : ` (${String(slowOnce)} over the limit once, and not when played again)`}  ${String(took).padStart(6)} s`,
  );
  return [
    ...lines,
    `${String(cases)} cases in ${String(seconds)} s (seed ${String(seed)}), ${String(faults.length)} faults`,
  ].join('\n');
}

function whole(flag: string, given: string): number {
  if (!/^\d{1,9}$/.test(given)) throw new Error(`${flag} ${given} is no whole number.\n${HELP}`);
  return Number(given);
}

try {
  const { values } = parseArgs({
    options: {
      cases: { type: 'string', default: '100000' },
      seed: { type: 'string', default: '1' },
      target: { type: 'string' },
      from: { type: 'string' },
      count: { type: 'string', default: '1' },
      json: { type: 'boolean', default: false },
      help: { type: 'boolean', default: false },
    },
  });
  if (values.help) process.stdout.write(`${HELP}\n`);
  else {
    const targets = TARGETS.filter(({ name }) => values.target === undefined || name === values.target);
    if (targets.length === 0) throw new Error(`There is no target ${String(values.target)}.\n${HELP}`);
    const dog = watchdog();
    const report = await fuzz({
      targets,
      cases: whole('--cases', values.cases),
      seed: whole('--seed', values.seed),
      say: (line) => void process.stderr.write(`${line}\n`),
      onCase: dog.onCase,
      ...(values.from === undefined
        ? {}
        : { only: { from: whole('--from', values.from), count: whole('--count', values.count) } }),
    });
    process.stdout.write(values.json ? `${JSON.stringify(report, null, 2)}\n` : `${text(report)}\n`);
    process.exitCode = report.faults.length === 0 ? 0 : 1;
    await dog.end();
  }
} catch (error) {
  process.stderr.write(`${error instanceof Error ? error.message : String(error)}\n`);
  process.exitCode = 1;
}
