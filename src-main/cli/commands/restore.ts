import { backupOf, databaseFile, restore } from '../../service/records/backups.ts';
import { defaultDataFolder } from '../../service/records/data-folder.ts';
import { readFlags, type Command } from '../args.ts';
import { EXIT, UsageError } from '../exit.ts';
import { userPath } from '../files.ts';

export const restoreCommand: Command = {
  name: 'restore',
  summary: 'a backup back in the place of the records',
  usage: `
npm run --silent restore -- --backup NUMBER|FILE [--data DIR]

Close the window first. The backup is checked whole; the records that stand there are backed up before, or set aside
where they are damaged. Killed at any moment, it leaves the one or the other whole.

  --backup NUMBER   as "npm run --silent backup -- --list" shows it
  --backup FILE     the path of a backup or an exported .loftledger file
  --data DIR        another data folder

Exit code 0 when it is back, 2 for wrong input or use, or where a program has the records open; nothing has been
changed then.`,

  async run(words) {
    const { values } = readFlags(words, { backup: { type: 'string' }, data: { type: 'string' } });
    const { backup: name } = values;
    if (name === undefined) throw new UsageError('give --backup NUMBER or --backup FILE');
    const folder = values.data === undefined ? defaultDataFolder() : userPath(values.data);
    const file = databaseFile(folder);
    const source = /^\d{1,9}$/.test(name) ? backupOf(file, Number(name)).file : userPath(name);
    const { backup, movedAside } = restore(file, source, new Date().toISOString());
    process.stdout.write(`The records are those of ${source}\n`);
    if (backup !== null) process.stdout.write(`Those before are kept as ${backup.file}\n`);
    if (movedAside !== null) process.stdout.write(`The damaged file is kept as ${movedAside}\n`);
    return Promise.resolve(EXIT.ok);
  },
};
