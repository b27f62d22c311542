import { z } from 'zod';
import { idSchema } from '../../primitives.ts';
import { rowId } from './players.ts';
import { write } from '../spec.ts';

export const rosterCalls = {
  /**
   * Plans many bags anew, one after the other: of each the status and the open findings are kept, and the roster shows
   * them. `job` lets it be heard of (`done` of so many bags) and cancelled; what was planned until then is kept. Bags
   * that cannot be planned are told of and keep what was known of them.
   */
  'roster.plan': write(
    z.strictObject({ bagIds: z.array(rowId).min(1).max(20_000), job: idSchema }),
    z.strictObject({
      planned: z.int(),
      cancelled: z.boolean(),
      refused: z.array(z.strictObject({ bagId: rowId, player: z.string(), message: z.string() })),
    }),
  ),
};
