export type Weighed = { value: number; weight: number };

/** Smallest value at which the weights up to it reach `share` of all; `values` is not empty, weights are above 0. */
export function lowerQuantile(values: readonly Weighed[], share: number): number {
  const sorted = [...values].sort((a, b) => a.value - b.value);
  const total = sorted.reduce((sum, { weight }) => sum + weight, 0);
  let reached = 0;
  for (const { value, weight } of sorted) {
    reached += weight;
    // A sum of halves and thirds may fall short of its share by a rounding.
    if (reached >= share * total * (1 - 1e-12)) return value;
  }
  return sorted.at(-1)?.value ?? Number.NaN;
}

/** The mirror image: largest value at which the weights from it upwards reach 1 − `share` of all. */
export function upperQuantile(values: readonly Weighed[], share: number): number {
  const mirrored = values.map(({ value, weight }) => ({ value: -value, weight }));
  return -lowerQuantile(mirrored, 1 - share);
}

/** Where half of the weight lies on either side; the middle of the two where it falls between them. */
export function weightedMedian(values: readonly Weighed[]): number {
  return (lowerQuantile(values, 0.5) + upperQuantile(values, 0.5)) / 2;
}
