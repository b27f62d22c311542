import { z } from 'zod';
import { sourceSchema, unitsSchema } from '../primitives.ts';
import { instanceSchema } from './instance.ts';

/**
 * The plan file, version 1. Distances in `units.distance` to 0.1; money in major units of
 * `units.currency`, save inside `instance` and `walkAway`, which are in minor units like all of `solve`.
 */
export const ladderRowSchema = z.strictObject({
  clubId: z.string(),
  carry: z.number(),
  low: z.number(),
  high: z.number(),
  source: sourceSchema,
});

export const verdictSchema = z.enum(['keep', 'drop', 'replace', 'add', 'ask', 'coach-first', 'wait', 'stop']);

export const findingSchema = z.strictObject({
  kind: z.string(),
  clubs: z.array(z.string()),
  severity: z.int().min(1).max(3),
  verdict: verdictSchema,
  text: z.string(),
  evidence: z.array(
    z.strictObject({
      figure: z.string(),
      value: z.union([z.number(), z.string()]),
      range: z.tuple([z.number(), z.number()]).exactOptional(),
      source: z.string(),
    }),
  ),
});

export const swapSchema = z.strictObject({
  action: z.enum(['buy', 'drop', 'sell']),
  clubId: z.string().exactOptional(),
  archetype: z.string().exactOptional(),
  inPlaceOf: z.array(z.string()).exactOptional(),
  why: z.string(),
  price: z.number().exactOptional(),
  walkAway: z.number().nullable().exactOptional(),
  stage: z.string(),
});

export const planStatusSchema = z.enum([
  'nothing-needed',
  'ok',
  'partly',
  'over-budget',
  'ask-first',
  'coach-first',
  'stopped',
]);

export const curvePointSchema = z.strictObject({
  cost: z.number(),
  penalty: z.int(),
  changes: z.int(),
  items: z.array(z.string()),
});

export const questionSchema = z.strictObject({
  ask: z.string(),
  about: z.array(z.string()),
  worth: z.number(),
});

export const planFileSchema = z.strictObject({
  format: z.literal('loftledger-plan'),
  version: z.literal(1),
  units: unitsSchema,
  ladder: z.array(ladderRowSchema),
  findings: z.array(findingSchema),
  plan: z.strictObject({
    status: planStatusSchema,
    swaps: z.array(swapSchema),
    cash: z.number(),
    net: z.number(),
    remaining: z.number().nullable(),
    chanceInBudget: z.number().exactOptional(),
    afterLadder: z.array(ladderRowSchema),
    items: z.array(z.string()).exactOptional(),
  }),
  frontier: z.array(curvePointSchema),
  alternatives: z.array(curvePointSchema),
  questions: z.array(questionSchema),
  cautions: z.array(z.string()),
  instance: instanceSchema.exactOptional(),
  walkAway: z.record(z.string(), z.int().nullable()).exactOptional(),
});
export type PlanFile = z.infer<typeof planFileSchema>;
