/** The cubic through height and climb at both ends of one step: as accurate as the step itself. */
export type Cubic = {
  readonly from: number;
  readonly fromSlope: number;
  readonly to: number;
  readonly toSlope: number;
  readonly length: number;
};

/** Value at `share` (0..1) of the step. */
export function cubicAt({ from, fromSlope, to, toSlope, length }: Cubic, share: number): number {
  const s = share;
  const rest = 1 - s;
  return (
    rest * rest * ((1 + 2 * s) * from + s * length * fromSlope) +
    s * s * ((3 - 2 * s) * to - rest * length * toSlope)
  );
}

/** Slope at `share` of the step, per unit of `length`. */
export function cubicSlopeAt({ from, fromSlope, to, toSlope, length }: Cubic, share: number): number {
  const s = share;
  return (
    (6 * s * (1 - s) * (to - from)) / length + (1 - s) * (1 - 3 * s) * fromSlope + s * (3 * s - 2) * toSlope
  );
}

/** Enough halvings to reach the last bit of a share of a step. */
const HALVINGS = 52;

/** The share between `low` and `high` at which `f` falls through zero; f(low) ≥ 0 > f(high). Bisection: cannot fail. */
export function fallsThroughZero(f: (share: number) => number, low: number, high: number): number {
  for (let i = 0; i < HALVINGS; i += 1) {
    const middle = (low + high) / 2;
    if (f(middle) >= 0) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
