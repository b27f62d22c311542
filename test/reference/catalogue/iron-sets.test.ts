import { describe, expect, it } from 'vitest';
import { loadCatalogue } from '../../../db/catalogue/index.ts';
import type { Archetype } from '../../../src-main/contract/formats/catalogue.ts';
import { clubRows, eraLofts, hull, isWithin, sevenIronBands } from './outside-ranges.ts';
import type { Range } from './outside-ranges.ts';

const sets = loadCatalogue().filter(({ kind }) => kind === 'irons');
const rowOf = (club: string) => clubRows.find((row) => row.club === club);

/** A member's name in club-specs.json: "5" is 5i there, and the gap wedge (AW on many sets) is GW. */
const tableName = (number: string) =>
  /^[0-9]$/.test(number) ? `${number}i` : number === 'AW' ? 'GW' : number;

/**
 * Lofts that a member of a set in a 7-iron band may have, from club-specs.json: the band's era [S, P] where it
 * has a row for the club, else the columns of `table` [P] beside it. Traditional sets lie between today's
 * standard and the 1950–1970 lofts (the 1980s and late 1990s rows lie between those two).
 */
const memberLofts: Record<string, (club: string) => Range | null> = {
  traditional: (club) =>
    hull(rowOf(club)?.standard, eraLofts('1950-1970').get(club), eraLofts('late 1990s').get(club)),
  players: (club) => eraLofts('2020s players').get(club) ?? hull(rowOf(club)?.standard),
  standard: (club) => {
    const { strong, standard } = rowOf(club) ?? {};
    return strong && standard ? { low: Math.min(strong.high, standard.low), high: standard.high } : null;
  },
  strong: (club) => hull(eraLofts('2020s strong').get(club), rowOf(club)?.strong),
  super_strong: (club) => eraLofts('2020s super strong').get(club) ?? hull(rowOf(club)?.strong),
};

const bandsOf = (sevenLoftDeg: number) =>
  [...sevenIronBands].filter(([, band]) => isWithin(sevenLoftDeg, band)).map(([name]) => name);

/** True when all members lie inside one band that the 7-iron's loft falls in (33° is players' and standard). */
function isInEra({ loftDeg, members = [] }: Archetype): boolean {
  return bandsOf(loftDeg).some((band) =>
    members.every((member) => isWithin(member.loftDeg, memberLofts[band]?.(tableName(member.number)))),
  );
}

describe('sets against club-specs.json', () => {
  it('has a rule for each band', () => {
    expect(Object.keys(memberLofts).sort()).toEqual([...sevenIronBands.keys()].sort());
  });

  it('keeps every member inside its era', () => {
    expect(sets.filter((set) => !isInEra(set)).map(({ id }) => id)).toEqual([]);
  });

  it('would notice one member of another era, and a 7-iron between bands', () => {
    for (const set of sets) {
      for (const [index, member] of (set.members ?? []).entries()) {
        const members = (set.members ?? []).with(index, { ...member, loftDeg: member.loftDeg + 9 });
        expect(isInEra({ ...set, members }), `${set.id} with ${member.number} 9° weaker`).toBe(false);
      }
      expect(isInEra({ ...set, loftDeg: 35.75 })).toBe(false);
    }
  });

  it('has sets in every band', () => {
    const seen = new Set(sets.flatMap(({ loftDeg }) => bandsOf(loftDeg)));
    expect([...sevenIronBands.keys()].filter((band) => !seen.has(band))).toEqual([]);
  });

  // club-specs.json table, 7i row: 36.5 to 37.75 in.
  it('gives the length of a 7-iron', () => {
    const lengthIn = rowOf('7i')?.lengthIn;
    expect(lengthIn).toEqual({ low: 36.5, high: 37.75 });
    expect(sets.filter((set) => !isWithin(set.lengthIn, lengthIn)).map(({ id }) => id)).toEqual([]);
  });

  // Common practice, no source: strong lofts come with forgiving heads; a super game improvement head is a modern one.
  it('gives each band heads of its time', () => {
    const tiers: Record<string, number[]> = {
      traditional: [1, 2, 3],
      players: [1, 2],
      standard: [2, 3, 4],
      strong: [2, 3, 4],
      super_strong: [3, 4],
    };
    const isUsual = ({ loftDeg, forgiveness }: Archetype) =>
      bandsOf(loftDeg).some((band) => tiers[band]?.includes(forgiveness));
    expect(sets.filter((set) => !isUsual(set)).map(({ id }) => id)).toEqual([]);
  });
});
