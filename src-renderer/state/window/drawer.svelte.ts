/** The Settings drawer: it stands beside the page and holds nothing up. */
export class Drawer {
  #isOpen = $state(false);
  #groups = $state<Record<string, boolean>>({ look: true });

  get isOpen(): boolean {
    return this.#isOpen;
  }

  toggle(): void {
    this.#isOpen = !this.#isOpen;
  }

  open(): void {
    this.#isOpen = true;
  }

  close(): void {
    this.#isOpen = false;
  }

  /** Which groups are unfolded; they stay so while the window lives. */
  shows(group: string): boolean {
    return this.#groups[group] ?? false;
  }

  show(group: string, isShown: boolean): void {
    this.#groups[group] = isShown;
  }
}
