import type { Answer } from '../../../src-main/contract/calls/answers/answers.ts';

/** Carries of one interval, in the bag's unit, and the full shots a round that want them; `tee` of those from a tee. */
export type NeedRow = { low: number; high: number; shots: number; tee: number; clubs: NeedClub[] };
export type NeedClub = { id: string; name: string; carry: number };

/** The longest carries first, as on the ladder. */
export type NeedView = { rows: NeedRow[]; clubs: NeedClub[]; total: number; source: string };

/** Null where no full shot is known of. */
export function needView({ need, plan, names }: Answer): NeedView | null {
  if (need === null || need.intervals.length === 0) return null;
  const clubs = plan.ladder.map(({ clubId, carry }) => ({
    id: clubId,
    name: names[clubId] ?? clubId,
    carry,
  }));
  const rows = need.intervals
    .map((interval) => ({
      ...interval,
      clubs: clubs.filter(({ carry }) => carry >= interval.low && carry < interval.high),
    }))
    .reverse();
  const total = rows.reduce((sum, { shots }) => sum + shots, 0);
  return total === 0 ? null : { rows, clubs, total, source: need.source };
}
