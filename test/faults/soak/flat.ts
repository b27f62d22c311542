export type Sample = { atS: number; rss: number; heapUsed: number; handles: number };

export type Verdict = {
  /** Median memory of the last third over that of the first third, warm-up left out: 1 is flat. */
  rssRatio: number;
  heapRatio: number;
  handlesFirst: number;
  handlesLast: number;
  isFlat: boolean;
};

/** The part that is left out: caches and the undo log fill. */
const WARM_UP = 0.25;
const MOST_GROWTH = 1.1;
/** Connections that are just open. */
const HANDLES_TO_SPARE = 6;

/** @param samples in the order of time, at least eight. */
export function judgeFlat(samples: readonly Sample[]): Verdict {
  if (samples.length < 8) throw new Error(`${String(samples.length)} samples are too few to judge by`);
  const warm = samples.slice(Math.floor(samples.length * WARM_UP));
  const third = Math.floor(warm.length / 3);
  const [first, last] = [warm.slice(0, third), warm.slice(-third)];
  const ratio = (of: (sample: Sample) => number) => median(last.map(of)) / median(first.map(of));
  const rssRatio = ratio(({ rss }) => rss);
  const heapRatio = ratio(({ heapUsed }) => heapUsed);
  const handlesFirst = median(first.map(({ handles }) => handles));
  const handlesLast = median(last.map(({ handles }) => handles));
  const isFlat =
    rssRatio <= MOST_GROWTH && heapRatio <= MOST_GROWTH && handlesLast <= handlesFirst + HANDLES_TO_SPARE;
  return { rssRatio, heapRatio, handlesFirst, handlesLast, isFlat };
}

function median(values: number[]): number {
  const sorted = values.toSorted((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)] ?? Number.NaN;
}
