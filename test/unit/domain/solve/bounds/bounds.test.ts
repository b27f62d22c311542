import { describe, expect, test } from 'vitest';
import { type Arcs, positionOf, tabulateArcs } from '../../../../../src-main/domain/solve/program/arcs.ts';
import { boundsOf, leastSums } from '../../../../../src-main/domain/solve/bounds/bounds.ts';
import { fixArcs } from '../../../../../src-main/domain/solve/bounds/fix.ts';
import type { Found } from '../../../../../src-main/domain/solve/program/found.ts';
import { Watch } from '../../../../../src-main/domain/solve/hooks.ts';
import type { Instance } from '../../../../../src-main/domain/solve/instance.ts';
import { type Ladder, layOut } from '../../../../../src-main/domain/solve/model/ladder.ts';
import { evaluate } from '../../../../../src-main/domain/solve/model/penalty.ts';
import { plausible } from '../../../../../src-main/domain/solve/bounds/plausible.ts';
import { Prune } from '../../../../../src-main/domain/solve/bounds/prune.ts';
import { notBettered } from '../../../../../src-main/domain/solve/bounds/region.ts';
import {
  type Decisions,
  type Scenario,
  scenarioOf,
  undecided,
} from '../../../../../src-main/domain/solve/search/scenario.ts';
import { search } from '../../../../../src-main/domain/solve/search/search.ts';
import { weightsOf } from '../../../../../src-main/domain/solve/bounds/weights.ts';
import { realistic } from '../../../../bench/support/solve-instances.ts';
import { smallInstance } from '../../../../reference/solve/small-instances.ts';
import { least, runs } from '../../../../support/runs.ts';
import { nodesOf } from './taken-apart.ts';

const WEIGHTS = weightsOf([
  { cost: 1, penalty: 0, count: 0 },
  { cost: 0, penalty: 1, count: 0 },
  { cost: 1, penalty: 3, count: 0 },
  { cost: 1, penalty: 0.7, count: 2 },
  { cost: 0, penalty: 1, count: 5 },
]);

const sumsOf = (cost: number, penalty: number, count: number): number[] =>
  Array.from(
    WEIGHTS.cost,
    (c, t) => c * cost + (WEIGHTS.penalty[t] ?? 0) * penalty + (WEIGHTS.count[t] ?? 0) * count,
  );

const bagsOf = (instance: Instance): string[][] => {
  const ids = instance.items.map((x) => x.id);
  const all = Array.from({ length: 2 ** ids.length }, (_, mask) => ids.filter((_, i) => (mask >> i) & 1));
  return all.filter((bag) => evaluate(instance, bag).legal);
};

const scenariosOf = (ladder: Ladder): { decisions: Decisions; fits: (bought: Set<string>) => boolean }[] => {
  const sets = new Set(ladder.instance.lots.filter((l) => l.origin === 'candidate').map((l) => l.id));
  return [
    { decisions: undecided(ladder), fits: () => true },
    {
      decisions: { ...undecided(ladder), more: true },
      // A set of one member is folded into it, and counts as no lot.
      fits: (lots) =>
        [...lots].some((id) => sets.has(id) && ladder.instance.items.filter((x) => x.lot === id).length > 1),
    },
  ];
};

describe('on small instances, for every bag', () => {
  test('no bound exceeds what a bag adds up to, through any of its clubs', () => {
    let asked = 0;
    for (let seed = 0; seed < runs(60); seed++) {
      const instance = smallInstance(seed, 7);
      const ladder = layOut(instance);
      for (const { decisions, fits } of scenariosOf(ladder)) {
        if (decisions.more && !ladder.lots.some((l) => l.candidate)) continue;
        const scenario = scenarioOf(ladder, decisions);
        const arcs = tabulateArcs(ladder, scenario.allowed, null);
        const { toGo, upTo } = boundsOf(ladder, scenario, arcs, WEIGHTS);
        const least = new Float64Array(WEIGHTS.size);
        leastSums(ladder, scenario, arcs, WEIGHTS, toGo, least);
        for (const bag of bagsOf(instance)) {
          const lots = new Set(
            instance.items.flatMap((x) => (bag.includes(x.id) && x.lot !== null ? [x.lot] : [])),
          );
          if (!fits(lots)) continue;
          const { cost, penalty } = evaluate(instance, bag);
          sumsOf(cost, penalty, bag.length).forEach((sum, t) => {
            expect(least[t], `seed ${seed}`).toBeLessThanOrEqual(sum + 1e-9);
            for (const node of nodesOf(ladder, new Set(bag))) {
              const at = node * WEIGHTS.size + t;
              expect((toGo[at] ?? 0) + (upTo[at] ?? 0), `seed ${seed}`).toBeLessThanOrEqual(sum + 1e-9);
              asked++;
            }
          });
        }
      }
    }
    expect(asked).toBeGreaterThanOrEqual(least(10_001));
  });
});

describe('on realistic instances, for every bag of the curve', () => {
  const keeps = (ladder: Ladder, arcs: Arcs, { ranks }: Found): boolean => {
    const ids = new Set(Array.from(ranks, (rank) => ladder.idByRank[rank] ?? ''));
    const nodes = nodesOf(ladder, ids);
    const has = (from: number, to: number): boolean =>
      arcs.to.subarray(arcs.head[from], arcs.head[from + 1]).includes(to);
    return nodes.every((node, at) => {
      const i = positionOf(node, ladder.clubs.length);
      const before = nodes[at - 1];
      return before === undefined ? arcs.start[i] === 1 : has(before, i);
    });
  };

  const buysLot = (scenario: Scenario, ladder: Ladder, { ranks }: Found): boolean =>
    ladder.clubs.some((_, i) => {
      const at = scenario.lotAt[i] ?? -1;
      return at >= 0 && scenario.lots[at]?.candidate === true && ranks.includes(ladder.rank[i] ?? -1);
    });

  test.each([false, true])(
    'neither screen nor bounds drop one of its pairs (a lot is bought: %s)',
    (more) => {
      let asked = 0;
      for (let seed = 0; seed < runs(40); seed++) {
        const ladder = layOut(realistic(seed, 60));
        const curve = search(ladder, { accept: notBettered, slopes: null }, new Watch());
        const region = notBettered(curve);
        const scenario = scenarioOf(ladder, { ...undecided(ladder), more });
        const screened = tabulateArcs(ladder, scenario.allowed, plausible(ladder, scenario, region));
        const bounds = boundsOf(ladder, scenario, screened, WEIGHTS);
        const fixed = fixArcs(ladder, scenario, screened, bounds, new Prune(ladder, region, WEIGHTS));
        expect(fixed.to.length, `seed ${seed}`).toBeLessThan(
          tabulateArcs(ladder, scenario.allowed, null).to.length,
        );
        for (const found of curve) {
          if (more && !buysLot(scenario, ladder, found)) continue;
          expect(keeps(ladder, screened, found), `seed ${seed}, screen`).toBe(true);
          expect(keeps(ladder, fixed, found), `seed ${seed}, bounds`).toBe(true);
          asked++;
        }
      }
      expect(asked).toBeGreaterThanOrEqual(least(61));
    },
  );
});
