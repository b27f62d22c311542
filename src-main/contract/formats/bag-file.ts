import { z } from 'zod';
import {
  clubKindSchema,
  flexSchema,
  forgivenessSchema,
  idSchema,
  missSchema,
  spinTierSchema,
  textSchema,
  unitsSchema,
} from '../primitives.ts';

/**
 * The bag file, version 1: distances and speeds in `units`, money in major units of `units.currency`.
 * The shape only; what one field must be beside another (units, ids, bands) is checked in `read-bag.ts`.
 */
const money = z.number().min(0).max(10_000_000);
export const bandFileSchema = z.strictObject({ low: money, likely: money, high: money });

/** Handicap Index tops out at 54.0 (WHS, test/reference/data/rules.json); better than scratch is negative. */
const handicap = z.number().min(-10).max(54);

export const clubFileSchema = z.strictObject({
  id: idSchema,
  kind: clubKindSchema,
  label: textSchema(120).exactOptional(),
  loftDeg: z.number().min(-15).max(80).exactOptional(),
  loftMeasured: z.boolean().exactOptional(),
  lieDeg: z.number().min(40).max(85).exactOptional(),
  lengthIn: z.number().min(18).max(60).exactOptional(),
  carry: z.number().positive().exactOptional(),
  carrySd: z.number().min(0).exactOptional(),
  shots: z.int().min(1).max(100_000).exactOptional(),
  total: z.number().positive().exactOptional(),
  ballSpeed: z.number().positive().exactOptional(),
  launchDeg: z.number().min(-10).max(80).exactOptional(),
  spinRpm: z.number().min(0).max(20_000).exactOptional(),
  forgiveness: forgivenessSchema.exactOptional(),
  spinTier: spinTierSchema.exactOptional(),
  flex: flexSchema.exactOptional(),
  yearMade: z.int().min(1850).max(2100).exactOptional(),
  goTo: z.boolean().exactOptional(),
  set: idSchema.exactOptional(),
  sell: bandFileSchema.exactOptional(),
});
export type ClubFile = z.infer<typeof clubFileSchema>;

export const costsSchema = z.strictObject({
  delivery: money.exactOptional(),
  regrip: money.exactOptional(),
  sellFeePercent: z.number().min(0).max(100).exactOptional(),
  sellPostage: money.exactOptional(),
});

export const budgetSchema = z.strictObject({ amount: money, cashBeforeSales: z.boolean().exactOptional() });

export const bagFileSchema = z.strictObject({
  format: z.literal('loftledger-bag'),
  version: z.literal(1),
  player: z.strictObject({
    name: textSchema(200).min(1),
    handicap,
    targetHandicap: handicap.exactOptional(),
    driverSpeed: z.number().positive().exactOptional(),
    handed: z.enum(['right', 'left']),
    ground: z.enum(['soft', 'firm']),
    flighted: z.boolean().exactOptional(),
    miss: z.array(missSchema).max(6).exactOptional(),
    missNote: textSchema(2000).exactOptional(),
    pain: z.boolean().exactOptional(),
  }),
  course: z
    .strictObject({
      holes: z
        .array(z.strictObject({ par: z.int().min(3).max(6), length: z.number().positive() }))
        .min(1)
        .max(36),
    })
    .exactOptional(),
  units: unitsSchema,
  clubs: z.array(clubFileSchema).max(60),
  sets: z
    .array(z.strictObject({ id: idSchema, sell: bandFileSchema.exactOptional() }))
    .max(30)
    .exactOptional(),
  prices: z
    .array(
      z.strictObject({
        archetype: idSchema,
        low: money,
        likely: money,
        high: money,
        seen: z.iso.date().exactOptional(),
      }),
    )
    .max(2000),
  costs: costsSchema.exactOptional(),
  budget: budgetSchema.exactOptional(),
  choices: z.strictObject({ changePutter: z.boolean().exactOptional() }).exactOptional(),
});
export type BagFile = z.infer<typeof bagFileSchema>;
