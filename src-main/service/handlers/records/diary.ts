import { StorageError } from '../../../../db/errors.ts';
import {
  addDiaryEntry,
  countDiary,
  deleteDiaryEntry,
  diaryOf,
  readDiaryEntry,
  updateDiaryEntry,
  type DiaryEntry,
} from '../../../../db/repositories/bags/diary.ts';
import { readPlayer } from '../../../../db/repositories/bags/players.ts';
import type { Db } from '../../../../db/sqlite.ts';
import type { Handlers, Subject } from '../../handler.ts';
import { playerStep, type StepParts } from '../../records/steps.ts';

export const diaryHandlers: Handlers<Subject<'diary'>> = {
  'diary.list': ({ db }, { playerId, most }) => {
    readPlayer(db, playerId);
    const entries = diaryOf(db, playerId, most).map(({ id, onDate, text }) => ({ id, on: onDate, text }));
    return { entries, count: countDiary(db, playerId) };
  },
  'diary.add': {
    step: ({ playerId, on }, { db, today }) => ({ ...playerStep(db, playerId), on: on ?? today() }),
    run: ({ db, now, today }, { playerId, on, text }) => {
      readPlayer(db, playerId);
      return { entryId: addDiaryEntry(db, playerId, { onDate: on ?? today(), text }, now()) };
    },
  },
  'diary.change': {
    step: ({ playerId, entryId }, { db }) => entryStep(db, playerId, entryId),
    run: ({ db }, { playerId, entryId, patch: { on, text } }) => {
      ownEntry(db, playerId, entryId);
      updateDiaryEntry(db, entryId, {
        ...(on === undefined ? {} : { onDate: on }),
        ...(text === undefined ? {} : { text }),
      });
      return null;
    },
  },
  'diary.strike': {
    step: ({ playerId, entryId }, { db }) => entryStep(db, playerId, entryId),
    run: ({ db }, { playerId, entryId }) => {
      ownEntry(db, playerId, entryId);
      deleteDiaryEntry(db, entryId);
      return null;
    },
  },
};

/** @throws StorageError 'missing' for none, and for one of another player's diary. */
function ownEntry(db: Db, playerId: number, entryId: number): DiaryEntry {
  const entry = readDiaryEntry(db, entryId);
  if (entry.playerId === playerId) return entry;
  const message = `There is no entry ${String(entryId)} in this diary.`;
  throw new StorageError('missing', message, 'Look at the diary again.', db.name);
}

/** The day that the entry has before the edit; nothing for one that is gone: the edit itself has the better message. */
function entryStep(db: Db, playerId: number, entryId: number): StepParts {
  try {
    return { ...playerStep(db, playerId), on: ownEntry(db, playerId, entryId).onDate };
  } catch {
    return playerStep(db, playerId);
  }
}
