/** About the width of a letter of a chart's 12 px text; on the wide side, since fonts differ. */
export const LETTER_PX = 7.6;

/** The text, or as much of its beginning as there is room for, with a mark of what was cut. The table has it whole. */
export function shortened(text: string, roomPx: number): string {
  const letters = [...text];
  // A room that was made of so many letters holds them, whatever the last bit says.
  const most = Math.floor(roomPx / LETTER_PX + 1e-6);
  if (letters.length <= most) return text;
  return most < 2
    ? ''
    : `${letters
        .slice(0, most - 1)
        .join('')
        .trimEnd()}…`;
}

/**
 * Places labels apart: as near as they can be to where they are wanted, in the order given, each at least `stepPx`
 * after the one before, and within the ends where all of them fit there.
 * @param wanted rising.
 */
export function spread(wanted: readonly number[], stepPx: number, ends: readonly [number, number]): number[] {
  const [first, last] = ends;
  const places: number[] = [];
  for (const at of wanted) places.push(Math.max(at, first, (places.at(-1) ?? -Infinity) + stepPx));
  let below = Math.max(last, first + (wanted.length - 1) * stepPx);
  for (let i = places.length - 1; i >= 0; i--) {
    places[i] = Math.min(places[i] ?? 0, below);
    below = (places[i] ?? 0) - stepPx;
  }
  return places;
}

/** The index of the place nearest to a point along one axis; null where there is none. */
export function nearest(places: readonly number[], at: number): number | null {
  let best: number | null = null;
  places.forEach((place, i) => {
    if (best === null || Math.abs(place - at) < Math.abs((places[best] ?? Infinity) - at)) best = i;
  });
  return best;
}
