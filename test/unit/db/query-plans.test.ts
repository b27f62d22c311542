import { expect, test } from 'vitest';
import { listBags } from '../../../db/repositories/bags/bags.ts';
import { carriesOf } from '../../../db/repositories/bags/carries.ts';
import { countDiary, diaryOf } from '../../../db/repositories/bags/diary.ts';
import { listClubs, readClub } from '../../../db/repositories/bags/clubs.ts';
import { costLinesOf } from '../../../db/repositories/prices/cost-lines.ts';
import { listLots } from '../../../db/repositories/bags/lots.ts';
import { listPlans, readLatestPlan } from '../../../db/repositories/plans.ts';
import { listPlayers, roster } from '../../../db/repositories/bags/players.ts';
import { notesOfBag, notesOnArchetype, sharedNotes } from '../../../db/repositories/prices/price-notes.ts';
import { listShotImports, shotsOfClub, shotsOfImport } from '../../../db/repositories/bags/shots.ts';
import type { Db } from '../../../db/sqlite.ts';
import { memoryDb, queryPlans, storageError } from './kit.ts';

const LOOKUPS: [string, (db: Db) => unknown, index: string][] = [
  ['bags of a player', (db) => listBags(db, 1), 'bag_by_player'],
  ['clubs of a bag', (db) => listClubs(db, 1), 'club_by_bag'],
  ['sets of a bag', (db) => listLots(db, 1), 'sqlite_autoindex_lot'],
  ['price notes on an archetype', (db) => notesOnArchetype(db, 'hybrid-22-t3', 1), 'price_note_by_archetype'],
  ['price notes of a bag', (db) => notesOfBag(db, 1), 'price_note_by_bag'],
  ['everybody’s price notes', (db) => sharedNotes(db, { limit: 20 }), 'price_note_by_bag'],
  ['cost lines of a bag', (db) => costLinesOf(db, 1), 'cost_line_by_bag'],
  ['a club', (db) => storageError(() => readClub(db, 1)), 'PRIMARY KEY'],
  ['carries of a club', (db) => carriesOf(db, 1), 'club_carry_by_club'],
  ['sessions of a player', (db) => listShotImports(db, 1), 'shot_import_by_player'],
  ['shots of a session', (db) => shotsOfImport(db, 1), 'shot_by_import'],
  ['shots of a club', (db) => shotsOfClub(db, 1), 'shot_by_club'],
  ['the diary of a player', (db) => diaryOf(db, 1, 20), 'diary_entry_by_player'],
  ['entries of a diary', (db) => countDiary(db, 1), 'diary_entry_by_player'],
  ['plans of a bag', (db) => listPlans(db, 1), 'plan_by_bag'],
  ['the latest plan of a bag', (db) => readLatestPlan(db, 1), 'plan_one_latest'],
];

test.each(LOOKUPS)('%s are found by index, without reading a table through', (_, lookup, index) => {
  const db = memoryDb();
  // A fresh connection, as a statement prepared before would not be seen.
  const plans = queryPlans(db, () => lookup(db));
  expect(plans.filter((line) => line.startsWith('SCAN'))).toEqual([]);
  expect(plans.join('\n')).toContain(index);
});

test('of what can be long, the index gives the order too: nothing is sorted', () => {
  const db = memoryDb();
  const plans = queryPlans(db, () => {
    notesOnArchetype(db, 'hybrid-22-t3');
    notesOfBag(db, 1);
    sharedNotes(db, { limit: 20 });
    listClubs(db, 1);
    shotsOfImport(db, 1);
    listShotImports(db, 1);
    diaryOf(db, 1, 20);
  });
  expect(plans.length).toBeGreaterThanOrEqual(7);
  expect(plans.filter((line) => line.includes('TEMP B-TREE'))).toEqual([]);
});

test('the roster reads players in the order of their names and finds the rest by index', () => {
  const db = memoryDb();
  const plans = [...queryPlans(db, () => roster(db)), ...queryPlans(db, () => listPlayers(db))];
  expect(plans.filter((line) => line.includes('TEMP B-TREE'))).toEqual([]);
  expect(plans.filter((line) => line.startsWith('SCAN'))).toEqual(
    Array(2).fill('SCAN player USING INDEX player_by_name'),
  );
  expect(plans.join('\n')).toMatch(/SEARCH bag USING INDEX bag_\w+ [^]*SEARCH plan USING INDEX plan_\w+ /);
  expect(plans.join('\n')).toMatch(/SEARCH diary_entry USING COVERING INDEX diary_entry_by_player/);
});
