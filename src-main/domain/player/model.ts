import { recommendedTier, handicapToBuyFor } from '../bag/conventions.ts';
import type { Bag, Club, Tier } from '../bag/types.ts';
import { PLAYER_AIR, type Air } from '../flight/air.ts';
import type { LadderKind } from '../flight/kind.ts';
import { MEAN_OF_SHOTS, speedFromCarry, type ModelClub } from './carry-model.ts';
import { familyOf, playingKind, type Family } from './families.ts';
import { median } from './statistics.ts';
import { clubShortName, loftOf } from './typical-loft.ts';

/** A club whose carry the player gave, with a loft to lend by. */
export type KnownClub = {
  club: ModelClub;
  family: Family;
  carryYd: number;
  /** A carry reckoned from a total lends its residual but is no neighbour to interpolate from. */
  fromTotal: boolean;
};

export type SpeedFrom =
  'given' | 'driver carry' | 'driver total' | '7-iron carry' | 'another carry' | 'nothing';

/** What is known of a player's hitting; everything that is predicted follows from it. */
export type PlayerModel = {
  driverSpeedMph: number | null;
  speedFrom: SpeedFrom;
  tier: Tier;
  /** Mean of shots over centred carry. */
  meanFactor: number;
  air: Air;
  known: readonly KnownClub[];
  /** Standard deviation of one carry over the carry: the bag's median, else 6 % (`common practice, no source`). */
  sdShare: number;
};

const USUAL_SD_SHARE = 0.06;

/** Roll of a drive, yards: `common practice, no source` (CHECKVALUES §2: carry is 15–25 yd less for men, 10–20 for women). */
export const ROLL_YD = 20;
export const SLOW_ROLL_YD = 15;
export const SLOW_DRIVER_MPH = 80;
/** A drive of this total is what 80 mph gives; used only while the speed is unknown. */
const SLOW_TOTAL_YD = 180;

/** Carry of a drive of which only the total is known: rough. */
export function carryFromTotal(totalYd: number, driverSpeedMph: number | undefined): number {
  const slow = driverSpeedMph === undefined ? totalYd < SLOW_TOTAL_YD : driverSpeedMph < SLOW_DRIVER_MPH;
  return Math.max(1, totalYd - (slow ? SLOW_ROLL_YD : ROLL_YD));
}

export function ladderKind(club: Club): LadderKind | null {
  const kind = playingKind(club);
  return kind === 'putter' ? null : kind;
}

/** Reads what the bag tells of the player. Air defaults to 15 °C at sea level. */
export function playerModel(bag: Bag, air: Air = PLAYER_AIR): PlayerModel {
  const { player } = bag;
  const tier = recommendedTier(handicapToBuyFor(player.handicap, player.targetHandicap));
  const meanFactor = MEAN_OF_SHOTS[tier];
  const known: KnownClub[] = [];
  const named: { club: KnownClub; name: string | null }[] = [];
  for (const club of bag.clubs) {
    const entry = knownClub(club, bag);
    if (!entry) continue;
    known.push(entry);
    named.push({ club: entry, name: clubShortName(club) });
  }
  const shares = bag.clubs.flatMap((club) =>
    club.carrySdYd !== undefined && club.carryYd !== undefined && (club.shots ?? 0) >= 2
      ? [club.carrySdYd / club.carryYd]
      : [],
  );
  const speed = driverSpeed(player.driverSpeedMph, named, meanFactor, air);
  return { ...speed, tier, meanFactor, air, known, sdShare: median(shares) ?? USUAL_SD_SHARE };
}

function knownClub(club: Club, bag: Bag): KnownClub | null {
  const kind = ladderKind(club);
  if (kind === null) return null;
  const loft = loftOf(club, bag.clubs);
  if (!loft) return null;
  const fromTotal = club.carryYd === undefined && kind === 'driver' && club.totalYd !== undefined;
  const carryYd = fromTotal ? carryFromTotal(club.totalYd ?? 0, bag.player.driverSpeedMph) : club.carryYd;
  if (carryYd === undefined) return null;
  return { club: modelClub(club, kind, loft.loftDeg), family: familyOf(kind), carryYd, fromTotal };
}

/** The flight model's view of an owned club. */
export function modelClub(club: Club, kind: LadderKind, loftDeg: number): ModelClub {
  return {
    kind,
    loftDeg,
    ...(club.spinTier === undefined ? {} : { spinTier: club.spinTier }),
    ...(club.lengthIn === undefined ? {} : { lengthIn: club.lengthIn }),
  };
}

/** Given; else from the driver's carry, its total, the 7-iron's carry, or the known club nearest a 7-iron. */
function driverSpeed(
  given: number | undefined,
  named: readonly { club: KnownClub; name: string | null }[],
  factor: number,
  air: Air,
): { driverSpeedMph: number | null; speedFrom: SpeedFrom } {
  if (given !== undefined) return { driverSpeedMph: given, speedFrom: 'given' };
  const from = (entry: KnownClub, speedFrom: SpeedFrom) => ({
    driverSpeedMph: speedFromCarry(entry.club, entry.carryYd, factor, air),
    speedFrom,
  });
  const driver = named.find(({ club }) => club.club.kind === 'driver' && !club.fromTotal);
  if (driver) return from(driver.club, 'driver carry');
  const total = named.find(({ club }) => club.fromTotal);
  if (total) return from(total.club, 'driver total');
  const seven = named.find(({ club, name }) => name === '7i' && club.club.kind === 'iron');
  if (seven) return from(seven.club, '7-iron carry');
  const distance = (entry: KnownClub) => Math.abs(entry.club.loftDeg - 33);
  const nearest = named.map(({ club }) => club).sort((a, b) => distance(a) - distance(b))[0];
  if (nearest) return from(nearest, 'another carry');
  return { driverSpeedMph: null, speedFrom: 'nothing' };
}
