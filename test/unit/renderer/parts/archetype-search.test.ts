import { expect, test } from 'vitest';
import { loadCatalogue } from '../../../../db/catalogue/index.ts';
import { english } from '../../../../src-main/domain/advice/words/en.ts';
import { searchCatalogue } from '../../../../src-renderer/parts/prices/archetype-search.ts';

const catalogue = loadCatalogue().map((archetype) => ({ archetype, name: english.archetypeName(archetype) }));
const found = (typed: string, priced: string[] = []) =>
  searchCatalogue(catalogue, typed, new Set(priced)).map(({ archetype }) => archetype.id);

test('every word typed is in the name or the id', () => {
  expect(found('22 hybrid game')).toContain('hybrid-22-t3');
  expect(found('hybrid-22-t3')).toEqual(['hybrid-22-t3']);
  expect(found('22 HYB').every((id) => id.startsWith('hybrid-22'))).toBe(true);
  expect(found('no such club')).toEqual([]);
});

test('what is priced already is left out', () => {
  expect(found('hybrid-22-t3', ['hybrid-22-t3'])).toEqual([]);
});

test('nothing typed: the catalogue’s beginning, not all of it', () => {
  expect(found('').length).toBeGreaterThan(10);
  expect(found('').length).toBeLessThanOrEqual(60);
});
