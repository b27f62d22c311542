import { inspect } from 'node:util';
import type { Draw } from './draw.ts';

/** Something that takes input from outside. */
export type Target = {
  name: string;
  /** Its part of all cases, as a weight. */
  weight: number;
  /** Opens it anew; closed and opened again after so many cases, so that a case can be played again. */
  open(): Promise<Session>;
  casesASession: number;
};

export type Session = {
  /** Gives it one input. @returns what became of it. @throws Wrong, or anything: a fault found. */
  run(draw: Draw): Promise<'taken' | 'refused'>;
  close(): Promise<void>;
};

/** A fault that was found: what is wrong, and the input that did it. */
export class Wrong extends Error {
  readonly input: unknown;
  constructor(what: string, input: unknown) {
    super(what);
    this.name = 'Wrong';
    this.input = input;
  }
}

/** An input for people, cut. */
export function shown(input: unknown): string {
  let text: string;
  try {
    text =
      typeof input === 'string'
        ? JSON.stringify(input)
        : JSON.stringify(input, (_key, value: unknown) =>
            typeof value === 'bigint' ||
            value === undefined ||
            (typeof value === 'number' && !Number.isFinite(value))
              ? String(value)
              : value,
          );
  } catch {
    text = inspect(input, { depth: 4, breakLength: 200 });
  }
  return text.length > 1500 ? `${text.slice(0, 1500)}… (${String(text.length)} characters)` : text;
}
