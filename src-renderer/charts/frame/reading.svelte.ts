import type { Attachment } from 'svelte/attachments';
import { readingAfter, type Direction } from './reading-keys.ts';

/** What is read at one place of a chart: a short name, and all that is known there. */
export type Reading = { name: string; text: string };

/** The mark that is moved over a chart's figures, by keys or by the pointer. */
export class ReadingMark {
  #count: () => number;
  /** Where the keys left it, and where the pointer is: the pointer wins while it is over the chart. */
  #kept = $state<number | null>(null);
  #over = $state<number | null>(null);

  constructor(count: () => number) {
    this.#count = count;
  }

  /** The place that is read; null for none. */
  get at(): number | null {
    const at = this.#over ?? this.#kept;
    return at === null || at >= this.#count() ? null : at;
  }

  keep(at: number | null): void {
    this.#kept = at;
  }

  /** @returns whether the key was one of the mark's own. */
  press(key: string, direction: Direction): boolean {
    const after = readingAfter(key, this.#kept, this.#count(), direction);
    if (after === undefined) return false;
    this.#kept = after;
    return true;
  }

  /** Follows the pointer over an element; `find` gives the place that is nearest to a point in it, in px. */
  follow(find: (x: number, y: number) => number | null): Attachment<Element> {
    return (element) => {
      const move = (event: Event) => {
        if (!(event instanceof PointerEvent)) return;
        const { left, top } = element.getBoundingClientRect();
        this.#over = find(event.clientX - left, event.clientY - top);
      };
      const leave = () => (this.#over = null);
      element.addEventListener('pointermove', move);
      element.addEventListener('pointerleave', leave);
      return () => {
        element.removeEventListener('pointermove', move);
        element.removeEventListener('pointerleave', leave);
      };
    };
  }
}
