import type { Answer } from '../../../src-main/contract/calls/answers/answers.ts';
import { words } from '../../words/index.ts';
import type { Formats } from '../format/formats.ts';
import { purchaseOf, sameItems } from '../spend/spend-view.ts';

/** A stage of a way to spend: the whole bag after it; money (major units) of this stage alone, null where not told. */
export type WayStage = { when: string; items: string[]; money: { cash: number; net: number } | null };

/** One of the ways to spend that can be set beside another: done at once, or in stages. */
export type Way = {
  /** The same bag has the same key after the answer was reckoned anew. */
  key: string;
  group: 'bag' | 'paths' | 'curve' | 'others';
  name: string;
  stages: WayStage[];
};

/** Today's bag, the plan, its paths, the points of the curve that are no worse than today, and the alternatives. */
export function waysOf({ plan, names, paths, todayPenalty }: Answer, formats: Formats): Way[] {
  const text = words.side;
  const today = plan.instance.items.filter(({ origin }) => origin === 'owned').map(({ id }) => id);
  const isToday = sameItems(today);
  const atOnce = (items: string[]): WayStage[] => [{ when: '', items, money: null }];
  const ways: Way[] = [{ key: 'today', group: 'bag', name: text.today, stages: atOnce(today) }];
  const planned = plan.plan.items;
  const isPlan = planned === undefined ? () => false : sameItems(planned);
  if (planned !== undefined) {
    ways.push({ key: 'plan', group: 'bag', name: text.plan, stages: atOnce(planned) });
  }
  for (const { name, stages } of paths) {
    const whens = stages.map(({ when }) => when);
    ways.push({
      key: `path-${name}`,
      group: 'paths',
      name: text.path(name, stages.length === 1 ? text.nowOnly : text.stages(whens)),
      stages: stages.map(({ when, items, cash, net }) => ({ when, items, money: { cash, net } })),
    });
  }
  const point = (group: 'curve' | 'others', { cost, items }: { cost: number; items: string[] }): Way[] => {
    if (isToday(items) || isPlan(items)) return [];
    const bought = [...new Set(items.flatMap((id) => purchaseOf(id) ?? []))].map((id) => names[id] ?? id);
    return [
      {
        key: [...items].sort().join(' '),
        group,
        name: text.point(
          formats.money(cost, plan.units),
          bought.length === 0 ? text.buysNothing : text.buys(formats.list(bought)),
        ),
        stages: atOnce(items),
      },
    ];
  };
  const curve = plan.frontier
    .filter(({ penalty }) => penalty <= todayPenalty)
    .flatMap((one) => point('curve', one));
  const taken = new Set(curve.map(({ key }) => key));
  const others = plan.alternatives
    .flatMap((one) => point('others', one))
    .filter(({ key }) => !taken.has(key) && taken.add(key));
  return [...ways, ...curve, ...others];
}

/** The bags that a way needs reckoned: after its first stage and after its last. */
export function bagsOf({ stages }: Way): string[][] {
  const [first, last] = [stages[0], stages.at(-1)];
  if (!first || !last) return [];
  return first === last ? [first.items] : [first.items, last.items];
}
