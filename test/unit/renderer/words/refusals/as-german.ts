import { expect } from 'vitest';
import type { CallError } from '../../../../../src-main/contract/gate.ts';
import type { Refusal } from '../../../../../src-main/contract/refusal.ts';
import { de } from '../../../../../src-renderer/words/de/index.ts';
import { englishLeft } from './english-left.ts';

const { said } = de.refused;

/** Fails where a text of the service stays English in the German window, or loses a number or a quoted value. */
export function expectGerman(english: string): void {
  const german = said(english);
  expect({ english, left: german === english ? german : englishLeft(german) }).toEqual({
    english,
    left: null,
  });
  // What the JSON engine says of its own is left out; the place tells the line.
  if (english.includes('this is not JSON')) return;
  expect({ english, holds: numbers(german) }).toEqual({ english, holds: numbers(english) });
  for (const [, quoted = ''] of english.matchAll(/"([^"]*)"/g)) expect(german).toContain(quoted);
}

export function expectGermanRefusals(refusals: readonly Refusal[]): void {
  expect(refusals).not.toHaveLength(0);
  for (const { message, remedy } of refusals) {
    expectGerman(message);
    expectGerman(remedy);
  }
}

export function expectGermanError({ message, refusals = [] }: CallError): void {
  expectGerman(refusals.length > 0 ? (message.split('\n')[0] ?? '') : message);
  if (refusals.length > 0) expectGermanRefusals(refusals);
}

/** Sorted, whichever marks the language writes them with. */
function numbers(text: string): string[] {
  const found = text.match(/\d+(?:[.,]\d+)*/g) ?? [];
  return found.map((number) => number.replace(/[.,](?=\d{3}$)/, '').replace(',', '.')).sort();
}
