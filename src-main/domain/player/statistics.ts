/**
 * Upper 5 % points of Student's t for 1–30 degrees of freedom.
 * Source: NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.2.
 */
const T95 = [
  6.314, 2.92, 2.353, 2.132, 2.015, 1.943, 1.895, 1.86, 1.833, 1.812, 1.796, 1.782, 1.771, 1.761, 1.753,
  1.746, 1.74, 1.734, 1.729, 1.725, 1.721, 1.717, 1.714, 1.711, 1.708, 1.706, 1.703, 1.701, 1.699, 1.697,
];
const Z95 = 1.6448536269514722;

/** t so that P(T ≤ t) = .95; beyond the table by the Cornish–Fisher expansion (Abramowitz & Stegun 26.7.5). */
export function t95(degreesOfFreedom: number): number {
  if (degreesOfFreedom < 1) return Infinity;
  const listed = T95[Math.floor(degreesOfFreedom) - 1];
  if (listed !== undefined) return listed;
  const z = Z95;
  const nu = degreesOfFreedom;
  return z + (z ** 3 + z) / (4 * nu) + (5 * z ** 5 + 16 * z ** 3 + 3 * z) / (96 * nu * nu);
}

/** Standard normal distribution function, |error| < 1.5e-7 (Abramowitz & Stegun 7.1.26). */
export function normalCdf(x: number): number {
  const z = Math.abs(x) / Math.SQRT2;
  const t = 1 / (1 + 0.3275911 * z);
  const poly =
    t * (0.254829592 + t * (-0.284496736 + t * (1.421413741 + t * (-1.453152027 + t * 1.061405429))));
  const erf = 1 - poly * Math.exp(-z * z);
  return x >= 0 ? (1 + erf) / 2 : (1 - erf) / 2;
}

/** Middle value; null for none. */
export function median(values: readonly number[]): number | null {
  if (values.length === 0) return null;
  const sorted = [...values].sort((a, b) => a - b);
  const middle = sorted.length >> 1;
  const upper = sorted[middle] ?? 0;
  return sorted.length % 2 === 1 ? upper : ((sorted[middle - 1] ?? 0) + upper) / 2;
}
