export const mean = (values: readonly number[]) => values.reduce((sum, v) => sum + v, 0) / values.length;

export const rms = (values: readonly number[]) => Math.sqrt(mean(values.map((v) => v * v)));

export const worst = (values: readonly number[]) => Math.max(...values.map(Math.abs));

/** How far `got` lies from `wanted`, in percent of `wanted`. */
export const percentOff = (got: number, wanted: number) => 100 * (got / wanted - 1);

/** Mulberry32: a small seeded generator of numbers in [0, 1), so that every run draws the same launches. */
export function seeded(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = state;
    t = Math.imul(t ^ (t >>> 15), t | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}
