import { z } from 'zod';

/** Solver instance (DESIGN "formal model"): integers, distances in tenths of a yard, money in minor units. */
const whole = z.int().min(0);
const origin = z.enum(['owned', 'candidate']);

export const instanceSchema = z.strictObject({
  limit: whole,
  items: z.array(
    z.strictObject({
      id: z.string(),
      origin,
      kind: z.string(),
      carryDy: whole,
      tier: whole.nullable(),
      misfit: whole,
      locked: z.boolean(),
      lot: z.string().nullable(),
      price: whole,
      resale: whole,
    }),
  ),
  lots: z.array(z.strictObject({ id: z.string(), origin, price: whole, resale: whole })),
  bands: z.array(
    z.strictObject({ fromDy: whole, wideDy: whole, crowdedDy: whole, wideWeight: whole, crowdWeight: whole }),
  ),
  firstPair: z.strictObject({ wideDy: whole, secondAtLeastDy: whole }).nullable(),
  top: z.strictObject({ atLeastDy: whole, weight: whole }),
  bottom: z.strictObject({ atMostDy: whole, weight: whole }),
  excused: z.array(z.tuple([z.string(), z.string()])),
  leastTier: z.record(z.string(), whole),
  tierWeight: whole,
  budget: whole.nullable(),
  basis: z.enum(['net', 'cash']),
});
export type InstanceFile = z.infer<typeof instanceSchema>;

export const pointSchema = z.strictObject({
  cost: z.int(),
  penalty: whole,
  changes: whole,
  items: z.array(z.string()),
});

export const solutionSchema = z.strictObject({
  today: pointSchema.nullable(),
  cheapestClean: pointSchema.nullable(),
  bestWithinBudget: pointSchema.nullable(),
  headline: pointSchema.nullable(),
  frontier: z.array(pointSchema),
  walkAway: z.record(z.string(), z.int().nullable()),
});
