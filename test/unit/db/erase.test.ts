import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { logicalDump } from '../../../db/schema/dump.ts';
import { erasePlayer } from '../../../db/erase.ts';
import { seedArchetypes } from '../../../db/repositories/prices/archetypes.ts';
import { recordCarry } from '../../../db/repositories/bags/carries.ts';
import { addDiaryEntry, deleteDiaryEntry, updateDiaryEntry } from '../../../db/repositories/bags/diary.ts';
import { listClubs } from '../../../db/repositories/bags/clubs.ts';
import { updateHandover } from '../../../db/repositories/handover.ts';
import { savePlan } from '../../../db/repositories/plans.ts';
import { createPlayer, listPlayers } from '../../../db/repositories/bags/players.ts';
import { addShotImport } from '../../../db/repositories/bags/shots.ts';
import { writeBag } from '../../../db/repositories/bags/whole-bag.ts';
import { history, undo, undoable } from '../../../db/undo/undo.ts';
import { CATALOGUE, FULL_BAG, NOW, openTemp, PLAYER, storageError, tempFolder } from './kit.ts';

const SECRET = 'left wrist, since spring';

test('an erased player leaves no byte in the database or its log, and nothing of others goes', () => {
  const folder = tempFolder();
  const { db } = openTemp(join(folder, 'data.loftledger'));
  seedArchetypes(db, CATALOGUE, NOW);
  const other = createPlayer(db, { ...PLAYER, name: 'other' }, NOW);
  writeBag(db, other, FULL_BAG, NOW);
  addDiaryEntry(db, other, { onDate: '2026-05-01', text: 'of the other' }, NOW);
  const dump = logicalDump(db);
  const step = (label: string) => ({ label, at: NOW });
  const id = undoable(db, step('add'), () => createPlayer(db, { ...PLAYER, name: SECRET, pain: true }, NOW));
  const note = (text: string) =>
    undoable(db, step('note'), () => addDiaryEntry(db, id, { onDate: '2026-05-01', text }, NOW));
  note(SECRET.repeat(50));
  const worse = note(`${SECRET}, worse`);
  undoable(db, step('note'), () => updateDiaryEntry(db, worse, { text: `${SECRET}, better` }));
  undoable(db, step('note'), () => deleteDiaryEntry(db, worse));
  const bag = undoable(db, step('bag'), () => writeBag(db, id, { ...FULL_BAG, name: SECRET }, NOW));
  const club = listClubs(db, bag)[0]?.id ?? 0;
  const session = addShotImport(
    db,
    { playerId: id, fileName: SECRET, distanceUnit: 'yd', speedUnit: 'mph', rowsRead: 1, rowsSkipped: 0 },
    [{ rowNumber: 2, clubId: club, clubLabel: SECRET }],
    NOW,
  );
  recordCarry(db, club, { onDate: '2026-01-01', source: 'stated', carryYd: 1, importId: session }, NOW);
  savePlan(
    db,
    { bagId: bag, status: 'ok', openFindings: 0, input: { SECRET }, output: {}, programVersion: '0' },
    [],
    NOW,
  );
  undoable(db, step('cover note'), () => updateHandover(db, bag, { coverNote: `about ${SECRET}` }));
  updateHandover(db, bag, { coverNote: null });
  undo(db);
  const bytes = () =>
    readdirSync(folder)
      .map((name) => readFileSync(join(folder, name), 'latin1'))
      .join('');
  db.pragma('wal_checkpoint(FULL)');
  expect(db.serialize().includes(SECRET)).toBe(true);

  expect(erasePlayer(db, id)).toEqual({ logEmptied: true });
  expect(logicalDump(db)).toBe(dump);
  expect(history(db)).toEqual({ undo: [], redo: [] });
  db.close();
  expect(bytes()).not.toContain(SECRET);
  expect(bytes()).toContain('other');
});

test('erasing nobody says so and changes nothing', () => {
  const { db } = openTemp(join(tempFolder(), 'data.loftledger'));
  undoable(db, { label: 'add', at: NOW }, () => createPlayer(db, PLAYER, NOW));
  expect(storageError(() => erasePlayer(db, 99))).toMatchObject({
    code: 'missing',
    message: 'There is no player 99',
  });
  expect(history(db).undo).toHaveLength(1);
  expect(listPlayers(db)).toHaveLength(1);
});

test('a log that another reader holds is not said to be empty', () => {
  const file = join(tempFolder(), 'data.loftledger');
  const { db } = openTemp(file, { busyTimeoutMs: 50 });
  const id = createPlayer(db, PLAYER, NOW);
  const reader = openTemp(file).db;
  const rows = reader.prepare('SELECT 1 FROM player').iterate();
  rows.next();
  expect(erasePlayer(db, id)).toEqual({ logEmptied: false });
  rows.return?.();
});
