/** How a caller watches and ends a long solve. */
export type Hooks = {
  /** Asked between clubs; true ends the solve with `SolveStopped`. */
  shouldStop?: () => boolean;
  /** Told between clubs: labels made so far, in this and earlier runs of the same solve. */
  onProgress?: (labels: number) => void;
  /** Most labels to make before `SolveStopped`. */
  maxLabels?: number;
};

/** The solve was ended by its caller, or by its label limit, before the answer was proven. */
export class SolveStopped extends Error {
  readonly reason: 'stopped' | 'labels';
  readonly labels: number;

  constructor(reason: 'stopped' | 'labels', labels: number) {
    super(
      reason === 'stopped'
        ? `The solve was stopped after ${labels} labels, before its answer was proven. Start it again.`
        : `The solve made ${labels} labels without proving its answer. Raise maxLabels or give fewer candidates.`,
    );
    this.name = 'SolveStopped';
    this.reason = reason;
    this.labels = labels;
  }
}

/** Counts the labels of a whole solve and asks its hooks. */
export class Watch {
  labels = 0;
  readonly #hooks: Hooks;

  constructor(hooks: Hooks = {}) {
    this.#hooks = hooks;
  }

  /** @throws SolveStopped */
  made(labels: number): void {
    this.labels += labels;
    this.#hooks.onProgress?.(this.labels);
    if (this.labels > (this.#hooks.maxLabels ?? Infinity)) throw new SolveStopped('labels', this.labels);
    if (this.#hooks.shouldStop?.() === true) throw new SolveStopped('stopped', this.labels);
  }
}
