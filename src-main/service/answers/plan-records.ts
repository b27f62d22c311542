import { z } from 'zod';
import { sideSchema } from '../../contract/calls/answers/answers.ts';

/** What is kept of a pick beside its input. */
export const recordSchema = z.strictObject({ why: z.string(), side: sideSchema });
