import Fuse from 'fuse.js';

/** Up to three ids that look like the one that was not found. */
export function nearestIds(wanted: string, ids: readonly string[]): string[] {
  return new Fuse(ids, { threshold: 0.4 }).search(wanted.slice(0, 60), { limit: 3 }).map((hit) => hit.item);
}
