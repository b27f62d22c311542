import { describe, expect, it } from 'vitest';
import { longName, shortNamesOf } from '../../../../src-main/service/search/club-names.ts';
import {
  likeness,
  literalTerms,
  plain,
  threesOf,
  tradeTerms,
} from '../../../../src-main/service/search/words.ts';

const w = (word: string) => ({ word });
const c = (club: string) => ({ club });

describe('the trade’s shorthand', () => {
  it.each([
    ['7i', [c('7i')]],
    ['3W', [c('3w')]],
    ['PW', [c('pw')]],
    ['gap wedge', [c('gw')]],
    ['Gap-Wedges', [c('gw')]],
    ['sand wedge 56', [c('sw'), w('56')]],
    ['7 iron', [c('7i')]],
    ['7-irons', [c('7i')]],
    ['4 hybrid worn', [c('4h'), w('worn')]],
    ['5 wood', [c('5w')]],
    ['5woods', [c('5w')]],
    ['cheap lob wedge', [w('cheap'), c('lw')]],
    ['1w', [c('driver')]],
    ['Eisen 7', [c('7i')]],
    ['7er Eisen', [c('7i')]],
    ['Hölzer', [w('fairway')]],
    ['hybrids', [w('hybrid')]],
    ['woods', [w('fairway')]],
    ['p', [w('p')]], // one letter is a beginning, not a pitching wedge
    ['gap', [w('gap')]],
    ['wedge', [w('wedge')]],
    ['Pat Quill', [w('pat'), w('quill')]],
    ['22°', [w('22')]],
    ['10.5° driver', [w('10.5'), w('driver')]],
    ['', []],
    [' ,;“” ', []],
  ])('%j', (text, terms) => {
    expect(tradeTerms(text)).toEqual(terms);
  });
  it('the words as they stand keep what was typed', () => {
    expect(literalTerms('Gap wedges, Épsom!')).toEqual([w('gap'), w('wedges'), w('epsom')]);
  });
  it('is bounded: eight words of forty letters', () => {
    expect(literalTerms('x'.repeat(500))).toEqual([w('x'.repeat(40))]);
    expect(literalTerms('ab '.repeat(50))).toHaveLength(8);
  });
});

it('plain text has no accents, capitals or signs but inner points', () => {
  expect(plain('  Zoë’s “Épsom”\n10.5° … end. ')).toBe('zoe s epsom 10.5 end');
  expect(plain('東京 クラブ')).toBe('東京 クラフ'); // marks go, letters stay
});

it('likeness is Dice’s coefficient of the threes', () => {
  expect(threesOf('ab')).toEqual(['  a', ' ab', 'ab ']);
  // "hybrid" and "hybird": 7 threes each, of which "  h", " hy" and "hyb" are shared: 2·3 / 14.
  expect(likeness(threesOf('hybrid'), threesOf('hybird'))).toBeCloseTo(3 / 7, 12);
  expect(likeness(threesOf('hybrid'), threesOf('hybrid'))).toBe(1);
  expect(likeness(threesOf('hybrid'), threesOf('wedge'))).toBe(0);
});

describe('a club’s names by its loft', () => {
  const names = (kind: 'wedge' | 'hybrid' | 'fairway' | 'iron' | 'driver' | 'putter', loftDeg: number) => [
    ...shortNamesOf({ id: 'x', kind, loftDeg, forgiveness: 3, spinTier: 'mid', lengthIn: 36 }),
  ];
  it('are those of near typical lofts', () => {
    expect(names('wedge', 50)).toEqual([['gw', 0]]);
    expect(names('wedge', 48)).toEqual([
      ['pw', 2],
      ['gw', 2],
    ]);
    expect(names('hybrid', 22)).toEqual([['4h', 0]]);
    expect(names('fairway', 15)).toEqual([['3w', 0]]);
    expect(names('driver', 9)).toEqual([['driver', 0]]);
    expect(names('putter', 3)).toEqual([]);
    expect(names('wedge', 64)).toEqual([]);
  });
  it('are written out', () => {
    expect(['gw', '3w', '4h', '7i', 'driver'].map(longName)).toEqual([
      'gap wedge',
      '3 wood',
      '4 hybrid',
      '7 iron',
      'driver',
    ]);
  });
});
