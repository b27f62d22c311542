import { Tinypool } from 'tinypool';
import type { Answer } from '../contract/calls/answers.ts';
import type { SeenOne } from '../contract/calls/prices.ts';
import { RefusedInput } from '../contract/refusal.ts';
import type { SeenOneTask } from '../worker/seen-one.ts';
import type { AnswerOutcome, AnswerTask } from '../worker/solve-worker.ts';
import type { WatchOutcome, WatchTask } from '../worker/watch-list.ts';

/** Answers bags away from the thread that serves the window. */
export type Answerer = {
  /** @throws RefusedInput for a bag that cannot be planned; AbortError when `signal` ends it. */
  answer(task: AnswerTask, signal?: AbortSignal): Promise<Answer>;
  seenOne(task: SeenOneTask): Promise<SeenOne>;
  /** Ends early, and says so, when the task's flag is set. */
  watchList(task: WatchTask): Promise<WatchOutcome>;
  close(): Promise<void>;
};

/** The worker's file is given by the host, since a bundle keeps it elsewhere. */
export function createAnswerer(workerFile: URL): Answerer {
  const pool = new Tinypool({
    filename: workerFile.href,
    runtime: 'worker_threads',
    minThreads: 1,
    maxThreads: 2,
    idleTimeout: 60_000,
  });
  return {
    async answer(task, signal) {
      const outcome = (await pool.run(task, signal ? { signal } : {})) as AnswerOutcome;
      if (!outcome.ok) throw new RefusedInput(outcome.message, outcome.refusals);
      return outcome.answer;
    },
    seenOne: async (task) => (await pool.run(task, { name: 'seenOne' })) as SeenOne,
    watchList: async (task) => (await pool.run(task, { name: 'watchList' })) as WatchOutcome,
    close: () => pool.destroy(),
  };
}
