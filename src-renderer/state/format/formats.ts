import { handicapText, readHandicap } from '../../../src-main/contract/handicap.ts';
import { formatMoney, minorDigits, toMinor } from '../../../src-main/contract/money.ts';
import type { Units } from '../../../src-main/contract/primitives.ts';
import { fractionDigits, parseNumber, typedNumber } from './numbers.ts';

/** Figures as the reader's locale prints them. */
export type Formats = ReturnType<typeof createFormats>;

/** @param language of the words that lists of names stand among. */
export function createFormats(locale: string, language: string) {
  const whole = new Intl.NumberFormat(locale, { maximumFractionDigits: 0 });
  const upToTwo = new Intl.NumberFormat(locale, { maximumFractionDigits: 2 });
  const oneDigit = new Intl.NumberFormat(locale, { minimumFractionDigits: 1, maximumFractionDigits: 1 });
  const list = new Intl.ListFormat(language, { type: 'conjunction' });
  const share = new Intl.NumberFormat(locale, { style: 'percent', maximumFractionDigits: 0 });
  const moment = new Intl.DateTimeFormat(locale, { dateStyle: 'medium' });
  const minute = new Intl.DateTimeFormat(locale, { dateStyle: 'medium', timeStyle: 'short' });
  const month = new Intl.DateTimeFormat(locale, { month: 'long', year: 'numeric', timeZone: 'UTC' });
  const day = new Intl.DateTimeFormat(locale, { dateStyle: 'medium', timeZone: 'UTC' });
  const byDigits = new Map<number, Intl.NumberFormat>();
  const withDigits = (digits: number): Intl.NumberFormat => {
    const made = { minimumFractionDigits: digits, maximumFractionDigits: digits };
    const known = byDigits.get(digits) ?? new Intl.NumberFormat(locale, made);
    byDigits.set(digits, known);
    return known;
  };
  return {
    locale,
    whole: (value: number) => printed(whole.format(value)),
    number: (value: number) => printed(upToTwo.format(value)),
    handicap: (value: number) => handicapText(value, upToTwo.format),
    /** One digit after the mark: shots a round. */
    tenths: (value: number) => printed(oneDigit.format(value)),
    share: (part: number) => share.format(part),
    /** Whole distances: carries are not known better. */
    distance: (value: number, units: Pick<Units, 'distance'>) =>
      `${whole.format(value)}\u00a0${units.distance}`,
    range: (low: number, high: number) => `${whole.format(low)}–${whole.format(high)}`,
    /** Money in major units, as the contract's files have it; round sums without digits. */
    money: (major: number, units: Pick<Units, 'currency'>) => moneyText(major, units.currency, locale),
    moneyOf: (minor: number, currency: string) => formatMoney(minor, currency, locale),
    /** Money without the currency's sign, always with its digits: for columns that name the currency above. */
    amount: (major: number, units: Units) => printed(withDigits(minorDigits(units.currency)).format(major)),
    /** A day stays that day in every time zone; a moment is shown on the reader's own day. */
    day: (iso: string) => (iso.length === 10 ? day : moment).format(new Date(iso)),
    /** Day and time on the reader's own clock. */
    minute: (iso: string) => minute.format(new Date(iso)),
    /** "2027-05" → "May 2027". */
    month: (iso: string) => month.format(new Date(`${iso}-01`)),
    list: (items: readonly string[]) => list.format(items),
    /** What a number without digits after the mark lacks in a column that has them: ".00" in English. */
    padding: (digits: number) =>
      new Intl.NumberFormat(locale, { minimumFractionDigits: digits }).format(0).slice(1),
    parse: (text: string) => parseNumber(text, locale),
    typed: (value: number) => typedNumber(value, locale),
    parseHandicap: (text: string) => readHandicap(text, (plain) => parseNumber(plain, locale)),
    typedHandicap: (value: number) => handicapText(value, (figure) => typedNumber(figure, locale)),
    fractionDigits: (text: string) => fractionDigits(text, locale),
  };
}

function moneyText(major: number, currency: string, locale: string): string {
  const minor = toMinor(major, currency) ?? Math.round(major * 10 ** minorDigits(currency));
  return printed(formatMoney(minor, currency, locale));
}

/** A true minus, as wide as a plus, where the locale writes a hyphen. */
function printed(text: string): string {
  return text.replace('-', '\u2212');
}

/** Today in the reader's own time zone, as the files write days. */
export function isoDay(now: Date): string {
  const two = (value: number) => String(value).padStart(2, '0');
  return `${String(now.getFullYear())}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}

export function isoToday(): string {
  return isoDay(new Date());
}
