import { describe, expect, test } from 'vitest';
import type { Instance } from '../../../../../src-main/domain/solve/instance.ts';
import { type Ladder, layOut } from '../../../../../src-main/domain/solve/model/ladder.ts';
import { evaluate } from '../../../../../src-main/domain/solve/model/penalty.ts';
import {
  type Arcs,
  barArcs,
  filterArcs,
  tabulateArcs,
} from '../../../../../src-main/domain/solve/program/arcs.ts';
import { dice, smallInstance } from '../../../../reference/solve/small-instances.ts';
import { item, instance } from '../instances.ts';

/** Each arc as [node, position, penalty]. */
const listed = ({ head, to, penalty }: Arcs): [number, number, number][] =>
  [...head.keys()]
    .slice(1)
    .flatMap((_, v) =>
      [...to.subarray(head[v], head[v + 1])].map((i, at): [number, number, number] => [
        v,
        i,
        penalty[(head[v] ?? 0) + at] ?? -1,
      ]),
    );

const bare = (of: Instance): Instance => ({
  ...of,
  top: { atLeastDy: 0, weight: 0 },
  bottom: { atMostDy: 0, weight: 0 },
  leastTier: {},
  items: of.items.map((x) => ({ ...x, misfit: 0 })),
});

/**
 * All neighbours by the words of the model. Source: the plain evaluation of bags of the two clubs alone, which are the
 * longest two, and of the two behind a longer one, from which the longer pair's penalty is taken off.
 */
const neighbours = (ladder: Ladder, allowed: Uint8Array): [number, number, number][] => {
  const { clubs } = ladder;
  const n = clubs.length;
  const of = bare(ladder.instance);
  const longestDy = Math.max(...clubs.map((club) => club.carryDy)) + 1;
  // Behind it no pair is the first; its own pair costs nothing, being excused.
  const probe = item('probe', { carryDy: longestDy });
  const penaltyOf = (j: number, i: number, first: boolean): number => {
    const ids = [clubs[j]?.id ?? '', clubs[i]?.id ?? ''];
    if (first) return evaluate(of, ids).penalty;
    const behind = { ...of, items: [...of.items, probe], excused: [...of.excused, ['probe', ids[0] ?? '']] };
    return evaluate(behind as Instance, ['probe', ...ids]).penalty;
  };
  const all: [number, number, number][] = [];
  for (let v = 0; v < 2 * n; v++) {
    const j = v % n;
    const leads = v >= n;
    const mayLead = !clubs.slice(0, j).some((club) => club.locked);
    if (allowed[j] !== 1 || (leads && (ladder.leads[j] !== 1 || !mayLead))) continue;
    for (let i = j + 1; i < n; i++) {
      if (clubs.slice(j + 1, i).some((club) => club.locked)) break;
      if (allowed[i] === 1) all.push([v, i, penaltyOf(j, i, leads)]);
    }
  }
  return all;
};

describe('the neighbours that a run may try', () => {
  test('are all pairs of allowed clubs that pass over no locked one, with the penalty of the pair', () => {
    const met = { leads: 0, plain: 0, barred: 0 };
    for (let seed = 0; seed < 150; seed++) {
      const d = dice(seed);
      const ladder = layOut(smallInstance(seed, 5 + (seed % 6)));
      const allowed = Uint8Array.from(ladder.clubs, () => (d.chance(0.8) ? 1 : 0));
      const arcs = tabulateArcs(ladder, allowed, null);
      const want = neighbours(ladder, allowed);
      expect(listed(arcs), `seed ${String(seed)}`).toEqual(want);
      const starts = ladder.clubs.map((_, i) =>
        allowed[i] === 1 && !ladder.clubs.slice(0, i).some((c) => c.locked) ? 1 : 0,
      );
      expect([...arcs.start], `seed ${String(seed)}`).toEqual(starts);
      const reached = new Set([...starts.flatMap((s, i) => (s === 1 ? [i] : [])), ...want.map(([, i]) => i)]);
      expect([...arcs.positions], `seed ${String(seed)}`).toEqual([...reached].sort((a, b) => a - b));
      if (want.some(([v]) => v >= ladder.clubs.length)) met.leads++;
      else met.plain++;
      if (allowed.includes(0)) met.barred++;
    }
    expect(Math.min(...Object.values(met))).toBeGreaterThan(30);
  });

  test('are those of them that a screen lets pass, whatever it asks', () => {
    let gone = 0;
    for (let seed = 0; seed < 100; seed++) {
      const d = dice(1000 + seed);
      const ladder = layOut(smallInstance(seed, 5 + (seed % 6)));
      const all = ladder.clubs.map(() => 1);
      const most = Float64Array.from(ladder.clubs, () => d.pick([-1, 0, 3, 30, 300, Infinity]));
      const barred = new Set(ladder.clubs.flatMap((_, i) => (d.chance(0.2) ? [i] : [])));
      const passes = (j: number, i: number, penalty: number): boolean =>
        penalty <= (most[j] ?? 0) && penalty <= (most[i] ?? 0) && !barred.has(i);
      const arcs = tabulateArcs(ladder, Uint8Array.from(all), { most, allows: passes });
      const { start } = arcs;
      const unscreened = tabulateArcs(ladder, Uint8Array.from(all), null);
      const n = ladder.clubs.length;
      ladder.clubs.forEach((_, i) => {
        const may = unscreened.start[i] === 1 && (ladder.top[i] ?? 0) <= (most[i] ?? 0);
        expect(start[i] === 1, `seed ${String(seed)}, start ${String(i)}`).toBe(may);
      });
      const want = listed(unscreened).filter(
        ([v, i, penalty]) => passes(v % n, i, penalty) && (v < n || start[v - n] === 1),
      );
      expect(listed(arcs), `seed ${String(seed)}`).toEqual(want);
      gone += unscreened.to.length - want.length;
    }
    expect(gone).toBeGreaterThan(300);
  });

  test('are all there however many they are', () => {
    const n = 150;
    const ladder = layOut(
      instance(
        Array.from({ length: n }, (_, i) =>
          item(`c${String(i).padStart(3, '0')}`, { carryDy: 3000 - 10 * i }),
        ),
        {
          bands: [{ fromDy: 0, wideDy: 0, crowdedDy: 0, wideWeight: 1, crowdWeight: 0 }],
        },
      ),
    );
    const arcs = tabulateArcs(ladder, new Uint8Array(n).fill(1), null);
    expect(arcs.to).toHaveLength((n * (n - 1)) / 2);
    expect(listed(arcs).every(([v, i, penalty]) => i > v && penalty === 10 * (i - v))).toBe(true);
    // So also when they are filtered.
    expect(listed(filterArcs(arcs, arcs.start, () => true))).toEqual(listed(arcs));
  });
});

test('arcs between some clubs alone, and starts of those', () => {
  for (let seed = 0; seed < 40; seed++) {
    const d = dice(seed);
    const ladder = layOut(smallInstance(seed, 8));
    const n = ladder.clubs.length;
    const arcs = tabulateArcs(ladder, new Uint8Array(n).fill(1), null);
    const some = Uint8Array.from(ladder.clubs, () => d.whole(0, 1));
    const part = barArcs(arcs, some);
    expect(listed(part)).toEqual(listed(arcs).filter(([v, i]) => some[v % n] === 1 && some[i] === 1));
    expect([...part.start]).toEqual([...arcs.start].map((s, i) => s * (some[i] ?? 0)));
  }
});
