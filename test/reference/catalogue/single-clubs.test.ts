import { describe, expect, it } from 'vitest';
import { loadCatalogue } from '../../../db/catalogue/index.ts';
import type { Archetype } from '../../../src-main/contract/formats/catalogue.ts';
import { clubRows, driverLoftRows, hull, isWithin, wedgeLofts, wedgeStepLofts } from './outside-ranges.ts';
import type { ClubRow } from './outside-ranges.ts';

const singles = loadCatalogue().filter(({ kind }) => kind !== 'irons' && kind !== 'putter');

/** Rows of club-specs.json `table` ([P] trade) that a kind's clubs are among. */
const rowNames: Partial<Record<Archetype['kind'], RegExp>> = {
  driver: /^Driver$/,
  fairway: /^[0-9]W$/,
  hybrid: /^[0-9]H$/,
  iron: /^[0-9]i$/,
  wedge: /^[PGSL]W$/,
};

/** Speeds up to 90 mph: the rows of `driver_loft_by_speed` that ask for more loft than the table's driver row. */
const slowDriverLofts = driverLoftRows
  .filter(({ speed }) => ['<75', '75-90'].includes(speed))
  .map(({ loftDeg }) => loftDeg);

function loftFits(row: ClubRow, loftDeg: number): boolean {
  if (isWithin(loftDeg, hull(row.traditional, row.standard, row.strong))) return true;
  if (row.club === 'Driver') return slowDriverLofts.some((range) => isWithin(loftDeg, range));
  return isWithin(loftDeg, wedgeLofts.get(row.club));
}

/** True when one and the same row of the club's kind holds its loft and its length. */
function isUsual({ kind, loftDeg, lengthIn }: Archetype): boolean {
  const rows = clubRows.filter(({ club }) => rowNames[kind]?.test(club));
  return rows.some((row) => loftFits(row, loftDeg) && isWithin(lengthIn, row.lengthIn));
}

describe('single clubs against club-specs.json', () => {
  it.each(['driver', 'fairway', 'hybrid', 'iron', 'wedge'] as const)(
    'has every %s in a row by loft and length',
    (kind) => {
      const clubs = singles.filter((archetype) => archetype.kind === kind);
      expect(clubs.length).toBeGreaterThan(0);
      expect(clubs.filter((club) => !isUsual(club)).map(({ id }) => id)).toEqual([]);
    },
  );

  it('would notice a wrong loft, a wrong length, and a length of another row', () => {
    const club = (kind: Archetype['kind'], loftDeg: number, lengthIn: number): Archetype => ({
      id: 'x',
      kind,
      loftDeg,
      forgiveness: 2,
      spinTier: 'mid',
      lengthIn,
    });
    expect(isUsual(club('hybrid', 22, 40))).toBe(true);
    expect(isUsual(club('hybrid', 30, 39))).toBe(false);
    expect(isUsual(club('hybrid', 22, 43))).toBe(false);
    expect(isUsual(club('hybrid', 28, 40.5))).toBe(false);
    expect(isUsual(club('driver', 8, 45))).toBe(false);
    expect(isUsual(club('driver', 16, 45))).toBe(false);
    expect(isUsual(club('driver', 10.5, 47))).toBe(false);
    expect(isUsual(club('wedge', 64, 35))).toBe(false);
    expect(isUsual(club('fairway', 12, 43))).toBe(false);
    expect(isUsual(club('iron', 17, 39))).toBe(false);
  });

  // club-specs.json table, Driver row: 9 to 11. More loft is for slower swings only (README of the catalogue).
  it('has drivers above the usual row in tiers 3 and 4 only', () => {
    const row = clubRows.find(({ club }) => club === 'Driver');
    const usual = hull(row?.traditional, row?.standard, row?.strong);
    const lofty = singles.filter(({ kind, loftDeg }) => kind === 'driver' && !isWithin(loftDeg, usual));
    expect(lofty.length).toBeGreaterThan(0);
    expect(lofty.filter(({ forgiveness }) => forgiveness < 3).map(({ id }) => id)).toEqual([]);
  });
});

describe('what the conventions ask for can be bought', () => {
  // conventions.json driver_loft_by_speed
  it.each(driverLoftRows)('has drivers for $speed mph in two tiers or more', ({ loftDeg }) => {
    const tiers = singles
      .filter((club) => club.kind === 'driver' && isWithin(club.loftDeg, loftDeg))
      .map((club) => club.forgiveness);
    expect(new Set(tiers).size).toBeGreaterThanOrEqual(2);
  });

  // conventions.json wedge_steps
  it.each(wedgeStepLofts)('has wedges of %d° in two tiers or more', (loftDeg) => {
    const tiers = singles
      .filter((club) => club.kind === 'wedge' && club.loftDeg === loftDeg)
      .map((club) => club.forgiveness);
    expect(new Set(tiers).size).toBeGreaterThanOrEqual(2);
  });

  // club-specs.json table: the woods and hybrids of CHECKVALUES §4, which end at the 9W and the 6H.
  it.each(clubRows.filter(({ club }) => /^[0-9][WH]$/.test(club)))(
    'has a game improvement $club of standard loft',
    (row) => {
      const kind = row.club.endsWith('W') ? 'fairway' : 'hybrid';
      const found = singles.filter(
        (club) => club.kind === kind && club.forgiveness === 3 && isWithin(club.loftDeg, row.standard),
      );
      expect(found.map(({ id }) => id)).not.toEqual([]);
    },
  );
});
