import { expect, test } from 'vitest';
import {
  fieldMessage,
  headMessage,
  lineMessage,
  sentence,
} from '../../../../../src-renderer/state/service/refusals.ts';

const refusal = { path: '$.x', value: '99', message: 'must be at most 54', remedy: 'Correct the value.' };

test('beside a field: what is wrong, and the remedy', () => {
  expect(
    fieldMessage({ kind: 'refused', message: 'This cannot be used:\n  $.x …', refusals: [refusal] }),
  ).toBe('Must be at most 54. Correct the value.');
  expect(fieldMessage({ kind: 'conflict', message: 'The records are locked.' })).toBe(
    'The records are locked.',
  );
});

test('above a list of refusals: the first line alone', () => {
  expect(
    headMessage({ kind: 'refused', message: 'This cannot be used:\n  $.x …', refusals: [refusal] }),
  ).toBe('This cannot be used:');
  expect(headMessage({ kind: 'bug', message: 'A fault\nof ours.' })).toBe('A fault\nof ours.');
});

test('a full stop is added once', () => {
  expect(sentence('the total is below the carry')).toBe('The total is below the carry.');
  expect(sentence('Is it?')).toBe('Is it?');
});

test('away from any field: where, what is wrong, and the remedy, without the file’s own keys', () => {
  const message = 'This cannot be used:\n  $.clubs[3].carry = 99: must be at most 54. Correct the value.';
  expect(
    lineMessage({
      kind: 'refused',
      message,
      refusals: [{ ...refusal, path: '$.clubs[3].carry', of: 'Driver' }],
    }),
  ).toBe('Driver: Carry: Must be at most 54. Correct the value.');
  expect(lineMessage({ kind: 'refused', message, refusals: [refusal] })).toBe(
    'Must be at most 54. Correct the value.',
  );
  expect(lineMessage({ kind: 'conflict', message: 'The records are locked.' })).toBe(
    'The records are locked.',
  );
});
