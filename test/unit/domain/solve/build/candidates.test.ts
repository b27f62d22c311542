import { describe, expect, it } from 'vitest';
import type { Archetype } from '../../../../../src-main/domain/bag/types.ts';
import { sevenIronCarryYd, usable } from '../../../../../src-main/domain/solve/build/candidates.ts';
import type { BagFile } from '../../../../../src-main/contract/formats/bag-file.ts';
import { bagFile, viewOf, withClub, without } from '../../../../support/bags.ts';

// What is offered to whom: CHECKVALUES §5 (common practice, no source).
const archetype = (kind: Archetype['kind'], loftDeg: number, more: Partial<Archetype> = {}): Archetype => ({
  id: 'x',
  kind,
  loftDeg,
  forgiveness: 3,
  spinTier: 'mid',
  lengthIn: 38,
  ...more,
});
const offered = (file: BagFile, one: Archetype) => {
  const { bag, model } = viewOf(file);
  return usable(one, bag, model);
};
const lofts = (file: BagFile, one: Archetype) => offered(file, one)?.clubs.map((club) => club.loftDeg) ?? [];
const at = (driverSpeed: number) => bagFile({}, { driverSpeed });

describe('lofts that suit the speed', () => {
  it.each([
    ['driver', 70, 12, 11.5],
    ['driver', 75, 10.5, 10],
    ['driver', 90, 9.5, 9],
    ['driver', 105, 8.5, 8],
    ['fairway', 70, 18, 17.5],
    ['fairway', 75, 16.5, 16],
    ['fairway', 85, 15, 14.5],
    ['fairway', 95, 13.5, 13],
  ] as const)('%s at %i mph: %d° and no less', (kind, mph, least, less) => {
    expect(lofts(at(mph), archetype(kind, least))).toEqual([least]);
    expect(offered(at(mph), archetype(kind, less))).toBeNull();
  });
  it('any hybrid, wedges up to 60°', () => {
    expect(lofts(at(70), archetype('hybrid', 16))).toEqual([16]);
    expect(lofts(at(90), archetype('wedge', 60))).toEqual([60]);
    expect(offered(at(90), archetype('wedge', 61))).toBeNull();
  });
  it('nothing where no speed is known', () => {
    const { driverSpeed: _speed, ...player } = bagFile().player;
    const clubs = [{ id: 'putter', kind: 'putter' as const }];
    expect(offered({ ...bagFile({ clubs }), player }, archetype('hybrid', 22))).toBeNull();
  });
});

describe('the longest iron', () => {
  it.each([
    [110, 27.5, 27],
    [120, 24.5, 24],
    [129, 24.5, 24],
    [135, 21.5, 21],
    [155, 19, 18.5],
    [170, 18, 17.5],
  ])('with a 7-iron of %i yd: %d° and no less', (carry, least, less) => {
    const file = withClub(bagFile(), '7i', { carry });
    expect(lofts(file, archetype('iron', least))).toEqual([least]);
    expect(offered(file, archetype('iron', less))).toBeNull();
  });
  it('goes by the number of a set’s member as well as by its loft', () => {
    const set = archetype('irons', 33, {
      members: [
        { kind: 'iron', number: '5', loftDeg: 26 },
        { kind: 'iron', number: '6', loftDeg: 24 },
        { kind: 'iron', number: '7', loftDeg: 29 },
        { kind: 'wedge', number: 'PW', loftDeg: 45 },
      ],
    });
    // 129 yd: the 6-iron is the longest, from 24.5°. The 5 is too long by number, this strong 6 by loft.
    const clubs = offered(bagFile(), set)?.clubs ?? [];
    expect(clubs.map(({ number, kind }) => [number, kind])).toEqual([
      ['7', 'iron'],
      ['PW', 'iron'],
    ]);
    expect(offered(bagFile(), { ...set, members: set.members?.slice(0, 2) ?? [] })).toBeNull();
  });
  it('a single club has no number', () => {
    expect(offered(bagFile(), archetype('iron', 26))?.clubs[0]).not.toHaveProperty('number');
  });
});

describe('sevenIronCarryYd', () => {
  const carry = (file: BagFile) => {
    const { bag, model } = viewOf(file);
    return sevenIronCarryYd(bag, model);
  };
  it('is the owned one’s', () => {
    expect(carry(withClub(bagFile(), '7i', { carry: 131 }))).toBe(131);
    // Whatever its loft: nothing is reckoned for a usual one of 33°.
    expect(carry(withClub(bagFile(), '7i', { carry: 131, loftDeg: 30 }))).toBe(131);
  });
  it('is that of a usual one of 33° where none was hit', () => {
    // Between the 6-iron of 29° and the 8-iron of 37°: half way from 138 to 119.
    expect(carry(without(bagFile(), '7i'))).toBeCloseTo(128.5, 9);
    const unhit = { ...bagFile(), clubs: [{ id: '7i', kind: 'iron' as const }] };
    expect(carry(unhit)).toBeGreaterThan(110);
    // A hybrid called 7 is no 7-iron.
    const hybrid = { ...without(bagFile(), '7i') };
    expect(
      carry({ ...hybrid, clubs: [{ id: '7h', kind: 'hybrid', label: '7i', carry: 99 }, ...hybrid.clubs] }),
    ).toBeCloseTo(128.5, 9);
  });
});

describe('beside a go-to club', () => {
  const trusted = withClub(bagFile(), '4h', { goTo: true });
  it('nothing stronger of its kind is offered', () => {
    expect(offered(trusted, archetype('hybrid', 21))).toBeNull();
    expect(lofts(trusted, archetype('hybrid', 22))).toEqual([22]);
    expect(lofts(bagFile(), archetype('hybrid', 21))).toEqual([21]);
  });
  it('other kinds are', () => {
    expect(lofts(trusted, archetype('fairway', 18))).toEqual([18]);
  });
  it('irons and wedges go by their own rule', () => {
    expect(lofts(withClub(bagFile(), '7i', { goTo: true }), archetype('iron', 26))).toEqual([26]);
    expect(lofts(withClub(bagFile(), 'sw', { goTo: true }), archetype('wedge', 50))).toEqual([50]);
  });
  it('one without a loft says nothing', () => {
    const clubs = [...bagFile().clubs, { id: 'mine', kind: 'hybrid' as const, carry: 150, goTo: true }];
    expect(lofts(bagFile({ clubs }), archetype('hybrid', 20))).toEqual([20]);
  });
});

it('a putter only where it may change, and it brings no ladder club', () => {
  expect(offered(bagFile(), archetype('putter', 3))).toBeNull();
  expect(offered(bagFile({ choices: { changePutter: true } }), archetype('putter', 3))?.clubs).toEqual([]);
});

it('the carry is the one the player model predicts, with head and range', () => {
  const low = offered(bagFile(), archetype('hybrid', 22, { spinTier: 'low' }))?.clubs[0];
  const mid = offered(bagFile(), archetype('hybrid', 22))?.clubs[0];
  // The owned 4-hybrid of 22° carries 162.
  expect(mid).toMatchObject({ kind: 'hybrid', carryYd: 162, source: 'interpolated' });
  expect(low?.carryYd).not.toBe(162);
});
