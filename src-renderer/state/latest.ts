/**
 * Runs one question at a time and, of those that come meanwhile, only the newest: a slider that is dragged asks as
 * fast as answers come and never stands in a queue.
 */
export function createLatest<A, R>(
  run: (args: A) => Promise<R>,
  done: (args: A, outcome: { value: R } | { error: unknown }) => void,
): (args: A) => void {
  let busy = false;
  let next: { args: A } | null = null;

  async function work(args: A): Promise<void> {
    busy = true;
    let outcome: { value: R } | { error: unknown };
    try {
      outcome = { value: await run(args) };
    } catch (error) {
      outcome = { error };
    }
    busy = false;
    done(args, outcome);
    if (next === null) return;
    const { args: newest } = next;
    next = null;
    void work(newest);
  }

  return (args) => {
    if (busy) next = { args };
    else void work(args);
  };
}
