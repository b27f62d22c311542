import { describe, expect, it } from 'vitest';
import { flight } from '../../../../../src-main/domain/flight/flight.ts';
import { modelCarry } from '../../../../../src-main/domain/flight/ladder/model.ts';
import { speedFromCarry } from '../../../../../src-main/domain/player/carry-model.ts';
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
  it('lands on its carry, after an apex inside of the curve', () => {
    const flights = flightsOf(bagFile());
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
    const flights = flightsOf(bagFile());
    for (const family of [
      ['driver', '5w'],
      ['5i', '6i', '7i', '8i', '9i'],
    ]) {
      const lands = family.map((id) => flights[id]?.landDeg ?? NaN);
      expect(lands).toEqual([...lands].sort((a, b) => a - b));
    }
  });
  it('has ranges that hold their figure, wider than the model alone is wrong', () => {
    const flights = flightsOf(bagFile());
    for (const flown of Object.values(flights)) {
      if (!flown) throw new Error('every club of the usual bag can be flown');
      const { apexYd, apexRangeYd, landDeg, landRangeDeg } = flown;
      expect(apexRangeYd[0] < apexYd && apexYd < apexRangeYd[1]).toBe(true);
      expect(apexRangeYd[1] - apexYd).toBeGreaterThan(2.8);
      expect(landRangeDeg[1] - landDeg).toBeGreaterThan(3.8);
    }
  });
  it('its ranges are the model’s error with what a launch 3° higher or lower moves, the larger of the two', () => {
    const file = bagFile();
    const bag = domainBag(file);
    const model = playerModel(bag);
    const seven = flightsOf(file)['7i'];
    const speedMph = speedFromCarry({ kind: 'iron', loftDeg: 33 }, 129, 1, model.air);
    const launch = modelCarry({ kind: 'iron', loftDeg: 33, driverSpeedMph: speedMph, air: model.air });
    if (!launch.ok || !seven) throw new Error('the usual 7-iron flies');
    const at = (byDeg: number) => {
      const { ballSpeedMph, launchDeg, spinRpm } = launch;
      const flown = flight({ ballSpeedMph, launchDeg: launchDeg + byDeg, spinRpm, air: model.air });
      if (!flown.ok) throw new Error(flown.message);
      return flown;
    };
    const most = (pick: (one: { apexYd: number; landDeg: number }) => number) =>
      Math.max(...[-3, 3].map((byDeg) => Math.abs(pick(at(byDeg)) - pick(at(0)))));
    const apexHalf = Math.hypot(
      2.8,
      most((one) => one.apexYd),
    );
    const landHalf = Math.hypot(
      3.8,
      most((one) => one.landDeg),
    );
    expect(seven.apexRangeYd[0]).toBeCloseTo(seven.apexYd - apexHalf, 6);
    expect(seven.apexRangeYd[1]).toBeCloseTo(seven.apexYd + apexHalf, 6);
    expect(seven.landRangeDeg[0]).toBeCloseTo(seven.landDeg - landHalf, 6);
    expect(seven.landRangeDeg[1]).toBeCloseTo(seven.landDeg + landHalf, 6);
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
    for (const part of ['ballSpeed', 'launchDeg', 'spinRpm'] as const) {
      const { [part]: _missing, ...rest } = launch;
      expect(flightsOf(withClub(bagFile(), '7i', { ...rest }))['7i']?.from, part).toBe('loft');
    }
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
    // A broom's length, which a bag may have: taken, it would turn the curve.
    const plain = flightsOf(bagFile())['7i'];
    expect(plain).not.toBeNull();
    expect(flightsOf(withClub(bagFile(), '7i', { lengthIn: 55 }))['7i']).toEqual(plain);
    // A club's length is taken: the longer iron gives the same carry at less speed, so it flies otherwise.
    expect(flightsOf(withClub(bagFile(), '7i', { lengthIn: 39 }))['7i']?.apexYd).not.toBe(plain?.apexYd);
  });
});
