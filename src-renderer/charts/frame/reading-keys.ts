/** Of a list from top to bottom, or of places from left to right. */
export type Direction = 'down' | 'across';

/** A big step: about a tenth of a long chart. */
const PAGE = 5;

/**
 * Where the reading mark goes by a key: an index, null to put it away, undefined for a key that is none of its own.
 * @param at where it stands; null for nowhere, from where every key but Escape begins at the nearer end.
 */
export function readingAfter(
  key: string,
  at: number | null,
  count: number,
  direction: Direction,
): number | null | undefined {
  if (count === 0) return undefined;
  const by = stepOf(key, direction);
  if (key === 'Escape') return null;
  if (key === 'Home') return 0;
  if (key === 'End') return count - 1;
  if (by === undefined) return undefined;
  if (at === null) return by > 0 ? 0 : count - 1;
  return Math.min(count - 1, Math.max(0, at + by));
}

function stepOf(key: string, direction: Direction): number | undefined {
  // Across, up means more, as on a slider; down a list it means the line above.
  const upwards = direction === 'down' ? -1 : 1;
  switch (key) {
    case 'ArrowRight':
      return 1;
    case 'ArrowLeft':
      return -1;
    case 'ArrowUp':
      return upwards;
    case 'ArrowDown':
      return -upwards;
    case 'PageUp':
      return upwards * PAGE;
    case 'PageDown':
      return -upwards * PAGE;
    default:
      return undefined;
  }
}
