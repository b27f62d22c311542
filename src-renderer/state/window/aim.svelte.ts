/**
 * What the focus goes to as soon as it stands on the page. Something that is led to may have to be read first, so it is
 * aimed at by its name, and takes the focus by itself.
 */
export class Aim {
  #at = $state.raw<string | null>(null);

  take(at: string): void {
    this.#at = at;
  }

  /** What was aimed at before, and never came, is not waited for any longer. */
  drop(): void {
    this.#at = null;
  }

  /** For the element that bears this name; the focus goes to it, or to the first in it that takes one. */
  here(name: string): (element: HTMLElement) => void {
    return (element) => {
      if (this.#at !== name) return;
      this.#at = null;
      const within = element.matches(TAKES_FOCUS) ? element : element.querySelector<HTMLElement>(TAKES_FOCUS);
      element.scrollIntoView({ block: 'center' });
      within?.focus({ preventScroll: true });
    };
  }
}

const TAKES_FOCUS = 'input, select, textarea, button, a[href], summary, [tabindex]';
