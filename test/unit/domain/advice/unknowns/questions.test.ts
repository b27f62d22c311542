import { describe, expect, it } from 'vitest';
import type { BagFile } from '../../../../../src-main/contract/formats/bag-file.ts';
import { questionsOf, type Weigh } from '../../../../../src-main/domain/advice/unknowns/questions.ts';
import type { Varied } from '../../../../../src-main/domain/advice/unknowns/sampled.ts';
import { bagFile, viewOf, withClub, without } from '../../../../support/bags.ts';

const prices = [{ archetype: 'hybrid-22-t3', low: 30, likely: 50, high: 70 }];
const priced = bagFile({ prices });
const nothing: Weigh = () => ({ share: 0, stakeMinor: 0 });
const tooLong: Weigh = () => null;
const asked = (file: BagFile, weigh = tooLong) => {
  const view = viewOf(file);
  return questionsOf(view, weigh).map(({ ask, about, worth }) => {
    expect(ask).not.toMatch(/undefined|NaN/);
    return [about, worth] as const;
  });
};
const withoutSpeed = (file: BagFile): BagFile => {
  const { driverSpeed: _speed, ...player } = file.player;
  return { ...file, player };
};

describe('what is asked', () => {
  it('nothing of a usual bag with prices', () => {
    expect(asked(priced)).toEqual([]);
  });
  it('prices, where there are none', () => {
    const view = viewOf(bagFile());
    expect(questionsOf(view, nothing)).toEqual([
      { ask: view.words.questions.prices(), about: [], worth: 0.4, share: 0 },
    ]);
  });
  it('first which clubs there are, or a speed or a carry', () => {
    const { noClubs, nothingKnown } = viewOf(priced).words.questions;
    const first = (file: BagFile) => questionsOf(viewOf(file), nothing)[0]?.ask;
    expect(first(bagFile({ prices, clubs: [] }))).toBe(noClubs());
    expect(first(bagFile({ prices, clubs: [{ id: 'p', kind: 'putter' }] }))).toBe(noClubs());
    expect(asked(bagFile({ prices, clubs: [{ id: 'p', kind: 'putter' }] }))).toEqual([[[], 0.99]]);
    expect(asked(withoutSpeed(bagFile({ prices, clubs: [{ id: '7i', kind: 'iron' }] })))[0]).toEqual([
      [],
      0.99,
    ]);
    expect(first(withoutSpeed(bagFile({ prices, clubs: [{ id: '7i', kind: 'iron' }] })))).toBe(
      nothingKnown(),
    );
  });
  it('the loft or carry of a club that nothing places, unless nothing at all is placed', () => {
    const clubs = [...priced.clubs, { id: 'mystery', kind: 'hybrid' as const }];
    expect(asked({ ...priced, clubs })).toEqual([[['mystery'], 0.8]]);
    // A carry alone places a club, though it tells no speed.
    const carried = withoutSpeed(bagFile({ prices, clubs: [{ id: 'mystery', kind: 'hybrid', carry: 150 }] }));
    expect(viewOf(carried).model.driverSpeedMph).toBeNull();
    expect(asked(carried).map(([, worth]) => worth)).not.toContain(0.99);
    const lone = withoutSpeed(bagFile({ prices, clubs: [{ id: 'mystery', kind: 'hybrid' }] }));
    expect(asked(lone).map(([about]) => about)).not.toContainEqual(['mystery']);
  });
  it('a few carries, where all are modelled', () => {
    const clubs: BagFile['clubs'] = [
      { id: 'a', kind: 'iron', loftDeg: 33 },
      { id: 'b', kind: 'iron', loftDeg: 37 },
      { id: 'p', kind: 'putter' },
    ];
    expect(asked(bagFile({ prices, clubs }))).toEqual([[[], 0.7]]);
    expect(asked(bagFile({ prices, clubs: [{ ...clubs[0]!, carry: 129 }, ...clubs.slice(1)] }))).toEqual([]);
  });
  it('carries that do not go together', () => {
    expect(asked(withClub(priced, '8i', { carry: 136 }))).toContainEqual([['7i', '8i'], 0.6]);
    const long = questionsOf(viewOf(withClub(priced, 'driver', { carry: 222 })), nothing);
    expect(long.some(({ ask }) => ask.includes('222 yd') && /total with roll/.test(ask))).toBe(true);
    const { impossible } = viewOf(priced).words.questions;
    const tooFar = questionsOf(viewOf(withClub(priced, 'driver', { carry: 260 })), nothing);
    expect(tooFar.map(({ ask }) => ask.slice(0, 20))).toContainEqual(
      impossible({ club: 'driver', carry: '260 yd', most: '' }).slice(0, 20),
    );
  });
  it('what a driver carries of which a total is known', () => {
    const file = {
      ...priced,
      clubs: priced.clubs.map(({ carry, ...club }) =>
        club.id === 'driver' ? { ...club, total: 221 } : { ...club, ...(carry ? { carry } : {}) },
      ),
    };
    expect(asked(file)).toContainEqual([['driver'], 0.5]);
  });
  it('the shaft, where its flex is far from the speed', () => {
    expect(asked(withClub(priced, 'driver', { flex: 'L' }))).toContainEqual([['driver'], 0.2]);
  });
  it('a typical loft, where the carry hangs on it', () => {
    const file = {
      ...priced,
      clubs: priced.clubs.map((club) =>
        club.id === '8i' ? { id: '8i', kind: 'iron' as const, label: '8i' } : club,
      ),
    };
    expect(asked(file)).toContainEqual([['8i'], 0.3]);
    // Beyond what was hit as well as between.
    const last = {
      ...priced,
      clubs: priced.clubs.map((club) =>
        club.id === 'sw' ? { id: 'sw', kind: 'wedge' as const, label: 'sw' } : club,
      ),
    };
    expect(viewOf(last).ladder.at(-1)?.source).toBe('modelled');
    expect(asked(last)).toContainEqual([['sw'], 0.3]);
    expect(
      asked({ ...file, clubs: file.clubs.map((one) => (one.id === '8i' ? { ...one, carry: 119 } : one)) }),
    ).toEqual([]);
  });
  it('whether there is a putter, and which of two', () => {
    const { putter, twoPutters } = viewOf(priced).words.questions;
    expect(questionsOf(viewOf(without(priced, 'putter')), nothing)).toMatchObject([
      { ask: putter(), worth: 0.6 },
    ]);
    const two = { ...priced, clubs: [...priced.clubs, { id: 'old', kind: 'putter' as const }] };
    expect(questionsOf(viewOf(two), nothing)).toMatchObject([
      { ask: twoPutters(), about: ['putter', 'old'] },
    ]);
  });
  it('the two clubs of an unsure gap, by how sure it is', () => {
    // 17 yd where 16 is the limit, SD 3: P(z > 1/3) = .63.
    const near = withClub(priced, 'sw', { carry: 73 });
    const [[about, worth] = [[], 0]] = asked(near);
    expect(about).toEqual(['gw', 'sw']);
    expect(worth).toBeCloseTo(0.63 / 2, 2);
    expect(questionsOf(viewOf(near), tooLong)[0]?.ask).toMatch(/gw and sw/);
  });
  it('the clubs of a falling long end together, and not again as unsure pairs', () => {
    const each: [string, number][] = [
      ['5w', 156],
      ['4h', 153],
      ['5i', 149],
    ];
    const file = each.reduce((bag, [id, carry]) => withClub(bag, id, { carry }), priced);
    const about = asked(file).map(([clubs]) => clubs);
    expect(about).toContainEqual(['5w', '4h', '5i']);
    expect(about).not.toContainEqual(['5w', '4h']);
    // With launch data the cause is told, and nothing more is asked of it.
    const told = each.reduce((bag, [id], i) => withClub(bag, id, { ballSpeed: 120 + 2 * (3 - i) }), file);
    expect(asked(told).map(([clubs]) => clubs)).not.toContainEqual(['5w', '4h', '5i']);
  });
  it('launch and spin of a driver that is behind', () => {
    expect(asked(withClub(priced, 'driver', { carry: 176 }))).toContainEqual([['driver', '7i'], 0.55]);
  });
});

describe('worth', () => {
  const near = withClub(withClub(priced, 'sw', { carry: 73 }), '9i', { carry: 115.5 });
  const worthOf = (weigh: Weigh) => questionsOf(viewOf(near), weigh);
  it('is how often the plan would change times the money at stake, in major units', () => {
    const [first] = worthOf(() => ({ share: 0.4, stakeMinor: 2500 }));
    expect(first).toMatchObject({ worth: 10, share: 0.4 });
  });
  it('is never below the rank, where something is at stake, and a tenth of it where nothing is', () => {
    const rank = worthOf(tooLong)[0]?.worth ?? NaN;
    expect(worthOf(() => ({ share: 0.1, stakeMinor: 1 }))[0]?.worth).toBe(rank);
    expect(worthOf(nothing)[0]?.worth).toBeCloseTo(rank / 10, 12);
  });
  it('the most telling first, whatever they are weighed in', () => {
    const worths: Varied[] = [];
    const found = worthOf((varied) => {
      worths.push(varied);
      return { share: 0.5, stakeMinor: worths.length * 1000 };
    });
    expect(worths).toHaveLength(2);
    expect(found.map(({ worth }) => worth)).toEqual([10, 5]);
  });
  it('of the same worth by their words, not by their rank', () => {
    // 4.3 yd where 5 is the limit: less sure than 17 yd where 16 is.
    const view = viewOf(withClub(near, '9i', { carry: 114.7 }));
    const about = (weigh: Weigh) => questionsOf(view, weigh).map((one) => one.about[0]);
    expect(about(tooLong)).toEqual(['gw', '8i']);
    // The surest is weighed first.
    const weighed: Varied[] = [];
    questionsOf(view, (varied) => (weighed.push(varied), null));
    expect(weighed).toEqual([new Set(['gw', 'sw']), new Set(['8i', '9i'])]);
    expect(about(() => ({ share: 0.5, stakeMinor: 1000 }))).toEqual(['8i', 'gw']);
  });
  it('at most six are weighed; what settles no carry is not', () => {
    let weighed = 0;
    // Every pair of wedges and irons unsure: 17 yd apart, beyond 16.
    const ids = ['5i', '6i', '7i', '8i', '9i', 'pw', 'gw', 'sw'];
    const spread = ids.reduce((bag, id, i) => withClub(bag, id, { carry: 140 - 17 * i }), priced);
    const found = questionsOf(viewOf({ ...spread, prices: [] }), () => {
      weighed++;
      return { share: 0.5, stakeMinor: 1000 };
    });
    expect(found.length).toBeGreaterThan(7);
    expect(weighed).toBe(6);
    expect(found.filter(({ share }) => share > 0)).toHaveLength(6);
  });
});
