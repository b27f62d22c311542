import type { Rung } from '../../player/ladder/ladder.ts';
import type { Built } from '../../solve/build/instance.ts';
import { evaluate } from '../../solve/model/penalty.ts';
import { planCost } from '../unknowns/chance.ts';
import { changesOf } from './changes.ts';
import { swapsOf, type Swap } from './swaps.ts';
import { pairsOf, type BagView, type Pair } from '../bag-view/view.ts';

/** One way to spend, ready to be set beside another. Money in minor units. */
export type Side = {
  items: string[];
  swaps: Swap[];
  cashMinor: number;
  netMinor: number;
  penalty: number;
  chanceInBudget: number | null;
  after: Rung[];
  /** Pairs of the ladder after that are still beyond a limit. */
  stillWrong: Pair[];
};

/** A bag by its item ids: a plan, a curve point, an alternative, or the end of a path's stage. */
export function sideOf(view: BagView, built: Built, items: readonly string[]): Side {
  const { instance } = built;
  const changes = changesOf(view, built, items);
  return {
    items: [...items],
    swaps: swapsOf(view, changes, {}, view.words.stageNow),
    cashMinor: evaluate({ ...instance, basis: 'cash' }, items).cost,
    netMinor: evaluate({ ...instance, basis: 'net' }, items).cost,
    penalty: evaluate(instance, items).penalty,
    chanceInBudget: planCost(view, built, items).chanceInBudget,
    after: changes.after,
    stillWrong: pairsOf(changes.after, view.limits).filter((pair) => pair.state !== 'fine'),
  };
}
