import type { z } from 'zod';
import { shownJson, wellCut } from '../domain/solve/model/shown.ts';

/**
 * One reason why an input is not taken: where (JSON path), what stood there, what is wrong, what to do.
 * @property of what the place belongs to, as people call it: a club, a set, a file
 */
export type Refusal = { path: string; value: string; message: string; remedy: string; of?: string };

/** Wrong input or use. Commands end with exit code 2 on it; nothing has been changed. */
export class RefusedInput extends Error {
  readonly refusals: readonly Refusal[];
  constructor(what: string, refusals: readonly Refusal[]) {
    super(`${what}\n${refusals.map(refusalLine).join('\n')}`);
    this.name = 'RefusedInput';
    this.refusals = refusals;
  }
}

export function refusalLine(refusal: Refusal): string {
  const value = refusal.value === '' ? '' : ` = ${refusal.value}`;
  return `  ${refusal.path}${value}: ${refusal.message}. ${refusal.remedy}`;
}

/** In words alone, without a file's own keys: for one line of a list of what failed. */
export function saidInWords({
  message,
  refusals,
}: {
  message: string;
  refusals: readonly Refusal[];
}): string {
  const [head = ''] = message.split('\n');
  const said = refusals.map(
    (one) => `${one.of === undefined ? '' : `${one.of}: `}${one.message}. ${one.remedy}`,
  );
  return [head, ...said].join(' ');
}

/** A value as it is shown in a message: JSON, cut to 60 characters. */
export function shownValue(value: unknown): string {
  return value === undefined ? '(missing)' : shownJson(value);
}

/** The most of a key that a message shows. */
const KEY = 80;

/** JSON path in the usual spelling: `$.clubs[3].carry`. */
export function jsonPath(path: readonly PropertyKey[]): string {
  let text = '$';
  for (const step of path) {
    if (typeof step === 'number') text += `[${String(step)}]`;
    else {
      const key = wellCut(String(step), KEY);
      text += /^[A-Za-z_$][\w$]*$/.test(key) ? `.${key}` : `[${JSON.stringify(key)}]`;
    }
  }
  return text;
}

function valueAt(root: unknown, path: readonly PropertyKey[]): unknown {
  let here: unknown = root;
  for (const step of path) {
    if (here === null || typeof here !== 'object') return undefined;
    here = Object.hasOwn(here, step) ? (here as Record<PropertyKey, unknown>)[step] : undefined;
  }
  return here;
}

/** zod's issues in our words: at most `most` refusals, each with place, value and remedy. */
export function refusalsOf(error: z.ZodError, root: unknown, most = 10): Refusal[] {
  const all: Refusal[] = [];
  for (const issue of error.issues) {
    if (all.length >= most) break;
    all.push(...refusalsOfIssue(issue, root, most));
  }
  return all.slice(0, most);
}

function refusalsOfIssue(issue: z.core.$ZodIssue, root: unknown, most: number): Refusal[] {
  const path = jsonPath(issue.path);
  const found = valueAt(root, issue.path);
  const value = shownValue(found);
  switch (issue.code) {
    case 'unrecognized_keys':
      return issue.keys.slice(0, most).map((key) => ({
        path: jsonPath([...issue.path, key]),
        value: shownValue(valueAt(root, [...issue.path, key])),
        message: `"${wellCut(key, KEY)}" is not a key that is known here`,
        remedy: 'Check its spelling or take it out.',
      }));
    case 'invalid_type':
      return [
        found === undefined
          ? {
              path,
              value,
              message: 'this is needed and is missing',
              remedy: `Add it (${expectedWord(issue.expected)}).`,
            }
          : {
              path,
              value,
              message: `must be ${expectedWord(issue.expected)}`,
              remedy: 'Correct the value, or leave the field out where it is not required.',
            },
      ];
    case 'invalid_value':
      return [
        {
          path,
          value,
          message:
            found === undefined ? 'this is needed and is missing' : 'this value is not one of those allowed',
          remedy: `Give ${issue.values.map((allowed) => JSON.stringify(allowed)).join(' or ')}.`,
        },
      ];
    case 'too_small':
      return [
        {
          path,
          value,
          message: `must be ${issue.inclusive === false ? 'above' : 'at least'} ${String(issue.minimum)}${lengthWord(issue.origin)}`,
          remedy: 'Correct the value, or leave the field out where it is not required.',
        },
      ];
    case 'too_big':
      return [
        {
          path,
          value,
          message: `must be ${issue.inclusive === false ? 'below' : 'at most'} ${String(issue.maximum)}${lengthWord(issue.origin)}`,
          remedy: 'Correct the value, or leave the field out where it is not required.',
        },
      ];
    default:
      return [{ path, value, message: issue.message, remedy: 'Correct the value.' }];
  }
}

function lengthWord(origin: string): string {
  if (origin === 'string') return ' characters long';
  if (origin === 'array') return ' entries long';
  return '';
}

function expectedWord(expected: string): string {
  const words: Record<string, string> = {
    object: 'an object {…}',
    array: 'a list […]',
    string: 'a text',
    number: 'a finite number',
    int: 'a whole number',
    boolean: 'true or false',
    tuple: 'a list of fixed length',
    record: 'an object {…}',
  };
  return Object.hasOwn(words, expected) ? (words[expected] ?? expected) : expected;
}
