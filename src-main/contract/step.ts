import { z } from 'zod';
import { clubKindSchema } from './primitives.ts';

/**
 * What a step of undo did, as facts: the window puts them into a sentence of its language. Names are cut to 80 letters.
 */
export const stepSchema = z.strictObject({
  /** The call that did it. */
  did: z.string(),
  /** Whose bag it was. */
  player: z.string().exactOptional(),
  /** The club as it was called then. */
  club: z
    .strictObject({
      kind: clubKindSchema,
      label: z.string().exactOptional(),
      loftDeg: z.number().exactOptional(),
    })
    .exactOptional(),
  /** Id of the archetype. */
  archetype: z.string().exactOptional(),
  /** What anything else is called: a set, a plan, a cost, a file. */
  named: z.string().exactOptional(),
  /** Fields that were changed, as the call names them. */
  fields: z.array(z.string()).exactOptional(),
  to: z.enum(['bag', 'shelf', 'sold']).exactOptional(),
  money: z.strictObject({ minor: z.int(), currency: z.string() }).exactOptional(),
  on: z.iso.date().exactOptional(),
});
export type Step = z.infer<typeof stepSchema>;
