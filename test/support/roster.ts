import type { BagFile } from '../../src-main/contract/formats/bag-file.ts';
import { checkBagFile } from '../../src-main/contract/formats/read-bag.ts';
import { mulberry32 } from './random.ts';

type ClubFile = BagFile['clubs'][number];
type Random = () => number;

const FIRST =
  'Ada Bram Cleo Dov Esme Fitz Gwen Hana Ivo Juno Kit Lark Milo Nell Otto Pia Quin Rhea Sol Tess Ulf Vera Wim Xena Yves Zora';
const LAST =
  'Ashdown Birkett Coldwell Dunmore Elstree Farrow Gadsby Holloway Inkpen Jessamy Kestrel Langdale Merriden Northcott ' +
  'Ormsby Pellow Quarrie Rushmere Selwyn Thornbury Underhay Vexley Wainfleet Yardley';

/** Kind, name, loft: a full bag of invented clubs, of which every player lacks some. */
const CLUBS: readonly [ClubFile['kind'], string, number][] = [
  ['driver', 'Driver', 10.5],
  ['fairway', '3-wood', 15],
  ['fairway', '5-wood', 18],
  ['hybrid', '4-hybrid', 22],
  ['iron', '5-iron', 26],
  ['iron', '6-iron', 29.5],
  ['iron', '7-iron', 33],
  ['iron', '8-iron', 37],
  ['iron', '9-iron', 41.5],
  ['iron', 'PW', 46],
  ['wedge', 'Gap wedge', 50],
  ['wedge', 'Sand wedge', 55],
  ['wedge', 'Lob wedge', 60],
  ['putter', 'Putter', 3],
];
/** What players may lack, by the names above: nothing, a wedge, the middle of the bag, the long end. */
const LACKING: readonly (readonly string[])[] = [
  [],
  ['Gap wedge'],
  ['4-hybrid', '8-iron'],
  ['3-wood', 'Lob wedge'],
  ['5-wood', '4-hybrid'],
  ['6-iron', 'Gap wedge'],
  ['Sand wedge', 'Lob wedge'],
];

/** Invented players with bags that differ as those of a coach's roster do; the same for the same seed. */
export function rosterOf(players: number, seed: number): BagFile[] {
  const random = mulberry32(seed);
  const [first, last] = [FIRST.split(' '), LAST.split(' ')];
  return Array.from({ length: players }, (_, i) => {
    const name = `${first[i % first.length] ?? ''} ${last[Math.floor(i / first.length + i) % last.length] ?? ''}`;
    return playerOf(`${name} ${String(i + 1)}`, i, random);
  });
}

function playerOf(name: string, i: number, random: Random): BagFile {
  const speedMph = Math.round(75 + random() * 35);
  const lacking = LACKING[Math.floor(random() * LACKING.length)] ?? [];
  const file = {
    format: 'loftledger-bag',
    version: 1,
    player: {
      name,
      handicap: Math.round((110 - speedMph) * 8 + random() * 60) / 10,
      driverSpeed: speedMph,
      handed: random() < 0.1 ? 'left' : 'right',
      ground: random() < 0.3 ? 'firm' : 'soft',
      ...(i % 40 === 39 ? { pain: true } : {}),
    },
    units: { distance: 'yd', speed: 'mph', currency: 'GBP' },
    clubs: CLUBS.filter(([, label]) => !lacking.includes(label)).map(([kind, label, loftDeg], at) =>
      clubOf(
        { id: `c${String(at + 1)}`, kind, label, loftDeg: loftDeg + Math.round(random() * 2 - 1) },
        speedMph,
        random,
      ),
    ),
    prices: [],
    costs: { delivery: 6, regrip: 8 },
    ...(i % 10 === 9 ? {} : { budget: { amount: 40 + 20 * Math.floor(random() * 12) } }),
  };
  return checkBagFile(file);
}

function clubOf(
  club: Pick<ClubFile, 'id' | 'kind' | 'label'> & { loftDeg: number },
  speedMph: number,
  random: Random,
) {
  const forgiveness = 1 + Math.floor(random() * 4);
  if (club.kind === 'putter') return { ...club, forgiveness };
  // Rough and invented; a few yards either way, so that gaps differ.
  const carry = Math.round(speedMph * 2.35 - club.loftDeg * (speedMph / 31) + random() * 12 - 6);
  const known = random();
  return {
    ...club,
    forgiveness,
    // Most are stated, some measured, some not known.
    ...(known < 0.15 ? {} : { carry }),
    ...(known > 0.7 ? { shots: 8 + Math.floor(random() * 12), carrySd: 4 + Math.round(random() * 6) } : {}),
    ...(random() < 0.2 ? { sell: { low: 10, likely: 20, high: 35 } } : {}),
  };
}
