type Options<A> = {
  /** Ends a run that a newer question overtook, once it has gone on for longer than `afterMs`; it may then fail. */
  overtaken?: { afterMs: number; end: (args: A) => void };
};

/**
 * Runs one question at a time and, of those that come meanwhile, only the newest: a slider that is dragged asks as
 * fast as answers come and never stands in a queue.
 */
export function createLatest<A, R>(
  run: (args: A) => Promise<R>,
  done: (args: A, outcome: { value: R } | { error: unknown }) => void,
  { overtaken }: Options<A> = {},
): (args: A) => void {
  let busy: { args: A; since: number; timer: ReturnType<typeof setTimeout> | null; isEnded: boolean } | null =
    null;
  let next: { args: A } | null = null;

  async function work(args: A): Promise<void> {
    const own: NonNullable<typeof busy> = { args, since: performance.now(), timer: null, isEnded: false };
    busy = own;
    let outcome: { value: R } | { error: unknown };
    try {
      outcome = { value: await run(args) };
    } catch (error) {
      outcome = { error };
    }
    busy = null;
    if (own.timer !== null) clearTimeout(own.timer);
    // What was ended for a newer question has nothing to say.
    if (!own.isEnded) done(args, outcome);
    if (next === null) return;
    const { args: newest } = next;
    next = null;
    void work(newest);
  }

  return (args) => {
    if (busy === null) {
      void work(args);
      return;
    }
    next = { args };
    const own = busy;
    if (overtaken === undefined || own.timer !== null) return;
    const left = Math.max(0, overtaken.afterMs - (performance.now() - own.since));
    own.timer = setTimeout(() => {
      own.isEnded = true;
      overtaken.end(own.args);
    }, left);
  };
}
