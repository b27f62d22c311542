import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { checkImport, importDatabase } from '../../../db/files/import.ts';
import { openDatabase } from '../../../db/open.ts';
import { tryLock } from '../../../db/files/lock.ts';
import { listPlayers } from '../../../db/repositories/bags/players.ts';
import { restoreBackup } from '../../../db/files/restore.ts';
import { saveWhole } from '../../../src-main/service/handover/save.ts';
import { cli } from '../../support/cli.ts';
import { NOW, storageError, tempFolder } from '../../unit/db/kit.ts';
import { addPlayers, serviceOn } from '../support/service-on.ts';
import { smallDisk, whyNoSmallDisk } from '../support/small-disk.ts';

/** A disk that the kernel lets nobody write to, the superuser included. */
const why = whyNoSmallDisk();

describe.skipIf(why !== null)(`a read-only disk${why === null ? '' : ` (not run: ${why})`}`, () => {
  test('is refused at the start, nothing is lost, and all goes on when it can be written again', async () => {
    const disk = smallDisk(8192);
    const service = await serviceOn(disk.folder);
    await addPlayers(service, 3);
    const before = service.state();
    await service.gate.close();
    disk.setReadOnly(true);
    const error = storageError(() => openDatabase({ file: service.file, now: NOW }));
    expect(error.code).toBe('read-only');
    expect(error.remedy).toMatch(/[Aa]llow access|[Cc]hoose another data folder/);
    disk.setReadOnly(false);
    const again = await serviceOn(disk.folder);
    expect(again.state()).toBe(before);
    await addPlayers(again, 1);
  });

  test('records on it are taken in from it, and not one byte of it changes', async () => {
    const disk = smallDisk(8192);
    const theirs = await serviceOn(disk.folder);
    await addPlayers(theirs, 2);
    const { file: exported } = await theirs.call('files.exportDatabase', {});
    await theirs.gate.close();
    const bytes = readFileSync(exported);
    disk.setReadOnly(true);
    expect(checkImport(exported).rows).toMatchObject({ player: 2 });
    for (const take of [restoreBackup, importDatabase]) {
      const file = join(tempFolder(), 'data', 'loftledger.db');
      take({ file, backup: exported, source: exported, now: NOW });
      const { db } = openDatabase({ file, now: NOW });
      expect(listPlayers(db)).toHaveLength(2);
      db.close();
    }
    expect(readFileSync(exported).equals(bytes)).toBe(true);
  });

  test('no lock, no document: each says what it is', () => {
    const disk = smallDisk(1024);
    disk.setReadOnly(true);
    expect(storageError(() => tryLock(disk.folder))).toMatchObject({ code: 'read-only' });
    expect(() => saveWhole(join(disk.folder, 'plan.md'), 'x')).toThrow(/EROFS.*Choose another place/);
    expect(readdirSync(disk.folder)).toEqual([]);
  });

  test('commands say so and end with 2; the catalogue goes on without the records only where no folder was asked for', () => {
    const disk = smallDisk(1024);
    disk.setReadOnly(true);
    const folder = join(disk.folder, 'data');
    for (const words of [
      ['backup', '--data', folder],
      ['export', '--list', '--data', folder],
      ['catalogue', '--data', folder],
    ]) {
      const run = cli(words);
      expect(run.status, words.join(' ')).toBe(2);
      expect(run.stdout).toBe('');
      expect(run.stderr).toMatch(/read-only|cannot be (written|opened)/);
      expect(run.stderr).not.toMatch(/fault of the program|at .*:\d+:\d+/);
    }
    const run = cli(['catalogue', '--json'], { env: { XDG_DATA_HOME: disk.folder } });
    expect(run.status).toBe(0);
    expect(run.stderr).toContain('Using the shipped catalogue');
  });
});
