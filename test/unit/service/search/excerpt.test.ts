import { expect, it } from 'vitest';
import { excerpt } from '../../../../src-main/service/search/excerpt.ts';

const words = (count: number, word = 'word') => Array<string>(count).fill(word).join(' ');
const looking = (text: string, ...wanted: string[]) => excerpt(text, [wanted.map((word) => ({ word }))]);

it('a short text stands as it is, on one line', () => {
  expect(looking(' Grip:\n\n stronger ', 'grip')).toBe('Grip: stronger');
  expect(looking('', 'x')).toBe('');
});

it('a long one is cut to the first place that was found, at whole words before it', () => {
  const text = `${words(50)} the left Wríst hurts ${words(50, 'again')} wrist`;
  const cut = looking(text, 'wrist');
  expect(cut).toMatch(/^… word(?: word)+ the left Wríst hurts again.*…$/);
  expect(cut.indexOf('Wríst')).toBeLessThan(50);
  expect([...cut].length).toBeLessThanOrEqual(162);
});

it('where nothing stands as it was looked for, the beginning is shown', () => {
  const text = words(100);
  expect(looking(text, 'wrsit')).toBe(`${text.slice(0, 159)}…`);
  expect(excerpt(text, [[{ club: '7i' }]])).toBe(`${text.slice(0, 159)}…`);
});

it('letters of two halves are not cut in two', () => {
  expect(looking('\u{1F3CC}'.repeat(300), 'x').isWellFormed()).toBe(true);
});
