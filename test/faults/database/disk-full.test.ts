import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { backupFolderOf, listBackups } from '../../../db/files/backup.ts';
import { openDatabase } from '../../../db/open.ts';
import { createPlayer, listPlayers } from '../../../db/repositories/bags/players.ts';
import type { CallError } from '../../../src-main/contract/gate.ts';
import { writeWhole } from '../../../src-main/cli/files.ts';
import { writeWindowPlace } from '../../../src-main/host/window-place.ts';
import { DATABASE_NAME } from '../../../src-main/service/records/data-folder.ts';
import { saveWhole } from '../../../src-main/service/handover/save.ts';
import { bagFile } from '../../support/bags.ts';
import { databaseAt, LATER, MIGRATIONS, NEWEST, NOW, PLAYER, storageError } from '../../unit/db/kit.ts';
import { addPlayers, sendFile, serviceOn } from '../support/service-on.ts';
import { smallDisk, whyNoSmallDisk } from '../support/small-disk.ts';

/**
 * A disk that is really full: the kernel says so, at whatever write it comes to. (What does not take a disk of its own
 * is in open/after-faults.test.ts.) Refused in plain words, nothing lost, and all well again once there is space.
 */
const why = whyNoSmallDisk();

function expectFull(error: CallError): void {
  expect(error.kind).toBe('conflict');
  expect(error.message).toMatch(/the disk is full/);
  expect(error.message).toMatch(/Free some space and try again; nothing was changed\.$/);
  expect(error.message).not.toMatch(/\/tmp\//);
}

describe.skipIf(why !== null)(`a full disk${why === null ? '' : ` (not run: ${why})`}`, () => {
  test('refuses edits, keeps all before them, and takes them when there is space', async () => {
    const disk = smallDisk(4096);
    const service = await serviceOn(disk.folder);
    await addPlayers(service, 5);
    const before = service.state();
    const steps = await service.call('history.list', {});
    const giveBack = disk.fill();
    // The log has room of its own for a while; then it needs the disk.
    let error: CallError | null = null;
    let taken = 0;
    for (let n = 0; n < 200 && error === null; n += 1) {
      const last = service.state();
      const answer = await service.gate.call({
        call: 'players.importBag',
        args: { text: JSON.stringify(bagFile({}, { missNote: 'm'.repeat(1900) })) },
      });
      if (answer.ok) taken += 1;
      else {
        error = answer.error;
        expect(service.state()).toBe(last);
      }
    }
    if (error === null) throw new Error('the disk was never full');
    expectFull(error);
    for (let n = 0; n < taken; n += 1) await service.call('history.undo', {});
    expect(service.state()).toBe(before);
    giveBack();
    await addPlayers(service, 1);
    expect((await service.call('history.list', {})).undo).toHaveLength(steps.undo.length + 1);
  });

  test.each(['backups.make', 'files.exportDatabase'] as const)(
    'refuses %s and leaves no half file',
    async (name) => {
      const disk = smallDisk(4096);
      const service = await serviceOn(disk.folder);
      await addPlayers(service, 5);
      const before = service.state();
      const giveBack = disk.fill(100_000);
      expectFull(await service.refused(name, {}));
      for (const folder of ['backups', 'exports'].map((part) => join(disk.folder, part))) {
        if (existsSync(folder)) expect(readdirSync(folder)).toEqual([]);
      }
      expect(service.state()).toBe(before);
      giveBack();
      await service.call(name, {});
    },
  );

  test.each(['backups.restore', 'files.importDatabase'] as const)(
    'refuses %s, and the records that are there stay open',
    async (name) => {
      const disk = smallDisk(6144);
      const service = await serviceOn(disk.folder);
      await addPlayers(service, 2);
      const { sequence } = await service.call('backups.make', {});
      const { file: exported } = await service.call('files.exportDatabase', {});
      const upload = await sendFile(service.gate, exported);
      await addPlayers(service, 3);
      const before = service.state();
      const args = name === 'backups.restore' ? { sequence } : { upload };
      // A little more room each time: it fails at one stage after the other, until it goes through.
      let refusals = 0;
      for (let leftBytes = 0; ; leftBytes += 40_000) {
        const giveBack = disk.fill(leftBytes);
        const answer = await service.gate.call({ call: name, args });
        giveBack();
        if (answer.ok) break;
        refusals += 1;
        expectFull(answer.error);
        expect(service.state()).toBe(before);
        expect((await service.call('players.roster', {})).length).toBe(5);
        expect(listBackups(backupFolderOf(service.file)).map((backup) => backup.sequence)).toEqual([
          sequence,
        ]);
        expect(readdirSync(disk.folder).filter((entry) => /restore|import|looked/.test(entry))).toEqual([]);
      }
      expect(refusals).toBeGreaterThan(5);
      expect(service.state()).not.toBe(before);
      expect((await service.call('players.roster', {})).length).toBe(2);
    },
  );

  test('refuses an upload and keeps nothing of it', async () => {
    const disk = smallDisk(4096);
    const service = await serviceOn(disk.folder);
    disk.fill(50_000);
    async function* stream() {
      for (let n = 0; n < 100; n += 1) {
        yield Buffer.from('archetype,likely\n'.repeat(600));
        await Promise.resolve();
      }
    }
    const answer = await service.gate.upload('prices.csv', stream());
    if (answer.ok) throw new Error('it was taken');
    expectFull(answer.error);
    expect(readdirSync(join(disk.folder, 'incoming'))).toEqual([]);
  });

  test('refuses the first opening and leaves nothing', () => {
    const disk = smallDisk(1024);
    const giveBack = disk.fill(60_000);
    const file = join(disk.folder, DATABASE_NAME);
    const error = storageError(() => openDatabase({ file, now: NOW }));
    expect(error).toMatchObject({ code: 'disk-full' });
    expect(error.remedy).toContain('Free some space');
    expect(readdirSync(disk.folder).filter((name) => name.startsWith(`${DATABASE_NAME}.new`))).toEqual([]);
    expect(existsSync(file)).toBe(false);
    giveBack();
    openDatabase({ file, now: NOW }).db.close();
  });

  test('refuses an upgrade, and the older database is as it was', () => {
    const disk = smallDisk(2048);
    const file = join(disk.folder, DATABASE_NAME);
    const old = databaseAt(file, NEWEST - 1);
    for (let n = 0; n < 40; n += 1) createPlayer(old, { ...PLAYER, missNote: 'x'.repeat(5000) }, NOW);
    old.pragma('journal_mode = WAL');
    old.close();
    const before = readFileSync(file);
    for (const left of [0, 50_000, 150_000]) {
      const giveBack = disk.fill(left);
      expect(storageError(() => openDatabase({ file, now: LATER }))).toMatchObject({ code: 'disk-full' });
      giveBack();
      const dir = backupFolderOf(file);
      if (existsSync(dir)) expect(readdirSync(dir)).toEqual([]);
    }
    expect(readFileSync(file).equals(before)).toBe(true);
    const opened = openDatabase({ file, now: LATER, migrations: MIGRATIONS });
    expect(opened.upgradedFrom).toBe(NEWEST - 1);
    expect(listPlayers(opened.db)).toHaveLength(40);
    opened.db.close();
  });

  test('refuses a document over another, which stays whole', () => {
    const disk = smallDisk(1024);
    const file = join(disk.folder, 'plan.md');
    writeFileSync(file, 'the first');
    const text = 'the second\n'.repeat(30_000);
    const giveBack = disk.fill(50_000);
    for (const save of [saveWhole, writeWhole]) {
      expect(() => save(file, text)).toThrow(/ENOSPC.*[Cc]hoose another place/);
      expect(readFileSync(file, 'utf8')).toBe('the first');
      expect(readdirSync(disk.folder).filter((name) => name.endsWith('.part'))).toEqual([]);
    }
    giveBack();
    for (const save of [saveWhole, writeWhole]) {
      save(file, text);
      expect(readFileSync(file, 'utf8')).toBe(text);
    }
  });

  test('loses the window’s place, which is no reason to stop', () => {
    const disk = smallDisk(256);
    disk.fill();
    writeWindowPlace(disk.folder, { left: 0, top: 0, width: 800, height: 600, maximized: false });
  });

  test('an erased player is gone all the same; his bytes go at the next start with space', async () => {
    const disk = smallDisk(4096);
    const secret = 'left wrist, since spring';
    const service = await serviceOn(disk.folder);
    const { playerId } = await service.call('players.importBag', {
      text: JSON.stringify(bagFile({}, { missNote: secret.repeat(60) })),
    });
    await addPlayers(service, 8);
    const giveBack = disk.fill(150_000);
    const erased = await service.call('players.erase', { playerId });
    expect(erased.logEmptied).toBe(false);
    expect((await service.call('players.roster', {})).some(({ id }) => id === playerId)).toBe(false);
    await service.gate.close();
    expect(readFileSync(service.file).includes(secret)).toBe(true);
    giveBack();
    const again = await serviceOn(disk.folder);
    expect(await again.call('players.roster', {})).toHaveLength(8);
    await again.gate.close();
    expect(readFileSync(service.file).includes(secret)).toBe(false);
  });
});
