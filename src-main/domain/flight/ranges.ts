import type { Air } from './air.ts';
import type { Wind } from './forces.ts';
import { refuseOutside, type Range, type Refusal } from './refusal.ts';
import type { Launch } from './trajectory.ts';

/**
 * What `flight` accepts. Wide enough for every ball a player hits, narrow enough to catch a wrong unit or column
 * (km/h for mph, rev/s for rpm). Inside them the model is only checked where the tour and shot data lie: ball speed
 * 78 to 167 mph, launch 3 to 40°, spin 1,200 to 11,300 rpm. Common practice, no source.
 */
export const BALL_SPEED_MPH: Range = { what: 'Ball speed', unit: 'mph', min: 20, max: 250 };
export const LAUNCH_DEG: Range = { what: 'Launch angle', unit: 'degrees', min: -10, max: 80 };
export const SPIN_RPM: Range = { what: 'Backspin', unit: 'rpm', min: 0, max: 15_000 };
/** From the coldest to the hottest air anyone plays in. */
export const TEMPERATURE_C: Range = { what: 'Air temperature', unit: '°C', min: -30, max: 50 };
export const HUMIDITY: Range = { what: 'Relative humidity', unit: '', min: 0, max: 1 };
/** From the shore of the Dead Sea to the highest courses. */
export const ALTITUDE_M: Range = { what: 'Altitude', unit: 'm', min: -430, max: 4500 };
/** Storm force; nobody plays beyond it. */
export const WIND_MPH: Range = { what: 'Wind', unit: 'mph', min: -60, max: 60 };

/** The first of the launch's numbers that is out of range, or null. `place` names where the launch was given. */
export function refuseLaunch(launch: Launch, place: string): Refusal | null {
  return (
    refuseOutside(BALL_SPEED_MPH, `${place}.ballSpeedMph`, launch.ballSpeedMph) ??
    refuseOutside(LAUNCH_DEG, `${place}.launchDeg`, launch.launchDeg) ??
    refuseOutside(SPIN_RPM, `${place}.spinRpm`, launch.spinRpm)
  );
}

export function refuseAir(air: Air, place: string): Refusal | null {
  return (
    refuseOutside(TEMPERATURE_C, `${place}.temperatureC`, air.temperatureC) ??
    refuseOutside(HUMIDITY, `${place}.humidity`, air.humidity) ??
    refuseOutside(ALTITUDE_M, `${place}.altitudeM`, air.altitudeM)
  );
}

export function refuseWind(wind: Wind, place: string): Refusal | null {
  return (
    refuseOutside(WIND_MPH, `${place}.headMph`, wind.headMph) ??
    refuseOutside(WIND_MPH, `${place}.fromLeftMph`, wind.fromLeftMph)
  );
}
