/** Reading numbers as people of a locale write them. */

type Marks = { decimal: string; group: string; digits: string[] };

function marksOf(locale: string): Marks {
  const parts = new Intl.NumberFormat(locale, { useGrouping: 'always' }).formatToParts(12345.6);
  const plain = new Intl.NumberFormat(locale, { useGrouping: false });
  return {
    decimal: parts.find((part) => part.type === 'decimal')?.value ?? '.',
    group: parts.find((part) => part.type === 'group')?.value ?? ',',
    digits: Array.from({ length: 10 }, (_, digit) => plain.format(digit)),
  };
}

const known = new Map<string, Marks>();

function marks(locale: string): Marks {
  const found = known.get(locale) ?? marksOf(locale);
  known.set(locale, found);
  return found;
}

/**
 * A number as typed: the locale's decimal mark, or a point or comma that cannot be a grouping mark; the locale's own
 * digits; minus in both spellings; spaces ignored. No plus: on a handicap it means a minus (`parseHandicap`).
 * @returns null for what is no number.
 */
export function parseNumber(text: string, locale: string): number | null {
  const { decimal, group, digits } = marks(locale);
  // Locales that write from the right put invisible marks of direction beside the minus.
  let plain = text.replace(/[\u200e\u200f\u061c]/g, '').replace(/[\u2212\u2013]/g, '-');
  digits.forEach((digit, value) => (plain = plain.replaceAll(digit, String(value))));
  plain = plain.replace(/[\s\u00a0\u202f'’]/g, '');
  if (decimal !== '.' && decimal !== ',') plain = plain.replaceAll(decimal, '.').replaceAll(group, '');
  else plain = withPoint(plain, decimal, decimal === '.' ? ',' : '.');
  return /^-?(\d+\.?\d*|\.\d+)$/.test(plain) ? Number(plain) : null;
}

/** `other` is grouping where it stands as grouping does (India's twos included), else another country's decimal mark. */
function withPoint(text: string, decimal: string, other: string): string {
  const grouped = new RegExp(`^-?\\d{1,3}(\\${other}\\d{2,3})*\\${other}\\d{3}(\\${decimal}\\d*)?$`);
  if (grouped.test(text)) return text.replaceAll(other, '').replace(decimal, '.');
  if (!text.includes(decimal)) return text.replace(other, '.');
  return text.includes(other) ? text : text.replace(decimal, '.');
}

/** For a text field: no grouping, as many digits as the number has. */
export function typedNumber(value: number, locale: string, mostDigits = 4): string {
  return new Intl.NumberFormat(locale, { useGrouping: false, maximumFractionDigits: mostDigits }).format(
    value,
  );
}

/** How many digits stand after the decimal mark: what a column aligned on the decimal goes by. */
export function fractionDigits(text: string, locale: string): number {
  const at = text.lastIndexOf(marks(locale).decimal);
  return at < 0 ? 0 : text.length - at - 1;
}
