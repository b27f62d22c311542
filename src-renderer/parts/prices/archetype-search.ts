import type { CatalogueLine } from '../../state/prices/catalogue.svelte.ts';

/** As many as can be looked through in a list that opens below a field. */
export const MOST_SHOWN = 60;

/**
 * Archetypes whose name or id holds every word typed: "22 hy" finds the 22° hybrids. Those that are priced already
 * are left out.
 */
export function searchCatalogue(
  catalogue: readonly CatalogueLine[],
  typed: string,
  priced: ReadonlySet<string>,
): CatalogueLine[] {
  const words = typed
    .toLocaleLowerCase()
    .split(/[\s,]+/)
    .filter(Boolean);
  return catalogue
    .filter(({ archetype, name }) => {
      const text = `${name} ${archetype.id}`.toLocaleLowerCase();
      return !priced.has(archetype.id) && words.every((word) => text.includes(word));
    })
    .slice(0, MOST_SHOWN);
}
