/** Counts changes of the records; whoever reads the count is run again after one. */
export class Ticks {
  #count = $state(0);

  get count(): number {
    return this.#count;
  }

  bump(): void {
    this.#count += 1;
  }
}
