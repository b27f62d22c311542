import type { Answer } from '../contract/calls/answers/answers.ts';
import { RefusedInput, type Refusal } from '../contract/refusal.ts';
import type { Watcher } from '../domain/advice/effort.ts';
import { SolveStopped } from '../domain/solve/index.ts';
import { answerForWindow } from './answer-view.ts';
import { handOverText, type HandOverTask, type HandOverText } from './handover.ts';
import type { BagTask } from './bag-task.ts';
import { JobCells } from './job-cells.ts';

export type AnswerTask = BagTask & {
  /** Of `JobCells`. */
  cells?: SharedArrayBuffer;
};

/** Refusals cross the thread as data, since an error's class would be lost on the way. */
export type Outcome<T> =
  | { ok: true; answer: T }
  | { ok: false; stopped: true }
  | { ok: false; stopped: false; message: string; refusals: Refusal[] };

export type AnswerOutcome = Outcome<Answer>;
export type HandOverOutcome = Outcome<HandOverText>;

/** Runs on a thread of its own: one task, one outcome. */
export default function run({ file, catalogue, cells, ...options }: AnswerTask): AnswerOutcome {
  return outcomeOf(cells, (watcher) => answerForWindow(file, catalogue, { ...options, watcher }));
}

/** The document of a bag as text. */
export function handOver({ cells, ...task }: HandOverTask & { cells?: SharedArrayBuffer }): HandOverOutcome {
  return outcomeOf(cells, (watcher) => handOverText(task, watcher));
}

function outcomeOf<T>(cells: SharedArrayBuffer | undefined, work: (watcher: Watcher) => T): Outcome<T> {
  const job = new JobCells(cells);
  const watcher: Watcher = {
    shouldStop: () => job.isStopped,
    onStep: (done, of) => {
      job.report(done, of);
    },
  };
  try {
    return { ok: true, answer: work(watcher) };
  } catch (error) {
    if (error instanceof SolveStopped) return { ok: false, stopped: true };
    if (!(error instanceof RefusedInput)) throw error;
    return { ok: false, stopped: false, message: error.message, refusals: [...error.refusals] };
  }
}

// The pool calls these by name, on the same threads.
export { beside } from './beside.ts';
export { brief } from './brief.ts';
export { seenOne } from './seen-one/seen-one.ts';
export { watchList } from './seen-one/watch-list.ts';
