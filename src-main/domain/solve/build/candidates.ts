import {
  HIGHEST_WEDGE_LOFT,
  longestIron,
  lowestDriverLoft,
  lowestFairwayLoft,
} from '../../bag/conventions.ts';
import type { Archetype, Bag } from '../../bag/types.ts';
import type { LadderKind } from '../../flight/kind.ts';
import type { ModelClub } from '../../player/carry-model.ts';
import { playingKind } from '../../player/families.ts';
import type { PlayerModel } from '../../player/model.ts';
import { predictCarry, type Prediction } from '../../player/predict.ts';
import { clubShortName, loftOf } from '../../player/typical-loft.ts';

/** One ladder club that a purchase would bring. */
export type CandidateClub = Prediction & {
  kind: LadderKind;
  loftDeg: number;
  /** Number or letters of a set's member. */
  number?: string;
};

/** An archetype that this player can use, with the ladder clubs it brings (none for a putter). */
export type Candidate = { archetype: Archetype; clubs: CandidateClub[] };

const SEVEN_IRON: ModelClub = { kind: 'iron', loftDeg: 33 };

/** Carry of the player's 7-iron, yards: the owned one, else a usual one reckoned by the model. */
export function sevenIronCarryYd(bag: Bag, model: PlayerModel): number | null {
  const owned = bag.clubs.find(
    (club) => club.kind === 'iron' && clubShortName(club) === '7i' && club.carryYd !== undefined,
  );
  return owned?.carryYd ?? predictCarry(model, SEVEN_IRON)?.carryYd ?? null;
}

/**
 * What of an archetype this player can use; null when nothing: woods too strong for the speed, irons longer than the
 * convention's longest, wedges above 60°, anything stronger than a go-to wood or hybrid of its kind, putters unless
 * the putter may change. A set's unusable members are spares.
 */
export function usable(archetype: Archetype, bag: Bag, model: PlayerModel): Candidate | null {
  if (archetype.kind === 'putter') return bag.changePutter ? { archetype, clubs: [] } : null;
  const speed = model.driverSpeedMph;
  const seven = sevenIronCarryYd(bag, model);
  if (speed === null || seven === null) return null;
  const iron = longestIron(seven);
  const members =
    archetype.kind === 'irons'
      ? (archetype.members ?? [])
      : [{ kind: archetype.kind, number: '', loftDeg: archetype.loftDeg }];
  const clubs: CandidateClub[] = [];
  for (const member of members) {
    const kind: LadderKind = archetype.kind === 'irons' ? 'iron' : member.kind;
    if (
      !suits(kind, member.loftDeg, member.number, speed, iron) ||
      strongerThanGoTo(kind, member.loftDeg, bag)
    )
      continue;
    const club = modelClubOf(archetype, kind, member.loftDeg);
    const prediction = predictCarry(model, club);
    if (!prediction) continue;
    clubs.push({
      ...prediction,
      kind,
      loftDeg: member.loftDeg,
      ...(member.number === '' ? {} : { number: member.number }),
    });
  }
  return clubs.length === 0 ? null : { archetype, clubs };
}

function modelClubOf(archetype: Archetype, kind: LadderKind, loftDeg: number): ModelClub {
  return { kind, loftDeg, spinTier: archetype.spinTier };
}

function suits(
  kind: LadderKind,
  loftDeg: number,
  number: string,
  driverSpeedMph: number,
  longest: { number: number; leastLoftDeg: number },
): boolean {
  switch (kind) {
    case 'driver':
      return loftDeg >= lowestDriverLoft(driverSpeedMph);
    case 'fairway':
      return loftDeg >= lowestFairwayLoft(driverSpeedMph);
    case 'hybrid':
      return true;
    case 'wedge':
      return loftDeg <= HIGHEST_WEDGE_LOFT;
    case 'iron': {
      const named = Number(number);
      // The number on the sole lies in a strong set, so the loft has to fit as well.
      if (Number.isInteger(named) && named > 0 && named < longest.number) return false;
      return loftDeg >= longest.leastLoftDeg;
    }
  }
}

/** A player who trusts one wood or hybrid of a kind is not offered a stronger one; irons go by their own rule. */
function strongerThanGoTo(kind: LadderKind, loftDeg: number, bag: Bag): boolean {
  if (kind === 'iron' || kind === 'wedge') return false;
  return bag.clubs.some((club) => {
    if (club.goTo !== true || playingKind(club) !== kind) return false;
    const loft = loftOf(club, bag.clubs);
    return loft !== null && loftDeg < loft.loftDeg;
  });
}
