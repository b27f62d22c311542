import type { Answer } from '../../../src-main/contract/calls/answers/answers.ts';
import type { InstanceFile } from '../../../src-main/contract/formats/instance.ts';
import { fromYards } from '../../../src-main/contract/units.ts';

export type PairState = 'fine' | Answer['marks'][number]['state'];
export type Source = Answer['plan']['ladder'][number]['source'];
export type Side = 'today' | 'after';

/** One club of a ladder, in the bag's distance unit. `note` is the number of its first finding in the margin. */
export type LadderRow = {
  id: string;
  name: string;
  carry: number;
  low: number;
  high: number;
  source: Source;
  /** Only after the plan: a club that it buys. */
  bought: boolean;
  /** Only today: a club that the plan takes out. */
  leaving: boolean;
};

/** Two neighbours of a ladder; `limit` is the one that the gap is beyond, null where it is beyond none. */
export type LadderStep = {
  longer: string;
  shorter: string;
  gap: number;
  limit: number | null;
  state: PairState;
  /** Numbers of the margin notes about this pair. */
  notes: number[];
};

export type LadderView = { rows: LadderRow[]; steps: LadderStep[] };

/** Today's bag, or the bag after the plan's "now" stage, as chart and table show it. */
export function ladderView(answer: Answer, side: Side): LadderView {
  const { plan, names } = answer;
  const source = side === 'today' ? plan.ladder : plan.plan.afterLadder;
  const left = new Set(plan.plan.swaps.flatMap(({ action, clubId }) => (action === 'buy' ? [] : [clubId])));
  const rows = source.map(({ clubId, ...row }): LadderRow => ({
    ...row,
    id: clubId,
    name: names[clubId] ?? clubId,
    bought: clubId.startsWith('buy:'),
    leaving: side === 'today' && left.has(clubId),
  }));
  const steps = rows.slice(1).map((shorter, i): LadderStep => {
    const longer = rows[i] ?? shorter;
    return {
      longer: longer.id,
      shorter: shorter.id,
      gap: longer.carry - shorter.carry,
      notes: side === 'today' ? notesOfPair(answer, longer.id, shorter.id) : [],
      ...judged(answer, side, longer, shorter, i === 0),
    };
  });
  return { rows, steps };
}

/** Margin notes are numbered as the findings stand, from 1. */
function notesOfPair({ plan }: Answer, longer: string, shorter: string): number[] {
  return plan.findings.flatMap(({ clubs }, i) =>
    clubs.length === 2 && clubs.includes(longer) && clubs.includes(shorter) ? [i + 1] : [],
  );
}

function judged(
  { marks, plan }: Answer,
  side: Side,
  longer: LadderRow,
  shorter: LadderRow,
  first: boolean,
): Pick<LadderStep, 'state' | 'limit'> {
  const mark = marks.find((one) => one.longer === longer.id && one.shorter === shorter.id);
  if (mark) return { state: mark.state, limit: mark.limit };
  if (side === 'today') return { state: 'fine', limit: null };
  return beyondLimit(plan.instance, longer.id, shorter.id, first, plan.units.distance);
}

/** Pairs that only the plan makes neighbours: judged by the limits that the plan itself was reckoned with. */
function beyondLimit(
  { items, bands, firstPair }: InstanceFile,
  longerId: string,
  shorterId: string,
  first: boolean,
  unit: 'yd' | 'm',
): Pick<LadderStep, 'state' | 'limit'> {
  const itemOf = (id: string) => items.find((item) => item.id === id || item.id === `own:${id}`);
  const [longer, shorter] = [itemOf(longerId), itemOf(shorterId)];
  const band = longer && bands.findLast((one) => one.fromDy <= longer.carryDy);
  if (!longer || !shorter || !band) return { state: 'fine', limit: null };
  const lenient =
    first && longer.kind === 'driver' && firstPair !== null && shorter.carryDy >= firstPair.secondAtLeastDy;
  const wideDy = lenient ? firstPair.wideDy : band.wideDy;
  const gapDy = longer.carryDy - shorter.carryDy;
  const shown = (tenths: number) => fromYards(tenths / 10, unit);
  if (gapDy > wideDy) return { state: 'wide', limit: shown(wideDy) };
  if (gapDy < band.crowdedDy) return { state: 'crowded', limit: shown(band.crowdedDy) };
  return { state: 'fine', limit: null };
}
