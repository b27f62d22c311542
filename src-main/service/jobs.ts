/** Long reads by the name their caller gave, so that the caller can end them. */
export type Jobs = {
  /** Runs `work` with a flag (one Int32, 0: go on) that cancelling sets; an older job of that name is cancelled. */
  run<T>(name: string, work: (stop: SharedArrayBuffer) => Promise<T>): Promise<T>;
  /** @returns whether there was such a job. */
  cancel(name: string): boolean;
};

export function createJobs(): Jobs {
  const running = new Map<string, SharedArrayBuffer>();
  const cancel = (name: string): boolean => {
    const stop = running.get(name);
    if (stop === undefined) return false;
    Atomics.store(new Int32Array(stop), 0, 1);
    running.delete(name);
    return true;
  };
  return {
    cancel,
    async run(name, work) {
      cancel(name);
      const stop = new SharedArrayBuffer(Int32Array.BYTES_PER_ELEMENT);
      running.set(name, stop);
      try {
        return await work(stop);
      } finally {
        if (running.get(name) === stop) running.delete(name);
      }
    },
  };
}
