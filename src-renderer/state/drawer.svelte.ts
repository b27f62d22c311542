/** The Settings drawer: it stands beside the page and holds nothing up. */
export class Drawer {
  #isOpen = $state(false);

  get isOpen(): boolean {
    return this.#isOpen;
  }

  toggle(): void {
    this.#isOpen = !this.#isOpen;
  }

  close(): void {
    this.#isOpen = false;
  }
}
