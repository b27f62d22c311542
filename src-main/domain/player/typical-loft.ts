import type { Club } from '../bag/types.ts';

/**
 * Typical modern lofts by the name on the club, degrees: `common practice, no source` (middle of the standard
 * column of test/reference/data/club-specs.json). Only a stand-in where no loft is given, and said to be one.
 */
const TYPICAL: Readonly<Record<string, number>> = {
  '2w': 13,
  '3w': 15,
  '4w': 17,
  '5w': 18,
  '7w': 21,
  '9w': 24,
  '11w': 27,
  '2h': 17.5,
  '3h': 19,
  '4h': 22,
  '5h': 25,
  '6h': 28,
  '7h': 31,
  '1i': 16,
  '2i': 18,
  '3i': 20.5,
  '4i': 23.5,
  '5i': 26.5,
  '6i': 30,
  '7i': 33,
  '8i': 37,
  '9i': 41,
  pw: 46,
  aw: 50,
  gw: 50,
  uw: 50,
  sw: 55,
  lw: 59,
};

const DRIVER_LOFT = 10.5;
const PUTTER_LOFT = 3;

// English and German: "7-iron", "Eisen 7", "7er Eisen".
const WORDS: readonly (readonly [RegExp, string])[] = [
  [/^(\d{1,2})\s*-?\s*(?:er[\s-]+)?(?:fairway\s*)?(?:wood|w|fw|holz)$/, 'w'],
  [/^(?:wood|fw|w|(?:fairway)?holz)\s*-?\s*(\d{1,2})$/, 'w'],
  [/^(\d{1,2})\s*-?\s*(?:er[\s-]+)?(?:hybrid|hy|hyb|h)$/, 'h'],
  [/^(?:hybrid|hy|h)\s*-?\s*(\d{1,2})$/, 'h'],
  [/^(\d{1,2})\s*-?\s*(?:er[\s-]+)?(?:iron|i|eisen)$/, 'i'],
  [/^(?:iron|i|eisen)\s*-?\s*(\d{1,2})$/, 'i'],
];

const WEDGES: readonly (readonly [RegExp, string])[] = [
  [/^(?:pw|p|pitching\s*wedge|pitching)$/, 'pw'],
  [/^(?:gw|aw|uw|g|gap\s*wedge|approach\s*wedge|attack\s*wedge|utility\s*wedge)$/, 'gw'],
  [/^(?:sw|sand\s*wedge|sand\s*iron)$/, 'sw'],
  [/^(?:lw|lob\s*wedge|lob)$/, 'lw'],
];

/** The trade's short name of a club ("7i", "3w", "pw") read from its label or id; null when neither tells. */
export function shortName(text: string): string | null {
  const clean = text
    .trim()
    .toLowerCase()
    .replace(/[\s_.]/g, ' ');
  for (const [pattern, letter] of WORDS) {
    const number = pattern.exec(clean)?.[1];
    if (number !== undefined) return `${String(Number(number))}${letter}`;
  }
  for (const [pattern, name] of WEDGES) if (pattern.test(clean)) return name;
  return null;
}

export function clubShortName(club: Pick<Club, 'id' | 'label'>): string | null {
  return (club.label === undefined ? null : shortName(club.label)) ?? shortName(club.id);
}

export type LoftKnown = { loftDeg: number; assumed: boolean };

/**
 * The loft to reckon with: the club's own; else the typical one of its name, moved by as much as the nearest named
 * club of the same set differs from typical (a strong set is strong throughout). Null when nothing tells.
 */
export function loftOf(club: Club, bag: readonly Club[]): LoftKnown | null {
  if (club.loftDeg !== undefined) return { loftDeg: club.loftDeg, assumed: false };
  if (club.kind === 'driver') return { loftDeg: DRIVER_LOFT, assumed: true };
  if (club.kind === 'putter') return { loftDeg: PUTTER_LOFT, assumed: true };
  const name = clubShortName(club);
  const typical = name === null ? undefined : TYPICAL[name];
  if (typical === undefined) return null;
  const shift = club.set === undefined ? 0 : setShift(club.set, typical, bag);
  return { loftDeg: typical + shift, assumed: true };
}

function setShift(set: string, typical: number, bag: readonly Club[]): number {
  let nearest = Infinity;
  let shift = 0;
  for (const other of bag) {
    if (other.set !== set || other.loftDeg === undefined) continue;
    const name = clubShortName(other);
    const own = name === null ? undefined : TYPICAL[name];
    if (own === undefined) continue;
    const distance = Math.abs(own - typical);
    if (distance < nearest) {
      nearest = distance;
      shift = other.loftDeg - own;
    }
  }
  return shift;
}
