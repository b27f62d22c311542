import { shownJson, wellCut } from './shown.ts';

/** Why an instance is refused: where, which value, what is wrong with it and what to do. */
export type Refusal = { path: string; value: unknown; message: string; remedy: string };

/** Refusals in the message; a hostile file could have a million. */
const TOLD = 100;

/** Thrown with every refusal found, never with the first alone. */
export class InstanceError extends Error {
  readonly refusals: Refusal[];

  constructor(refusals: Refusal[]) {
    const lines = refusals
      .slice(0, TOLD)
      .map((r) => `${r.path}: ${r.message} (${show(r.value)}). ${r.remedy}`);
    const more = refusals.length - lines.length;
    super([...lines, ...(more > 0 ? [`and ${more} more`] : [])].join('\n'));
    this.name = 'InstanceError';
    this.refusals = refusals;
  }
}

/** Longest value shown in a message, in characters. */
const SHOWN = 80;

const show = (value: unknown): string => (value === undefined ? 'undefined' : shownJson(value, SHOWN));

/** `$.items[3].price`; keys that are not plain names are quoted. */
export const at = (path: string, key: string | number): string => {
  if (typeof key === 'number') return `${path}[${key}]`;
  const shown = wellCut(key, SHOWN);
  return /^[A-Za-z_$][\w$]*$/.test(shown) ? `${path}.${shown}` : `${path}[${JSON.stringify(shown)}]`;
};
