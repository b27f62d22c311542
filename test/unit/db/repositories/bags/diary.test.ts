import { expect, test } from 'vitest';
import {
  addDiaryEntry,
  countDiary,
  deleteDiaryEntry,
  diaryOf,
  readDiaryEntry,
  updateDiaryEntry,
} from '../../../../../db/repositories/bags/diary.ts';
import { createPlayer, deletePlayer } from '../../../../../db/repositories/bags/players.ts';
import { LATER, memoryDb, NOW, PLAYER, storageError } from '../../kit.ts';

const add = (db: ReturnType<typeof memoryDb>, playerId: number, onDate: string, text = 'x') =>
  addDiaryEntry(db, playerId, { onDate, text }, NOW);

test('a diary goes by day, the newest first, and of one day by when it was written', () => {
  const db = memoryDb();
  const player = createPlayer(db, PLAYER, NOW);
  const other = createPlayer(db, PLAYER, NOW);
  add(db, other, '2026-12-31');
  const spring = add(db, player, '2026-03-01');
  const autumn = add(db, player, '2026-10-01');
  const first = add(db, player, '2026-06-01', 'Ä\n\n“b” <i>');
  const second = add(db, player, '2026-06-01');
  expect(diaryOf(db, player, 10).map(({ id }) => id)).toEqual([autumn, second, first, spring]);
  expect(diaryOf(db, player, 2).map(({ id }) => id)).toEqual([autumn, second]);
  expect([countDiary(db, player), countDiary(db, other), countDiary(db, 99)]).toEqual([4, 1, 0]);
  expect(readDiaryEntry(db, first)).toEqual({
    id: first,
    playerId: player,
    onDate: '2026-06-01',
    text: 'Ä\n\n“b” <i>',
    writtenAt: NOW,
  });
});

test('an entry changes where a patch says, is struck out, and goes with its player', () => {
  const db = memoryDb();
  const player = createPlayer(db, PLAYER, NOW);
  const id = add(db, player, '2026-03-01');
  updateDiaryEntry(db, id, { text: 'y' });
  updateDiaryEntry(db, id, { onDate: '2026-03-02' });
  expect(readDiaryEntry(db, id)).toMatchObject({ onDate: '2026-03-02', text: 'y', writtenAt: NOW });
  deleteDiaryEntry(db, id);
  for (const gone of [
    () => readDiaryEntry(db, id),
    () => updateDiaryEntry(db, id, { text: 'z' }),
    () => deleteDiaryEntry(db, id),
  ]) {
    expect(storageError(gone)).toMatchObject({ code: 'missing' });
  }
  add(db, player, '2026-03-01');
  deletePlayer(db, player);
  expect(countDiary(db, player)).toBe(0);
});

test('an entry without text, day or player is refused, and so is one too long', () => {
  const db = memoryDb();
  const player = createPlayer(db, PLAYER, NOW);
  const refused = (playerId: number, onDate: string, text: string) =>
    storageError(() => addDiaryEntry(db, playerId, { onDate, text }, LATER)).code;
  expect(refused(player, '2026-03-01', '')).toBe('constraint');
  expect(refused(player, '2026-02-30', 'x')).toBe('constraint');
  expect(refused(player, 'today', 'x')).toBe('constraint');
  expect(refused(player, '2026-03-01', 'x'.repeat(100_001))).toBe('constraint');
  expect(refused(99, '2026-03-01', 'x')).toBe('constraint');
  expect(storageError(() => addDiaryEntry(db, player, { onDate: '2026-03-01', text: 'x' }, 'now')).code).toBe(
    'constraint',
  );
  expect(countDiary(db, player)).toBe(0);
});
