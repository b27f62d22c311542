/** Air: temperature in °C, relative humidity 0..1, altitude in metres above sea level. */
export type Air = {
  readonly temperatureC: number;
  readonly humidity: number;
  readonly altitudeM: number;
};

/** The air in which the drag and lift constants reproduce the tour tables (ρ = 1.177 kg/m³); other air, other constants. */
export const REFERENCE_AIR: Air = { temperatureC: 25, humidity: 0.5, altitudeM: 0 };

/** A mild day at sea level: the player's air until the player sets another. Common practice, no source. */
export const PLAYER_AIR: Air = { temperatureC: 15, humidity: 0.5, altitudeM: 0 };

/** International Standard Atmosphere, pressure at altitude (from memory): p = p0·(1 − a·h)^n. */
const SEA_LEVEL_PASCAL = 101325;
const PRESSURE_LAPSE_PER_M = 2.25577e-5;
const PRESSURE_EXPONENT = 5.255876;

/** Specific gas constants of dry air and water vapour, J/(kg·K). Source: published physical tables. */
const DRY_AIR = 287.058;
const WATER_VAPOUR = 461.495;

/** Magnus form of the saturation pressure over water, Pa. Source: Alduchov & Eskridge (1996). */
const MAGNUS_PASCAL = 610.94;
const MAGNUS_SLOPE = 17.625;
const MAGNUS_OFFSET_C = 243.04;

const ZERO_CELSIUS_K = 273.15;

/**
 * Density of moist air in kg/m³: pressure from the altitude, temperature as given (not lapsed with height).
 * The arguments are taken as sensible; `flight` checks ranges before it asks.
 */
export function airDensity({ temperatureC, humidity, altitudeM }: Air): number {
  const kelvin = temperatureC + ZERO_CELSIUS_K;
  const pressure = SEA_LEVEL_PASCAL * (1 - PRESSURE_LAPSE_PER_M * altitudeM) ** PRESSURE_EXPONENT;
  const vapour =
    humidity * MAGNUS_PASCAL * Math.exp((MAGNUS_SLOPE * temperatureC) / (temperatureC + MAGNUS_OFFSET_C));
  return (pressure - vapour) / (DRY_AIR * kelvin) + vapour / (WATER_VAPOUR * kelvin);
}
