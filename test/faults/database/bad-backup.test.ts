import { readFileSync, truncateSync, writeFileSync, statSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { backupFolderOf, listBackups } from '../../../db/files/backup.ts';
import { connect } from '../../../db/sqlite.ts';
import { tempFolder } from '../../unit/db/kit.ts';
import { addPlayers, sendFile, serviceOn } from '../support/service-on.ts';
import { overwrite } from '../support/pages.ts';

/** A backup, or a file to take in, that is not whole: refused before the records are touched. */
const SPOILT: [string, (file: string) => void, RegExp][] = [
  ['cut short', (file) => truncateSync(file, readFileSync(file).length - 4096), /cut short/],
  ['empty', (file) => truncateSync(file, 0), /empty/],
  [
    'of another program',
    (file) => writeFileSync(file, 'a letter to the bank\n'.repeat(400)),
    /is no Loftledger/,
  ],
  ['of a newer program', (file) => withDb(file, 'PRAGMA user_version = 99'), /newer version/],
  ['with a torn page', (file) => overwrite(file, 3 * 4096, Buffer.alloc(64, 0xa5)), /Checking|damaged/],
  [
    'with a row whose owner is gone',
    (file) => withDb(file, 'PRAGMA foreign_keys = OFF; DELETE FROM player'),
    /that is gone/,
  ],
];

function withDb(file: string, sql: string): void {
  const db = connect(file);
  db.exec(sql);
  db.pragma('journal_mode = DELETE');
  db.close();
}

async function ready() {
  const service = await serviceOn(tempFolder());
  await addPlayers(service, 2);
  const { sequence } = await service.call('backups.make', {});
  const { file: exported } = await service.call('files.exportDatabase', {});
  await addPlayers(service, 1);
  return { service, sequence, exported, before: service.state() };
}

describe.each(SPOILT)('%s', (_name, spoil, message) => {
  test('a backup is refused; the records stay, open and unchanged', async () => {
    const { service, sequence, before } = await ready();
    const [backup] = listBackups(backupFolderOf(service.file));
    spoil(backup?.file ?? '');
    const error = await service.refused('backups.restore', { sequence });
    expect(error.kind).toBe('conflict');
    expect(error.message).toMatch(message);
    expect(error.message).not.toContain(service.file);
    expect(service.state()).toBe(before);
    // Nothing was put in the row of backups for a restore that did not happen.
    expect(await service.call('backups.list', {})).toHaveLength(1);
    await addPlayers(service, 1);
  });

  test('a file to take in is refused, looked at or taken', async () => {
    const { service, exported, before } = await ready();
    spoil(exported);
    if (statSync(exported).size === 0) {
      // What is empty is not even kept.
      await expect(sendFile(service.gate, exported)).rejects.toThrow(/empty/);
      expect(service.state()).toBe(before);
      return;
    }
    const upload = await sendFile(service.gate, exported);
    for (const name of ['files.checkDatabase', 'files.importDatabase'] as const) {
      const error = await service.refused(name, { upload });
      expect(error.kind).toBe('conflict');
      expect(error.message).toMatch(message);
    }
    expect(service.state()).toBe(before);
    expect(await service.call('backups.list', {})).toHaveLength(1);
  });
});

test('a backup that is gone since it was listed', async () => {
  const { service, before } = await ready();
  expect(await service.refused('backups.restore', { sequence: 77 })).toMatchObject({ kind: 'not-found' });
  expect(service.state()).toBe(before);
});
