import { describe, expect, test } from 'vitest';
import { languageFor, localeFor } from '../../../../../src-renderer/state/format/language.ts';
import { setLanguage, words } from '../../../../../src-renderer/words/index.ts';

describe('the language of the window', () => {
  test.each([
    ['system', ['de-AT'], 'de'],
    ['system', ['fr-FR', 'de', 'en-GB'], 'de'],
    ['system', ['en-US', 'de'], 'en'],
    ['system', ['fr-FR', 'ja'], 'en'],
    ['system', [], 'en'],
    ['en', ['de-DE'], 'en'],
    ['de', ['en-GB'], 'de'],
  ] as const)('%s on a machine of %j is %s', (choice, locales, language) => {
    expect(languageFor(choice, locales)).toBe(language);
  });

  test.each([
    // The machine's own way of writing that language comes first.
    ['de', ['de-CH', 'de-DE'], 'de-CH'],
    ['en', ['de-DE', 'en-AU'], 'en-AU'],
    // Else the region's money and days, in the marks of the language.
    ['de', ['en-GB'], 'de-GB'],
    ['en', ['de-DE', 'de'], 'en-DE'],
    ['de', ['de'], 'de-DE'],
    ['en', [], 'en-GB'],
    // What is no locale is passed over.
    ['en', ['C', 'x_y'], 'en-GB'],
  ] as const)('%s on a machine of %j is written as in %s', (language, locales, locale) => {
    expect(localeFor(language, locales)).toBe(locale);
  });

  test('German figures have a comma where the machine is English', () => {
    expect(new Intl.NumberFormat(localeFor('de', ['en-GB'])).format(1234.5)).toBe('1.234,5');
  });
});

test('the texts turn to the language that is set', () => {
  expect(words.screens.ladder).toBe('Ladder');
  setLanguage('de');
  expect(words.screens.ladder).toBe('Leiter');
  setLanguage('en');
  expect(words.screens.ladder).toBe('Ladder');
});
