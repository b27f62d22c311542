// Prints all that a user can read or see of the program on one page, so that it can be gone through with the question
// of DEVELOPERS.md: which existing program would a practitioner name on seeing this? (`npm run labels`)
import { readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { bagFileSchema } from '../src-main/contract/formats/bag-file.ts';
import { calls } from '../src-main/contract/calls/index.ts';
import { planFileSchema } from '../src-main/contract/formats/plan-file.ts';
import { english as advice } from '../src-main/domain/advice/words/en.ts';
import { english as report } from '../src-main/domain/report/words/en.ts';
import { en as window } from '../src-renderer/words/en/index.ts';
import { z } from 'zod';

const root = resolve(import.meta.dirname, '..');
const read = (file: string): string => readFileSync(join(root, file), 'utf8');

/** A text that is made from figures, with the names of what goes in. */
const withNames: unknown = new Proxy(() => '…', {
  get: (_target, key) => (typeof key === 'symbol' || key === 'toString' ? () => '…' : withNames),
  apply: () => '…',
});

function* textsOf(value: unknown, place: string): Generator<[string, string]> {
  if (typeof value === 'string') yield [place, value];
  else if (typeof value === 'function') {
    try {
      const made: unknown = (value as (...args: unknown[]) => unknown)(withNames, withNames, withNames);
      yield* textsOf(made, place);
    } catch {
      yield [place, (value as { toString(): string }).toString().replace(/\s+/g, ' ')];
    }
  } else if (typeof value === 'object' && value !== null) {
    for (const [key, one] of Object.entries(value))
      yield* textsOf(one, place === '' ? key : `${place}.${key}`);
  }
}

function section(title: string, rows: Iterable<[string, string]>): void {
  console.log(`\n## ${title}\n`);
  for (const [place, text] of rows) console.log(`- ${place}: ${text}`);
}

/** Every key of a JSON Schema, with its place. */
function* keysOf(schema: unknown, place: string): Generator<[string, string]> {
  if (typeof schema !== 'object' || schema === null) return;
  if (Array.isArray(schema)) {
    for (const one of schema) yield* keysOf(one, place);
    return;
  }
  for (const [key, value] of Object.entries(schema)) {
    if (key !== 'properties' || typeof value !== 'object' || value === null) yield* keysOf(value, place);
    else {
      for (const [name, inner] of Object.entries(value)) {
        yield [`${place}.${name}`, (inner as { type?: string }).type ?? ''];
        yield* keysOf(inner, `${place}.${name}`);
      }
    }
  }
}

console.log('# All that can be read or seen');
section('Window', textsOf(window, ''));
section('Findings, reasons, questions', textsOf(advice, ''));
section('Hand-over', textsOf(report, ''));
section(
  'Commands',
  Object.entries((JSON.parse(read('package.json')) as { scripts: Record<string, string> }).scripts)
    .filter(([name]) => !name.startsWith('pre'))
    .map(([name, run]) => [`npm run ${name}`, run]),
);
section(
  'Calls',
  Object.entries(calls).map(([name, { mode }]) => [name, mode]),
);
section(
  'Keys of the bag file',
  keysOf(z.toJSONSchema(bagFileSchema, { io: 'input', unrepresentable: 'any' }), '$'),
);
section(
  'Keys of the plan file',
  keysOf(z.toJSONSchema(planFileSchema, { io: 'input', unrepresentable: 'any' }), '$'),
);
section(
  'Colours',
  [...read('src-renderer/styles/tokens.css').matchAll(/(--[a-z-]+):\s*([^;]+);/g)].map(([, name, value]) => [
    name ?? '',
    value ?? '',
  ]),
);
section('Icon', [['src-renderer/public/icon.svg', read('src-renderer/public/icon.svg')]]);
