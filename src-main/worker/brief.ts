import type { PlanFile } from '../contract/formats/plan-file.ts';
import { RefusedInput, saidInWords } from '../contract/refusal.ts';
import { SolveStopped } from '../domain/solve/index.ts';
import { answerBag } from './answer.ts';
import type { BagTask } from './bag-task.ts';
import { JobCells } from './job-cells.ts';

/**
 * The plan file without what only a bag’s own pages show: walk-away prices, paths, reasons, alternatives, the instance.
 */
export type BriefOutcome =
  | { ok: true; plan: PlanFile }
  | { ok: false; stopped: true }
  | { ok: false; stopped: false; message: string };

/** One of many bags. `cells` are those of the whole job, and only tell it to stop. */
export function brief({
  file,
  catalogue,
  cells,
  ...options
}: BagTask & { cells?: SharedArrayBuffer }): BriefOutcome {
  const job = new JobCells(cells);
  try {
    const { plan } = answerBag(file, catalogue, {
      ...options,
      withInstance: false,
      isBrief: true,
      watcher: { shouldStop: () => job.isStopped },
    });
    return { ok: true, plan };
  } catch (error) {
    if (error instanceof SolveStopped) return { ok: false, stopped: true };
    if (!(error instanceof RefusedInput)) throw error;
    return { ok: false, stopped: false, message: saidInWords(error) };
  }
}
