/** First cell that ends above the distance; the number of cells when none does. `edgesYd` rises, one more than cells. */
export function firstCellAbove(edgesYd: Float64Array, distanceYd: number): number {
  let low = 0;
  let high = edgesYd.length - 1;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((edgesYd[middle + 1] as number) > distanceYd) high = middle;
    else low = middle + 1;
  }
  return low;
}
