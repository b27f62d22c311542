import type { Saved } from '../../state/service/edits.ts';

export type Read<V> = { value: V } | { message: string };

export type DraftOptions<V> = {
  /** What stands in the records, as text. */
  shown: () => string;
  read: (text: string) => Read<V>;
  /** The value that was typed says the same as what stands in the records. */
  isSame: (value: V) => boolean;
  save: (value: V) => Saved;
};

/**
 * The text of a field while it is written. It follows the records until someone types; what was typed and could not
 * be kept stays, with the reason, until it is mended, given up, or the records change. What is typed while an earlier
 * save is on its way stays when that comes back.
 */
export class Draft<V> {
  #options: DraftOptions<V>;
  // By value: reading the records anew does not disturb a draft unless this very field has changed.
  #shown = $derived.by(() => this.#options.shown());
  #text = $derived.by(() => this.#textOver(this.#shown));
  #message = $derived.by<string | null>(() => {
    void this.#shown;
    return null;
  });

  /** What stood in the records when the last save began: while it still does, their next change is our own. */
  #savedOver: string | null = null;
  /** Typed since, and what our own change then made of the records. */
  #since: { text: string; over?: string } | null = null;

  constructor(options: DraftOptions<V>) {
    this.#options = options;
  }

  get text(): string {
    return this.#text;
  }

  set text(typed: string) {
    this.#text = typed;
    this.#since = this.#savedOver === this.#shown ? { text: typed } : null;
    this.#message = null;
  }

  /** Why the text is not kept; null while there is nothing to say. */
  get message(): string | null {
    return this.#message;
  }

  get isDirty(): boolean {
    return this.#text !== this.#shown;
  }

  revert(): void {
    this.text = this.#shown;
    this.#since = null;
  }

  async commit(): Promise<void> {
    if (!this.isDirty) return;
    const typed = this.#text;
    const read = this.#options.read(typed);
    if ('message' in read) {
      this.#message = read.message;
      return;
    }
    if (this.#options.isSame(read.value)) {
      this.revert();
      return;
    }
    this.#since = null;
    this.#savedOver = this.#shown;
    const message = await this.#options.save(read.value);
    this.#savedOver = message === null ? this.#shown : null;
    if (this.#text === typed) this.#message = message;
  }

  /** When the records have changed. */
  #textOver(shown: string): string {
    if (this.#since === null) return shown;
    this.#since.over ??= shown;
    return this.#since.over === shown ? this.#since.text : shown;
  }
}
