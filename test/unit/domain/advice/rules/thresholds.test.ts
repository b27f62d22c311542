import { describe, expect, it } from 'vitest';
import { bend } from '../../../../../src-main/domain/advice/rules/gaps/bend.ts';
import { crowdedPair } from '../../../../../src-main/domain/advice/rules/gaps/crowded-pair.ts';
import { driverBehindIrons } from '../../../../../src-main/domain/advice/rules/clubs/driver-behind-irons.ts';
import { firmGround } from '../../../../../src-main/domain/advice/rules/gaps/firm-ground.ts';
import { hardFromTheDeck } from '../../../../../src-main/domain/advice/rules/clubs/hard-from-the-deck.ts';
import { longEndFallsOff } from '../../../../../src-main/domain/advice/rules/gaps/long-end-falls-off.ts';
import { oneLength } from '../../../../../src-main/domain/advice/rules/clubs/one-length.ts';
import { wedgeShortage } from '../../../../../src-main/domain/advice/rules/gaps/wedge-shortage.ts';
import { wedgeSurplus } from '../../../../../src-main/domain/advice/rules/gaps/wedge-surplus.ts';
import type { BagFile } from '../../../../../src-main/contract/formats/bag-file.ts';
import { bagFile, viewOf, withClub, without } from '../../../../support/bags.ts';

// Both sides of each threshold, near enough that half or double of it would fail. `npm run mutate:rules` proves it.
type Changes = Partial<BagFile['clubs'][number]>;
const each = (file: BagFile, changes: Record<string, Changes>) =>
  Object.entries(changes).reduce((bag, [id, change]) => withClub(bag, id, change), file);

it('crowded-pair keeps until the plan is known', () => {
  expect(crowdedPair(viewOf(withClub(bagFile(), '8i', { carry: 128 })))[0]?.verdict).toBe('keep');
});

it('driver-behind-irons: 7 % is inside, 12 % is not', () => {
  const at = (carry: number) => driverBehindIrons(viewOf(withClub(bagFile(), 'driver', { carry })));
  expect([at(186).length, at(176).length]).toEqual([0, 1]);
});

it('firm-ground: 9 yd is close, 13 yd is not', () => {
  const at = (carry: number) =>
    firmGround(viewOf(withClub(bagFile({}, { ground: 'firm' }), '5w', { carry })));
  expect([at(192).length, at(188).length]).toEqual([1, 0]);
});

it('hard-from-the-deck: at any speed above a handicap of 20.4', () => {
  const at = (handicap: number) =>
    hardFromTheDeck(viewOf(withClub(bagFile({}, { driverSpeed: 96, handicap }), '5w', { loftDeg: 15 })));
  expect([at(20.4).length, at(20.5).length]).toEqual([0, 1]);
});

it('hard-from-the-deck: below 17° only', () => {
  const at = (loftDeg: number) =>
    hardFromTheDeck(viewOf(withClub(bagFile({}, { driverSpeed: 72 }), '5w', { loftDeg })));
  expect([at(16.5).length, at(17.5).length]).toEqual([1, 0]);
});

describe('long-end-falls-off', () => {
  const long = { '5w': { carry: 156 }, '4h': { carry: 153 }, '5i': { carry: 149 } };
  it('needs two pairs at the short end to know the usual gap', () => {
    const shortest = (...out: string[]) =>
      longEndFallsOff(viewOf(without(each(bagFile(), long), ...out))).length;
    // 7-iron and below: pairs 7–8 … gw–sw
    expect(shortest('8i', '9i', 'pw', 'gw', 'sw')).toBe(0);
    expect(shortest('pw', 'gw', 'sw')).toBe(1);
    // 6–7 and 7–8 are two.
    expect(shortest('9i', 'pw', 'gw', 'sw')).toBe(1);
  });
  it('takes half the usual gap for narrow, above the crowded limit too', () => {
    // Usual gap 14: 6.5 yd is narrow, though above 5.
    const steps = {
      '6i': { carry: 138 },
      '7i': { carry: 124 },
      '8i': { carry: 110 },
      '9i': { carry: 96 },
      pw: { carry: 82 },
      gw: { carry: 68 },
      sw: { carry: 54 },
    };
    const file = each(bagFile(), {
      ...steps,
      '5w': { carry: 163 },
      '4h': { carry: 156.5 },
      '5i': { carry: 150 },
    });
    expect(longEndFallsOff(viewOf(file))).toHaveLength(1);
  });
  it.each([
    [1.2, 'coach-first'],
    [1.5, 'drop'],
    [2, 'drop'],
  ])('ball speed rising %d mph a club: %s', (rise, verdict) => {
    const file = each(bagFile(), {
      '5w': { carry: 156, ballSpeed: 120 + 2 * rise },
      '4h': { carry: 153, ballSpeed: 120 + rise },
      '5i': { carry: 149, ballSpeed: 120 },
    });
    expect(longEndFallsOff(viewOf(file))[0]?.verdict).toBe(verdict);
  });
});

describe('one-length', () => {
  const lengths = (step: number, irons = 5) => {
    const file = bagFile({}, { driverSpeed: 85 });
    let left = irons;
    return {
      ...file,
      clubs: file.clubs.map((club) =>
        club.kind === 'iron' && left-- > 0 ? { ...club, lengthIn: 37 + (left % 2) * step } : club,
      ),
    };
  };
  it('0.2 in is one length, 0.4 in is not', () => {
    expect([oneLength(viewOf(lengths(0.2))).length, oneLength(viewOf(lengths(0.4))).length]).toEqual([1, 0]);
  });
  it('two irons are no set', () => {
    expect([oneLength(viewOf(lengths(0, 2))).length, oneLength(viewOf(lengths(0, 3))).length]).toEqual([
      0, 1,
    ]);
  });
});

it('wedge-shortage: an iron of 45° without a name is at the pitching wedge, one of 41° is not', () => {
  const at = (loftDeg: number) => {
    const file = without(bagFile(), 'gw', 'pw');
    const clubs = [...file.clubs, { id: 'x', kind: 'iron' as const, loftDeg, carry: 100 }];
    return wedgeShortage(viewOf({ ...file, clubs })).length;
  };
  expect([at(45), at(43), at(42)]).toEqual([1, 1, 0]);
});

it('wedge-surplus: a step of 2° is one too many', () => {
  const clubs = [...bagFile().clubs, { id: 'x', kind: 'wedge' as const, loftDeg: 57, carry: 75 }];
  expect(wedgeSurplus(viewOf({ ...bagFile(), clubs }))).toHaveLength(1);
});

it('bend: the smallest whole half degree that mends', () => {
  const measured = { shots: 12, carrySd: 4 };
  const file = withClub(withClub(bagFile(), 'gw', measured), 'sw', { carry: 86.6, ...measured });
  expect(bend(viewOf(file))[0]).toMatchObject({ clubs: ['gw'], evidence: [{ value: -BEND_DEG }] });
});

/** 3.4 yd need 1.6 yd more: the wedge model gives 1.2–1.5 yd a degree at this speed, of which bending keeps four fifths. */
const BEND_DEG = 1.5;
