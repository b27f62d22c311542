import { z } from 'zod';
import type { CallError } from '../../gate.ts';
import { INCOMING_KINDS } from '../../formats/incoming-kinds.ts';

/** A text as it is, or a file that was uploaded before, by the id that the upload answered. */
export const fileSourceSchema = z.union([
  z.strictObject({ text: z.string() }),
  z.strictObject({ upload: z.uuid() }),
]);
export type FileSource = z.infer<typeof fileSourceSchema>;

export const incomingKindSchema = z.enum(INCOMING_KINDS);

/** What an upload answers. */
export const incomingSchema = z.strictObject({
  upload: z.uuid(),
  name: z.string(),
  bytes: z.int(),
  kind: incomingKindSchema,
});
export type Incoming = z.infer<typeof incomingSchema>;

export const badRowSchema = z.strictObject({
  rowNumber: z.int(),
  column: z.string(),
  value: z.string(),
  message: z.string(),
});
export type BadRowLine = z.infer<typeof badRowSchema>;

const text = z.string();

/** Why a file cannot be taken in, where that is a result and no failed call. */
export const callErrorSchema = z.strictObject({
  kind: z.enum(['refused', 'not-found', 'conflict', 'bug']),
  message: text,
  refusals: z
    .array(z.strictObject({ path: text, value: text, message: text, remedy: text, of: text.exactOptional() }))
    .exactOptional(),
}) satisfies z.ZodType<CallError>;
