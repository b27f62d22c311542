import { describe, expect, test } from 'vitest';
import { boundsOf, leastSums } from '../../../../../src-main/domain/solve/bounds/bounds.ts';
import { fixArcs } from '../../../../../src-main/domain/solve/bounds/fix.ts';
import { plausible } from '../../../../../src-main/domain/solve/bounds/plausible.ts';
import { Prune } from '../../../../../src-main/domain/solve/bounds/prune.ts';
import { atMost, notBettered, type Region } from '../../../../../src-main/domain/solve/bounds/region.ts';
import { weightsOf } from '../../../../../src-main/domain/solve/bounds/weights.ts';
import { type Ladder, layOut } from '../../../../../src-main/domain/solve/model/ladder.ts';
import { ownPenalty } from '../../../../../src-main/domain/solve/model/penalty.ts';
import { type Arcs, tabulateArcs } from '../../../../../src-main/domain/solve/program/arcs.ts';
import { merge } from '../../../../../src-main/domain/solve/program/found.ts';
import {
  type Scenario,
  scenarioOf,
  undecided,
} from '../../../../../src-main/domain/solve/search/scenario.ts';
import { dice, smallInstance } from '../../../../reference/solve/small-instances.ts';
import { type LooseBag, looseBags, nodesOf, someDecisions } from './taken-apart.ts';

// Source of every expected value: all bags of the relaxed question tried one by one (taken-apart.ts). A bound that is too
// low loses no answer and saves no work, so that only this shows it.

// Whole numbers and binary fractions, so that sums are exact and ties are ties.
const WEIGHTS = weightsOf([
  { cost: 1, penalty: 0, count: 0 },
  { cost: 0, penalty: 1, count: 0 },
  { cost: 1, penalty: 3, count: 0 },
  { cost: 1, penalty: 0.75, count: 2 },
  { cost: 0, penalty: 1, count: 5 },
]);
const ROWS = Array.from({ length: WEIGHTS.size }, (_, t) => t);

const sumOf = ({ cost, penalty, count }: LooseBag, t: number): number =>
  (WEIGHTS.cost[t] ?? 0) * cost + (WEIGHTS.penalty[t] ?? 0) * penalty + (WEIGHTS.count[t] ?? 0) * count;

const leastOf = (bags: readonly LooseBag[]): number[] =>
  ROWS.map((t) => bags.reduce((low, bag) => Math.min(low, sumOf(bag, t)), Infinity));

/** Bags by what they pass. */
const grouped = <K>(bags: readonly LooseBag[], keysOf: (bag: LooseBag) => K[]): Map<K, LooseBag[]> => {
  const groups = new Map<K, LooseBag[]>();
  for (const bag of bags) {
    for (const key of keysOf(bag)) groups.set(key, [...(groups.get(key) ?? []), bag]);
  }
  return groups;
};

const arcsOf = (nodes: readonly number[]): string[] =>
  nodes.slice(1).map((to, at) => `${String(nodes[at])} ${String(to)}`);

/** Quick enough to be tried whole when mutants are hunted too. */
const CASES = 200;
/** Before a decision bars clubs, and after: a branch goes on with the arcs of the one that it comes from. */
const arcsUnder = (ladder: Ladder, { allowed }: Scenario, seed: number): Arcs =>
  tabulateArcs(ladder, seed % 2 === 0 ? allowed : allowed.map(() => 1), null);
const eachCase = (ask: (ladder: Ladder, seed: number) => void): void => {
  for (let seed = 0; seed < CASES; seed++) ask(layOut(smallInstance(seed, 5 + (seed % 4))), seed);
};

describe('on small instances, under decisions about their lots', () => {
  test('a bound is the least sum of the relaxed bags: of all, and of those through each club', () => {
    const met = { more: 0, paid: 0, barred: 0, part: 0, all: 0 };
    eachCase((ladder, seed) => {
      for (const decisions of someDecisions(ladder, dice(seed).pick)) {
        const bags = looseBags(ladder.instance, decisions);
        const scenario = scenarioOf(ladder, decisions);
        const arcs = arcsUnder(ladder, scenario, seed);
        const { toGo, upTo } = boundsOf(ladder, scenario, arcs, WEIGHTS);
        const sums = new Float64Array(WEIGHTS.size);
        leastSums(ladder, scenario, arcs, WEIGHTS, toGo, sums);
        const asked = `seed ${String(seed)}, ${JSON.stringify(decisions)}`;
        expect([...sums], asked).toEqual(leastOf(bags));
        const through = grouped(bags, ({ ids }) => nodesOf(ladder, ids));
        for (let node = 0; node < 2 * ladder.clubs.length; node++) {
          const got = ROWS.map(
            (t) => (toGo[node * WEIGHTS.size + t] ?? 0) + (upTo[node * WEIGHTS.size + t] ?? 0),
          );
          expect(got, `${asked}, node ${String(node)}`).toEqual(leastOf(through.get(node) ?? []));
        }
        met.all++;
        if (decisions.more) met.more++;
        if (decisions.paid.length > 0) met.paid++;
        if (decisions.barred.some((l) => ladder.lots[l]?.candidate === false)) met.barred++;
        if (decisions.open.length + decisions.paid.length + decisions.barred.length < ladder.lots.length)
          met.part++;
      }
    });
    for (const times of Object.values(met)) expect(times).toBeGreaterThanOrEqual(5);
  });

  test('an arc stays when some corner of the region is above the sums of all the bags through it, and else goes', () => {
    const met = { stays: 0, goes: 0 };
    eachCase((ladder, seed) => {
      const d = dice(seed);
      for (const decisions of someDecisions(ladder, d.pick)) {
        const bags = looseBags(ladder.instance, decisions);
        if (bags.length === 0) continue;
        const scenario = scenarioOf(ladder, decisions);
        const arcs = arcsUnder(ladder, scenario, seed);
        const reached = Array.from({ length: 3 }, () => d.pick(bags)).map(({ cost, penalty }) => ({
          cost,
          penalty,
        }));
        const none = { changes: 0, purchases: 0, ranks: new Int32Array(0) };
        const region = d.pick([
          notBettered(
            merge(
              reached.map((one) => ({ ...one, ...none })),
              [],
            ),
          ),
          atMost(reached[0]?.cost ?? 0, reached[1]?.penalty ?? 0),
        ]);
        const prune = new Prune(ladder, region, WEIGHTS);
        const fixed = fixArcs(ladder, scenario, arcs, boundsOf(ladder, scenario, arcs, WEIGHTS), prune);
        const wanted = (group: readonly LooseBag[]): boolean => {
          const sums = leastOf(group);
          return [...region.x].some((cost, c) => {
            const corner = { ids: new Set<string>(), cost, penalty: region.y[c] ?? 0, count: ladder.limit };
            return ROWS.every((t) => (sums[t] ?? 0) <= sumOf(corner, t));
          });
        };
        const byArc = grouped(bags, ({ ids }) => arcsOf(nodesOf(ladder, ids)));
        const want = [...byArc].filter(([, group]) => wanted(group)).map(([arc]) => arc);
        const got = Array.from({ length: 2 * ladder.clubs.length }, (_, v) =>
          [...fixed.to.subarray(fixed.head[v], fixed.head[v + 1])].map((i) => `${String(v)} ${String(i)}`),
        ).flat();
        expect(got.toSorted(), `seed ${String(seed)}`).toEqual(want.toSorted());
        const byNode = grouped(bags, ({ ids }) => nodesOf(ladder, ids));
        ladder.clubs.forEach((_, i) => {
          const node = ladder.leads[i] === 1 ? ladder.clubs.length + i : i;
          const may = arcs.start[i] === 1 && wanted(byNode.get(node) ?? []);
          expect(fixed.start[i] === 1, `seed ${String(seed)}, start ${String(i)}`).toBe(may);
        });
        met.stays += want.length;
        met.goes += byArc.size - want.length;
      }
    });
    for (const times of Object.values(met)) expect(times).toBeGreaterThanOrEqual(300);
  });
});

/** The least cost of a bag of these clubs and what is locked, all else left out, over the choices of a putter. */
const bareCost = (bags: readonly LooseBag[], ladder: Ladder, ids: readonly string[]): number => {
  const locked = ladder.clubs.filter((club) => club.locked).map(({ id }) => id);
  const want = new Set([...ids, ...locked]);
  const ladderIds = new Set(ladder.clubs.map(({ id }) => id));
  return bags
    .filter((bag) => {
      const kept = [...bag.ids].filter((id) => ladderIds.has(id));
      return kept.length === want.size && kept.every((id) => want.has(id));
    })
    .reduce((low, { cost }) => Math.min(low, cost), Infinity);
};
const heightAt = ({ x, y }: Region, cost: number): number => y[x.findIndex((corner) => corner >= cost)] ?? -1;

test('a pair is plausible when the two alone, all else left out, lie in the region', () => {
  const met = { plausible: 0, not: 0 };
  eachCase((ladder, seed) => {
    const { instance } = ladder;
    // A putter of a set for sale counts by its share, whatever else of the set is bought.
    const of = layOut({
      ...instance,
      items: instance.items.filter((x) => x.kind !== 'putter' || x.origin === 'owned' || x.lot === null),
    });
    const bags = looseBags(of.instance, undecided(of), 'bought whole');
    if (bags.length === 0) return;
    const d = dice(seed);
    const [a, b] = [d.pick(bags), d.pick(bags)];
    const region = atMost(a.cost, b.penalty);
    const screen = plausible(of, scenarioOf(of, undecided(of)), region);
    const own = of.clubs.map((club) => ownPenalty(of.instance, club));
    of.clubs.forEach((longer, j) => {
      const alone = heightAt(region, bareCost(bags, of, [longer.id])) - (own[j] ?? 0);
      expect(screen.most[j], `seed ${String(seed)}, ${longer.id}`).toBe(alone);
      of.clubs.slice(j + 1).forEach((shorter, after) => {
        const i = j + 1 + after;
        const height = heightAt(region, bareCost(bags, of, [longer.id, shorter.id]));
        for (const penalty of [0, 1, 4, 20, 60]) {
          const want = penalty + (own[j] ?? 0) + (own[i] ?? 0) <= height;
          expect(screen.allows(j, i, penalty), `seed ${String(seed)}, ${longer.id}, ${shorter.id}`).toBe(
            want,
          );
          if (want) met.plausible++;
          else met.not++;
        }
      });
    });
  });
  for (const times of Object.values(met)) expect(times).toBeGreaterThanOrEqual(300);
});
