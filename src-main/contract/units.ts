/** Conversions at the edge. Inside: yards, mph, minor units. */
export const METRES_PER_YARD = 0.9144; // exact, international yard
export const KMH_PER_MPH = 1.609344; // exact, international mile
export const MS_PER_MPH = 0.44704; // exact

export type DistanceUnit = 'yd' | 'm';
export type SpeedUnit = 'mph' | 'km/h' | 'm/s';

/** A number that was typed in another unit comes back as typed: 90 mph given in km/h is 90, not 89.999…, and keeps its row. */
function tidy(value: number): number {
  return Number(value.toPrecision(12));
}

export function toYards(value: number, unit: DistanceUnit): number {
  return unit === 'm' ? tidy(value / METRES_PER_YARD) : value;
}

export function fromYards(valueYd: number, unit: DistanceUnit): number {
  return unit === 'm' ? valueYd * METRES_PER_YARD : valueYd;
}

/** To 0.1 of the reader's unit, as carries are printed. */
export function shownDistance(valueYd: number, unit: DistanceUnit): number {
  return Math.round(fromYards(valueYd, unit) * 10) / 10;
}

export function toMph(value: number, unit: SpeedUnit): number {
  if (unit === 'km/h') return tidy(value / KMH_PER_MPH);
  if (unit === 'm/s') return tidy(value / MS_PER_MPH);
  return value;
}

export function fromMph(valueMph: number, unit: SpeedUnit): number {
  if (unit === 'km/h') return valueMph * KMH_PER_MPH;
  if (unit === 'm/s') return valueMph * MS_PER_MPH;
  return valueMph;
}
