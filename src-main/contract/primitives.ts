import { z } from 'zod';

/** Ids in files: readable, without control characters, so that they can be printed and put in a path of a message. */
export const idSchema = z
  .string()
  .min(1)
  .max(80)
  // eslint-disable-next-line no-control-regex
  .regex(/^[^\u0000-\u001f\u007f]+$/, 'must not hold control characters')
  .refine((text) => text.isWellFormed(), 'must not hold half a surrogate pair');

/** Free text of one line or a few: names, labels, notes. */
export const textSchema = (max: number) =>
  z
    .string()
    .max(max)
    // eslint-disable-next-line no-control-regex
    .regex(/^[^\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f]*$/, 'must not hold control characters')
    .refine((text) => text.isWellFormed(), 'must not hold half a surrogate pair');

/** The reader's language and region (BCP 47), for sentences, names and figures; English where left out. */
export const localeSchema = z
  .string()
  .max(35)
  .refine((tag) => {
    try {
      return Intl.getCanonicalLocales(tag).length === 1;
    } catch {
      return false;
    }
  }, 'must be a language tag such as de-AT');

export const distanceUnitSchema = z.enum(['yd', 'm']);
export const speedUnitSchema = z.enum(['mph', 'km/h', 'm/s']);
export const currencySchema = z.string().regex(/^[A-Z]{3}$/, 'must be three capital letters (ISO 4217)');

export const unitsSchema = z.strictObject({
  distance: distanceUnitSchema,
  speed: speedUnitSchema,
  currency: currencySchema,
});
export type Units = z.infer<typeof unitsSchema>;

export const clubKindSchema = z.enum(['driver', 'fairway', 'hybrid', 'iron', 'wedge', 'putter']);
export const forgivenessSchema = z.literal([1, 2, 3, 4]);
export const spinTierSchema = z.enum(['low', 'mid', 'high']);
export const flexSchema = z.enum(['L', 'A', 'R', 'S', 'X']);
export const missSchema = z.enum(['left', 'right', 'high', 'low', 'fat', 'thin']);
export const sourceSchema = z.enum(['measured', 'stated', 'interpolated', 'modelled']);
