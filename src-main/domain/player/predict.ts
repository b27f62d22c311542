import type { Source } from '../bag/types.ts';
import { centredCarryYd, type ModelClub } from './carry-model.ts';
import { familyOf, type Family } from './families.ts';
import type { KnownClub, PlayerModel } from './model.ts';
import { unmeasuredRange, type Range } from './ranges.ts';

export type Prediction = Range & { carryYd: number; source: Exclude<Source, 'measured' | 'stated'> };

/**
 * Carry of a club that was not hit, in yards, with its 90 % range: interpolated in loft between known neighbours
 * of its family; beyond them physics × nearest residual; with nothing known physics × mean of shots.
 * Null when neither a carry nor a speed is known.
 */
export function predictCarry(model: PlayerModel, club: ModelClub): Prediction | null {
  const between = interpolated(model, club);
  if (between !== null)
    return { carryYd: between, source: 'interpolated', ...unmeasuredRange(between, 'interpolated') };
  const speed = model.driverSpeedMph;
  if (speed === null) return null;
  const centred = centredCarryYd(club, speed, model.air);
  const carryYd = centred * (lentResidual(model, club, speed) ?? model.meanFactor);
  return { carryYd, source: 'modelled', ...unmeasuredRange(carryYd, 'modelled') };
}

/** Linear in loft between the nearest known clubs on both sides; the mean of those with the very same loft. */
function interpolated(model: PlayerModel, club: ModelClub): number | null {
  const family = familyOf(club.kind);
  const real = model.known.filter((known) => known.family === family && !known.fromTotal);
  const same = real.filter((known) => known.club.loftDeg === club.loftDeg);
  let carryYd: number | null = null;
  if (same.length > 0) carryYd = mean(same.map((known) => known.carryYd));
  else {
    const stronger = nearestByLoft(
      real.filter((known) => known.club.loftDeg < club.loftDeg),
      club.loftDeg,
    );
    const weaker = nearestByLoft(
      real.filter((known) => known.club.loftDeg > club.loftDeg),
      club.loftDeg,
    );
    if (stronger && weaker) {
      const share = (club.loftDeg - stronger.loftDeg) / (weaker.loftDeg - stronger.loftDeg);
      carryYd = stronger.carryYd + share * (weaker.carryYd - stronger.carryYd);
    }
  }
  return carryYd === null ? null : carryYd * headEffect(model, club);
}

/** What head and length beyond the usual change in the model (1 for mid spin and usual length). */
function headEffect(model: PlayerModel, club: ModelClub): number {
  const usual = (club.spinTier ?? 'mid') === 'mid' && club.lengthIn === undefined;
  if (usual || model.driverSpeedMph === null) return 1;
  const plain = { kind: club.kind, loftDeg: club.loftDeg };
  return (
    centredCarryYd(club, model.driverSpeedMph, model.air) /
    centredCarryYd(plain, model.driverSpeedMph, model.air)
  );
}

function nearestByLoft(
  known: readonly KnownClub[],
  loftDeg: number,
): { loftDeg: number; carryYd: number } | null {
  let least = Infinity;
  for (const { club } of known) least = Math.min(least, Math.abs(club.loftDeg - loftDeg));
  const nearest = known.filter(({ club }) => Math.abs(club.loftDeg - loftDeg) === least);
  const first = nearest[0];
  return first ? { loftDeg: first.club.loftDeg, carryYd: mean(nearest.map((one) => one.carryYd)) } : null;
}

/** Real over centred carry at the nearest known club of the family; hybrids take the mean of woods' and irons'. */
function lentResidual(model: PlayerModel, club: ModelClub, speedMph: number): number | null {
  const family = familyOf(club.kind);
  const own = familyResidual(model, family, club.loftDeg, speedMph);
  if (own !== null || family !== 'hybrids') return own;
  const lent = (['woods', 'irons'] as const)
    .map((other) => familyResidual(model, other, club.loftDeg, speedMph))
    .filter((residual) => residual !== null);
  return lent.length === 0 ? null : mean(lent);
}

function familyResidual(
  model: PlayerModel,
  family: Family,
  loftDeg: number,
  speedMph: number,
): number | null {
  const own = model.known.filter((known) => known.family === family);
  let least = Infinity;
  for (const { club } of own) least = Math.min(least, Math.abs(club.loftDeg - loftDeg));
  const nearest = own.filter(({ club }) => Math.abs(club.loftDeg - loftDeg) === least);
  if (nearest.length === 0) return null;
  return mean(nearest.map((known) => known.carryYd / centredCarryYd(known.club, speedMph, model.air)));
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}
