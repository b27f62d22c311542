import { loadCatalogue } from '../../db/catalogue/index.ts';
import type { BagFile } from '../../src-main/contract/formats/bag-file.ts';
import { bagFromFile, readBagFile } from '../../src-main/contract/formats/read-bag.ts';
import { readerFor } from '../../src-main/contract/reader.ts';
import { english } from '../../src-main/domain/advice/words/en.ts';
import { viewBag, type BagView } from '../../src-main/domain/advice/bag-view/view.ts';
import { prepare, type Prepared } from '../../src-main/domain/advice/question/prepare.ts';
import type { Bag } from '../../src-main/domain/bag/types.ts';

/** An invented usual bag: 90 mph, handicap 15, no gap beyond its limit. Merge what a test is about. */
export function bagFile(changes: Partial<BagFile> = {}, player: Partial<BagFile['player']> = {}): BagFile {
  const club = (id: string, kind: BagFile['clubs'][number]['kind'], loftDeg: number, carry: number) => ({
    id,
    kind,
    label: id,
    loftDeg,
    carry,
  });
  return {
    format: 'loftledger-bag',
    version: 1,
    player: { name: 'Invented', handicap: 15, driverSpeed: 90, handed: 'right', ground: 'soft', ...player },
    units: { distance: 'yd', speed: 'mph', currency: 'GBP' },
    clubs: [
      club('driver', 'driver', 10.5, 201),
      club('5w', 'fairway', 18, 177),
      club('4h', 'hybrid', 22, 162),
      club('5i', 'iron', 26, 148),
      club('6i', 'iron', 29, 138),
      club('7i', 'iron', 33, 129),
      club('8i', 'iron', 37, 119),
      club('9i', 'iron', 41, 109),
      club('pw', 'wedge', 45, 100),
      club('gw', 'wedge', 50, 90),
      club('sw', 'wedge', 55, 80),
      { id: 'putter', kind: 'putter' },
    ],
    prices: [],
    ...changes,
  };
}

/** The bag file without some clubs. */
export function without(file: BagFile, ...ids: string[]): BagFile {
  return { ...file, clubs: file.clubs.filter((club) => !ids.includes(club.id)) };
}

/** The bag file with fields of one club changed. */
export function withClub(file: BagFile, id: string, changes: Partial<BagFile['clubs'][number]>): BagFile {
  return { ...file, clubs: file.clubs.map((club) => (club.id === id ? { ...club, ...changes } : club)) };
}

/** Through the real reader, so that a test cannot hold what a file cannot. */
export function domainBag(file: BagFile): Bag {
  return bagFromFile(readBagFile(JSON.stringify(file)));
}

export function viewOf(file: BagFile, today = '2026-11-26'): BagView {
  const reader = readerFor(file.units);
  return viewBag({ bag: domainBag(file), catalogue: loadCatalogue(), reader, words: english, today });
}

/** The bag as the rules see it, with its question in integers and the curve. */
export function preparedOf(file: BagFile, today = '2026-11-26'): Prepared {
  const reader = readerFor(file.units);
  return prepare({ bag: domainBag(file), catalogue: loadCatalogue(), reader, words: english, today });
}
