import { Draw } from './draw.ts';
import { shown, Wrong, type Target } from './target.ts';

/** Longer than this is a hang. */
export const LONGEST_MS = 2_000;

export type FuzzOptions = {
  targets: readonly Target[];
  cases: number;
  seed: number;
  /** Told of each fault as it is found. */
  say?: (line: string) => void;
  /** Told before each case, for whoever watches for a hang. */
  onCase?: (target: string, number: number) => void;
  /** Plays these alone, of each target. */
  only?: { from: number; count: number };
};

export type TargetReport = {
  name: string;
  cases: number;
  taken: number;
  slowestMs: number;
  /** Cases that took too long, and did not when they were played again: the machine was busy with something else. */
  slowOnce: number;
  seconds: number;
};
export type Fault = { target: string; number: number; what: string; input: string };
export type FuzzReport = {
  seed: number;
  cases: number;
  targets: TargetReport[];
  faults: Fault[];
  seconds: number;
};

/** Faults of one target before it is given up: after so many there is nothing new to learn. */
const MOST_FAULTS = 20;

/** Gives every target its part of the cases. */
export async function fuzz(options: FuzzOptions): Promise<FuzzReport> {
  const { targets, cases, seed, say, only } = options;
  const started = performance.now();
  const weights = targets.reduce((sum, { weight }) => sum + weight, 0);
  const report: FuzzReport = { seed, cases: 0, targets: [], faults: [], seconds: 0 };
  for (const target of targets) {
    const share = Math.max(1, Math.ceil((cases * target.weight) / weights));
    const range = only ?? { from: 0, count: share };
    const found = await fuzzOne(target, range, options, (fault) => {
      report.faults.push(fault);
      say?.(`${fault.target} ${String(fault.number)}: ${fault.what}\n  input: ${fault.input}`);
    });
    report.targets.push(found);
    report.cases += found.cases;
  }
  report.seconds = Math.round((performance.now() - started) / 100) / 10;
  return report;
}

async function fuzzOne(
  target: Target,
  { from, count }: { from: number; count: number },
  options: FuzzOptions,
  tell: (fault: Fault) => void,
  again = false,
): Promise<TargetReport> {
  const { seed, onCase } = options;
  const { name, casesASession } = target;
  const report: TargetReport = { name, cases: 0, taken: 0, slowestMs: 0, slowOnce: 0, seconds: 0 };
  const slow: number[] = [];
  const started = performance.now();
  // A case may stand on those before it in its session: so its session is played from the beginning.
  const first = Math.floor(from / casesASession) * casesASession;
  let faults = 0;
  for (let n = first; n < from + count && faults < MOST_FAULTS;) {
    const session = await target.open();
    try {
      for (const end = Math.min(n + casesASession, from + count); n < end && faults < MOST_FAULTS; n += 1) {
        onCase?.(name, n);
        const begun = performance.now();
        const draw = new Draw(hashOf(seed, name, n));
        let fault: { what: string; input: unknown } | null = null;
        try {
          if ((await session.run(draw)) === 'taken') report.taken += 1;
        } catch (error) {
          fault =
            error instanceof Wrong
              ? { what: error.message, input: error.input }
              : {
                  what: error instanceof Error ? (error.stack ?? error.message) : String(error),
                  input: draw.input,
                };
        }
        const ms = performance.now() - begun;
        if (ms > LONGEST_MS && fault === null) {
          if (again) fault = { what: `it took ${String(Math.round(ms))} ms`, input: draw.input };
          else slow.push(n);
        }
        report.slowestMs = Math.max(report.slowestMs, Math.round(ms));
        report.cases += 1;
        if (fault === null) continue;
        faults += 1;
        tell({ target: name, number: n, what: fault.what, input: shown(fault.input) });
      }
    } finally {
      await session.close();
    }
  }
  // Two seconds of a clock on the wall can be somebody else's: what is slow twice is ours.
  for (const from of slow) {
    let isOurs = false;
    const found = (fault: Fault) => {
      if (fault.number !== from) return;
      isOurs = true;
      tell(fault);
    };
    await fuzzOne(target, { from, count: 1 }, options, found, true);
    if (!isOurs) report.slowOnce += 1;
  }
  report.seconds = Math.round((performance.now() - started) / 100) / 10;
  return report;
}

/** A seed for each case, by its number alone: what was drawn before does not matter. (FNV-1a.) */
function hashOf(seed: number, name: string, n: number): number {
  let hash = 0x811c9dc5;
  for (const char of `${String(seed)}:${name}:${String(n)}`) {
    hash = Math.imul(hash ^ char.charCodeAt(0), 0x01000193);
  }
  return hash >>> 0;
}
