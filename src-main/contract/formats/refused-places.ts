import { wellCut } from '../../domain/solve/model/shown.ts';
import type { Refusal } from '../refusal.ts';

/** What people know an entry of a list by, the first that it has. */
const NAMES: Readonly<Record<string, readonly string[]>> = {
  clubs: ['label', 'id'],
  sets: ['id'],
  prices: ['archetype'],
};
const LONGEST = 60;

/** Each refusal of a bag file with the name of the club, set or price that it is about, where the file tells it. */
export function withNames(refusals: readonly Refusal[], file: unknown): Refusal[] {
  return refusals.map((refusal) => {
    const [, list = '', at] = /^\$\.(\w+)\[(\d+)\]/.exec(refusal.path) ?? [];
    const name = Object.hasOwn(NAMES, list)
      ? nameIn(entryOf(file, list, Number(at)), NAMES[list])
      : undefined;
    return name === undefined ? refusal : { ...refusal, of: name };
  });
}

function entryOf(file: unknown, list: string, at: number): unknown {
  const entries = (file as Readonly<Record<string, unknown>>)[list];
  return Array.isArray(entries) ? (entries as unknown[])[at] : undefined;
}

function nameIn(entry: unknown, keys: readonly string[] = []): string | undefined {
  if (entry === null || typeof entry !== 'object') return undefined;
  for (const key of keys) {
    const name: unknown = Object.hasOwn(entry, key) ? (entry as Record<string, unknown>)[key] : undefined;
    if (typeof name !== 'string' || name.trim() === '') continue;
    return wellCut(name.trim(), LONGEST);
  }
  return undefined;
}
