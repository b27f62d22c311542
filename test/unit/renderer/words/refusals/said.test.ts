import { expect, test } from 'vitest';
import { said } from '../../../../../src-renderer/words/de/refusals/said.ts';

test.each([
  ['must be at most 54', 'muss höchstens 54 sein'],
  ['must be above -0.5', 'muss über -0,5 liegen'],
  ['there are more than 100,000 rows', 'es sind mehr als 100.000 Zeilen'],
  ['This cannot be kept:', 'Das lässt sich nicht speichern:'],
  ['Round the amount.', 'Bitte den Betrag runden.'],
  ['Give "soft" or "firm".', 'Möglich: "soft" oder "firm".'],
  [
    '3 amounts of this bag are in GBP (budget, sale of 7i), and nothing is converted',
    'Beträge dieses Bags in GBP: 3 (Budget, Verkauf von 7i); nichts wird umgerechnet',
  ],
])('%s', (english, german) => {
  expect(said(english)).toBe(german);
});

test('several sentences in one text are said one by one, a value with a full stop included', () => {
  expect(said('There is no club "a. b: c" in this bag. Look at the bag again.')).toBe(
    'In diesem Bag ist kein Schläger „a. b: c“. Bitte das Bag noch einmal ansehen.',
  );
});

test('what is no sentence of the tables stays: names, keys of a file, and a text that is new', () => {
  expect(
    said(
      'Ada: This bag cannot be planned:\n  $.prices[0].archetype = "x": the catalogue has no such archetype. Give the id of one that the catalogue lists; near it: a, b.',
    ),
  ).toBe(
    'Ada: Für dieses Bag lässt sich kein Plan rechnen:\n  $.prices[0].archetype = "x": im Katalog ist kein solcher Schläger. Bitte die Kennung eines Schlägers aus dem Katalog angeben; ähnlich: a, b.',
  );
  expect(
    said(
      'This bag cannot be planned: Old faithful: 15 clubs are marked go-to and 14 fit in a bag. Unmark those that may go.',
    ),
  ).toBe(
    'Für dieses Bag lässt sich kein Plan rechnen: Old faithful: 15 Schläger sind als Lieblinge markiert, und 14 passen in ein Bag. Bitte die Markierung bei denen wegnehmen, die gehen dürfen.',
  );
  expect(said('The moon is full. Wait.')).toBe('The moon is full. Wait.');
  expect(said('')).toBe('');
});

test('a long text of many sentences, none of them known, is given back at once', () => {
  const text = 'Nobody knows this. '.repeat(200);
  expect(said(text)).toBe(text);
});
