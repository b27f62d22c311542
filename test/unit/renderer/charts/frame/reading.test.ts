import { describe, expect, test } from 'vitest';
import { readingAfter } from '../../../../../src-renderer/charts/frame/reading-keys.ts';
import { ReadingMark } from '../../../../../src-renderer/charts/frame/reading.svelte.ts';

describe('the keys of the reading mark', () => {
  test.each([
    ['ArrowRight', 3, 4, 4],
    ['ArrowLeft', 3, 2, 2],
    ['ArrowDown', 3, 4, 2],
    ['ArrowUp', 3, 2, 4],
    ['PageDown', 3, 8, 0],
    ['PageUp', 3, 0, 8],
    ['Home', 3, 0, 0],
    ['End', 3, 9, 9],
  ])('%s from %i: %i down a list, %i across', (key, at, down, across) => {
    expect(readingAfter(key, at, 10, 'down')).toBe(down);
    expect(readingAfter(key, at, 10, 'across')).toBe(across);
  });
  test('stops at the ends', () => {
    expect(readingAfter('ArrowDown', 9, 10, 'down')).toBe(9);
    expect(readingAfter('ArrowLeft', 0, 10, 'down')).toBe(0);
    expect(readingAfter('ArrowRight', 0, 1, 'across')).toBe(0);
  });
  test('begins at the nearer end, and Escape puts it away', () => {
    expect(readingAfter('ArrowDown', null, 10, 'down')).toBe(0);
    expect(readingAfter('ArrowUp', null, 10, 'down')).toBe(9);
    expect(readingAfter('Escape', 4, 10, 'down')).toBeNull();
  });
  test('leaves every other key alone, and all of them where there is nothing to read', () => {
    for (const key of ['Tab', 'Enter', ' ', 'a', '/'])
      expect(readingAfter(key, 3, 10, 'down')).toBeUndefined();
    expect(readingAfter('ArrowDown', null, 0, 'down')).toBeUndefined();
  });
});

describe('the mark', () => {
  test('says whether a key was its own', () => {
    const mark = new ReadingMark(() => 3);
    expect(mark.at).toBeNull();
    expect(mark.press('ArrowRight', 'across')).toBe(true);
    expect(mark.at).toBe(0);
    expect(mark.press('Enter', 'across')).toBe(false);
    expect(mark.at).toBe(0);
  });
  test('reads nothing when the figures it stood on are gone', () => {
    let count = 3;
    const mark = new ReadingMark(() => count);
    mark.keep(2);
    expect(mark.at).toBe(2);
    count = 2;
    expect(mark.at).toBeNull();
  });
});
