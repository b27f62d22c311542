import { copyFileSync, existsSync, mkdirSync, truncateSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { backupFolderOf, listBackups } from '../../db/files/backup.ts';
import { connect } from '../../db/sqlite.ts';
import { DATABASE_NAME } from '../../src-main/service/records/data-folder.ts';
import { runKills } from './kill/run.ts';

/** `npm run faults` in small. What it finds it must be able to find: the judge is shown spoilt folders too. */
const SEED = 20_261_126;
/** Some seconds on a quiet machine; a busy one must not be taken for a fault. */
const PATIENCE_MS = 300_000;

test(
  '25 kills under load: no committed row lost, no damage, no half-written file',
  { timeout: PATIENCE_MS },
  async () => {
    const report = await runKills({ kills: 25, seed: SEED, atOnce: 2 });
    expect(report.problems).toEqual([]);
    expect(report.kills).toBe(25);
    expect(report.commits).toBeGreaterThan(25);
    expect(report.rows).toBeGreaterThan(5_000);
  },
);

describe('the judge sees', { timeout: PATIENCE_MS }, () => {
  const spoilt = (spoil: (file: string) => void) =>
    runKills({
      kills: 3,
      seed: SEED,
      atOnce: 1,
      spoil: (folder) => {
        const file = join(folder, DATABASE_NAME);
        if (existsSync(file)) spoil(file);
      },
    });

  test('one row that is gone', async () => {
    const report = await spoilt((file) => {
      const db = connect(file);
      db.exec('DELETE FROM price_note WHERE id = (SELECT max(id) FROM price_note)');
      db.exec('DELETE FROM player WHERE id = (SELECT max(id) FROM player)');
      db.close();
    });
    expect(report.lost).toBeGreaterThan(0);
  });

  test('a database that was cut short', async () => {
    const report = await spoilt((file) => truncateSync(file, statSync(file).size - 4096));
    expect(report.damaged).toBeGreaterThan(0);
  });

  test('half a backup under a whole one’s name, and one of rows that never were', async () => {
    const report = await spoilt((file) => {
      const dir = backupFolderOf(file);
      mkdirSync(dir, { recursive: true });
      const half = join(dir, '900001_2026-11-26T04-20-00-000Z_by-hand.loftledger');
      copyFileSync(listBackups(dir)[0]?.file ?? file, half);
      truncateSync(half, 8192);
    });
    expect(report.half).toBeGreaterThan(0);
  });
});
