// A random sample of mutants, and what it says of all of them.

export const NOT_DRAWN = 'not in the sample';

/** `count` of `ids` without repeats; the same ids in the same order and the same seed give the same sample. */
export function drawn(ids: readonly string[], count: number, seed: number): string[] {
  const pool = [...ids];
  const next = random(seed);
  const size = Math.min(count, pool.length);
  for (let i = 0; i < size; i += 1) {
    const j = i + Math.floor(next() * (pool.length - i));
    [pool[i], pool[j]] = [pool[j] ?? '', pool[i] ?? ''];
  }
  return pool.slice(0, size);
}

/** Mulberry32: uniform in [0, 1). */
function random(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), state | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 2 ** 32;
  };
}

/** Normal quantile of a two-sided 95 % interval. */
const Z = 1.959964;

/** Wilson's 95 % interval of a share, in percent. Source: Wilson (1927); no correction for a finite population. */
export function wilsonPercent(hits: number, of: number): [low: number, high: number] {
  const share = hits / of;
  const centre = (share + Z ** 2 / (2 * of)) / (1 + Z ** 2 / of);
  const half = (Z * Math.sqrt((share * (1 - share)) / of + Z ** 2 / (4 * of ** 2))) / (1 + Z ** 2 / of);
  return [100 * (centre - half), 100 * (centre + half)];
}
