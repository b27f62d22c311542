import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { listPlayers } from '../../../../db/repositories/bags/players.ts';
import { connect } from '../../../../db/sqlite.ts';
import { openTemp, storageError } from '../../../unit/db/kit.ts';
import { database, sparePages, overwrite } from './kit.ts';

describe('found by the checks:', () => {
  test('a corrupt page, wherever it lies', () => {
    const { file } = database();
    const whole = readFileSync(file);
    const pages = whole.length / 4096;
    expect(pages).toBeGreaterThan(20);
    // A leaf of the free list holds nothing that could be damaged; any other is missed.
    const spare = sparePages(file);
    let found = 0;
    for (let page = 1; page < pages; page += 1) {
      if (spare.has(page + 1)) continue;
      writeFileSync(file, whole);
      // the head of a b-tree page: type, free block, cell count, content start
      overwrite(file, page * 4096, Uint8Array.from([0x55, 0xaa, 0x55, 0xaa, 0x55, 0xaa, 0x55, 0xaa]));
      const error = storageError(() => openTemp(file));
      expect(error.code).toBe('damaged');
      expect(error.remedy).toContain('Restore a backup');
      found += 1;
    }
    expect(found).toBe(pages - 1 - spare.size);
    expect(spare.size).toBeLessThan(pages / 10);
    writeFileSync(file, whole);
    expect(listPlayers(openTemp(file).db)).toHaveLength(40);
  });

  test('an index that does not fit its table, after an unclean exit only, as only then every entry is compared', () => {
    const { folder, file } = database();
    const db = connect(file);
    db.unsafeMode(true);
    db.pragma('writable_schema = ON');
    db.prepare(
      `UPDATE sqlite_schema SET sql = replace(sql, '(player_id, state)', '(state, player_id)') WHERE name = 'bag_by_player'`,
    ).run();
    db.close();
    const clean = openTemp(file);
    expect(clean.unclean).toBe(false);
    clean.db.close();
    writeFileSync(`${file}-wal`, '');
    expect(readdirSync(folder)).toContain('data.loftledger-wal');
    expect(storageError(() => openTemp(file)).code).toBe('damaged');
  });

  test('a row whose owner is gone', () => {
    const { file } = database();
    const db = connect(file);
    db.exec('PRAGMA foreign_keys = OFF; DELETE FROM player WHERE id = 3;');
    db.close();
    const error = storageError(() => openTemp(file));
    expect(error.code).toBe('damaged');
    expect(error.message).toContain('names a player that is gone');
  });

  test('a table that is missing', () => {
    const { file } = database();
    const db = connect(file);
    db.exec('DROP TABLE path_stage');
    db.close();
    expect(storageError(() => openTemp(file))).toMatchObject({ code: 'damaged' });
    expect(storageError(() => openTemp(file, { readonly: true })).message).toContain(
      'table path_stage is missing',
    );
  });
});
