import { describe, expect, it } from 'vitest';
import { clubFlight, type ClubFlight } from '../../../../../src-main/domain/player/ladder/club-flight.ts';
import { ownedLadder } from '../../../../../src-main/domain/player/ladder/ladder.ts';
import { playerModel } from '../../../../../src-main/domain/player/model.ts';
import type { BagFile } from '../../../../../src-main/contract/formats/bag-file.ts';
import { bagFile, domainBag, withClub } from '../../../../support/bags.ts';

function flightsOf(file: BagFile): Record<string, ClubFlight | null> {
  const bag = domainBag(file);
  const model = playerModel(bag);
  return Object.fromEntries(
    ownedLadder(bag, model).map((rung) => {
      const club = bag.clubs.find(({ id }) => id === rung.clubId);
      if (!club) throw new Error(`the ladder has a club "${rung.clubId}" that the bag has not`);
      return [rung.clubId, clubFlight(club, rung, model)];
    }),
  );
}

describe('a club of which loft and carry are known', () => {
  const flights = flightsOf(bagFile());
  it('lands on its carry, after an apex inside of the curve', () => {
    for (const club of bagFile().clubs) {
      if (club.carry === undefined) continue;
      const flown = flights[club.id];
      expect(flown?.from).toBe('loft');
      expect(flown?.carryYd).toBeCloseTo(club.carry, 0);
      const heights = flown?.points.map(({ heightYd }) => heightYd) ?? [];
      expect(heights[0]).toBe(0);
      expect(heights.at(-1)).toBe(0);
      // Points are 0.2 s apart, so the highest may be just beside the apex.
      expect(Math.max(...heights)).toBeLessThanOrEqual((flown?.apexYd ?? 0) + 1e-9);
      expect(Math.max(...heights)).toBeGreaterThan((flown?.apexYd ?? 0) - 0.3);
    }
  });
  it('comes down steeper with more loft, within a family', () => {
    for (const family of [
      ['driver', '5w'],
      ['5i', '6i', '7i', '8i', '9i'],
    ]) {
      const lands = family.map((id) => flights[id]?.landDeg ?? NaN);
      expect(lands).toEqual([...lands].sort((a, b) => a - b));
    }
  });
  it('has ranges that hold their figure, wider than the model alone is wrong', () => {
    for (const flown of Object.values(flights)) {
      if (!flown) throw new Error('every club of the usual bag can be flown');
      const { apexYd, apexRangeYd, landDeg, landRangeDeg } = flown;
      expect(apexRangeYd[0] < apexYd && apexYd < apexRangeYd[1]).toBe(true);
      expect(apexRangeYd[1] - apexYd).toBeGreaterThan(2.8);
      expect(landRangeDeg[1] - landDeg).toBeGreaterThan(3.8);
    }
  });
});

describe('a measured launch', () => {
  const launch = { ballSpeed: 110, launchDeg: 17, spinRpm: 6500 };
  it('is flown to the carry, and its ranges are those of the model alone', () => {
    const flown = flightsOf(withClub(bagFile(), '7i', { ...launch, carry: 150 }))['7i'];
    expect(flown?.from).toBe('launch');
    expect(flown?.carryYd).toBeCloseTo(150, 0);
    expect((flown?.apexRangeYd[1] ?? 0) - (flown?.apexYd ?? 0)).toBeCloseTo(2.8, 9);
  });
  it('that is far from giving the carry lands where it lands', () => {
    const flown = flightsOf(withClub(bagFile(), '7i', { ...launch, carry: 60 }))['7i'];
    expect(flown?.from).toBe('launch');
    expect(flown?.carryYd).toBeGreaterThan(100);
  });
  it('of which a part is missing is not used', () => {
    expect(flightsOf(withClub(bagFile(), '7i', { ballSpeed: 110, launchDeg: 17 }))['7i']?.from).toBe('loft');
  });
});

describe('what is not known', () => {
  const lessLoft = (id: string, label: string): BagFile => ({
    ...bagFile(),
    clubs: bagFile().clubs.map((club) => {
      if (club.id !== id) return club;
      const { loftDeg: _loftDeg, ...rest } = club;
      return { ...rest, label };
    }),
  });
  it('the loft: the usual one of its name is said to be that', () => {
    expect(flightsOf(lessLoft('7i', '7-iron'))['7i']?.from).toBe('usual loft');
  });
  it('no name that tells a loft: no curve', () => {
    const file = lessLoft('7i', 'the old one');
    const clubs = file.clubs.map((club) => (club.id === '7i' ? { ...club, id: 'old' } : club));
    expect(flightsOf({ ...file, clubs })['old']).toBeNull();
  });
  it('a carry that no speed of the model gives: no curve rather than a wrong one', () => {
    expect(flightsOf(withClub(bagFile(), 'sw', { carry: 5 }))['sw']).toBeNull();
  });
  it('a length that is no club’s is left out, as in the carry model', () => {
    expect(flightsOf(withClub(bagFile(), '7i', { lengthIn: 37 }))['7i']).not.toBeNull();
  });
});
