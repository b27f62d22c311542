import type { SpinTier } from '../bag/types.ts';
import { DRIVER_SPEED_MPH, LENGTH_IN_RANGE } from '../flight/ladder/input.ts';
import { modelCarry } from '../flight/ladder/model.ts';
import type { Air } from '../flight/air.ts';
import type { LadderKind } from '../flight/kind.ts';

/** A club as the flight model sees it. */
export type ModelClub = { kind: LadderKind; loftDeg: number; spinTier?: SpinTier; lengthIn?: number };

/**
 * Mean of all shots over the carry of a centred one, by recommended tier 1–4: `common practice, no source`.
 * A fitted amateur carries less than the model's potential; the two are never compared unscaled.
 */
export const MEAN_OF_SHOTS: Readonly<Record<1 | 2 | 3 | 4, number>> = { 1: 0.97, 2: 0.95, 3: 0.92, 4: 0.89 };

/** As many flights are remembered for one air, and as many airs; some hundred kilobytes in all. */
const MOST_FLIGHTS = 2000;
const MOST_AIRS = 8;
const byAir = new Map<string, Map<string, number>>();
const remembered = new WeakMap<Air, Map<string, number>>();

/** The same air comes anew with every question, so what counts is its values. */
function flightsIn(air: Air): Map<string, number> {
  const key = [air.temperatureC, air.humidity, air.altitudeM].join();
  const known = byAir.get(key) ?? new Map<string, number>();
  if (byAir.size >= MOST_AIRS) byAir.clear();
  byAir.set(key, known);
  remembered.set(air, known);
  return known;
}

/**
 * Carry of a centred strike in yards; driver speed in mph. Inputs are those that the bag's checks let through.
 * One answer, and the next after an edit, ask for the same few lofts many hundred times; each is flown once.
 */
export function centredCarryYd(club: ModelClub, driverSpeedMph: number, air: Air): number {
  const known = remembered.get(air) ?? flightsIn(air);
  const key = [driverSpeedMph, club.kind, club.loftDeg, club.spinTier, club.lengthIn].join();
  let carryYd = known.get(key);
  if (carryYd === undefined) {
    carryYd = flownCarryYd(club, driverSpeedMph, air);
    if (known.size >= MOST_FLIGHTS) known.clear();
    known.set(key, carryYd);
  }
  return carryYd;
}

function flownCarryYd({ lengthIn, ...rest }: ModelClub, driverSpeedMph: number, air: Air): number {
  const usualLength =
    lengthIn === undefined || lengthIn < LENGTH_IN_RANGE.min || lengthIn > LENGTH_IN_RANGE.max;
  const modelled = modelCarry({ driverSpeedMph, air, ...rest, ...(usualLength ? {} : { lengthIn }) });
  if (!modelled.ok) throw new RangeError(`${modelled.place}: ${modelled.message}. ${modelled.remedy}`);
  return modelled.carryYd;
}

/**
 * The driver speed at which the model's mean carry of this club is the known one: bisection, since carry rises
 * with speed. Clamped to the speeds that the model takes.
 */
export function speedFromCarry(club: ModelClub, carryYd: number, factor: number, air: Air): number {
  let low: number = DRIVER_SPEED_MPH.min;
  let high: number = DRIVER_SPEED_MPH.max;
  if (centredCarryYd(club, low, air) * factor >= carryYd) return low;
  if (centredCarryYd(club, high, air) * factor <= carryYd) return high;
  while (high - low > 0.01) {
    const middle = (low + high) / 2;
    if (centredCarryYd(club, middle, air) * factor < carryYd) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
