import { z } from 'zod';
import { textSchema } from '../../primitives.ts';
import { rowId } from './players.ts';
import { read, undoable } from '../spec.ts';

/** Letters that an entry may have, as many as the records take. */
export const DIARY_LETTERS = 100_000;

/** Blanks around it are no part of an entry, and it says something. */
const entryText = textSchema(DIARY_LETTERS).trim().min(1);

export const diaryEntrySchema = z.strictObject({ id: rowId, on: z.iso.date(), text: z.string() });
export type DiaryLine = z.infer<typeof diaryEntrySchema>;

const entry = { playerId: rowId, entryId: rowId };

/**
 * What a coach notes about a player. Local only: it is in no bag file, roster list or hand-over, a copy of the player
 * begins without, and erasing the player erases it.
 */
export const diaryCalls = {
  /** The newest day first; of one day what was written last. `count` is of all, `entries` are the first `most`. */
  'diary.list': read(
    z.strictObject({ playerId: rowId, most: z.int().min(1).max(5000) }),
    z.strictObject({ entries: z.array(diaryEntrySchema), count: z.int() }),
  ),
  /** `on` is today when left out. */
  'diary.add': undoable(
    z.strictObject({ playerId: rowId, on: z.iso.date().optional(), text: entryText }),
    z.strictObject({ entryId: rowId }),
  ),
  'diary.change': undoable(
    z.strictObject({
      ...entry,
      patch: z.strictObject({ on: z.iso.date(), text: entryText }).partial(),
    }),
    z.null(),
  ),
  'diary.strike': undoable(z.strictObject(entry), z.null()),
};
