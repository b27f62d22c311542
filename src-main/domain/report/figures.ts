import type { Reader } from '../advice/reader.ts';

/** Number formats of the document's locale, on top of the reader's distances and money. */
export type Figures = {
  reader: Reader;
  /** "22.5°" */
  degrees(value: number): string;
  /** Carries stand to 0.1 in tables, as in the plan file: "141.0". */
  tenths(yards: number): string;
  /** A distance without its unit, whole. */
  whole(yards: number): string;
  plain(value: number): string;
  /** 0..1 → "62%", as the locale writes it. */
  percent(share: number): string;
  /** The same to 0.01: 0.125 → "12.5%". */
  percentExactly(share: number): string;
  /** ISO day → "20 November 2026". */
  day(iso: string): string;
  /** "2027-05" → "May 2027". */
  month(iso: string): string;
};

export function figuresFor(reader: Reader, locale: string): Figures {
  const number = new Intl.NumberFormat(locale, { maximumFractionDigits: 2 });
  const tenths = new Intl.NumberFormat(locale, { minimumFractionDigits: 1, maximumFractionDigits: 1 });
  const share = new Intl.NumberFormat(locale, { style: 'percent', maximumFractionDigits: 0 });
  const exactShare = new Intl.NumberFormat(locale, { style: 'percent', maximumFractionDigits: 2 });
  const date = (iso: string, format: Intl.DateTimeFormatOptions) =>
    new Intl.DateTimeFormat(locale, { ...format, timeZone: 'UTC' }).format(new Date(`${iso}T00:00:00Z`));
  return {
    reader,
    degrees: (value) => `${number.format(value)}°`,
    tenths: (yards) => tenths.format(reader.distance(yards)),
    // From the reader's own text: rounding its 0.1 again could differ from it by one.
    whole: (yards) => reader.distanceText(yards).slice(0, -` ${reader.distanceUnit}`.length),
    plain: (value) => number.format(value),
    percent: (part) => share.format(part),
    percentExactly: (part) => exactShare.format(part),
    day: (iso) => date(iso, { day: 'numeric', month: 'long', year: 'numeric' }),
    month: (iso) => date(`${iso}-01`, { month: 'long', year: 'numeric' }),
  };
}
