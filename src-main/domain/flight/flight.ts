import { airDensity, REFERENCE_AIR, type Air } from './air.ts';
import { LONGEST_FLIGHT_SECONDS } from './constants.ts';
import type { Wind } from './forces.ts';
import { refuseAir, refuseLaunch, refuseWind } from './ranges.ts';
import type { Refusal } from './refusal.ts';
import { trajectory, type Launch, type Trajectory } from './trajectory.ts';

export type FlightInput = Launch & {
  /** Absent: the reference air, 25 °C, 50 %, sea level. */
  readonly air?: Air | undefined;
  /** Absent: calm. */
  readonly wind?: Wind | undefined;
  /** Record a point of the curve every so many steps of 0.02 s; absent: none. */
  readonly pointEvery?: number | undefined;
  /** Where the launch was given, for messages. Default `flight`. */
  readonly place?: string | undefined;
};

export type FlightResult = ({ readonly ok: true } & Trajectory) | Refusal;

/**
 * The flight of one ball from its launch: yards, degrees, seconds. Centred on what the tour tables hold, about ±2 % on
 * averages of good strikes in 25 °C air; below 86 mph of ball speed only ten wedge shots of one player have been
 * compared. No bounce, no roll.
 * A missing, infinite or absurd number is refused by place and name, never flown.
 */
export function flight(input: FlightInput): FlightResult {
  const place = input.place ?? 'flight';
  const air = input.air ?? REFERENCE_AIR;
  const refusal =
    refuseLaunch(input, place) ??
    refuseAir(air, `${place}.air`) ??
    (input.wind ? refuseWind(input.wind, `${place}.wind`) : null);
  if (refusal) return refusal;
  const flown = trajectory(input, {
    densityKgM3: airDensity(air),
    wind: input.wind,
    pointEvery: input.pointEvery,
  });
  return flown ? { ok: true, ...flown } : neverLanded(place, input.ballSpeedMph);
}

/** A guard: no accepted launch is known to get here. */
export function neverLanded(place: string, ballSpeedMph: number): Refusal {
  return {
    ok: false,
    place,
    value: ballSpeedMph,
    message: `The ball is still in the air after ${LONGEST_FLIGHT_SECONDS} s; this is a fault of the model, not of the input`,
    remedy: 'Report the launch with its air and wind.',
  };
}
