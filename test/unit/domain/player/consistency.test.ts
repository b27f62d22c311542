import { describe, expect, it } from 'vitest';
import { centredCarryYd } from '../../../../src-main/domain/player/carry-model.ts';
import { inconsistencies } from '../../../../src-main/domain/player/consistency.ts';
import { playerModel } from '../../../../src-main/domain/player/model.ts';
import type { BagFile } from '../../../../src-main/contract/formats/bag-file.ts';
import { bagFile, domainBag, withClub } from '../../../support/bags.ts';

const of = (file: BagFile) => {
  const bag = domainBag(file);
  return inconsistencies(bag, playerModel(bag));
};

describe('inconsistencies', () => {
  it('finds none in a usual bag', () => {
    expect(of(bagFile())).toEqual([]);
  });
  it('asks when a weaker loft carries further', () => {
    expect(of(withClub(bagFile(), '8i', { carry: 136 }))).toEqual([
      { kind: 'carry-rises-with-loft', clubs: ['7i', '8i'], byYd: 7 },
    ]);
  });
  it('lets a few yards pass', () => {
    expect(of(withClub(bagFile(), '8i', { carry: 134 }))).toEqual([]);
  });
  it('asks whether a drive beyond the speed is a total', () => {
    expect(of(withClub(bagFile(), 'driver', { carry: 222 }))).toMatchObject([
      { kind: 'maybe-total', clubs: ['driver'] },
    ]);
  });
  it('says when a drive is impossible for the speed', () => {
    expect(of(withClub(bagFile(), 'driver', { carry: 260 }))).toMatchObject([
      { kind: 'impossible-for-speed', clubs: ['driver'], carryYd: 260 },
    ]);
  });
  it('cannot tell beyond potential without a speed', () => {
    const file = withClub(bagFile(), 'driver', { carry: 260 });
    const { driverSpeed: _speed, ...player } = file.player;
    expect(of({ ...file, player })).toEqual([]);
  });
  it('a rise is asked about beyond 5 yd, not at it', () => {
    expect(of(withClub(bagFile(), '8i', { carry: 134.1 }))).toHaveLength(1);
  });
  it('compares with the nearest stronger club of the family, whatever the order of the bag', () => {
    const file = withClub(withClub(bagFile(), '8i', { carry: 100 }), '9i', { carry: 107 });
    const asked = [{ kind: 'carry-rises-with-loft', clubs: ['8i', '9i'], byYd: 7 }];
    expect(of(file)).toEqual(asked);
    expect(of({ ...file, clubs: [...file.clubs].reverse() })).toEqual(asked);
    // Twins in loft do not contradict each other.
    expect(of(withClub(file, '8i', { loftDeg: 41 }))).toEqual([]);
    // Nor does another family.
    expect(of(withClub(bagFile(), '5i', { carry: 175 }))).toEqual([]);
  });
  it('slow players do lose carry with less loft: no question below 14° of wood, 22° of hybrid, 24° of iron', () => {
    const pair = (kind: 'fairway' | 'hybrid' | 'iron', loftDeg: number) =>
      of({
        ...bagFile({
          clubs: [
            { id: 'strong', kind, loftDeg, carry: 140 },
            { id: 'weak', kind, loftDeg: loftDeg + 3, carry: 150 },
          ],
        }),
      }).length;
    expect([pair('fairway', 13.9), pair('fairway', 14)]).toEqual([0, 1]);
    expect([pair('hybrid', 21.9), pair('hybrid', 22)]).toEqual([0, 1]);
    expect([pair('iron', 23.9), pair('iron', 24)]).toEqual([0, 1]);
  });
  it('a putter contradicts nobody, whatever it carries', () => {
    const putter = { id: 'putter', kind: 'putter' as const, loftDeg: 3, carry: 200 };
    const clubs = [...bagFile().clubs.filter(({ kind }) => kind !== 'putter'), putter];
    expect(of(bagFile({ clubs }))).toEqual([]);
  });
  it('a club without a carry stands between no two, nor does one that no loft places', () => {
    const asked = [{ kind: 'carry-rises-with-loft', clubs: ['6i', '8i'], byYd: 7 }];
    const clubs: BagFile['clubs'] = [
      { id: '6i', kind: 'iron', loftDeg: 29, carry: 113 },
      { id: '7i', kind: 'iron', loftDeg: 33 },
      { id: 'old', kind: 'iron', carry: 90 },
      { id: '8i', kind: 'iron', loftDeg: 37, carry: 120 },
    ];
    expect(of(bagFile({ clubs }))).toEqual(asked);
  });
  it('what has no loft of its own accuses nobody', () => {
    const file = bagFile({
      clubs: [
        { id: '7i', kind: 'iron', carry: 100 },
        { id: '8i', kind: 'iron', loftDeg: 37, carry: 120 },
      ],
    });
    expect(of(file)).toEqual([]);
  });
  it('only woods are called too long, from 8 % above a centred strike; up to 15 % more may be roll', () => {
    expect(of(withClub(bagFile(), '7i', { carry: 200 })).map(({ kind }) => kind)).not.toContain(
      'maybe-total',
    );
    const [found] = of(withClub(bagFile(), 'driver', { carry: 222 }));
    const atMostYd = found && 'atMostYd' in found ? found.atMostYd : NaN;
    const kinds = (carry: number) => of(withClub(bagFile(), 'driver', { carry })).map(({ kind }) => kind);
    expect(kinds(atMostYd - 0.01)).toEqual([]);
    expect(kinds(atMostYd + 0.01)).toEqual(['maybe-total']);
    expect(kinds(1.15 * atMostYd - 0.01)).toEqual(['maybe-total']);
    expect(kinds(1.15 * atMostYd + 0.01)).toEqual(['impossible-for-speed']);
    const { air } = playerModel(domainBag(bagFile()));
    expect(atMostYd).toBeCloseTo(1.08 * centredCarryYd({ kind: 'driver', loftDeg: 10.5 }, 90, air), 9);
  });
});
