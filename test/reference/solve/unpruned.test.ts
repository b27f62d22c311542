import { expect, test } from 'vitest';
import { tabulateArcs } from '../../../src-main/domain/solve/program/arcs.ts';
import { boundsOf } from '../../../src-main/domain/solve/bounds/bounds.ts';
import type { Found } from '../../../src-main/domain/solve/program/found.ts';
import { Watch } from '../../../src-main/domain/solve/hooks.ts';
import type { Instance } from '../../../src-main/domain/solve/instance.ts';
import { Labels } from '../../../src-main/domain/solve/program/labels.ts';
import { layOut } from '../../../src-main/domain/solve/model/ladder.ts';
import { Prune } from '../../../src-main/domain/solve/bounds/prune.ts';
import { everywhere, notBettered } from '../../../src-main/domain/solve/bounds/region.ts';
import { run } from '../../../src-main/domain/solve/program/run.ts';
import { scenarioOf, undecided } from '../../../src-main/domain/solve/search/scenario.ts';
import { search } from '../../../src-main/domain/solve/search/search.ts';
import { type Tuning } from '../../../src-main/domain/solve/search/tuning.ts';
import { pureWeights } from '../../../src-main/domain/solve/bounds/weights.ts';
import { runs } from '../../support/runs.ts';
import { realistic } from '../../bench/support/solve-instances.ts';

// Source: the plain dynamic program over every pair of clubs, with nothing ruled out by bounds. Small instances
// prove that program by trying every bag; here it proves the bounds, at sizes that no one can try.

const unpruned = (instance: Instance): Found[] => {
  const ladder = layOut(instance);
  const scenario = scenarioOf(ladder, undecided(ladder));
  const arcs = tabulateArcs(ladder, scenario.allowed, null);
  const weights = pureWeights();
  const bounds = boundsOf(ladder, scenario, arcs, weights);
  const prune = new Prune(ladder, everywhere(), weights);
  return run(ladder, scenario, arcs, bounds, prune, new Labels(), new Watch());
};

const pruned = (instance: Instance, tuning?: Tuning): Found[] =>
  search(layOut(instance), { accept: notBettered, slopes: null }, new Watch(), tuning);

/** Sizes at which every step that only saves time is taken, however small the question. */
const EVERY_STEP: Tuning = {
  fewArcs: 0,
  mostBranches: 20,
  manyArcs: 0,
  manyToRun: 0,
  parts: [2, 6, 12],
  firstPart: 2,
  secondPart: 5,
  manyForSecond: 0,
};

/** Coarse figures, so that many bags tie. */
const coarse = (instance: Instance): Instance => ({
  ...instance,
  items: instance.items.map((x) => ({
    ...x,
    carryDy: 50 * Math.round(x.carryDy / 50),
    price: 2000 * Math.round(x.price / 2000),
    resale: 2000 * Math.round(x.resale / 2000),
  })),
  lots: instance.lots.map((x) => ({
    ...x,
    price: 2500 * Math.round(x.price / 5000),
    resale: 5000 * Math.round(x.resale / 5000),
  })),
});

test.each([
  [40, 60],
  [60, 12],
  [90, 4],
])('%d items, %d realistic instances: the curve with pruning and without', (items, instances) => {
  for (let seed = 0; seed < runs(instances); seed++) {
    const instance = realistic(seed, items);
    expect(pruned(instance), `seed ${seed}`).toEqual(unpruned(instance));
  }
});

test('40 items, 60 realistic instances with coarse figures, so that ties abound', () => {
  for (let seed = 0; seed < runs(60); seed++) {
    const instance = coarse(realistic(seed, 40));
    expect(pruned(instance), `seed ${seed}`).toEqual(unpruned(instance));
  }
});

test('40 items, 40 realistic instances with every step taken that only saves time', () => {
  for (let seed = 0; seed < runs(40); seed++) {
    const instance = realistic(seed, 40);
    expect(pruned(instance, EVERY_STEP), `seed ${seed}`).toEqual(unpruned(instance));
  }
});
