import type { Club } from '../../bag/types.ts';
import { refuseClub } from '../../flight/ladder/input.ts';
import { flight } from '../../flight/flight.ts';
import { modelCarry } from '../../flight/ladder/model.ts';
import type { FlightPoint, Launch } from '../../flight/trajectory.ts';
import { speedFromCarry } from '../carry-model.ts';
import type { Rung } from './ladder.ts';
import { modelClub, type PlayerModel } from '../model.ts';

/** `launch`: from the measured one; `loft`: modelled from it; `usual loft`: from the one that is typical of its name. */
export type FlightFrom = 'launch' | 'loft' | 'usual loft';

/** The flight of one club's usual shot: yards and degrees below the horizontal; ranges are about 90 %. */
export type ClubFlight = {
  clubId: string;
  from: FlightFrom;
  /** Where the curve lands: the ladder's own carry, unless a measured launch is far from giving it. */
  carryYd: number;
  apexYd: number;
  apexRangeYd: [low: number, high: number];
  landDeg: number;
  landRangeDeg: [low: number, high: number];
  points: readonly FlightPoint[];
};

/** A point every 0.2 s: about thirty of a drive. */
const POINT_EVERY = 10;

/** 90 % of the model's own error, 1.645 × its RMS of 1.68 yd and 2.32° on the tour averages (CHECKVALUES §7). */
const APEX_ERROR_YD = 2.8;
const LAND_ERROR_DEG = 3.8;
/** How far from the assumed delivery a player may launch, degrees: `common practice, no source`. */
const LAUNCH_ERROR_DEG = 3;
/** A curve that lands further from the carry than this share is not that club's. */
const MOST_OFF = 0.01;
/** A measured ball speed is moved by at most this share: other air, balls and a mean of mishits move a carry so much. */
const MOST_SPEED_OFF = 0.1;

/**
 * How a club of the ladder flies, in the player's air and calm. Where ball speed, launch and spin were all measured, the
 * ball speed is moved until the curve lands on the ladder's carry. Else the model delivers the club's loft at the speed
 * that gives that carry.
 * @returns null where no loft is known, or the carry is none that the model can fly.
 */
export function clubFlight(club: Club, rung: Rung, model: PlayerModel): ClubFlight | null {
  const measured = measuredLaunch(club, rung, model);
  const launch = measured ?? modelledLaunch(club, rung, model);
  if (launch === null) return null;
  const flown = flight({ ...launch, air: model.air, pointEvery: POINT_EVERY });
  if (!flown.ok || flown.carryYd <= 0) return null;
  if (!measured && Math.abs(flown.carryYd - rung.carryYd) > MOST_OFF * rung.carryYd) return null;
  const { carryYd, apexYd, landDeg, points } = flown;
  const off = measured ? { apexYd: 0, landDeg: 0 } : byLaunch(launch, flown, model);
  return {
    clubId: club.id,
    from: measured ? 'launch' : rung.loftAssumed === true ? 'usual loft' : 'loft',
    carryYd,
    apexYd,
    apexRangeYd: around(apexYd, Math.hypot(APEX_ERROR_YD, off.apexYd)),
    landDeg,
    landRangeDeg: around(landDeg, Math.hypot(LAND_ERROR_DEG, off.landDeg)),
    points,
  };
}

function measuredLaunch(club: Club, { carryYd }: Rung, model: PlayerModel): Launch | null {
  const { ballSpeedMph, launchDeg, spinRpm } = club;
  if (ballSpeedMph === undefined || launchDeg === undefined || spinRpm === undefined) return null;
  let [low, high] = [ballSpeedMph * (1 - MOST_SPEED_OFF), ballSpeedMph * (1 + MOST_SPEED_OFF)];
  while (high - low > 0.01) {
    const middle = (low + high) / 2;
    const flown = flight({ ballSpeedMph: middle, launchDeg, spinRpm, air: model.air });
    if (!flown.ok) return null;
    if (flown.carryYd < carryYd) low = middle;
    else high = middle;
  }
  return { ballSpeedMph: (low + high) / 2, launchDeg, spinRpm };
}

function modelledLaunch(club: Club, rung: Rung, model: PlayerModel): Launch | null {
  const { loftDeg, kind, carryYd } = rung;
  if (loftDeg === undefined) return null;
  const flown = modelClub(club, kind, loftDeg);
  // A length outside of the rules' limits is a slip of units; the carry model leaves it out too.
  if (refuseClub({ ...flown, driverSpeedMph: 90 }) !== null) delete flown.lengthIn;
  const driverSpeedMph = speedFromCarry(flown, carryYd, 1, model.air);
  const modelled = modelCarry({ ...flown, driverSpeedMph, air: model.air });
  return modelled.ok ? modelled : null;
}

/** How much apex and landing move when the same ball is launched higher or lower, the larger of the two. */
function byLaunch(
  launch: Launch,
  flown: { apexYd: number; landDeg: number },
  model: PlayerModel,
): { apexYd: number; landDeg: number } {
  const moved = [-LAUNCH_ERROR_DEG, LAUNCH_ERROR_DEG].flatMap((byDeg) => {
    const other = flight({ ...launch, launchDeg: launch.launchDeg + byDeg, air: model.air });
    return other.ok ? [other] : [];
  });
  const most = (pick: (one: { apexYd: number; landDeg: number }) => number) =>
    Math.max(0, ...moved.map((other) => Math.abs(pick(other) - pick(flown))));
  return { apexYd: most((one) => one.apexYd), landDeg: most((one) => one.landDeg) };
}

/** Neither height nor angle is ever below nothing, nor steeper than straight down. */
function around(value: number, half: number): [low: number, high: number] {
  return [Math.max(0, value - half), value + half];
}
