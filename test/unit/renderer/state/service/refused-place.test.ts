import { afterEach, describe, expect, test } from 'vitest';
import { bagFileSchema, clubFileSchema } from '../../../../../src-main/contract/formats/bag-file.ts';
import { checkBagFile } from '../../../../../src-main/contract/formats/read-bag.ts';
import { RefusedInput, type Refusal } from '../../../../../src-main/contract/refusal.ts';
import { fileKey, refusedPlace } from '../../../../../src-renderer/state/service/refused-place.ts';
import { setLanguage } from '../../../../../src-renderer/words/index.ts';
import { bagFile } from '../../../../support/bags.ts';

afterEach(() => setLanguage('en'));

function refusalsOf(file: object): readonly Refusal[] {
  try {
    checkBagFile(file);
  } catch (error) {
    if (error instanceof RefusedInput) return error.refusals;
    throw error;
  }
  throw new Error('it was taken');
}

const place = (path: string, of?: string) => refusedPlace(of === undefined ? { path } : { path, of });

describe('the place of a refusal, in words', () => {
  test.each([
    ['$.player.handicap', 'Handicap', 'Handicap'],
    ['$.player.driverSpeed', 'Driver speed', 'Drivertempo'],
    ['$.player.frobnicate', 'The player', 'Der Spieler'],
    ['$.clubs[3].carry', 'Club 4: Carry', 'Schläger 4: Carry'],
    ['$.clubs[0].sell.low', 'Club 1: For sale: Low', null],
    ['$.clubs[3]', 'Club 4', 'Schläger 4'],
    ['$.course.holes[2].length', 'Hole 3: Length', 'Loch 3: Länge'],
    ['$.units.currency', 'Money in', 'Geld in'],
    ['$.budget.amount', 'Budget', 'Budget'],
    ['$ (line 3, column 5)', 'Line 3, letter 5', 'Zeile 3, Zeichen 5'],
    ['$ (end of file)', 'The end of the file', 'Das Ende der Datei'],
    ['cara.json: $.player.handicap', 'cara.json: Handicap', 'cara.json: Handicap'],
    ['row 4, carry', 'row 4: carry', 'Zeile 4: carry'],
    ['line 2', 'Line 2', 'Zeile 2'],
    ['mapping.columns.ballSpeed', 'Ball speed', null],
    ['mapping.clubs', 'Which club is which', null],
    ['$', null, null],
    ['$.bags[0][0]', null, null],
    ['$.constructor', null, null],
  ])('%s', (path, english, german) => {
    expect(place(path)).toBe(english);
    setLanguage('de');
    const said = place(path);
    if (german !== null) expect(said).toBe(german);
    else if (english !== null) expect(said).not.toBe(english);
  });

  test('a club goes by its name, a price by its archetype', () => {
    expect(place('$.clubs[3].carry', 'Old faithful')).toBe('Old faithful: Carry');
    expect(place('$.prices[0].low', 'hybrid-22-t3')).toBe('Price of hybrid-22-t3: Low');
    setLanguage('de');
    expect(place('$.prices[0].low', 'hybrid-22-t3')).toMatch(/^Preis von hybrid-22-t3: /);
  });

  test('no key of a bag file is left without words', () => {
    const { player, units, costs, budget, choices, ...whole } = bagFileSchema.shape;
    const inner = [player, units, costs.unwrap(), budget.unwrap(), choices.unwrap()];
    const keys = [...Object.keys(whole), ...inner.flatMap(({ shape }) => Object.keys(shape))];
    const unsaid = keys.filter((key) => place(`$.${key}`) === null);
    const ofClub = Object.keys(clubFileSchema.shape).filter((key) => place(`$.clubs[0].${key}`) === 'Club 1');
    expect([...unsaid, ...ofClub]).toEqual([]);
  });

  test('what a file is refused for names the club', () => {
    const file = bagFile();
    const clubs = file.clubs.map((club, i) => (i === 1 ? { ...club, label: 'Mine', carry: -3 } : club));
    const refusals = refusalsOf({ ...file, player: { ...file.player, handicap: 99 }, clubs });
    expect(refusals.map(refusedPlace)).toEqual(['Handicap', 'Mine: Carry']);
  });
});

test('whoever mends a file by hand sees its own key', () => {
  expect(fileKey('$.player.handicap')).toBe('player.handicap');
  expect(fileKey('cara.json: $.clubs[3].carry')).toBe('clubs[3].carry');
  expect(fileKey('$')).toBeNull();
  expect(fileKey('$ (line 3, column 5)')).toBeNull();
  expect(fileKey('row 4, carry')).toBeNull();
});
