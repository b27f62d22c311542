import type { BagFile, ClubFile } from '../contract/bag-file.ts';
import type { Units } from '../contract/primitives.ts';

/** The pre-ruled rows of a new bag: a usual make-up with typical lofts (`common practice, no source`), no carries. */
const ROWS: readonly [id: string, kind: ClubFile['kind'], label: string, loftDeg: number, set?: string][] = [
  ['driver', 'driver', 'Driver', 10.5],
  ['5w', 'fairway', '5-wood', 18],
  ['4h', 'hybrid', '4-hybrid', 22],
  ['5i', 'iron', '5-iron', 26.5, 'irons'],
  ['6i', 'iron', '6-iron', 30, 'irons'],
  ['7i', 'iron', '7-iron', 33, 'irons'],
  ['8i', 'iron', '8-iron', 37, 'irons'],
  ['9i', 'iron', '9-iron', 41, 'irons'],
  ['pw', 'iron', 'PW', 46, 'irons'],
  ['gw', 'wedge', 'Gap wedge', 50],
  ['sw', 'wedge', 'Sand wedge', 55],
  ['putter', 'putter', 'Putter', 3],
];

export function usualBag(name: string, handicap: number, units: Units): BagFile {
  return {
    format: 'loftledger-bag',
    version: 1,
    player: { name, handicap, handed: 'right', ground: 'soft' },
    units,
    clubs: ROWS.map(([id, kind, label, loftDeg, set]) => ({
      id,
      kind,
      label,
      loftDeg,
      ...(set === undefined ? {} : { set }),
    })),
    sets: [{ id: 'irons' }],
    prices: [],
  };
}
