import type { PlanRecord } from '../../../src-main/contract/calls/answers/plans.ts';
import type { CallError } from '../../../src-main/contract/gate.ts';
import type { AnswerState } from '../answer.svelte.ts';
import type { Saved } from '../service/edits.ts';
import type { Formats } from '../format/formats.ts';
import { Live } from '../service/live.svelte.ts';
import { PAGES, type Page } from './overlay-view.ts';
import type { Records } from '../service/records.svelte.ts';
import { fieldMessage, lineMessage } from '../service/refusals.ts';
import type { Route } from '../window/route.svelte.ts';
import { columnOf, type Column } from './side-view.ts';
import { Ticks } from '../service/ticks.svelte.ts';
import { bagsOf, waysOf, type Way } from './ways.ts';

type Chosen = { bagId: number } & Record<Page, string>;
const FIRST: Record<Page, string> = { left: 'today', right: 'plan' };

/** Two ways to spend side by side, and the records of those that were picked. */
export class SideState {
  #records: Records;
  #route: Route;
  #answer: AnswerState;
  #compared: Live<'answers.compare'>;
  #picks: Live<'plans.list'>;
  #chosen = $state.raw<Chosen | null>(null);
  #ways = $derived.by((): Way[] => {
    const answer = this.#answer.value;
    return answer ? waysOf(answer, this.#formats()) : [];
  });
  #formats: () => Formats;

  constructor(records: Records, route: Route, answer: AnswerState, formats: () => Formats) {
    this.#records = records;
    this.#route = route;
    this.#answer = answer;
    this.#formats = formats;
    this.#compared = new Live({
      client: records.client,
      // An edit is followed by a new answer, and that by this: asked sooner, it would ask for clubs that have gone.
      ticks: new Ticks(),
      name: 'answers.compare',
      args: () => {
        const { bagId, screen } = route;
        if (bagId === null || screen !== 'side' || this.#ways.length === 0) return null;
        const bags = PAGES.flatMap((page) => {
          const way = this.way(page);
          return way ? bagsOf(way) : [];
        });
        return bags.length === 0 ? null : { bagId, bags, locale: this.#formats().locale };
      },
      subject: ({ bagId, bags }) => `${String(bagId)} ${JSON.stringify(bags)}`,
    });
    this.#picks = new Live({
      client: records.client,
      ticks: records.ticks,
      name: 'plans.list',
      args: () => (route.bagId === null || route.screen !== 'side' ? null : { bagId: route.bagId }),
      subject: ({ bagId }) => String(bagId),
    });
  }

  /** What can be chosen on either page. */
  get ways(): Way[] {
    return this.#ways;
  }

  /** What is chosen on a page; where that has gone, what a new comparison begins with. */
  way(page: Page): Way | undefined {
    const key = this.#chosen?.bagId === this.#route.bagId ? this.#chosen?.[page] : undefined;
    return (
      this.#ways.find((way) => way.key === key) ??
      this.#ways.find((way) => way.key === FIRST[page]) ??
      this.#ways[0]
    );
  }

  choose(page: Page, key: string): void {
    const { bagId } = this.#route;
    if (bagId === null) return;
    const keyOf = (one: Page) => this.way(one)?.key ?? FIRST[one];
    this.#chosen = { bagId, left: keyOf('left'), right: keyOf('right'), [page]: key };
  }

  /** Both pages come to the same bags. */
  get isSame(): boolean {
    const [left, right] = PAGES.map((page) => {
      const way = this.way(page);
      return way ? bagsOf(way).map((items) => [...items].sort().join(' ')) : [];
    });
    return left?.join('\n') === right?.join('\n');
  }

  /** Both pages reckoned; undefined until they are. */
  get columns(): Record<Page, Column> | undefined {
    const [compared, answer] = [this.#compared.value, this.#answer.value];
    const [left, right] = [this.way('left'), this.way('right')];
    if (!compared || !answer || !left || !right) return undefined;
    const many = bagsOf(left).length;
    const names = this.names;
    const columns = {
      left: columnOf(left, compared.sides.slice(0, many), names, answer),
      right: columnOf(right, compared.sides.slice(many), names, answer),
    };
    return columns.left && columns.right ? { left: columns.left, right: columns.right } : undefined;
  }

  get names(): Record<string, string> {
    return { ...this.#answer.value?.names, ...this.#compared.value?.names };
  }

  get error(): CallError | undefined {
    return this.#compared.error;
  }

  /** Of the open bag, the newest first; undefined until they are read. */
  get picks(): PlanRecord[] | undefined {
    return this.#picks.value;
  }

  /** Of a way in stages, the first is what is picked: the others wait for their condition. */
  async pick(name: string, why: string, items: string[]): Saved {
    const { bagId } = this.#route;
    if (bagId === null) return null;
    const done = await this.#records.edit('plans.pick', { bagId, name: name.slice(0, 200), why, items });
    return done.ok ? null : fieldMessage(done.error);
  }

  async removePick(planId: number): Saved {
    const done = await this.#records.edit('plans.remove', { planId });
    return done.ok ? null : lineMessage(done.error);
  }
}
