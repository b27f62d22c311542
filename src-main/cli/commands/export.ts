import { handicapText } from '../../contract/handicap.ts';
import { defaultDataFolder } from '../../service/records/data-folder.ts';
import {
  bagList,
  exportBag,
  exportPlayers,
  exportPrices,
  exportRecords,
  withRecords,
} from '../../service/files/transfer.ts';
import { readFlags, type Command } from '../args.ts';
import { EXIT, UsageError } from '../exit.ts';
import { userPath, writeWhole } from '../files.ts';
import { textTable } from '../text/table.ts';

export const exportCommand: Command = {
  name: 'export',
  summary: 'a bag file, prices, the roster or whole records out',
  usage: `
npm run --silent export -- --bag ID | --prices | --roster | --database | --list [--out F]

  --bag ID     one bag as a bag file, with all prices that its plan reckons with; ID as --list shows it
  --prices     everybody's price notes, as CSV
  --roster     the players, as CSV, without what is noted of their health
  --database   all records as one .loftledger file, without the undo history; needs --out
  --list       the bags there are
  --out F      write to F, whole or not at all; without it to standard output
  --data DIR   another data folder

Cells that a spreadsheet might run as a formula get an apostrophe, which an import takes off again.
Exit code 0 when it is written, 2 for wrong input or use.`,

  async run(words) {
    const { values } = readFlags(words, {
      bag: { type: 'string' },
      prices: { type: 'boolean' },
      roster: { type: 'boolean' },
      database: { type: 'boolean' },
      list: { type: 'boolean' },
      out: { type: 'string' },
      data: { type: 'string' },
    });
    const asked = (['bag', 'prices', 'roster', 'database', 'list'] as const).filter(
      (kind) => values[kind] !== undefined,
    );
    const [kind] = asked;
    if (kind === undefined || asked.length > 1)
      throw new UsageError('give one of --bag ID, --prices, --roster, --database and --list');
    const { out } = values;
    if (kind === 'database' && out === undefined) throw new UsageError('give --out F for the whole records');
    const folder = values.data === undefined ? defaultDataFolder() : userPath(values.data);
    withRecords(folder, (db) => {
      if (kind === 'database') {
        const bytes = exportRecords(db, userPath(out ?? ''));
        process.stderr.write(`${out ?? ''}: ${String(bytes)} bytes\n`);
        return;
      }
      const text =
        kind === 'bag'
          ? exportBag(db, bagNumber(values.bag ?? ''))
          : kind === 'prices'
            ? exportPrices(db)
            : kind === 'roster'
              ? exportPlayers(db)
              : listText(bagList(db));
      if (out === undefined) process.stdout.write(text);
      else writeWhole(out, text);
    });
    return Promise.resolve(EXIT.ok);
  },
};

function bagNumber(text: string): number {
  if (/^[1-9]\d{0,14}$/.test(text)) return Number(text);
  throw new UsageError(`--bag ${text} is no bag's number. See: npm run --silent export -- --list`);
}

function listText(bags: ReturnType<typeof bagList>): string {
  const columns = [
    { head: 'bag', align: 'right' as const },
    { head: 'player' },
    { head: 'handicap', align: 'right' as const },
    { head: 'clubs', align: 'right' as const },
  ];
  const rows = bags.map(({ bagId, name, handicap, clubs }) => [
    String(bagId),
    name,
    handicapText(handicap, String),
    String(clubs),
  ]);
  return `${textTable(columns, rows)}\n`;
}
