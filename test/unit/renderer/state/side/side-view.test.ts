import { describe, expect, test } from 'vitest';
import { loadCatalogue } from '../../../../../db/catalogue/index.ts';
import { createFormats } from '../../../../../src-renderer/state/format/formats.ts';
import { columnOf, type Column } from '../../../../../src-renderer/state/side/side-view.ts';
import { bagsOf, waysOf, type Way } from '../../../../../src-renderer/state/side/ways.ts';
import { compareBags } from '../../../../../src-main/worker/compare.ts';
import { answerTo, demoBag } from '../../support.ts';

const bag = demoBag();
const answer = answerTo(bag);
const formats = createFormats('en-GB', 'en');
const ways = waysOf(answer, formats);
const wayOf = (key: string): Way => {
  const way = ways.find((one) => one.key === key);
  if (!way) throw new Error(`the demo has no way "${key}"`);
  return way;
};
const column = (way: Way): Column => {
  const { sides, names } = compareBags(bag, loadCatalogue(), bagsOf(way), { today: '2026-11-26' });
  const made = columnOf(way, sides, { ...answer.names, ...names }, answer);
  if (!made) throw new Error('a way has at least one stage');
  return made;
};

describe('ways to spend', () => {
  test('today and the plan come first, then paths, curve points and alternatives', () => {
    expect(ways.slice(0, 2).map(({ key }) => key)).toEqual(['today', 'plan']);
    const order = ['bag', 'paths', 'curve', 'others'];
    const places = ways.map(({ group }) => order.indexOf(group));
    expect(places).toEqual([...places].sort((a, b) => a - b));
    expect(new Set(places)).toEqual(new Set([0, 1, 2, 3]));
  });

  test('each once: no curve point that is the plan or today’s bag, none that is worse than today', () => {
    expect(new Set(ways.map(({ key }) => key)).size).toBe(ways.length);
    const bags = ways
      .filter(({ group }) => group !== 'paths')
      .map(({ stages }) => [...(stages[0]?.items ?? [])].sort().join(' '));
    expect(new Set(bags).size).toBe(bags.length);
    const curve = ways.filter(({ group }) => group === 'curve');
    expect(curve.map(({ name }) => name)).toEqual(['−£7.12: buy nothing']);
  });

  test('a way in stages asks for its first and its last bag', () => {
    const stage = (when: string, items: string[]) => ({ when, items, money: null });
    const way = {
      ...wayOf('today'),
      stages: [stage('now', ['a']), stage('soon', ['b']), stage('late', ['c'])],
    };
    expect(bagsOf(way)).toEqual([['a'], ['c']]);
    expect(bagsOf({ ...way, stages: [stage('now', ['a'])] })).toEqual([['a']]);
  });
});

describe('a page of two', () => {
  test('today’s bag costs nothing and mends nothing', () => {
    const { now, later, totalNet, mendedShare, still, mended, made, swaps } = column(wayOf('today'));
    expect({ now, later, totalNet, mendedShare, mended, made, swaps }).toEqual({
      now: { cash: 0, net: 0 },
      later: null,
      totalNet: 0,
      mendedShare: 0,
      mended: [],
      made: [],
      swaps: [],
    });
    expect(still.map(({ longer, shorter, state }) => [longer, shorter, state])).toEqual([
      ['5-wood', '6-iron', 'wide'],
      ['SW', 'LW', 'crowded'],
    ]);
  });

  test('the plan mends what it says, with the plan’s own money', () => {
    const { now, mendedShare, still, mended, swaps } = column(wayOf('plan'));
    expect(now).toEqual({ cash: answer.plan.plan.cash, net: answer.plan.plan.net });
    expect(mendedShare).toBe(1);
    expect(still).toEqual([]);
    expect(mended).toHaveLength(2);
    expect(swaps.map(({ action, isLater }) => [action, isLater])).toEqual([
      ['buy', false],
      ['sell', false],
    ]);
  });

  test('in stages: what comes later is told apart, and money adds up', () => {
    const [first, last] = [wayOf('today').stages[0]?.items ?? [], wayOf('plan').stages[0]?.items ?? []];
    const { now, later, totalNet, swaps, chance } = column({
      key: 'path-B',
      group: 'paths',
      name: 'Path B',
      stages: [
        { when: 'now', items: first, money: { cash: 0, net: 0 } },
        { when: 'in the new season', items: last, money: { cash: 62, net: 54.88 } },
      ],
    });
    expect(now).toEqual({ cash: 0, net: 0 });
    expect(later).toEqual({ when: 'in the new season', cash: 62, net: 54.88 });
    expect(totalNet).toBe(54.88);
    expect(swaps.every(({ isLater }) => isLater)).toBe(true);
    expect(chance).toBe(1);
  });

  test('a club that is bought now and gone in the end is said to go out', () => {
    const [plan, today] = [wayOf('plan').stages[0]?.items ?? [], wayOf('today').stages[0]?.items ?? []];
    const stage = (when: string, items: string[]) => ({ when, items, money: null });
    const { swaps } = column({ ...wayOf('plan'), stages: [stage('now', plan), stage('later', today)] });
    const bought = swaps.find(({ action }) => action === 'buy')?.name;
    expect(swaps.at(-1)).toMatchObject({ action: 'drop', name: bought, isLater: true });
  });
});
