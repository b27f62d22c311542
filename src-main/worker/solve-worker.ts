import type { BagFile } from '../contract/bag-file.ts';
import type { Answer } from '../contract/calls/answers.ts';
import type { Archetype } from '../contract/catalogue.ts';
import { RefusedInput, type Refusal } from '../contract/refusal.ts';
import { answerForWindow } from './answer-view.ts';

export type AnswerTask = {
  file: BagFile;
  catalogue: readonly Archetype[];
  today: string;
  locale?: string;
};

/** Refusals cross the thread as data, since an error's class would be lost on the way. */
export type AnswerOutcome =
  { ok: true; answer: Answer } | { ok: false; message: string; refusals: Refusal[] };

/** Runs on a thread of its own: one task, one outcome. */
export default function run({ file, catalogue, today, locale }: AnswerTask): AnswerOutcome {
  try {
    const options = locale === undefined ? { today } : { today, locale };
    return { ok: true, answer: answerForWindow(file, catalogue, options) };
  } catch (error) {
    if (!(error instanceof RefusedInput)) throw error;
    return { ok: false, message: error.message, refusals: [...error.refusals] };
  }
}

// The pool calls these by name, on the same threads.
export { seenOne } from './seen-one.ts';
export { watchList } from './watch-list.ts';
