/** Yards to tenths of a yard, rounded half up; a converted 150.25 that lost its last bit still rounds up. */
export function toDy(yards: number): number {
  return Math.max(0, Math.floor(Math.round(yards * 1e7) / 1e6 + 0.5));
}
