import type { Step } from '../../../src-main/contract/step.ts';
import { lineMessage } from '../service/refusals.ts';
import { words } from '../../words/index.ts';
import { Live } from '../service/live.svelte.ts';
import type { Records } from '../service/records.svelte.ts';
import type { Toasts } from './toasts.svelte.ts';

/** Undo and redo: what they would do next, and the note that names what was done. */
export class History {
  #records: Records;
  #toasts: Toasts;
  #live: Live<'history.state'>;
  #textOf: (step: Step) => string;

  constructor(records: Records, toasts: Toasts, textOf: (step: Step) => string) {
    this.#textOf = textOf;
    this.#records = records;
    this.#toasts = toasts;
    this.#live = new Live({
      client: records.client,
      ticks: records.ticks,
      name: 'history.state',
      args: () => ({}),
    });
  }

  /** The name of the step that undo would take back; null for none. */
  get undoable(): string | null {
    return this.#name(this.#live.value?.undo);
  }

  get redoable(): string | null {
    return this.#name(this.#live.value?.redo);
  }

  #name(step: Step | null | undefined): string | null {
    return step ? this.#textOf(step) : null;
  }

  async undo(): Promise<void> {
    const done = await this.#records.edit('history.undo', {});
    if (!done.ok) this.#toasts.say(lineMessage(done.error));
    else if (done.value === null) this.#toasts.say(words.history.nothingToUndo);
    else {
      const redo = { label: words.history.redo, run: () => void this.redo() };
      this.#toasts.say(words.history.undone(this.#textOf(done.value)), redo);
    }
  }

  async redo(): Promise<void> {
    const done = await this.#records.edit('history.redo', {});
    if (!done.ok) this.#toasts.say(lineMessage(done.error));
    else if (done.value === null) this.#toasts.say(words.history.nothingToRedo);
    else {
      const undo = { label: words.history.undo, run: () => void this.undo() };
      this.#toasts.say(words.history.redone(this.#textOf(done.value)), undo);
    }
  }
}
