import { z } from 'zod';
import { archetypeSchema } from '../catalogue.ts';
import { ladderRowSchema, planFileSchema } from '../plan-file.ts';
import { rowId } from './players.ts';
import { read } from './spec.ts';

export const answerSchema = z.strictObject({
  /** The plan file, with instance. */
  plan: planFileSchema.required({ instance: true, walkAway: true }),
  /** What the reader calls each club of the ladders: owned ids, and `buy:` item ids. */
  names: z.record(z.string(), z.string()),
  /** Neighbour pairs of today's ladder beyond a limit. */
  marks: z.array(
    z.strictObject({
      longer: z.string(),
      shorter: z.string(),
      state: z.enum(['wide', 'crowded', 'unsure-wide', 'unsure-crowded']),
      gap: z.number(),
      limit: z.number(),
    }),
  ),
  /** Driver speed that was reckoned with, in the bag's unit, and where it comes from. */
  speed: z.strictObject({ value: z.number().nullable(), from: z.string() }),
  todayPenalty: z.int(),
});
export type Answer = z.infer<typeof answerSchema>;

export const answerCalls = {
  /** The whole answer for a bag as it stands; `budget` (major units) tries another one without saving it. */
  'answers.plan': read(
    z.strictObject({ bagId: rowId, budget: z.number().min(0).max(10_000_000).nullable().optional() }),
    answerSchema,
  ),
  /** The ladder as it would play in other air; nothing stored changes. */
  'answers.whatIf': read(
    z.strictObject({
      bagId: rowId,
      temperatureC: z.number().min(-30).max(50),
      altitudeM: z.number().min(-430).max(4500),
    }),
    z.strictObject({ ladder: z.array(ladderRowSchema) }),
  ),
  'catalogue.list': read(
    z.strictObject({}),
    z.array(z.strictObject({ archetype: archetypeSchema, name: z.string() })),
  ),
};
