import { airDensity, type Air } from '../air.ts';
import { neverLanded } from '../flight.ts';
import { delivery, type Delivery } from '../impact/delivery.ts';
import { impact } from '../impact/impact.ts';
import { spinTierFactor } from '../impact/terms.ts';
import { refuseAir } from '../ranges.ts';
import type { Refusal } from '../refusal.ts';
import { trajectory, type Launch, type Trajectory } from '../trajectory.ts';
import { refuseClub, type LadderClub } from './input.ts';

/** The centred potential of one club: how it is delivered, how the ball leaves, and how it flies. */
export type Modelled = { readonly ok: true } & Delivery & Launch & Omit<Trajectory, 'points' | 'rightYd'>;

/**
 * Carry of a **centred** strike from driver speed, kind and loft alone, in the given air, calm. Continuous in speed and
 * loft. About ±2.3 % on tour averages, ±5–8 % on one amateur, whose mean of shots is lower still: scale before it
 * meets a carry that someone measured. Whatever is not sensible is refused by place.
 */
export function modelCarry(input: LadderClub & { readonly air: Air }): Modelled | Refusal {
  const place = input.place ?? 'club';
  const refusal = refuseClub(input) ?? refuseAir(input.air, `${place}.air`);
  if (refusal) return refusal;
  const delivered = delivery(input);
  const launch = launchOf(input, delivered);
  const flown = trajectory(launch, { densityKgM3: airDensity(input.air) });
  if (!flown) return neverLanded(place, launch.ballSpeedMph);
  const { carryYd, apexYd, landDeg, seconds } = flown;
  return { ok: true, ...delivered, ...launch, carryYd, apexYd, landDeg, seconds };
}

function launchOf(club: LadderClub, delivered: Delivery): Launch {
  const { ballSpeedMph, launchDeg, spinRpm } = impact({
    kind: club.kind,
    loftDeg: club.loftDeg,
    ...delivered,
  });
  return { ballSpeedMph, launchDeg, spinRpm: spinRpm * spinTierFactor(club.kind, club.spinTier) };
}
