import type { ProgressEvent } from '../../contract/calls/index.ts';
import { JobCells } from '../../worker/job-cells.ts';

/** A long piece of work as its worker sees it. */
export type Job = {
  /** Shared with a thread that does the work: it reads the stop flag and writes how far it is (`JobCells`). */
  cells: SharedArrayBuffer;
  isStopped(): boolean;
  /** For work that is ended by a signal. */
  signal: AbortSignal;
  /** For work on this thread. */
  report(done: number, of: number): void;
};

/** Long reads by the name their caller gave, so that the caller can end them and hear how far they are. */
export type Jobs = {
  /** An older job of that name is cancelled first. */
  run<T>(name: string, work: (job: Job) => Promise<T>): Promise<T>;
  /** @returns whether there was such a job. */
  cancel(name: string): boolean;
};

/** Often enough for an eye, rarely enough for a stream of events. */
const LOOK_EVERY_MS = 150;

/** @param tell is told of a job's progress, each step at most once */
export function createJobs(tell: (event: ProgressEvent) => void = () => undefined): Jobs {
  const running = new Map<string, { cells: JobCells; stop: AbortController }>();
  const cancel = (name: string): boolean => {
    const job = running.get(name);
    if (job === undefined) return false;
    job.cells.stop();
    job.stop.abort();
    running.delete(name);
    return true;
  };
  return {
    cancel,
    async run(name, work) {
      cancel(name);
      const job = { cells: new JobCells(), stop: new AbortController() };
      const { cells, stop } = job;
      running.set(name, job);
      let told = 0;
      const look = () => {
        const { done, of } = cells.progress;
        if (of === 0 || done === told || running.get(name) !== job) return;
        told = done;
        tell({ event: 'progress', data: { job: name, done, of } });
      };
      const timer = setInterval(look, LOOK_EVERY_MS);
      try {
        return await work({
          cells: cells.buffer,
          isStopped: () => cells.isStopped,
          signal: stop.signal,
          report: (done, of) => {
            cells.report(done, of);
          },
        });
      } finally {
        clearInterval(timer);
        look();
        if (running.get(name) === job) running.delete(name);
      }
    },
  };
}
