import { z } from 'zod';
import { idSchema, textSchema } from '../../primitives.ts';
import { sideSchema } from './answers.ts';
import { rowId } from '../records/players.ts';
import { read, undoable } from '../spec.ts';

export const planRecordSchema = z.strictObject({
  id: rowId,
  name: z.string(),
  why: z.string(),
  madeAt: z.string(),
  picked: z.boolean(),
  programVersion: z.string(),
  side: sideSchema,
});
export type PlanRecord = z.infer<typeof planRecordSchema>;

export const planCalls = {
  /** Picks one way to spend, with the reason, and keeps the record with all that it was reckoned from. */
  'plans.pick': undoable(
    z.strictObject({
      bagId: rowId,
      name: textSchema(200).min(1),
      why: textSchema(2000),
      items: z.array(idSchema.max(200)).max(60),
    }),
    z.strictObject({ planId: rowId }),
  ),
  /** The records of a bag, the newest first. */
  'plans.list': read(z.strictObject({ bagId: rowId }), z.array(planRecordSchema)),
  'plans.remove': undoable(z.strictObject({ planId: rowId }), z.null()),
};
