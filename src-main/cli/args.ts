import { parseArgs, type ParseArgsConfig } from 'node:util';
import { UsageError } from './exit.ts';

/** What a command offers; `run` gets checked flags and returns the exit code. */
export type Command = {
  name: string;
  summary: string;
  usage: string;
  run(words: readonly string[]): Promise<number>;
};

type Options = NonNullable<ParseArgsConfig['options']>;

/** Flags and positionals of one command; an unknown flag or a missing value is wrong use. */
export function readFlags<const T extends Options>(
  words: readonly string[],
  options: T,
  positionals = false,
) {
  try {
    return parseArgs({ args: [...words], options, allowPositionals: positionals, strict: true });
  } catch (error) {
    throw new UsageError(error instanceof Error ? error.message : String(error));
  }
}

/** `--today YYYY-MM-DD`, or the machine's date. */
export function dayOf(text: string | undefined): string {
  if (text === undefined) {
    const now = new Date();
    const two = (value: number) => String(value).padStart(2, '0');
    return `${String(now.getFullYear())}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
  }
  const day = /^\d{4}-\d{2}-\d{2}$/.test(text) ? new Date(`${text}T00:00:00Z`) : new Date(Number.NaN);
  if (Number.isNaN(day.getTime()) || day.toISOString().slice(0, 10) !== text) {
    throw new UsageError(`--today ${text} is no date. Write it as YYYY-MM-DD.`);
  }
  return text;
}
