import { createHash } from 'node:crypto';
import { cpus, loadavg, totalmem } from 'node:os';

/** Times of one bench in milliseconds; everything else says what they were taken on. */
export type BenchResult = {
  name: string;
  /** How many times were taken, one for each input or round. */
  n: number;
  minMs?: number;
  medianMs: number;
  p95Ms: number;
  maxMs: number;
  /** The same in processor time of all threads, which a busy machine lengthens less. */
  processorMs?: { median: number; p95: number; max: number };
  /** How many times the processor time HiGHS took in the same run, on the same instances: the median over them. */
  ratioToHighs?: number;
  /** What that ratio was taken on. `atLeast`: HiGHS was stopped before the end of some curve, so it is a lower bound. */
  highs?: { instances: number; points: number; medianMs: number; from: number; to: number; atLeast: boolean };
  /** The spread of the inputs, in words. */
  inputs?: string;
  /** Most memory that a process of its own held for all answers to the slowest input. */
  peakRssMb?: number;
  /** A digest of the answers, taken outside the timing: equal between runs and machines. */
  checksum?: string;
};

export type Machine = {
  cpu: string;
  cores: number;
  memoryGb: number;
  node: string;
  platform: string;
  /** Mean number of processes wanting a core over the last minute; above `cores`, times are longer than on a quiet machine. */
  loadBefore: number;
  loadAfter: number;
};

export const load = (): number => Math.round((loadavg()[0] ?? 0) * 100) / 100;

export const machine = (loadBefore: number): Machine => ({
  cpu: cpus()[0]?.model.trim() ?? 'unknown',
  cores: cpus().length,
  memoryGb: Math.round(totalmem() / 2 ** 30),
  node: process.version,
  platform: `${process.platform} ${process.arch}`,
  loadBefore,
  loadAfter: load(),
});

const round = (ms: number): number => Math.round(ms * 1000) / 1000;

/** The value that `share` of the sorted list does not exceed (nearest rank). */
export const rank = (sorted: readonly number[], share: number): number =>
  sorted[Math.max(0, Math.ceil(share * sorted.length) - 1)] ?? Number.NaN;

export type Times = { clockMs: number[]; processorMs: number[] };

export function timesOf({
  clockMs,
  processorMs,
}: Times): Pick<BenchResult, 'n' | 'minMs' | 'medianMs' | 'p95Ms' | 'maxMs' | 'processorMs'> {
  const at = (times: readonly number[], share: number): number => {
    const sorted = [...times].sort((a, b) => a - b);
    return round(rank(sorted, share));
  };
  return {
    n: clockMs.length,
    minMs: at(clockMs, 0),
    medianMs: at(clockMs, 0.5),
    p95Ms: at(clockMs, 0.95),
    maxMs: at(clockMs, 1),
    processorMs: { median: at(processorMs, 0.5), p95: at(processorMs, 0.95), max: at(processorMs, 1) },
  };
}

/** Processor time of all threads, user and system, since `since`. */
export function processorMsSince(since: NodeJS.CpuUsage): number {
  const { user, system } = process.cpuUsage(since);
  return (user + system) / 1000;
}

/** Runs once for each input, timed one by one; the answers are kept for what comes after the timing. */
export function timeEach<In, Out>(
  inputs: readonly In[],
  run: (input: In) => Out,
): { times: Times; answers: Out[] } {
  const times: Times = { clockMs: [], processorMs: [] };
  const answers: Out[] = [];
  for (const input of inputs) {
    const since = process.cpuUsage();
    const start = performance.now();
    const answer = run(input);
    times.clockMs.push(performance.now() - start);
    times.processorMs.push(processorMsSince(since));
    answers.push(answer);
  }
  return { times, answers };
}

export const digest = (answers: unknown): string =>
  createHash('sha256').update(JSON.stringify(answers)).digest('hex').slice(0, 12);

/** Least, median and most of a list of counts, in words. */
export function spread(what: string, counts: readonly number[]): string {
  const sorted = [...counts].sort((a, b) => a - b);
  return `${what} ${String(rank(sorted, 0))}–${String(rank(sorted, 0.5))}–${String(rank(sorted, 1))}`;
}

const COLUMNS = ['bench', 'n', 'min ms', 'median ms', 'p95 ms', 'max ms', '× HiGHS', 'checksum'];

/** The results as a table, each followed by its inputs; least–median–most. */
export function table(about: Machine, results: readonly BenchResult[]): string {
  const rows = results.map((result) => [
    result.name,
    String(result.n),
    ...[result.minMs, result.medianMs, result.p95Ms, result.maxMs].map((ms) =>
      ms === undefined ? '' : ms.toFixed(2),
    ),
    result.ratioToHighs === undefined
      ? ''
      : `${result.highs?.atLeast === true ? '≥ ' : ''}${String(result.ratioToHighs)}`,
    result.checksum ?? '',
  ]);
  const widths = COLUMNS.map((name, i) => Math.max(name.length, ...rows.map((row) => row[i]?.length ?? 0)));
  const line = (cells: readonly string[]): string =>
    cells
      .map((cell, i) => (i === 0 ? cell.padEnd(widths[i] ?? 0) : cell.padStart(widths[i] ?? 0)))
      .join('  ')
      .trimEnd();
  const lines = results.flatMap((result, i) => [
    line(rows[i] ?? []),
    ...notesOf(result).map((x) => `    ${x}`),
  ]);
  return [
    `${about.cpu}, ${String(about.cores)} cores, ${String(about.memoryGb)} GB, Node ${about.node}, ${about.platform}`,
    `load ${String(about.loadBefore)} before, ${String(about.loadAfter)} after${
      about.loadBefore > about.cores / 2 ? ': not a quiet machine, times are too long' : ''
    }`,
    '',
    line(COLUMNS),
    ...lines,
  ].join('\n');
}

function notesOf({ inputs, processorMs, highs, peakRssMb }: BenchResult): string[] {
  const notes = inputs === undefined ? [] : [inputs];
  if (processorMs) {
    const [median, p95, max] = [processorMs.median, processorMs.p95, processorMs.max].map((ms) =>
      ms.toFixed(2),
    );
    notes.push(`processor time: median ${median ?? ''} ms, p95 ${p95 ?? ''}, max ${max ?? ''}`);
  }
  if (highs) {
    notes.push(
      `HiGHS: ${String(highs.instances)} of the inputs, ${String(highs.points)} points, median ${highs.medianMs.toFixed(0)} ms, ` +
        `ratios ${String(highs.from)}–${String(highs.to)}${highs.atLeast ? ', stopped early' : ''}`,
    );
  }
  if (peakRssMb !== undefined) notes.push(`most memory, all answers to the slowest: ${String(peakRssMb)} MB`);
  return notes;
}
