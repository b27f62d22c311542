import type { BagFile, ClubFile } from '../../../src-main/contract/formats/bag-file.ts';

export type ClubKind = ClubFile['kind'];

/** As they stand in a bag, longest first. */
export const CLUB_KINDS: readonly ClubKind[] = ['driver', 'fairway', 'hybrid', 'iron', 'wedge', 'putter'];

/** A club's id in its bag: the kind, numbered where it is taken. */
export function newClubId(kind: ClubKind, clubs: readonly ClubFile[]): string {
  const taken = new Set(clubs.map((club) => club.id));
  if (!taken.has(kind)) return kind;
  let number = 2;
  while (taken.has(`${kind}-${String(number)}`)) number += 1;
  return `${kind}-${String(number)}`;
}

/** The club that a new one of this kind goes before: the first of a later kind; undefined for the end. */
export function rowAfter(kind: ClubKind, clubs: readonly ClubFile[]): string | undefined {
  const rank = CLUB_KINDS.indexOf(kind);
  return clubs.find((club) => CLUB_KINDS.indexOf(club.kind) > rank)?.id;
}

/** Ids of the sets that clubs belong to, in the order of the bag. */
export function setsInBag(clubs: readonly ClubFile[]): string[] {
  return [...new Set(clubs.flatMap((club) => club.set ?? []))];
}

/** What a first answer needs, and whether it is there. */
export type Need = { need: 'speed' | 'iron' | 'budget' | 'prices'; met: boolean };

export function firstNeeds(bag: BagFile): Need[] {
  const hasDistance = (kinds: readonly ClubKind[]) =>
    bag.clubs.some((club) => kinds.includes(club.kind) && (club.carry ?? club.total) !== undefined);
  return [
    { need: 'speed', met: bag.player.driverSpeed !== undefined || hasDistance(['driver']) },
    { need: 'iron', met: hasDistance(['iron']) },
    { need: 'budget', met: bag.budget !== undefined },
    { need: 'prices', met: bag.prices.length > 0 },
  ];
}
