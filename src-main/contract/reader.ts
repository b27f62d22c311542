import type { Reader } from '../domain/advice/reader.ts';
import { formatMoney, toMajor } from './money.ts';
import type { Units } from './primitives.ts';
import { fromMph, fromYards, shownDistance } from './units.ts';

/** Figures for a reader: units and currency of the bag, number formats of the locale. */
export function readerFor(units: Units, locale = 'en-GB'): Reader {
  const whole = new Intl.NumberFormat(locale, { maximumFractionDigits: 0 });
  return {
    distance: (yards) => shownDistance(yards, units.distance),
    distanceText: (yards) => `${whole.format(fromYards(yards, units.distance))} ${units.distance}`,
    speed: (mph) => Math.round(fromMph(mph, units.speed) * 10) / 10,
    speedText: (mph) => `${whole.format(fromMph(mph, units.speed))} ${units.speed}`,
    money: (minor) => toMajor(minor, units.currency),
    moneyText: (minor) => formatMoney(minor, units.currency, locale),
    numberText: (value, digits) =>
      new Intl.NumberFormat(locale, {
        minimumFractionDigits: digits ?? 0,
        maximumFractionDigits: digits ?? 2,
        useGrouping: false,
      }).format(value),
    distanceUnit: units.distance,
    speedUnit: units.speed,
  };
}
