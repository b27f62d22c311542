import { expect, test } from 'vitest';
import { enterGoesOn, type EnterKey } from '../../../../src-renderer/parts/field/enter-goes-on.ts';

const enter: EnterKey = {
  key: 'Enter',
  shiftKey: false,
  ctrlKey: false,
  metaKey: false,
  altKey: false,
  isComposing: false,
};

test.each<[string, Partial<EnterKey>, number, number | 'send' | null]>([
  ['on to the next field', {}, 0, 1],
  ['on to the last', {}, 1, 2],
  ['in the last it sends', {}, 2, 'send'],
  ['back with Shift', { shiftKey: true }, 2, 1],
  ['no further back than the first', { shiftKey: true }, 0, 0],
  ['with Ctrl it sends from any', { ctrlKey: true }, 0, 'send'],
  ['with ⌘ too', { metaKey: true }, 1, 'send'],
  ['it takes a word of an input method, and goes nowhere', { isComposing: true }, 0, null],
  ['beside the fields it is the browser’s', {}, -1, null],
  ['another key is none of ours', { key: 'a' }, 0, null],
  ['Alt+Enter is none of ours', { altKey: true }, 0, null],
])('Enter: %s', (_, change, at, to) => {
  expect(enterGoesOn({ ...enter, ...change }, at, 3)).toBe(to);
});
