import { describe, expect, it } from 'vitest';
import { excusedPairs } from '../../../../../src-main/domain/advice/question/excused.ts';
import { longEndFallsOff } from '../../../../../src-main/domain/advice/rules/gaps/long-end-falls-off.ts';
import { findAll } from '../../../../../src-main/domain/advice/rules/table.ts';
import type { BagFile } from '../../../../../src-main/contract/formats/bag-file.ts';
import { bagFile, viewOf, withClub, without } from '../../../../support/bags.ts';

// Invented: 5-wood, 4-hybrid and 5-iron within a few yards, the rest in usual steps. Common practice, no source.
const long: Record<string, Partial<BagFile['clubs'][number]>> = {
  '5w': { carry: 156 },
  '4h': { carry: 153 },
  '5i': { carry: 149 },
};
function fallen(more: Record<string, Partial<BagFile['clubs'][number]>> = {}): BagFile {
  let file = bagFile();
  for (const id of Object.keys(long)) file = withClub(file, id, { ...long[id], ...more[id] });
  return file;
}

describe('long-end-falls-off', () => {
  it('asks for ball speeds where there are none: cannot tell', () => {
    const [finding] = longEndFallsOff(viewOf(fallen()));
    expect(finding).toMatchObject({ verdict: 'ask', clubs: ['5w', '4h', '5i'] });
    expect(finding?.text).toMatch(/about 10 shots/);
  });
  it('says coach first when ball speed is flat', () => {
    const flat = fallen({ '5w': { ballSpeed: 121 }, '4h': { ballSpeed: 120.5 }, '5i': { ballSpeed: 120 } });
    expect(longEndFallsOff(viewOf(flat))).toMatchObject([{ verdict: 'coach-first', severity: 3 }]);
  });
  it('blames the make-up when ball speed rises', () => {
    const rising = fallen({
      '5w': { ballSpeed: 128, loftDeg: 20 },
      '4h': { ballSpeed: 124 },
      '5i': { ballSpeed: 120, loftDeg: 24 },
    });
    expect(longEndFallsOff(viewOf(rising))).toMatchObject([{ verdict: 'drop' }]);
  });
  it('asks for the rest where ball speed is known of two of three only', () => {
    for (const missing of ['5w', '4h', '5i']) {
      const speeds = { '5w': { ballSpeed: 128 }, '4h': { ballSpeed: 124 }, '5i': { ballSpeed: 120 } };
      const some = Object.fromEntries(Object.entries(speeds).filter(([id]) => id !== missing));
      expect(longEndFallsOff(viewOf(fallen(some))), missing).toMatchObject([{ verdict: 'ask', severity: 2 }]);
    }
  });
  it('fires without a driver too: the longest club then stands for nine tenths of one', () => {
    expect(longEndFallsOff(viewOf(without(fallen(), 'driver')))).toMatchObject([
      { clubs: ['5w', '4h', '5i'] },
    ]);
  });
  it('says coach first when shots scatter by more than half a usual gap', () => {
    const wild = fallen({
      '5w': { carrySd: 14, shots: 8 },
      '4h': { carrySd: 13, shots: 8 },
      '5i': { carrySd: 12, shots: 8 },
    });
    expect(longEndFallsOff(viewOf(wild))).toMatchObject([{ verdict: 'coach-first' }]);
  });
  it('asks to measure one odd pair of a set first', () => {
    let file = bagFile();
    for (const id of ['5i', '6i', '7i', '8i', '9i']) file = withClub(file, id, { set: 's' });
    const odd = withClub(withClub(file, '6i', { carry: 147 }), '5i', { carry: 149 });
    expect(longEndFallsOff(viewOf(odd))).toMatchObject([
      { verdict: 'ask', severity: 1, clubs: ['5i', '6i'] },
    ]);
  });
  it('an odd pair of which both lofts were measured is not one to measure', () => {
    const odd = (...measured: string[]) => {
      let file = bagFile();
      for (const id of ['5i', '6i', '7i', '8i', '9i'])
        file = withClub(file, id, { set: 's', ...(measured.includes(id) ? { loftMeasured: true } : {}) });
      return longEndFallsOff(viewOf(withClub(withClub(file, '6i', { carry: 147 }), '5i', { carry: 149 })));
    };
    expect([odd('5i').length, odd('6i').length, odd('5i', '6i').length]).toEqual([1, 1, 0]);
  });
  it('an odd pair that is not of one set, or of none, is no odd pair', () => {
    const odd = (...sets: [string?, string?]) => {
      const [five, six] = sets.map((set) => (set === undefined ? {} : { set }));
      const file = withClub(withClub(bagFile(), '6i', { carry: 147, ...six }), '5i', { carry: 149, ...five });
      return longEndFallsOff(viewOf(file)).length;
    };
    expect([odd('s', 's'), odd('s', 't'), odd('s'), odd(undefined, undefined)]).toEqual([1, 0, 0, 0]);
  });
  it('does not fire on a usual bag', () => {
    expect(longEndFallsOff(viewOf(bagFile()))).toEqual([]);
  });
  it('does not fire when the short end is crowded as well', () => {
    const short = withClub(fallen(), '8i', { carry: 127 });
    expect(longEndFallsOff(viewOf(short))).toEqual([]);
  });
  it('does not accuse on modelled carries', () => {
    const file = fallen();
    const clubs = file.clubs.map(({ carry, ...club }) =>
      ['5w', '4h'].includes(club.id) ? club : { ...club, ...(carry === undefined ? {} : { carry }) },
    );
    expect(longEndFallsOff(viewOf({ ...file, clubs }))).toEqual([]);
  });
  it('excuses its pairs and silences crowded and unsure on them', () => {
    const view = viewOf(fallen());
    expect(excusedPairs(view)).toEqual([
      ['5w', '4h'],
      ['4h', '5i'],
    ]);
    expect(
      findAll(view).filter((finding) => finding.kind === 'crowded-pair' || finding.kind === 'unsure-gap'),
    ).toEqual([]);
  });
});
