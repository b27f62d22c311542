import { describe, expect, it } from 'vitest';
import type { BagFile } from '../../../../../src-main/contract/formats/bag-file.ts';
import { changesOf } from '../../../../../src-main/domain/advice/plan/changes.ts';
import { settleFindings } from '../../../../../src-main/domain/advice/plan/settle.ts';
import type { Status } from '../../../../../src-main/domain/advice/plan/status.ts';
import { sideOf } from '../../../../../src-main/domain/advice/plan/side.ts';
import { swapsOf } from '../../../../../src-main/domain/advice/plan/swaps.ts';
import { cautionsOf } from '../../../../../src-main/domain/advice/cautions.ts';
import { bagFile, preparedOf, withClub, without } from '../../../../support/bags.ts';

const priced = (...archetypes: string[]): BagFile['prices'] =>
  archetypes.map((archetype) => ({ archetype, low: 30, likely: 45, high: 70 }));
const usual = bagFile({
  prices: priced('hybrid-25-t3', 'driver-10.5-t3', 'wedge-50-t3', 'wedge-60-t3', 'irons-5-pw-33-t3'),
});

/** The plan that leaves out some clubs of today's bag and buys some items. */
function planned(file: BagFile, out: string[], bought: string[] = []) {
  const { view, built, found } = preparedOf(file);
  const items = built.instance.items.filter(
    ({ id, origin }) => origin === 'owned' && !out.includes(id.replace('own:', '')),
  );
  const ids = [...items.map(({ id }) => id), ...bought];
  return { view, built, found, ids, changes: changesOf(view, built, ids) };
}
function swaps(
  file: BagFile,
  out: string[],
  bought: string[] = [],
  walkAway: Record<string, number | null> = {},
) {
  const { view, changes } = planned(file, out, bought);
  return swapsOf(view, changes, walkAway, 'now');
}
const sell = (likely: number) => ({ low: likely, likely, high: likely });

describe('a purchase’s price', () => {
  const hybrid = 'buy:hybrid-25-t3';
  const bought = (walkAway: Record<string, number | null>, more: Partial<BagFile> = {}) =>
    swaps({ ...usual, ...more }, ['5i'], [hybrid], walkAway)[0];
  it('is the club alone at its likely price', () => {
    expect(bought({}, { costs: { delivery: 6, regrip: 8 } })).toMatchObject({
      action: 'buy',
      archetype: 'hybrid-25-t3',
      inPlaceOf: ['5i'],
      priceMinor: 4500,
      stage: 'now',
    });
    expect(bought({})).not.toHaveProperty('walkAwayMinor');
  });
  it('walk-away: less delivery and grip, at most the band’s high, at least 0, null without a ceiling', () => {
    const costs = { delivery: 6, regrip: 8 };
    expect(bought({ [hybrid]: 6000 }, { costs })?.walkAwayMinor).toBe(6000 - 1400);
    expect(bought({ [hybrid]: 9000 }, { costs })?.walkAwayMinor).toBe(7000);
    expect(bought({ [hybrid]: 1000 }, { costs })?.walkAwayMinor).toBe(0);
    expect(bought({ [hybrid]: null }, { costs })?.walkAwayMinor).toBeNull();
  });
});

describe('why a purchase', () => {
  const why = (file: BagFile, out: string[], bought: string) => swaps(file, out, [bought])[0]?.why;
  it('fills a wide gap of today’s ladder: what was, and what is above and below it', () => {
    const gappy = without(usual, '5i', '4h'); // 177 to 138
    const text = why(gappy, [], 'buy:hybrid-25-t3');
    expect(text).toMatch(/goes between 5w and 6i: 39 yd becomes about \d+ yd and \d+ yd/);
    const [above, below] = [...(text?.matchAll(/(\d+) yd/g) ?? [])].slice(1).map((match) => Number(match[1]));
    expect(Math.abs((above ?? 0) + (below ?? 0) - 39)).toBeLessThanOrEqual(1);
  });
  it('fills the gap that it falls into, where there are more', () => {
    // 177 to 138 and 109 to 80: a 50° wedge carries about 90.
    const two = without(usual, '5i', '4h', 'pw', 'gw');
    expect(why(two, [], 'buy:hybrid-25-t3')).toMatch(/between 5w and 6i: 39 yd/);
    expect(why(two, [], 'buy:wedge-50-t3')).toMatch(/between 9i and sw: 29 yd/);
    // Below them all it fills none.
    expect(why(two, [], 'buy:wedge-60-t3')).not.toMatch(/between/);
  });
  it('a putter takes a putter’s place', () => {
    const file = { ...usual, prices: priced('putter-3-t4'), choices: { changePutter: true } };
    expect(why(file, ['putter'], 'buy:putter-3-t4')).toMatch(/takes the place of putter/);
  });
  it('fills an unsure wide one as well', () => {
    const near = withClub(withClub(without(usual, 'gw'), 'pw', { carry: 98 }), 'sw', { carry: 81 });
    expect(why(near, [], 'buy:wedge-50-t3')).toMatch(/goes between pw and sw/);
  });
  it('forgives more than what it replaces, where that is below the least tier', () => {
    const blade = withClub(usual, '5i', { forgiveness: 1 });
    expect(why(blade, ['5i'], 'buy:hybrid-25-t3')).toMatch(/forgives more off centre than 5i/);
    const fine = withClub(usual, '5i', { forgiveness: 2 });
    expect(why(fine, ['5i'], 'buy:hybrid-25-t3')).toMatch(/takes the place of 5i/);
    // A wedge has no least tier.
    expect(why(withClub(usual, 'gw', { forgiveness: 1 }), ['gw'], 'buy:wedge-50-t3')).toMatch(
      /takes the place of gw/,
    );
  });
  it('gives the bag its longest or its shortest club', () => {
    expect(why(without(usual, 'driver'), [], 'buy:driver-10.5-t3')).toMatch(/longest club again/);
    expect(why(usual, [], 'buy:wedge-60-t3')).toMatch(/shortest full shot/);
    expect(why(withClub(usual, 'driver', { carry: 240 }), ['driver'], 'buy:driver-10.5-t3')).toMatch(
      /takes the place of driver|evens/,
    );
    const alone = bagFile({ clubs: [{ id: 'putter', kind: 'putter' }], prices: usual.prices });
    expect(why(alone, [], 'buy:driver-10.5-t3')).toMatch(/longest club again/);
  });
  it('of two beyond an end only the outer one is its end', () => {
    const file = {
      ...usual,
      prices: priced('driver-10.5-t3', 'fairway-18-t3', 'wedge-58-t3', 'wedge-60-t3'),
    };
    const whys = (owns: BagFile, ...bought: string[]) => swaps(owns, [], bought).map((swap) => swap.why);
    const [driver, wood] = whys(without(file, 'driver', '5w'), 'buy:driver-10.5-t3', 'buy:fairway-18-t3');
    expect(driver).toMatch(/longest club again/);
    expect(wood).toMatch(/evens the gaps/);
    const [upper, lower] = whys(file, 'buy:wedge-58-t3', 'buy:wedge-60-t3');
    expect(upper).toMatch(/evens the gaps/);
    expect(lower).toMatch(/shortest full shot/);
  });
  it('evens the gaps where it takes no place', () => {
    expect(why(usual, [], 'buy:hybrid-25-t3')).toMatch(/^The .+ evens the gaps around it\.$/);
    expect(why(usual, [], 'buy:hybrid-25-t3')).not.toMatch(/takes the place/);
  });
});

describe('a club that leaves', () => {
  const line = (file: BagFile, out: string[], clubId: string, bought: string[] = []) =>
    swaps(file, out, bought).find((swap) => swap.clubId === clubId);
  it('is dropped, or sold where a price is asked for', () => {
    expect(line(usual, ['gw'], 'gw')).toMatchObject({ action: 'drop', stage: 'now' });
    expect(line(usual, ['gw'], 'gw')).not.toHaveProperty('priceMinor');
    const sold = line(withClub(usual, 'gw', { sell: sell(20) }), ['gw'], 'gw');
    expect(sold).toMatchObject({ action: 'sell', priceMinor: 2000 });
    expect(sold?.why).toMatch(/brings about £20/);
    expect(line(withClub(usual, 'gw', { sell: sell(0) }), ['gw'], 'gw')?.action).toBe('drop');
  });
  it('of a whole set the price stands once, at its first club', () => {
    const set = (id: string) => ({ set: 'irons', ...(id === '8i' ? { sell: sell(15) } : {}) });
    const file = {
      ...withClub(withClub(usual, '8i', set('8i')), '9i', set('9i')),
      sets: [{ id: 'irons', sell: sell(80) }],
    };
    const whole = swaps(file, ['8i', '9i']);
    expect(whole.map(({ action, clubId, priceMinor }) => [action, clubId, priceMinor])).toEqual([
      ['sell', '8i', 8000],
      ['sell', '9i', undefined],
    ]);
    expect(whole[1]?.why).not.toMatch(/£/);
    // Of a set that is partly kept each brings its own.
    expect(swaps(file, ['8i'])).toMatchObject([{ action: 'sell', priceMinor: 1500 }]);
    expect(swaps(file, ['9i'])).toMatchObject([{ action: 'drop' }]);
  });
  it('of a set without a price brings nothing, whatever another set brings', () => {
    const sets = { ...withClub(withClub(usual, '8i', { set: 'a' }), '9i', { set: 'b' }) };
    const file = { ...sets, sets: [{ id: 'b', sell: sell(80) }, { id: 'a' }] };
    expect(swaps(file, ['8i', '9i'])).toMatchObject([
      { action: 'drop', clubId: '8i' },
      { action: 'sell', clubId: '9i', priceMinor: 8000 },
    ]);
    // Without a set it brings its own.
    expect(swaps(withClub(file, 'gw', { sell: sell(12) }), ['9i', 'gw'])).toMatchObject([
      { clubId: '9i', priceMinor: 8000 },
      { clubId: 'gw', priceMinor: 1200 },
    ]);
  });
  it('says whose job it was, or who is too near, or that only fourteen may go', () => {
    expect(line(usual, ['5i'], '5i', ['buy:hybrid-25-t3'])?.why).toMatch(/Its job goes to the/);
    const crowded = withClub(usual, '8i', { carry: 128 });
    expect(line(crowded, ['8i'], '8i')?.why).toMatch(/within 1 yd of 7i/);
    expect(line(crowded, ['7i'], '7i')?.why).toMatch(/within 1 yd of 8i/);
    // Of two crowded pairs its own.
    const twice = withClub(crowded, 'sw', { carry: 89 });
    expect(line(twice, ['sw'], 'sw')?.why).toMatch(/within 1 yd of gw/);
    expect(line(twice, ['5i'], '5i')?.why).toMatch(/costs nothing/);
    expect(line(usual, ['gw'], 'gw')?.why).toMatch(/costs nothing on this ladder/);
    const lobs = Array.from({ length: 3 }, (_, i) => ({
      id: `w${String(i)}`,
      kind: 'wedge' as const,
      loftDeg: 60,
      carry: 70 - 10 * i,
    }));
    const many = { ...usual, clubs: [...usual.clubs, ...lobs] };
    expect(many.clubs).toHaveLength(15);
    expect(line(many, ['gw'], 'gw')?.why).toMatch(/Only 14/);
    expect(line({ ...many, clubs: many.clubs.slice(0, 14) }, ['gw'], 'gw')?.why).not.toMatch(/Only 14/);
  });
});

describe('findings that only the plan settles', () => {
  const settled = (file: BagFile, out: string[], bought: string[] = [], status: Status = 'ok') => {
    const { view, found, changes } = planned(file, out, bought);
    return settleFindings(view, found, changes, status);
  };
  const crowded = withClub(usual, '8i', { carry: 128 });
  it('which of a crowded pair goes', () => {
    const [pair] = settled(crowded, ['8i']).filter(({ kind }) => kind === 'crowded-pair');
    expect(pair).toMatchObject({ verdict: 'drop', clubs: ['7i', '8i'] });
    expect(pair?.text).toMatch(/8i/);
    expect(settled(crowded, []).find(({ kind }) => kind === 'crowded-pair')?.verdict).toBe('keep');
  });
  it('all else is told beside a purchase as well', () => {
    const kinds = (bought: string[]) => settled(crowded, [], bought).map(({ kind }) => kind);
    expect(kinds(['buy:hybrid-25-t3'])).toContain('crowded-pair');
  });
  it('which clubs of too many go', () => {
    const lobs = Array.from({ length: 4 }, (_, i) => ({
      id: `w${String(i)}`,
      kind: 'wedge' as const,
      loftDeg: 60,
      carry: 70 - 10 * i,
    }));
    const many = { ...usual, clubs: [...usual.clubs, ...lobs] };
    const [count] = settled(many, ['gw', 'w3']).filter(({ kind }) => kind === 'count');
    expect(count).toMatchObject({ clubs: ['gw', 'w3'], verdict: 'drop' });
    expect(count?.text).toMatch(/gw/);
  });
  it('nothing needed is not said beside a purchase, and says so when something leaves', () => {
    const told = (...plan: [string[], string[]?, Status?]) =>
      settled(usual, ...plan).find(({ kind }) => kind === 'nothing-needed')?.text;
    expect(told([], [])).toMatch(/2027-05/);
    expect(told([], ['buy:hybrid-25-t3'])).toBeUndefined();
    expect(told(['gw'])).not.toBe(told([]));
    expect(told(['gw'])).toBeDefined();
  });
  it('nothing needed is not said while an open question decides what is worth buying', () => {
    const kinds = (status: Status) => settled(usual, [], [], status).map(({ kind }) => kind);
    expect(kinds('nothing-needed')).toContain('nothing-needed');
    expect(kinds('ask-first')).not.toContain('nothing-needed');
  });
});

describe('one way beside another', () => {
  it('has its money on both bases, what is still wrong, and the chance of its budget', () => {
    const file = {
      ...withClub(without(usual, '5i'), 'gw', { sell: sell(20) }),
      budget: { amount: 1000 },
    };
    const { view, built, ids } = planned(file, ['gw'], ['buy:hybrid-25-t3']);
    const side = sideOf(view, built, ids);
    expect(side).toMatchObject({ cashMinor: 4500, netMinor: 2500, chanceInBudget: 1 });
    expect(side.items).toEqual(ids);
    // The hybrid halves 24 yd; pitching to sand wedge is 20 where 16 is the limit.
    expect(side.stillWrong.map(({ longer, shorter }) => [longer.clubId, shorter.clubId])).toEqual([
      ['pw', 'sw'],
    ]);
    expect(side.penalty).toBeGreaterThan(0);
    expect(side.swaps.map(({ action }) => action)).toEqual(['buy', 'sell']);
  });
});

describe('cautions', () => {
  const cautions = (file: BagFile, bought: string[] = []) => {
    const { view, changes } = planned(file, [], bought);
    return { view, lines: cautionsOf(view, swapsOf(view, changes, {}, 'now')) };
  };
  it('pain says one thing alone', () => {
    const { view, lines } = cautions({ ...usual, player: { ...usual.player, pain: true } });
    expect(lines).toEqual([view.words.cautions.pain()]);
  });
  it('what is bought used has to be looked at; prices are only named where there are some', () => {
    const { view, lines } = cautions(usual, ['buy:hybrid-25-t3']);
    const { ranges, prices, usedClub, work, rules } = view.words.cautions;
    expect(lines).toEqual([ranges(), prices(), usedClub(), work(), rules()]);
    expect(cautions(bagFile()).lines).toEqual([ranges(), rules()]);
  });
});
