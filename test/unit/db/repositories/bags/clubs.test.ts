import { expect, test } from 'vitest';
import {
  createBag,
  deleteBag,
  findBag,
  setBagState,
  updateBag,
} from '../../../../../db/repositories/bags/bags.ts';
import { carriesOf, deleteCarry, recordCarry } from '../../../../../db/repositories/bags/carries.ts';
import {
  addClub,
  deleteClub,
  listClubs,
  orderClubs,
  readClub,
  updateClub,
} from '../../../../../db/repositories/bags/clubs.ts';
import { addLot, deleteLot, listLots, setLotSell } from '../../../../../db/repositories/bags/lots.ts';
import { createPlayer } from '../../../../../db/repositories/bags/players.ts';
import {
  addShotImport,
  assignShots,
  deleteShotImport,
  leaveOut,
  listShotImports,
  readShotImport,
  shotsOfClub,
  shotsOfImport,
} from '../../../../../db/repositories/bags/shots.ts';
import type { Db } from '../../../../../db/sqlite.ts';
import { LATER, memoryDb, NOW, PLAYER, storageError } from '../../kit.ts';

const UNITS = { distanceUnit: 'yd', speedUnit: 'mph', currency: 'GBP' } as const;
const gbp = (minor: number) => ({ minor, currency: 'GBP' });
const band = { lowMinor: 1, likelyMinor: 2, highMinor: 3, currency: 'GBP' };

function emptyBag(db: Db) {
  const player = createPlayer(db, PLAYER, NOW);
  return { player, bag: createBag(db, player, { ...UNITS, state: 'now' }, NOW) };
}

test('clubs come in their order, new ones last, and can be put in another', () => {
  const db = memoryDb();
  const { bag } = emptyBag(db);
  const ids = ['a', 'b', 'c'].map((key) => addClub(db, bag, { key, kind: 'iron' }));
  const keys = () => listClubs(db, bag).map((club) => club.key);
  expect(keys()).toEqual(['a', 'b', 'c']);
  orderClubs(db, bag, [...ids].reverse());
  expect(keys()).toEqual(['c', 'b', 'a']);
  const other = emptyBag(db).bag;
  const stranger = addClub(db, other, { key: 'a', kind: 'iron' });
  expect(storageError(() => orderClubs(db, bag, [ids[0] ?? 0, stranger])).code).toBe('missing');
  expect(keys()).toEqual(['c', 'b', 'a']);
});

test('a key is its own within the bag, on the shelf too', () => {
  const db = memoryDb();
  const { bag } = emptyBag(db);
  addClub(db, bag, { key: 'a', kind: 'iron' }, { place: 'shelf' });
  const error = storageError(() => addClub(db, bag, { key: 'a', kind: 'iron' }));
  expect(error).toMatchObject({ code: 'constraint' });
  expect(error.message).toContain('key is "a"');
});

test('bought, moved to the shelf, sold', () => {
  const db = memoryDb();
  const { bag } = emptyBag(db);
  const id = addClub(db, bag, {
    key: 'h',
    kind: 'hybrid',
    archetypeId: 'hybrid-22-t3',
    bought: gbp(4500),
    boughtOn: '2026-03-01',
  });
  expect(readClub(db, id)).toEqual({
    id,
    bagId: bag,
    place: 'bag',
    key: 'h',
    kind: 'hybrid',
    archetypeId: 'hybrid-22-t3',
    bought: gbp(4500),
    boughtOn: '2026-03-01',
  });
  updateClub(db, id, { place: 'shelf' });
  expect([listClubs(db, bag), listClubs(db, bag, 'shelf').length]).toEqual([[], 1]);
  updateClub(db, id, { place: 'sold', sold: gbp(3000), soldOn: '2026-09-01' });
  expect(listClubs(db, bag, 'sold')).toMatchObject([{ sold: gbp(3000), soldOn: '2026-09-01' }]);
  expect(
    storageError(() => addClub(db, bag, { key: 'x', kind: 'hybrid', archetypeId: 'no' })).remedy,
  ).toContain('does not exist');
});

test('a club’s set is made when it is named first, and belongs to its own bag', () => {
  const db = memoryDb();
  const { bag } = emptyBag(db);
  const seven = addClub(db, bag, { key: '7i', kind: 'iron', lotKey: 'irons' });
  addClub(db, bag, { key: '8i', kind: 'iron', lotKey: 'irons' });
  const [lot] = listLots(db, bag);
  expect(listLots(db, bag)).toEqual([{ id: lot?.id, key: 'irons', listed: false }]);
  const other = emptyBag(db).bag;
  const stranger = addClub(db, other, { key: '7i', kind: 'iron' });
  expect(() => db.prepare('UPDATE club SET lot_id = ? WHERE id = ?').run(lot?.id, stranger)).toThrow(
    'FOREIGN KEY',
  );
  updateClub(db, seven, { lotKey: null });
  expect(readClub(db, seven).lotKey).toBeUndefined();
  updateClub(db, seven, { lotKey: 'irons' });
  setLotSell(db, lot?.id ?? 0, band);
  expect(listLots(db, bag)).toMatchObject([{ key: 'irons', sell: band, listed: true }]);
  setLotSell(db, lot?.id ?? 0, null);
  expect(listLots(db, bag)[0]).toEqual({ id: lot?.id, key: 'irons', listed: true });
  deleteLot(db, lot?.id ?? 0);
  expect(listClubs(db, bag).map((club) => club.lotKey)).toEqual([undefined, undefined]);
  expect(storageError(() => addLot(db, bag, { key: '' })).message).toContain('key is ""');
  expect(storageError(() => deleteLot(db, 999)).message).toBe('There is no set 999');
});

test('of dated carries the newest counts, whenever it is entered', () => {
  const db = memoryDb();
  const club = addClub(db, emptyBag(db).bag, { key: '7i', kind: 'iron', carryYd: 100, shots: 3 });
  const may = recordCarry(
    db,
    club,
    { onDate: '2026-05-01', source: 'measured', carryYd: 140, carrySdYd: 6, shots: 20 },
    NOW,
  );
  recordCarry(db, club, { onDate: '2025-05-01', source: 'stated', carryYd: 150 }, LATER);
  expect(readClub(db, club)).toMatchObject({ carryYd: 140, carrySdYd: 6, shots: 20 });
  const june = recordCarry(
    db,
    club,
    { onDate: '2026-06-01', source: 'stated', carryYd: 145, totalYd: 151 },
    NOW,
  );
  expect(readClub(db, club)).toEqual({ ...readClub(db, club), carryYd: 145, totalYd: 151 });
  expect(readClub(db, club)).not.toHaveProperty('shots');
  const sameDay = recordCarry(db, club, { onDate: '2026-06-01', source: 'stated', carryYd: 146 }, NOW);
  expect(carriesOf(db, club).map((carry) => carry.carryYd)).toEqual([146, 145, 140, 150]);
  for (const id of [sameDay, june]) deleteCarry(db, id);
  expect(readClub(db, club)).toMatchObject({ carryYd: 140, shots: 20 });
  deleteCarry(db, may);
  expect(readClub(db, club).carryYd).toBe(150);
  expect(storageError(() => deleteCarry(db, may)).code).toBe('missing');
});

test('shots: one file whole or not at all; assigned by label; a deleted club leaves them', () => {
  const db = memoryDb();
  const { player, bag } = emptyBag(db);
  const club = addClub(db, bag, { key: '7i', kind: 'iron' });
  const fields = {
    playerId: player,
    fileName: 'range.csv',
    headerSignature: 'club,carry',
    mapping: { carry: 'Carry (m)' },
    distanceUnit: 'm',
    speedUnit: 'km/h',
    sessionOn: '2026-05-01',
    rowsRead: 3,
    rowsSkipped: 1,
  } as const;
  const shots = [
    {
      rowNumber: 2,
      clubLabel: '7 Iron',
      carryYd: 141.5,
      totalYd: 149,
      sideYd: -4.5,
      apexYd: 30,
      landingDeg: 45,
      clubSpeedMph: 78,
      ballSpeedMph: 108,
      launchDeg: 17,
      spinRpm: 6400,
      attackDeg: -3,
      dynamicLoftDeg: 24,
    },
    { rowNumber: 4, clubLabel: '8 Iron' },
  ];
  const id = addShotImport(db, fields, shots, LATER);
  expect(readShotImport(db, id)).toEqual({ ...fields, id, importedAt: LATER });
  expect(assignShots(db, id, '7 Iron', club)).toBe(1);
  const [first, second] = shotsOfImport(db, id);
  expect(first).toEqual({ ...shots[0], id: first?.id, importId: id, clubId: club, leftOut: false });
  expect(second).toEqual({ ...shots[1], id: second?.id, importId: id, leftOut: false });
  leaveOut(db, first?.id ?? 0, true);
  expect(shotsOfClub(db, club)).toMatchObject([{ leftOut: true }]);
  deleteClub(db, club);
  expect(shotsOfImport(db, id)[0]).not.toHaveProperty('clubId');
  expect(
    storageError(() => addShotImport(db, fields, [{ rowNumber: 2 }, { rowNumber: 3, carryYd: 1e6 }], NOW))
      .message,
  ).toContain('carry_yd is 1000000');
  expect(listShotImports(db, player).map((i) => i.id)).toEqual([id]);
  deleteShotImport(db, id);
  expect(shotsOfImport(db, id)).toEqual([]);
});

test('a shot that was left out before it came in is kept as left out', () => {
  const db = memoryDb();
  const { player } = emptyBag(db);
  const fields = {
    playerId: player,
    distanceUnit: 'yd',
    speedUnit: 'mph',
    rowsRead: 2,
    rowsSkipped: 0,
  } as const;
  const id = addShotImport(db, fields, [{ rowNumber: 2, leftOut: true }, { rowNumber: 3 }], NOW);
  expect(shotsOfImport(db, id).map(({ leftOut: isOut }) => isOut)).toEqual([true, false]);
});

test('a bag changes its fields and its state, one bag of now a player', () => {
  const db = memoryDb();
  const { player, bag } = emptyBag(db);
  const planned = createBag(db, player, { ...UNITS, state: 'planned', name: 'next' }, NOW);
  updateBag(db, bag, { name: 'old', budget: gbp(100), cashBeforeSales: true });
  updateBag(db, bag, { currency: 'EUR', cashBeforeSales: null });
  expect(findBag(db, bag)).toEqual({
    ...UNITS,
    id: bag,
    playerId: player,
    createdAt: NOW,
    state: 'now',
    name: 'old',
    currency: 'EUR',
    budget: gbp(100),
  });
  setBagState(db, planned, 'now');
  expect([findBag(db, bag).state, findBag(db, planned).state]).toEqual(['archived', 'now']);
  setBagState(db, planned, 'now');
  expect(findBag(db, planned).state).toBe('now');
  const insert = `INSERT INTO bag (player_id, state, distance_unit, speed_unit, currency, created_at) VALUES (?, 'now', 'yd', 'mph', 'GBP', ?)`;
  expect(() => db.prepare(insert).run(player, NOW)).toThrow('UNIQUE');
  deleteBag(db, bag);
  expect(storageError(() => deleteBag(db, bag)).message).toBe(`There is no bag ${bag}`);
});
