import { z } from 'zod';
import { archetypeSchema } from '../../formats/catalogue.ts';
import { ladderRowSchema, planFileSchema, swapSchema } from '../../formats/plan-file.ts';
import { idSchema, localeSchema } from '../../primitives.ts';
import { rowId } from '../records/players.ts';
import { read } from '../spec.ts';

export const markSchema = z.strictObject({
  longer: z.string(),
  shorter: z.string(),
  state: z.enum(['wide', 'crowded', 'unsure-wide', 'unsure-crowded']),
  gap: z.number(),
  limit: z.number(),
});

/** One way to spend: money in major units, distances in the bag's unit. */
export const sideSchema = z.strictObject({
  items: z.array(z.string()),
  swaps: z.array(swapSchema),
  cash: z.number(),
  net: z.number(),
  penalty: z.int(),
  chanceInBudget: z.number().nullable(),
  ladder: z.array(ladderRowSchema),
  /** Pairs of that ladder still beyond a limit. */
  marks: z.array(markSchema),
});
export type SideAnswer = z.infer<typeof sideSchema>;

const stepSchema = z.strictObject({ cost: z.number(), penalty: z.int(), buys: z.array(z.string()) });

/** Reasons found by solving again: what each purchase removes, and what else there is. Money in major units. */
export const explanationSchema = z.strictObject({
  purchases: z.array(z.strictObject({ id: z.string(), removes: z.int(), without: stepSchema.nullable() })),
  nextStep: stepSchema.nullable(),
  cheapestHelp: stepSchema.nullable(),
});

/** A plan in stages; `items` is the whole bag after the stage. */
export const pathSchema = z.strictObject({
  name: z.enum(['A', 'B']),
  stages: z.array(
    z.strictObject({
      when: z.string(),
      items: z.array(z.string()),
      cash: z.number(),
      net: z.number(),
      penalty: z.int(),
    }),
  ),
});

/** What a plan may cost with each price as a band, major units; on the budget's basis, as the instance has it. */
export const costSpreadSchema = z.strictObject({
  low: z.number(),
  high: z.number(),
  /** The least amount that is enough with the chance `share`. */
  enough: z.strictObject({ share: z.number(), cost: z.number() }),
  /** Chance, 0 to 1, that it costs at most so much; evenly from low to high, one point where the cost is sure. */
  points: z.array(z.strictObject({ cost: z.number(), atMost: z.number() })),
});
export type CostSpreadAnswer = z.infer<typeof costSpreadSchema>;

/** Expected full shots a round that want low ≤ carry < high, in the bag's unit; `tee` of them are tee shots. */
export const needIntervalSchema = z.strictObject({
  low: z.number(),
  high: z.number(),
  shots: z.number(),
  tee: z.number(),
});

/** How a club's usual shot flies: distances and heights in the bag's unit, degrees below the horizontal. */
export const flightSchema = z.strictObject({
  clubId: z.string(),
  name: z.string(),
  /** launch: from the measured one; loft: modelled from it; usual loft: from the one that is typical of its name. */
  from: z.enum(['launch', 'loft', 'usual loft']),
  /** The ladder's, with its 90 % range. */
  carry: z.number(),
  low: z.number(),
  high: z.number(),
  apex: z.number(),
  apexRange: z.tuple([z.number(), z.number()]),
  landDeg: z.number(),
  landRangeDeg: z.tuple([z.number(), z.number()]),
  points: z.array(z.strictObject({ along: z.number(), height: z.number() })),
});
export type FlightAnswer = z.infer<typeof flightSchema>;

export const answerSchema = z.strictObject({
  /** The plan file, with its instance as far as the answer tells of it: candidates that are in no bag of it are left out. */
  plan: planFileSchema.required({ instance: true, walkAway: true }),
  /** What the reader calls each club that the answer tells of: owned ids, and `buy:` ids of items and sets. */
  names: z.record(z.string(), z.string()),
  /** Neighbour pairs of today's ladder beyond a limit. */
  marks: z.array(markSchema),
  /** Driver speed that was reckoned with, in the bag's unit, and where it comes from. */
  speed: z.strictObject({ value: z.number().nullable(), from: z.string() }),
  todayPenalty: z.int(),
  /** How swaps and stages say "now" in the reader's language. */
  stageNow: z.string(),
  /** A: the plan; B: half the budget now, the rest later. Empty while the plan holds back. */
  paths: z.array(pathSchema),
  explanation: explanationSchema,
  /** Expected shots a round by club, and what that is reckoned from. */
  need: z
    .strictObject({
      source: z.string(),
      byClub: z.record(z.string(), z.number()),
      /** Ten units wide, from the shortest full shot to the longest carry. */
      intervals: z.array(needIntervalSchema),
    })
    .nullable(),
  /** Of the plan's "now" stage; null where no price of a club has any part in it. */
  costSpread: costSpreadSchema.nullable(),
});
export type Answer = z.infer<typeof answerSchema>;

export const answerCalls = {
  /**
   * The whole answer for a bag as it stands; `budget` (major units) tries another one without saving it. `job` lets it
   * be cancelled and heard of; an older answer of that job is cancelled.
   */
  'answers.plan': read(
    z.strictObject({
      bagId: rowId,
      budget: z.number().min(0).max(10_000_000).nullable().optional(),
      job: idSchema.optional(),
      locale: localeSchema.optional(),
    }),
    answerSchema,
  ),
  /** Up to four bags by their item ids (plans, curve points, alternatives, stages), each reckoned to be set side by side. */
  'answers.compare': read(
    z.strictObject({
      bagId: rowId,
      bags: z.array(z.array(z.string()).max(60)).min(1).max(4),
      locale: localeSchema.optional(),
    }),
    z.strictObject({ sides: z.array(sideSchema), names: z.record(z.string(), z.string()) }),
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
  /** The flights of today's ladder in the player's air, the longest club first; `without` cannot be flown. */
  'answers.flight': read(
    z.strictObject({ bagId: rowId, locale: localeSchema.optional() }),
    z.strictObject({
      air: z.strictObject({ temperatureC: z.number(), altitudeM: z.number() }),
      flights: z.array(flightSchema),
      without: z.array(z.strictObject({ clubId: z.string(), name: z.string() })),
    }),
  ),
  'catalogue.list': read(
    z.strictObject({ locale: localeSchema.optional() }),
    z.array(z.strictObject({ archetype: archetypeSchema, name: z.string() })),
  ),
};
