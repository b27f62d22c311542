import type { Aero } from '../../../../src-main/domain/flight/aero.ts';
import { BALL_RADIUS_M } from '../../../../src-main/domain/flight/constants.ts';
import { constants } from './data.ts';

/** Sutherland's viscosity of air, Pa·s. Source: US Standard Atmosphere 1976. */
const viscosity = (kelvin: number) => (1.458e-6 * kelvin ** 1.5) / (kelvin + 110.4);

/**
 * Smits & Smith (1994) [S, constants via patent US 11230375 B1]: Cd = .24 + .18 S + .06 sin π(Re − 90,000)/200,000,
 * Cl = .54 S^.4. Stated for driver shots only, .08 < S < .2.
 */
export function ss94(densityKgM3: number, temperatureC: number): Aero {
  const [base, spin, wave, from, span] = constants.SS94.cd as [number, number, number, number, number];
  const [limit, power] = constants.SS94.cl as [number, number];
  const perMs = (densityKgM3 * 2 * BALL_RADIUS_M) / viscosity(temperatureC + 273.15);
  return {
    drag: (rw, v) => base + spin * (rw / v) + wave * Math.sin((Math.PI * (perMs * v - from)) / span),
    lift: (rw, v) => limit * (rw / v) ** power,
  };
}

const polynomial = (coefficients: readonly number[], s: number) =>
  coefficients.reduceRight((sum, coefficient) => sum * s + coefficient, 0);

/** NMS04 [M]: quartics in S, clamped where the file says so. */
export const nms04: Aero = {
  drag: (rw, v) => polynomial(constants.NMS04.cd, Math.min(rw / v, constants.NMS04.clamp_S)),
  lift: (rw, v) => polynomial(constants.NMS04.cl, Math.min(rw / v, constants.NMS04.clamp_S)),
};

/** No air to speak of. */
export const vacuum: Aero = { drag: () => 0, lift: () => 0 };
