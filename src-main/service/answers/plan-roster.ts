import type { Db } from '../../../db/sqlite.ts';
import type { CallResult } from '../../contract/calls/index.ts';
import type { BriefOutcome } from '../../worker/brief.ts';
import { callError, saidOf } from '../call-error.ts';
import type { Context } from '../handler.ts';
import type { Job } from './jobs.ts';
import { keepPlan } from './keep-plan.ts';
import { questionOf } from './question.ts';
import { sharedBands, type BandOptions, type NotedBand } from '../prices/price-bands.ts';

/** As many as the pool has threads; an answer that a window asks for meanwhile waits for one bag, not for all. */
const AT_ONCE = 2;

const NOTHING = (): void => undefined;

type Source = Pick<Context, 'db' | 'catalogue' | 'today'>;
type Shared = NonNullable<BandOptions['shared']>;
type Outcome = CallResult<'roster.plan'>;

/**
 * Plans bags one after the other, two at once; each is kept as soon as it is known. Everybody's price notes are read
 * once: what is noted meanwhile counts the next time.
 */
export async function planRoster(context: Context, bagIds: readonly number[], job: Job): Promise<Outcome> {
  const outcome: Outcome = { planned: 0, cancelled: false, refused: [] };
  // The catalogue and the day are the same for all.
  const [catalogue, today] = [context.catalogue(), context.today()];
  const source: Source = {
    get db() {
      return context.db;
    },
    catalogue: () => catalogue,
    today: () => today,
  };
  const shared = rememberedBands(context.db);
  let next = 0;
  let done = 0;
  job.report(0, bagIds.length);

  /** Gives what is to be written of it, which need not wait: another bag is reckoned meanwhile. */
  const planOne = async (bagId: number): Promise<() => void> => {
    // The bag may have gone since the roster was read.
    const question = questionFor(source, bagId, shared);
    if (question === null) return NOTHING;
    const task = { ...question, cells: job.cells };
    // A fault of ours in one bag must not keep the others from their plan.
    const found = await context.answerer.brief(task).catch((error: unknown) => failed(error));
    if (found.ok) {
      outcome.planned += 1;
      return () => {
        keepPlan(context, bagId, question, found.plan);
      };
    }
    if (!found.stopped) {
      outcome.refused.push({ bagId, player: question.file.player.name, message: found.message });
    }
    return NOTHING;
  };
  const work = async (): Promise<void> => {
    let keep = NOTHING;
    for (let bagId = bagIds[next++]; bagId !== undefined && !job.isStopped(); bagId = bagIds[next++]) {
      const planning = planOne(bagId);
      keep();
      keep = await planning;
      done += 1;
      job.report(done, bagIds.length);
    }
    keep();
  };
  await Promise.all(Array.from({ length: AT_ONCE }, work));
  outcome.cancelled = job.isStopped();
  return outcome;
}

function failed(error: unknown): Extract<BriefOutcome, { stopped: false }> {
  return { ok: false, stopped: false, message: saidOf(error) };
}

/** Everybody's bands by currency, each reckoned once. */
function rememberedBands(db: Db): Shared {
  const known = new Map<string, NotedBand[]>();
  return (currency) => {
    const bands = known.get(currency) ?? sharedBands(db, currency);
    known.set(currency, bands);
    return bands;
  };
}

function questionFor(source: Source, bagId: number, shared: Shared) {
  try {
    return questionOf(source, bagId, undefined, { shared });
  } catch (error) {
    if (callError(error).kind === 'not-found') return null;
    throw error;
  }
}
