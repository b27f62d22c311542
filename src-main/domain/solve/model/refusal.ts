/** Why an instance is refused: where, which value, what is wrong with it and what to do. */
export type Refusal = { path: string; value: unknown; message: string; remedy: string };

/** Thrown with every refusal found, never with the first alone. */
export class InstanceError extends Error {
  readonly refusals: Refusal[];

  constructor(refusals: Refusal[]) {
    super(refusals.map((r) => `${r.path}: ${r.message} (${show(r.value)}). ${r.remedy}`).join('\n'));
    this.name = 'InstanceError';
    this.refusals = refusals;
  }
}

/** Longest value shown in a message, in characters. */
const SHOWN = 80;

const show = (value: unknown): string => {
  const text =
    typeof value === 'string' || Array.isArray(value) || (typeof value === 'object' && value !== null)
      ? (JSON.stringify(value) ?? 'nothing')
      : String(value);
  return text.length > SHOWN ? `${text.slice(0, SHOWN)}…` : text;
};

/** `$.items[3].price`; keys that are not plain names are quoted. */
export const at = (path: string, key: string | number): string => {
  if (typeof key === 'number') return `${path}[${key}]`;
  return /^[A-Za-z_$][\w$]*$/.test(key) ? `${path}.${key}` : `${path}[${JSON.stringify(key)}]`;
};
