import { Tinypool } from 'tinypool';
import type { Answer } from '../../contract/calls/answers/answers.ts';
import type { SeenOne } from '../../contract/calls/money/prices.ts';
import { RefusedInput } from '../../contract/refusal.ts';
import type { HandOverTask, HandOverText } from '../../worker/handover.ts';
import type { BesideOutcome, BesideTask, BesideView } from '../../worker/beside.ts';
import type { BriefOutcome } from '../../worker/brief.ts';
import type { SeenOneTask } from '../../worker/seen-one/seen-one.ts';
import type { AnswerOutcome, AnswerTask, HandOverOutcome, Outcome } from '../../worker/solve-worker.ts';
import type { WatchOutcome, WatchTask } from '../../worker/seen-one/watch-list.ts';

/** Answers bags away from the thread that serves the window. */
export type Answerer = {
  /** @throws RefusedInput for a bag that cannot be planned; Cancelled when the task's cells end it. */
  answer(task: AnswerTask): Promise<Answer>;
  /** The document of a bag as text. Throws as `answer` does. */
  handOver(task: HandOverTask & { cells?: SharedArrayBuffer }): Promise<HandOverText>;
  /** The plan alone, for one of many bags. */
  brief(task: AnswerTask): Promise<BriefOutcome>;
  /** One bag to be set beside another. @throws RefusedInput for a bag that cannot be planned. */
  beside(task: BesideTask): Promise<BesideView>;
  seenOne(task: SeenOneTask): Promise<SeenOne>;
  /** Ends early, and says so, when the task's flag is set. */
  watchList(task: WatchTask): Promise<WatchOutcome>;
  close(): Promise<void>;
};

/** Whoever asked no longer wants to know. */
export class Cancelled extends Error {
  constructor() {
    super(
      'This was stopped before it was reckoned to its end. Nothing was changed; ask again when you want it.',
    );
    this.name = 'Cancelled';
  }
}

function answerOf<T>(outcome: Outcome<T>): T {
  if (!outcome.ok && outcome.stopped) throw new Cancelled();
  if (!outcome.ok) throw new RefusedInput(outcome.message, outcome.refusals);
  return outcome.answer;
}

/**
 * What one thread may hold, MB. Left to itself V8 lets a thread's heap grow with the machine's memory, which a program
 * that stays open for days does not give back; the largest bag of the bench holds about 100 MB.
 */
const THREAD_LIMITS = { maxOldGenerationSizeMb: 512, maxYoungGenerationSizeMb: 32 };

function viewOf(outcome: BesideOutcome): BesideView {
  if (!outcome.ok) throw new RefusedInput(outcome.message, outcome.refusals);
  return outcome.view;
}

/** The worker's file is given by the host, since a bundle keeps it elsewhere. */
export function createAnswerer(workerFile: URL): Answerer {
  const pool = new Tinypool({
    filename: workerFile.href,
    runtime: 'worker_threads',
    minThreads: 1,
    maxThreads: 2,
    idleTimeout: 60_000,
    resourceLimits: THREAD_LIMITS,
  });
  return {
    answer: async (task) => answerOf((await pool.run(task)) as AnswerOutcome),
    handOver: async (task) => answerOf((await pool.run(task, { name: 'handOver' })) as HandOverOutcome),
    brief: async (task) => (await pool.run(task, { name: 'brief' })) as BriefOutcome,
    beside: async (task) => viewOf((await pool.run(task, { name: 'beside' })) as BesideOutcome),
    seenOne: async (task) => (await pool.run(task, { name: 'seenOne' })) as SeenOne,
    watchList: async (task) => (await pool.run(task, { name: 'watchList' })) as WatchOutcome,
    close: () => pool.destroy(),
  };
}
