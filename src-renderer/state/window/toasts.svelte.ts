export type Toast = { id: number; text: string; action?: { label: string; run: () => void } };

/** Long enough to read two lines and reach the button; what it offers stays in reach elsewhere (undo). */
const SHOWN_MS = 9_000;

/** Short notes on what was done. A new one takes the place of the last. */
export class Toasts {
  #now = $state.raw<Toast | null>(null);
  #last = 0;
  #timer: ReturnType<typeof setTimeout> | undefined;

  get now(): Toast | null {
    return this.#now;
  }

  say(text: string, action?: Toast['action']): void {
    this.#last += 1;
    this.#now = { id: this.#last, text, ...(action ? { action } : {}) };
    this.resume();
  }

  /** While it is pointed at or has the focus, it stays. */
  hold(): void {
    clearTimeout(this.#timer);
  }

  resume(): void {
    clearTimeout(this.#timer);
    this.#timer = setTimeout(() => this.close(), SHOWN_MS);
  }

  close(): void {
    clearTimeout(this.#timer);
    this.#now = null;
  }
}
