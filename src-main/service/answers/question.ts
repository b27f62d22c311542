import { z } from 'zod';
import { bagFileSchema } from '../../contract/formats/bag-file.ts';
import { airSchema, conventionsSchema } from '../../contract/calls/answers/reckoning.ts';
import { USUAL_RECKONING, type Reckoning } from '../../domain/advice/bag-view/reckoning.ts';
import type { BagTask } from '../../worker/bag-task.ts';
import { loadBag } from '../bags/bag-store.ts';
import type { Context } from '../handler.ts';
import type { BandOptions } from '../prices/price-bands.ts';
import { readReckoning } from './reckoning.ts';

/**
 * All that an answer for a bag is reckoned from, as the records stand: the bag with its prices, the catalogue, the
 * user's limits, weights and air. @throws StorageError 'missing'
 */
export function questionOf(
  { db, catalogue, today }: Pick<Context, 'db' | 'catalogue' | 'today'>,
  bagId: number,
  locale?: string,
  options: Pick<BandOptions, 'shared'> = {},
): BagTask & { reckoning: Reckoning } {
  const { file, playerId } = loadBag(db, bagId, options);
  return {
    file,
    catalogue: catalogue(),
    today: today(),
    locale,
    reckoning: readReckoning(db, playerId),
  };
}

/** What is kept with an answer, so that it can be understood, and compared with the question of another day. */
export function keptQuestion({ file, reckoning }: BagTask): NonNullable<unknown> {
  return { bag: file, reckoning: reckoning ?? USUAL_RECKONING };
}

const keptSchema = z.strictObject({
  bag: bagFileSchema,
  reckoning: z.strictObject({
    conventions: conventionsSchema,
    air: airSchema.extend({ humidity: z.number() }),
  }),
});

/** The question that was kept with an answer; before limits could be set it was the bag alone. Null for neither. */
export function questionKept(input: unknown): Pick<BagTask, 'file' | 'reckoning'> | null {
  const kept = keptSchema.safeParse(input);
  if (kept.success) return { file: kept.data.bag, reckoning: kept.data.reckoning };
  const bag = bagFileSchema.safeParse(input);
  return bag.success ? { file: bag.data, reckoning: USUAL_RECKONING } : null;
}

export function isSameQuestion(kept: unknown, question: BagTask): boolean {
  return JSON.stringify(kept) === JSON.stringify(keptQuestion(question));
}
