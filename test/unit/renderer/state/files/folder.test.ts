import { expect, test } from 'vitest';
import { folderOf, MOST_BAGS } from '../../../../../src-renderer/state/files/folder.ts';

const placed = (...paths: string[]) => paths.map((path) => ({ webkitRelativePath: path }));
const taken = (...paths: string[]) => {
  const { name, bags, aside } = folderOf(placed(...paths));
  return { name, bags: bags.map((bag) => bag.name), aside };
};

test('bag files are taken in by name, those of folders within too; the others are left aside and named', () => {
  expect(
    taken('Club/kay.json', 'Club/notes.txt', 'Club/ada.JSON', 'Club/juniors/bo.json', 'Club/.DS_Store'),
  ).toEqual({
    name: 'Club',
    bags: ['ada.JSON', 'juniors/bo.json', 'kay.json'],
    aside: ['.DS_Store', 'notes.txt'],
  });
});

test('what is hidden, or in a hidden folder, is left aside whatever it is called', () => {
  expect(taken('Club/.kay.json', 'Club/.old/ada.json', 'Club/a.json.bak')).toEqual({
    name: 'Club',
    bags: [],
    aside: ['.kay.json', '.old/ada.json', 'a.json.bak'],
  });
});

test('no more than come in together; each keeps its file', () => {
  const files = Array.from({ length: MOST_BAGS + 2 }, (_, i) => `Club/${String(1000 + i)}.json`);
  const { bags, aside } = folderOf(placed(...files));
  expect(bags).toHaveLength(MOST_BAGS);
  expect(bags[3]).toEqual({ file: { webkitRelativePath: 'Club/1003.json' }, name: '1003.json' });
  expect(aside).toEqual(['1500.json', '1501.json']);
});

test('an empty folder tells nothing, not even its name', () => {
  expect(folderOf([])).toEqual({ name: '', bags: [], aside: [] });
});
