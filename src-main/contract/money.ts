/**
 * Money at the edge: major units with the currency's own digits outside, whole minor units inside.
 * Minor digits are ISO 4217's (list from memory of the standard's table): `Intl` follows how a
 * currency is usually printed, which differs (HUF, IDR, IQD …), so it only formats here.
 */
const ISO_DIGITS: readonly (readonly [number, string])[] = [
  [0, 'BIF CLP DJF GNF ISK JPY KMF KRW PYG RWF UGX UYI VND VUV XAF XOF XPF'],
  [3, 'BHD IQD JOD KWD LYD OMR TND'],
  [4, 'CLF UYW'],
];
const digitsOf = new Map(
  ISO_DIGITS.flatMap(([digits, codes]) => codes.split(' ').map((code) => [code, digits] as const)),
);

/** How many digits follow the point in this currency (0 for JPY, 2 for EUR, 3 for KWD). */
export function minorDigits(currency: string): number {
  return digitsOf.get(currency) ?? 2;
}

let known: ReadonlySet<string> | undefined;

/** Whether the code is a currency that this program's runtime knows. */
export function isCurrency(code: string): boolean {
  known ??= new Set(Intl.supportedValuesOf('currency'));
  return known.has(code);
}

/**
 * Major units (as typed, a JSON number) to minor units.
 * @returns a whole number, or null when the amount has more digits than the currency.
 */
export function toMinor(major: number, currency: string): number | null {
  const scaled = major * 10 ** minorDigits(currency);
  const whole = Math.round(scaled);
  // A decimal like 12.34 is not exact in binary; a stray digit is at least a tenth of a minor unit away.
  return Math.abs(scaled - whole) < 1e-4 ? whole : null;
}

/** Minor units to major units, as a number with the currency's digits. */
export function toMajor(minor: number, currency: string): number {
  const digits = minorDigits(currency);
  return Number((minor / 10 ** digits).toFixed(digits));
}

/** Making a formatter takes some ten times as long as using it; there is one for each locale, currency and digits. */
const formatters = new Map<string, Intl.NumberFormat>();

function formatterFor(locale: string, currency: string, digits: number): Intl.NumberFormat {
  const key = `${locale} ${currency} ${String(digits)}`;
  const known =
    formatters.get(key) ??
    new Intl.NumberFormat(locale, {
      style: 'currency',
      currency,
      minimumFractionDigits: digits,
      maximumFractionDigits: digits,
    });
  formatters.set(key, known);
  return known;
}

/** For people: the reader's locale, the currency's own sign and digits; round sums without digits. */
export function formatMoney(minor: number, currency: string, locale = 'en-GB'): string {
  const digits = minorDigits(currency);
  const isRound = minor % 10 ** digits === 0;
  return formatterFor(locale, currency, isRound ? 0 : digits).format(minor / 10 ** digits);
}
