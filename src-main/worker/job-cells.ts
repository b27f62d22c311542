const STOP = 0;
const DONE = 1;
const OF = 2;
const CELLS = 3;

/**
 * Three shared 32-bit numbers between a long piece of work and who waits for it: whether to stop, steps done, steps in
 * all (0: not known yet). Shared memory, so that a thread hears of a stop without returning to its event loop, and
 * need not be killed.
 */
export class JobCells {
  readonly buffer: SharedArrayBuffer;
  readonly #cells: Int32Array;

  constructor(buffer = new SharedArrayBuffer(CELLS * Int32Array.BYTES_PER_ELEMENT)) {
    this.buffer = buffer;
    this.#cells = new Int32Array(buffer);
  }

  stop(): void {
    Atomics.store(this.#cells, STOP, 1);
  }

  get isStopped(): boolean {
    return Atomics.load(this.#cells, STOP) !== 0;
  }

  report(done: number, of: number): void {
    Atomics.store(this.#cells, OF, of);
    Atomics.store(this.#cells, DONE, done);
  }

  get progress(): { done: number; of: number } {
    return { done: Atomics.load(this.#cells, DONE), of: Atomics.load(this.#cells, OF) };
  }
}
