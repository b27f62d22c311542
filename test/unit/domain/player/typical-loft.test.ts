import { describe, expect, it } from 'vitest';
import { loftOf, shortName } from '../../../../src-main/domain/player/typical-loft.ts';

describe('shortName', () => {
  it.each([
    ['7i', '7i'],
    ['7 iron', '7i'],
    ['Iron 7', '7i'],
    ['7-iron', '7i'],
    ['3w', '3w'],
    ['3 Wood', '3w'],
    ['5 fairway wood', '5w'],
    ['4H', '4h'],
    ['4 hybrid', '4h'],
    ['PW', 'pw'],
    ['gap wedge', 'gw'],
    ['Sand Wedge', 'sw'],
    ['lob wedge', 'lw'],
    ['Eisen 7', '7i'],
    ['7er Eisen', '7i'],
    ['7er-Eisen', '7i'],
    ['Holz 5', '5w'],
    ['3er Holz', '3w'],
    ['Fairwayholz 5', '5w'],
    ['4er Hybrid', '4h'],
    ['Hybrid 4', '4h'],
    ['my favourite', null],
    ['Lieblingseisen', null],
    ['driver', null],
  ])('%s → %s', (text, name) => {
    expect(shortName(text)).toBe(name);
  });
});

describe('loftOf', () => {
  it('prefers the loft given', () => {
    expect(loftOf({ id: '7i', kind: 'iron', loftDeg: 29 }, [])).toEqual({ loftDeg: 29, assumed: false });
  });
  it('takes the typical loft of the name, and says so', () => {
    expect(loftOf({ id: 'x', label: '7 iron', kind: 'iron' }, [])).toEqual({ loftDeg: 33, assumed: true });
  });
  it('moves it with the nearest known club of the set', () => {
    const set = [
      { id: '7i', kind: 'iron' as const, loftDeg: 29, set: 's' },
      { id: 'pw', kind: 'iron' as const, loftDeg: 44, set: 's' },
      { id: '6i', kind: 'iron' as const, set: 's' },
    ];
    expect(loftOf(set[2]!, set)).toEqual({ loftDeg: 26, assumed: true });
  });
  it('says null where nothing tells', () => {
    expect(loftOf({ id: 'mystery', kind: 'hybrid' }, [])).toBeNull();
  });
});
