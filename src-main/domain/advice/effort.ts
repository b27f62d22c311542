import { withinLimit } from '../solve/limited.ts';
import type { Hooks } from '../solve/hooks.ts';

/** How a caller ends a whole answer, and hears how far it is. */
export type Watcher = {
  shouldStop?: () => boolean;
  /** Told after each step; `of` is the same all along. */
  onStep?: (done: number, of: number) => void;
};

/** Labels that reasons, questions and other ways may make together, beside the plan: some seconds on a small machine. */
const MOST_EXTRA_LABELS = 6_000_000;

/** Steps of a whole answer: a count to show, not a measure of time. */
const STEPS = 100;

/**
 * The work beside the plan: many solves, each of a question like the plan's. They share one allowance, so that a bag
 * that is hard to solve costs seconds and not minutes; what it does not reach to is left out, and `isShort` says so.
 */
export class Effort {
  isShort = false;
  #used = 0;
  #done = 0;
  readonly #watcher: Watcher;
  readonly #most: number;

  constructor(watcher: Watcher = {}, most = MOST_EXTRA_LABELS) {
    this.#watcher = watcher;
    this.#most = most;
  }

  /** For the plan itself, which has a limit of its own. */
  get hooks(): Hooks {
    const { shouldStop } = this.#watcher;
    return shouldStop ? { shouldStop } : {};
  }

  /** What the work gives, or `otherwise` when the allowance is used up. @throws SolveStopped when it was told to stop */
  within<T>(otherwise: T, work: (hooks: Hooks) => T): T {
    const before = this.#used;
    let made = 0;
    const hooks = {
      ...this.hooks,
      maxLabels: this.#most - before,
      onProgress: (labels: number) => (made = labels),
    };
    const result = before >= this.#most ? null : withinLimit(() => ({ value: work(hooks) }));
    this.#used = before + made;
    if (result === null) this.isShort = true;
    return result === null ? otherwise : result.value;
  }

  /** So many more of the steps are done. */
  step(by: number): void {
    this.#done = Math.min(STEPS, this.#done + by);
    this.#watcher.onStep?.(this.#done, STEPS);
  }
}
