import { backupsOf, backUp, databaseFile } from '../../service/records/backups.ts';
import { defaultDataFolder } from '../../service/records/data-folder.ts';
import { withRecords } from '../../service/files/transfer.ts';
import { readFlags, type Command } from '../args.ts';
import { EXIT } from '../exit.ts';
import { userPath } from '../files.ts';
import { textTable } from '../text/table.ts';

export const backupCommand: Command = {
  name: 'backup',
  summary: 'a checked copy of all records beside them; the newest five are kept',
  usage: `
npm run --silent backup -- [--list] [--data DIR]

Copies all records, as the last edit left them, into the data folder's "backups", checks the copy whole and prints its
path. It may run while the window is open. Backups hold all that the records hold, notes on health included.

  --list       the backups there are, the newest first; makes none
  --data DIR   another data folder

Bring one back with: npm run --silent restore -- --backup NUMBER
Exit code 0 when it is done, 2 where it cannot be.`,

  async run(words) {
    const { values } = readFlags(words, { list: { type: 'boolean' }, data: { type: 'string' } });
    const folder = values.data === undefined ? defaultDataFolder() : userPath(values.data);
    const file = databaseFile(folder);
    if (values.list === true) process.stdout.write(listText(backupsOf(file)));
    else {
      const backup = withRecords(folder, (db) => backUp(db, file, new Date().toISOString()));
      process.stdout.write(`${String(backup.sequence)} ${backup.file}\n`);
    }
    return Promise.resolve(EXIT.ok);
  },
};

function listText(backups: ReturnType<typeof backupsOf>): string {
  if (backups.length === 0) return 'There are no backups.\n';
  const columns = [
    { head: 'number', align: 'right' as const },
    { head: 'taken' },
    { head: 'why' },
    { head: 'bytes', align: 'right' as const },
    { head: 'file' },
  ];
  const rows = backups.map(({ sequence, takenAt, reason, bytes, file }) => [
    String(sequence),
    takenAt,
    reason,
    String(bytes),
    file,
  ]);
  return `${textTable(columns, rows)}\n`;
}
