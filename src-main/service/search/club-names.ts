import type { Archetype } from '../../contract/formats/catalogue.ts';
import { loftOf, shortName } from '../../domain/player/typical-loft.ts';

/** The trade's short names by kind, and how far (degrees) a loft may be from the typical one to bear the name. */
const NAMES: Readonly<Partial<Record<Archetype['kind'], { names: readonly string[]; within: number }>>> = {
  fairway: { names: ['2w', '3w', '4w', '5w', '7w', '9w', '11w'], within: 1 },
  hybrid: { names: ['2h', '3h', '4h', '5h', '6h', '7h'], within: 1.5 },
  iron: { names: ['1i', '2i', '3i', '4i', '5i', '6i', '7i', '8i', '9i'], within: 1.5 },
  wedge: { names: ['pw', 'gw', 'sw', 'lw'], within: 2 },
};

const LONG_NAMES: Readonly<Record<string, string>> = {
  pw: 'pitching wedge',
  gw: 'gap wedge',
  sw: 'sand wedge',
  lw: 'lob wedge',
};

/**
 * What the trade would call a single archetype, by its loft: "4h", "gw"; often two, sometimes none. With each name how
 * far the loft is from the typical one, degrees.
 */
export function shortNamesOf({ kind, loftDeg }: Archetype): ReadonlyMap<string, number> {
  if (kind === 'driver') return new Map([['driver', 0]]);
  const names = new Map<string, number>();
  const known = NAMES[kind];
  if (known === undefined || kind === 'irons') return names;
  for (const name of known.names) {
    const typical = loftOf({ id: name, kind, label: name }, []);
    if (typical === null) continue;
    const off = Math.abs(typical.loftDeg - loftDeg);
    if (off <= known.within) names.set(name, off);
  }
  return names;
}

const ALL_NAMES = new Set(['driver', ...Object.values(NAMES).flatMap(({ names }) => names)]);

/** The trade's short name that a text is, if it is one of a club that exists: "hybrid 22" is a loft, no 22-hybrid. */
export function knownShortName(text: string): string | null {
  const name = shortName(text);
  // The 1-wood is the driver.
  if (name === '1w') return 'driver';
  return name !== null && ALL_NAMES.has(name) ? name : null;
}

/** The clubs of a set by their short names. */
export function memberNames({ members }: Archetype): string[] {
  return (members ?? []).flatMap(
    ({ number }) => knownShortName(/^\d+$/.test(number) ? `${number}i` : number) ?? [],
  );
}

/** The name in words: "4 hybrid", "gap wedge". */
export function longName(short: string): string {
  const [, number, letter] = /^(\d+)([whi])$/.exec(short) ?? [];
  if (number === undefined) return LONG_NAMES[short] ?? short;
  return `${number} ${letter === 'w' ? 'wood' : letter === 'h' ? 'hybrid' : 'iron'}`;
}
