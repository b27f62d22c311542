/** Points (x, y) with x ascending; at least one. */
export type Points = readonly [Point, ...Point[]];
export type Point = readonly [x: number, y: number];

/** Straight lines between the points. Outside them the nearest value is held, or the end line goes on. */
export function piecewise(points: Points, x: number, outside: 'hold' | 'extend'): number {
  let left = points[0];
  let right = points[1] ?? left;
  for (let i = 2; i < points.length && x > right[0]; i += 1) {
    left = right;
    right = points[i] ?? right;
  }
  const width = right[0] - left[0];
  const share = width > 0 ? (x - left[0]) / width : 0;
  const used = outside === 'hold' ? Math.min(1, Math.max(0, share)) : share;
  return left[1] + used * (right[1] - left[1]);
}
