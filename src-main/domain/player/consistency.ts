import type { Bag } from '../bag/types.ts';
import { centredCarryYd } from './carry-model.ts';
import { familyOf } from './families.ts';
import { ladderKind, modelClub, type PlayerModel } from './model.ts';
import { loftOf } from './typical-loft.ts';

/** Numbers that do not go together. Each becomes a question; nothing is changed or thrown away. */
export type Inconsistency =
  /** The weaker-lofted club is said to carry further. */
  | { kind: 'carry-rises-with-loft'; clubs: [stronger: string, weaker: string]; byYd: number }
  /** More than a centred strike could carry at the given speed, by no more than a ball rolls. */
  | { kind: 'maybe-total'; clubs: [string]; carryYd: number; atMostYd: number }
  /** More than a centred strike could carry at the given speed, beyond any roll. */
  | { kind: 'impossible-for-speed'; clubs: [string]; carryYd: number; atMostYd: number };

/** Stated carries are good to a few yards, so a small rise is no contradiction: common practice, no source. */
const RISE_YD = 5;
/** Below these lofts (degrees) slow players do lose carry with less loft, so a rise is no contradiction there. */
const LEAST_LOFT_DEG: Record<'woods' | 'hybrids' | 'irons', number> = { woods: 14, hybrids: 22, irons: 24 };
/** Room above the model's centred potential: its own error (±8 % for one amateur, CHECKVALUES §8). */
const POTENTIAL_SLACK = 1.08;
/** The most that a full drive rolls on firm ground, share of the carry: common practice, no source. */
const ROLL_SHARE = 0.15;

type Given = {
  id: string;
  family: 'woods' | 'hybrids' | 'irons';
  loftDeg: number;
  carryYd: number;
  centredYd: number | null;
};

/** Every contradiction among the carries that the player gave, in the order of the bag. */
export function inconsistencies(bag: Bag, model: PlayerModel): Inconsistency[] {
  const given = bag.clubs.flatMap((club): Given[] => {
    const kind = ladderKind(club);
    const loft = loftOf(club, bag.clubs);
    if (kind === null || loft === null || loft.assumed || club.carryYd === undefined) return [];
    const speed = bag.player.driverSpeedMph;
    const centredYd =
      speed === undefined ? null : centredCarryYd(modelClub(club, kind, loft.loftDeg), speed, model.air);
    return [{ id: club.id, family: familyOf(kind), loftDeg: loft.loftDeg, carryYd: club.carryYd, centredYd }];
  });
  return [...rises(given), ...beyondPotential(given)];
}

function rises(given: readonly Given[]): Inconsistency[] {
  const sorted = [...given].sort((a, b) => a.loftDeg - b.loftDeg);
  return sorted.flatMap((weaker) => {
    const stronger = sorted.findLast(
      (one) =>
        one.family === weaker.family &&
        one.loftDeg < weaker.loftDeg &&
        one.loftDeg >= LEAST_LOFT_DEG[weaker.family],
    );
    const byYd = stronger ? weaker.carryYd - stronger.carryYd : 0;
    return stronger && byYd > RISE_YD
      ? [
          {
            kind: 'carry-rises-with-loft' as const,
            clubs: [stronger.id, weaker.id] as [string, string],
            byYd,
          },
        ]
      : [];
  });
}

function beyondPotential(given: readonly Given[]): Inconsistency[] {
  return given.flatMap(({ id, family, carryYd, centredYd }) => {
    // Irons hardly roll, and their carry follows the driver speed too loosely to call a number impossible.
    if (centredYd === null || family !== 'woods') return [];
    const atMostYd = centredYd * POTENTIAL_SLACK;
    if (carryYd <= atMostYd) return [];
    const kind =
      carryYd <= atMostYd * (1 + ROLL_SHARE) ? ('maybe-total' as const) : ('impossible-for-speed' as const);
    return [{ kind, clubs: [id] as [string], carryYd, atMostYd }];
  });
}
