import { clubNaming } from './club-naming.ts';
import type { BagFile, ClubFile } from '../../contract/formats/bag-file.ts';
import type { Units } from '../../contract/primitives.ts';

/** The pre-ruled rows of a new bag: a usual make-up with typical lofts (`common practice, no source`), no carries. */
const ROWS: readonly [id: string, kind: ClubFile['kind'], loftDeg: number, set?: string][] = [
  ['driver', 'driver', 10.5],
  ['5w', 'fairway', 18],
  ['4h', 'hybrid', 22],
  ['5i', 'iron', 26.5, 'irons'],
  ['6i', 'iron', 30, 'irons'],
  ['7i', 'iron', 33, 'irons'],
  ['8i', 'iron', 37, 'irons'],
  ['9i', 'iron', 41, 'irons'],
  ['pw', 'iron', 46, 'irons'],
  ['gw', 'wedge', 50],
  ['sw', 'wedge', 55],
  ['putter', 'putter', 3],
];

export function usualBag(name: string, handicap: number, units: Units, locale?: string): BagFile {
  const names = clubNaming(locale);
  return {
    format: 'loftledger-bag',
    version: 1,
    player: { name, handicap, handed: 'right', ground: 'soft' },
    units,
    clubs: ROWS.map(([id, kind, loftDeg, set]) => ({
      id,
      kind,
      label: names.label(id),
      loftDeg,
      ...(set === undefined ? {} : { set }),
    })),
    sets: [{ id: 'irons' }],
    prices: [],
  };
}
