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
    ['my_7.iron', null],
    ['7._iron', '7i'],
    ['gap  wedge', 'gw'],
    ['gap._wedge', 'gw'],
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
  it('a driver and a putter have one whatever they are called', () => {
    expect(loftOf({ id: 'big', kind: 'driver' }, [])).toEqual({ loftDeg: 10.5, assumed: true });
    expect(loftOf({ id: 'flat', kind: 'putter' }, [])).toEqual({ loftDeg: 3, assumed: true });
  });
  it('only named clubs of known loft of the same set move it, the nearest of them', () => {
    const seven = { id: '7i', kind: 'iron' as const, set: 's' };
    const known = (id: string, loftDeg: number, set?: string) => ({
      id,
      kind: 'iron' as const,
      loftDeg,
      ...(set === undefined ? {} : { set }),
    });
    // Typical: 6-iron 30°, 7-iron 33°, 9-iron 41°.
    const shifted = (...others: ReturnType<typeof known>[]) => loftOf(seven, [seven, ...others])?.loftDeg;
    expect(shifted()).toBe(33);
    expect(shifted(known('9i', 39, 's'))).toBe(31);
    expect(shifted(known('9i', 39, 's'), known('6i', 29, 's'))).toBe(32);
    expect(shifted(known('6i', 29, 's'), known('9i', 39, 's'))).toBe(32);
    // The 8-iron, typically 37°, is nearer than the 5-iron, 26.5°.
    expect(shifted(known('5i', 25.5, 's'), known('8i', 35, 's'))).toBe(31);
    expect(shifted(known('6i', 25, 'other'), known('nameless', 20, 's'))).toBe(33);
    // Of two as near the first counts.
    expect(shifted(known('6i', 29, 's'), known('6i', 28, 's'))).toBe(32);
    const single = { id: '7i', kind: 'iron' as const };
    expect(loftOf(single, [single, known('6i', 25)])?.loftDeg).toBe(33);
  });
  it('says null where nothing tells', () => {
    expect(loftOf({ id: 'mystery', kind: 'hybrid' }, [])).toBeNull();
  });
});
