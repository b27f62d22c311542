import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { expect, onTestFinished, test } from 'vitest';
import { connect } from '../../../db/sqlite.ts';
import { tempFolder } from '../../unit/db/kit.ts';
import { addPlayers, serviceOn } from '../support/service-on.ts';

/** Records that another process holds, or writes to at the same time. */

test('held for longer than the program waits: refused in plain words, nothing lost, and well again after', async () => {
  const folder = tempFolder();
  const service = await serviceOn(folder);
  await addPlayers(service, 2);
  const before = service.state();
  const other = connect(service.file);
  onTestFinished(() => {
    other.close();
  });
  other.exec('BEGIN IMMEDIATE');
  const error = await service.refused('players.create', {
    name: 'Invented',
    handicap: 9,
    units: { distance: 'yd', speed: 'mph', currency: 'GBP' },
  });
  expect(error.kind).toBe('conflict');
  expect(error.message).toMatch(/another program is writing.*try again\.$/);
  // Reading goes on.
  expect(await service.call('players.roster', {})).toHaveLength(2);
  expect(service.state()).toBe(before);
  other.exec('ROLLBACK');
  await addPlayers(service, 1);
});

test('two programs that write to one folder at the same time: each keeps all that it was told is kept', async () => {
  const folder = tempFolder();
  const first = await serviceOn(folder);
  const child = spawn(
    process.execPath,
    [join(import.meta.dirname, 'db-child.ts'), 'write-slowly', first.file],
    {
      stdio: ['ignore', 'pipe', 'inherit'],
    },
  );
  onTestFinished(() => {
    child.kill('SIGKILL');
  });
  let told = '';
  child.stdout.setEncoding('utf8').on('data', (text: string) => (told += text));
  await once(child.stdout, 'data');
  for (let n = 0; n < 40; n += 1) {
    await addPlayers(first, 1);
    // Whoever waits for a lock asks again only now and then.
    await pause(10);
  }
  child.kill('SIGKILL');
  await once(child, 'close');
  const theirs = told.split('\n').filter((line) => line.endsWith('}')).length;
  const names = namesIn(first.file);
  expect(names.filter((name) => name.startsWith('Invented'))).toHaveLength(40);
  // One more may have been committed and not yet told.
  expect([theirs, theirs + 1]).toContain(names.filter((name) => /^p\d+$/.test(name)).length);
  expect(theirs).toBeGreaterThan(5);
});

/** The players' names, as another reader of the file sees them. */
function namesIn(file: string): string[] {
  const db = connect(file, { readonly: true });
  const names = db.prepare('SELECT name FROM player').pluck().all() as string[];
  db.close();
  return names;
}
