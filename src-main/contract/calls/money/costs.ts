import { z } from 'zod';
import { archetypeSchema } from '../../formats/catalogue.ts';
import { bandFileSchema } from '../../formats/bag-file.ts';
import { currencySchema, idSchema, textSchema } from '../../primitives.ts';
import { rowId } from '../records/players.ts';
import { read, undoable } from '../spec.ts';

/**
 * What a purchase or sale costs beside the club, always the user's own assumption: an amount or a percentage. Delivery,
 * regrip, sell-fee and sell-postage are in the plan, one each; bend, shaft and other stand beside it.
 */
export const costLineSchema = z.strictObject({
  kind: z.enum(['delivery', 'regrip', 'sell-fee', 'sell-postage', 'bend', 'shaft', 'other']),
  label: textSchema(200).exactOptional(),
  /** Major units of `currency`; either this or `percent`. */
  amount: bandFileSchema.shape.low.exactOptional(),
  currency: currencySchema.exactOptional(),
  percent: z.number().min(0).max(100).exactOptional(),
  /** A line that is off is kept, and counts in nothing. */
  enabled: z.boolean(),
});
export type CostLineFile = z.infer<typeof costLineSchema>;

/** Null: the lines that new bags of that currency begin with. */
const bagId = rowId.nullable();

export const costCalls = {
  'costs.list': read(z.strictObject({ bagId }), z.array(costLineSchema.extend({ id: rowId }))),
  /** Adds a line, or with an id changes all of it. */
  'costs.save': undoable(
    z.strictObject({ bagId, id: rowId.optional(), line: costLineSchema }),
    z.strictObject({ id: rowId }),
  ),
  'costs.remove': undoable(z.strictObject({ bagId, id: rowId }), z.null()),
};

export const archetypeCalls = {
  /** The user's own archetypes; an update of the catalogue never touches them. */
  'archetypes.own': read(z.strictObject({}), z.array(archetypeSchema)),
  'archetypes.add': undoable(z.strictObject({ archetype: archetypeSchema }), z.null()),
  'archetypes.update': undoable(z.strictObject({ archetype: archetypeSchema }), z.null()),
  /** With its price notes; clubs bought as it stay. */
  'archetypes.remove': undoable(z.strictObject({ id: idSchema }), z.null()),
};
