import type { Printer } from './printer.ts';

/** One document of a batch; its page is made only when its turn comes. */
export type BatchJob = { fileName: string; page(): string | Promise<string> };

export type BatchProgress = { done: number; of: number; failed: number; last: string };

export type BatchResult = {
  saved: string[];
  failed: { fileName: string; message: string }[];
  cancelled: boolean;
};

export type BatchOptions = {
  printer: Printer;
  save(fileName: string, pdf: Uint8Array): void | Promise<void>;
  onProgress?(progress: BatchProgress): void;
  /** What to say of an error; its message when left out. */
  explain?(error: unknown): string;
  /** Ends the batch; what is saved stays. */
  signal?: AbortSignal;
  /** Documents at once. Chromium prints each in a process of its own, so two cores want two. */
  parallel?: number;
};

/** Many documents with one Chromium, in order of the jobs. One that fails is reported and does not stop the others. */
export async function printBatch(
  jobs: readonly BatchJob[],
  { printer, save, onProgress, explain = messageOf, signal, parallel = 2 }: BatchOptions,
): Promise<BatchResult> {
  const outcomes = new Map<BatchJob, string | null>();
  const stopped = () => signal?.aborted === true;
  let next = 0;
  const worker = async () => {
    while (next < jobs.length && !stopped()) {
      const job = jobs[next++];
      if (!job) return;
      try {
        await save(job.fileName, await printer.print(await job.page(), signal));
        outcomes.set(job, null);
      } catch (error) {
        if (stopped()) return;
        outcomes.set(job, explain(error));
      }
      const failed = [...outcomes.values()].filter((message) => message !== null).length;
      onProgress?.({ done: outcomes.size, of: jobs.length, failed, last: job.fileName });
    }
  };
  await Promise.all(Array.from({ length: Math.max(1, parallel) }, worker));
  const finished = jobs.filter((job) => outcomes.has(job));
  return {
    saved: finished.filter((job) => outcomes.get(job) === null).map(({ fileName }) => fileName),
    failed: finished.flatMap((job) => {
      const message = outcomes.get(job);
      return typeof message === 'string' ? [{ fileName: job.fileName, message }] : [];
    }),
    cancelled: finished.length < jobs.length,
  };
}

function messageOf(error: unknown): string {
  return error instanceof Error ? error.message : String(error);
}
