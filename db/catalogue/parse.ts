import { archetypeSchema } from '../../src-main/contract/formats/catalogue.ts';
import type { Archetype } from '../../src-main/contract/formats/catalogue.ts';

/** The `id` of an entry that may be anything, for a message; '' when it has none. */
function idText(entry: unknown): string {
  const id = typeof entry === 'object' && entry !== null && 'id' in entry ? entry.id : undefined;
  return typeof id === 'string' ? ` (${id})` : '';
}

/** What stands in the entry at a problem's path, as JSON, for a message. */
function valueText(entry: unknown, path: readonly PropertyKey[]): string {
  let value = entry;
  for (const key of path)
    value =
      typeof value === 'object' && value !== null ? (value as Record<PropertyKey, unknown>)[key] : undefined;
  return value === undefined ? 'nothing' : JSON.stringify(value);
}

/**
 * The archetypes of one catalogue file, in the file's order; `entries` is its parsed JSON.
 * Throws an Error that names the file, the entry counted from 1, the field, its value and the remedy.
 */
export function parseCatalogueFile(fileName: string, entries: unknown): Archetype[] {
  if (!Array.isArray(entries))
    throw new Error(`${fileName}: holds no list of archetypes; make it a JSON array.`);
  return entries.map((entry: unknown, index) => {
    const result = archetypeSchema.safeParse(entry);
    if (result.success) return result.data;
    const problems = result.error.issues.map(
      ({ path, message }) =>
        `${path.map(String).join('.') || 'entry'} is ${valueText(entry, path)}: ${message}`,
    );
    throw new Error(
      `${fileName}, entry ${String(index + 1)}${idText(entry)}: ${problems.join('; ')}. Correct this entry.`,
    );
  });
}

/**
 * All archetypes of several files in one list, ids unique across them: an id is the key of a price.
 * Throws an Error that names the id and both files when one is used twice.
 */
export function joinCatalogueFiles(
  files: readonly (readonly [fileName: string, entries: unknown])[],
): Archetype[] {
  const fileOfId = new Map<string, string>();
  return files.flatMap(([fileName, entries]) => {
    const archetypes = parseCatalogueFile(fileName, entries);
    for (const { id } of archetypes) {
      const earlier = fileOfId.get(id);
      if (earlier !== undefined)
        throw new Error(
          `${fileName}: id "${id}" is used already in ${earlier}; give one of them another id.`,
        );
      fileOfId.set(id, fileName);
    }
    return archetypes;
  });
}
