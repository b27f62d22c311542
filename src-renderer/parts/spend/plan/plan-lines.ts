import type { Answer } from '../../../../src-main/contract/calls/answers/answers.ts';

/** A swap as the plan's table shows it. `walkAway`: null for no ceiling, undefined where there is none to tell. */
export type PlanLine = {
  /** Of the club as `names` has it: an owned club's, or `buy:<archetype>`. */
  id: string;
  action: 'buy' | 'drop' | 'sell';
  name: string;
  inPlaceOf: string[];
  price: number | null;
  walkAway: number | null | undefined;
  why: string;
  /** Null for what is to be done now. */
  stage: string | null;
};

export function planLines({ plan, names, stageNow }: Answer): PlanLine[] {
  return plan.plan.swaps.map(({ action, clubId, archetype, inPlaceOf, price, walkAway, why, stage }) => {
    const id = archetype === undefined ? (clubId ?? '') : `buy:${archetype}`;
    return {
      id,
      action,
      name: names[id] ?? archetype ?? id,
      inPlaceOf: (inPlaceOf ?? []).map((club) => names[club] ?? club),
      price: price ?? null,
      walkAway,
      why,
      stage: stage === stageNow ? null : stage,
    };
  });
}
