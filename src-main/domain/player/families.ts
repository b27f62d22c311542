import type { Club, ClubKind } from '../bag/types.ts';

/** Clubs that lend to each other: woods (driver with fairway woods), hybrids, irons with wedges. */
export type Family = 'woods' | 'hybrids' | 'irons';

export function familyOf(kind: Exclude<ClubKind, 'putter'>): Family {
  if (kind === 'driver' || kind === 'fairway') return 'woods';
  return kind === 'hybrid' ? 'hybrids' : 'irons';
}

/** A pitching or gap wedge sold with a set is an iron of the set, whatever its kind says. */
export function playingKind(club: Pick<Club, 'kind' | 'set'>): ClubKind {
  return club.kind === 'wedge' && club.set !== undefined ? 'iron' : club.kind;
}
