import { expect, test } from 'vitest';
import { createEchoes } from '../../../../../src-renderer/state/service/echoes.ts';

test('each edit of ours has one echo, whichever comes first', () => {
  const echoes = createEchoes();
  echoes.sent('bags.updateClub');
  echoes.sent('bags.updateClub');
  expect(echoes.isEcho('bags.updateClub')).toBe(true);
  expect(echoes.isEcho('bags.updateClub')).toBe(true);
  expect(echoes.isEcho('bags.updateClub')).toBe(false);
});

test('edits of other windows are no echo', () => {
  const echoes = createEchoes();
  echoes.sent('bags.updateClub');
  expect(echoes.isEcho('bags.setBudget')).toBe(false);
});

test('a refused edit has none, and a lost connection none that is still out', () => {
  const echoes = createEchoes();
  echoes.sent('bags.setBudget');
  echoes.failed('bags.setBudget');
  expect(echoes.isEcho('bags.setBudget')).toBe(false);
  echoes.failed('bags.setBudget');
  echoes.sent('bags.setBudget');
  expect(echoes.isEcho('bags.setBudget')).toBe(true);
  echoes.sent('bags.setBudget');
  echoes.forget();
  expect(echoes.isEcho('bags.setBudget')).toBe(false);
});
