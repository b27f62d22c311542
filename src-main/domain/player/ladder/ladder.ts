import { toDy } from '../../bag/tenths.ts';
import type { Bag, Club, Source } from '../../bag/types.ts';
import type { LadderKind } from '../../flight/kind.ts';
import { familyOf, type Family } from '../families.ts';
import { carryFromTotal, ladderKind, modelClub, type PlayerModel } from '../model.ts';
import { predictCarry } from '../predict.ts';
import { measuredRange, unmeasuredRange, type Range } from '../ranges.ts';
import { loftOf } from '../typical-loft.ts';

/** One club on the ladder: mean carry of its shots in yards, its 90 % range, and where the figure comes from. */
export type Rung = Range & {
  clubId: string;
  kind: LadderKind;
  family: Family;
  carryYd: number;
  source: Source;
  /** Standard error of a measured mean, yards. */
  standardErrorYd?: number;
  loftDeg?: number;
  loftAssumed?: boolean;
  fromTotal?: boolean;
};

/** Carry down to a tenth of a yard, ties by id in code-unit order: the one order of every ladder, the solver's too. */
export function ladderOrder(
  a: { clubId: string; carryYd: number },
  b: { clubId: string; carryYd: number },
): number {
  const difference = toDy(b.carryYd) - toDy(a.carryYd);
  if (difference !== 0) return difference;
  return a.clubId < b.clubId ? -1 : a.clubId > b.clubId ? 1 : 0;
}

/** The owned clubs in ladder order. A club whose carry nothing tells is left out (and asked for elsewhere). */
export function ownedLadder(bag: Bag, model: PlayerModel): Rung[] {
  return bag.clubs
    .map((club) => rungOf(club, bag, model))
    .filter((rung) => rung !== null)
    .sort(ladderOrder);
}

function rungOf(club: Club, bag: Bag, model: PlayerModel): Rung | null {
  const kind = ladderKind(club);
  if (kind === null) return null;
  const loft = loftOf(club, bag.clubs);
  const base = {
    clubId: club.id,
    kind,
    family: familyOf(kind),
    ...(loft ? { loftDeg: loft.loftDeg, loftAssumed: loft.assumed } : {}),
  };
  if (club.carryYd !== undefined) return { ...base, ...realCarry(club, club.carryYd, model) };
  if (kind === 'driver' && club.totalYd !== undefined) {
    const carryYd = carryFromTotal(club.totalYd, bag.player.driverSpeedMph);
    return { ...base, carryYd, source: 'modelled', fromTotal: true, ...unmeasuredRange(carryYd, 'modelled') };
  }
  if (!loft) return null;
  const predicted = predictCarry(model, modelClub(club, kind, loft.loftDeg));
  return predicted === null ? null : { ...base, ...predicted };
}

/** A carry that the player gave: measured with two shots or more, else stated. It is never changed. */
function realCarry(
  club: Club,
  carryYd: number,
  model: PlayerModel,
): Range & Pick<Rung, 'carryYd' | 'source' | 'standardErrorYd'> {
  const shots = club.shots ?? 0;
  if (shots < 2) return { carryYd, source: 'stated', ...unmeasuredRange(carryYd, 'stated') };
  const ownSd = club.carrySdYd ?? model.sdShare * carryYd;
  // A spread from few shots is itself poorly known; a lucky tight one must not feign certainty between clubs.
  const gapSd = shots < 10 ? Math.max(ownSd, model.sdShare * carryYd) : ownSd;
  return {
    carryYd,
    source: 'measured',
    standardErrorYd: gapSd / Math.sqrt(shots),
    ...measuredRange(carryYd, ownSd, shots),
  };
}
