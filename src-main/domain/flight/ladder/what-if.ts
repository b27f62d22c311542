import type { Air } from '../air.ts';
import type { Refusal } from '../refusal.ts';
import type { LadderClub } from './input.ts';
import { modelCarry } from './model.ts';

export type AirShift = { readonly ok: true; readonly factor: number };

/**
 * By what factor a club's carry changes from one air to another: the ratio of the modelled carries, so that a stated or
 * measured carry shifts with the rest of the ladder and nothing stored is touched. Ball and body are taken to be as
 * lively in the cold as in the heat; only the air changes.
 */
export function airShift(club: LadderClub, from: Air, to: Air): AirShift | Refusal {
  const before = modelCarry({ ...club, air: from });
  if (!before.ok) return before;
  const after = modelCarry({ ...club, air: to });
  if (!after.ok) return after;
  return { ok: true, factor: after.carryYd / before.carryYd };
}
