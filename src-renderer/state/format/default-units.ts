import type { Units } from '../../../src-main/contract/primitives.ts';

/** Where golf is reckoned in yards; from memory. Elsewhere metres. */
const YARDS = new Set(['US', 'GB', 'IE', 'IN', 'ZA', 'HK', 'SG', 'MY', 'PH']);

/** The money of a country; from memory. Countries that are not here begin with the euro, which can be changed. */
const MONEY: Record<string, string> = {
  US: 'USD',
  GB: 'GBP',
  AU: 'AUD',
  CA: 'CAD',
  CH: 'CHF',
  CN: 'CNY',
  CZ: 'CZK',
  DK: 'DKK',
  HK: 'HKD',
  IN: 'INR',
  JP: 'JPY',
  KR: 'KRW',
  MX: 'MXN',
  MY: 'MYR',
  NO: 'NOK',
  NZ: 'NZD',
  PH: 'PHP',
  PL: 'PLN',
  SE: 'SEK',
  SG: 'SGD',
  TH: 'THB',
  ZA: 'ZAR',
};

/** What a new player begins with in this locale; every choice can be changed before the bag is laid out. */
export function defaultUnits(locale: string): Units {
  const region = new Intl.Locale(locale).maximize().region ?? '';
  const yards = YARDS.has(region);
  return {
    distance: yards ? 'yd' : 'm',
    speed: yards ? 'mph' : 'km/h',
    currency: MONEY[region] ?? 'EUR',
  };
}

/** Every currency that the browser knows, by its name in the locale. */
export function currencies(locale: string): { value: string; text: string }[] {
  const names = new Intl.DisplayNames(locale, { type: 'currency' });
  return Intl.supportedValuesOf('currency')
    .map((value) => ({ value, text: `${value} – ${names.of(value) ?? value}` }))
    .sort((a, b) => (a.value < b.value ? -1 : 1));
}
