import type { Advice } from '../advice/advise.ts';
import type { Reader } from '../advice/reader.ts';
import type { Swap } from '../advice/plan/swaps.ts';
import type { Rung } from '../player/ladder/ladder.ts';
import type { Point } from '../solve/instance.ts';

export type PlanFileOptions = {
  units: { distance: 'yd' | 'm'; speed: 'mph' | 'km/h' | 'm/s'; currency: string };
  withInstance: boolean;
};

/** A ladder row in the reader's unit, to 0.1. */
export function rungRow(reader: Reader, { clubId, carryYd, lowYd, highYd, source }: Rung) {
  return {
    clubId,
    carry: reader.distance(carryYd),
    low: reader.distance(lowYd),
    high: reader.distance(highYd),
    source,
  };
}

/** A swap with its money in major units. */
export function swapRow(reader: Reader, { priceMinor, walkAwayMinor, ...line }: Swap) {
  return {
    ...line,
    ...(priceMinor === undefined ? {} : { price: reader.money(priceMinor) }),
    ...(walkAwayMinor === undefined
      ? {}
      : { walkAway: walkAwayMinor === null ? null : reader.money(walkAwayMinor) }),
  };
}

/** The answer as the plan file has it: the reader's units, carries to 0.1, money in major units. */
export function planFile(advice: Advice, { units, withInstance }: PlanFileOptions) {
  const { reader } = advice.view;
  const rung = (one: Rung) => rungRow(reader, one);
  const point = ({ cost, penalty, changes, items }: Point) => ({
    cost: reader.money(cost),
    penalty,
    changes,
    items,
  });
  return {
    format: 'loftledger-plan' as const,
    version: 1 as const,
    units,
    ladder: advice.view.ladder.map(rung),
    findings: advice.findings,
    plan: {
      status: advice.status,
      swaps: advice.swaps.map((swap) => swapRow(reader, swap)),
      cash: reader.money(advice.cashMinor),
      net: reader.money(advice.netMinor),
      remaining: advice.remainingMinor === null ? null : reader.money(advice.remainingMinor),
      ...(advice.chanceInBudget === null ? {} : { chanceInBudget: advice.chanceInBudget }),
      afterLadder: advice.afterLadder.map(rung),
      ...(withInstance ? { items: advice.items } : {}),
    },
    frontier: advice.solution.frontier.map(point),
    alternatives: advice.alternatives.map((alternative) => point(alternative.point)),
    questions: advice.questions,
    cautions: advice.cautions,
    ...(withInstance ? { instance: advice.built.instance, walkAway: advice.solution.walkAway } : {}),
  };
}
