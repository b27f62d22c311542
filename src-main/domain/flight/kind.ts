import type { ClubKind } from '../bag/types.ts';

/** Every kind that stands on the ladder: all but the putter. */
export type LadderKind = Exclude<ClubKind, 'putter'>;
