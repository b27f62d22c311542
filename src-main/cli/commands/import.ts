import { MAX_BAG_BYTES } from '../../contract/formats/read-bag.ts';
import { defaultDataFolder } from '../../service/records/data-folder.ts';
import { MAX_CSV_BYTES } from '../../service/files/csv.ts';
import {
  importBag,
  importPlayers,
  importPrices,
  importRecords,
  withRecords,
} from '../../service/files/transfer.ts';
import { readFlags, type Command } from '../args.ts';
import { EXIT, UsageError } from '../exit.ts';
import { readInput, userPath } from '../files.ts';

const KINDS = ['bag', 'prices', 'roster', 'database'] as const;

export const importCommand: Command = {
  name: 'import',
  summary: 'a bag file, prices, a roster or whole records in',
  usage: `
npm run --silent import -- --bag FILE | --prices FILE | --roster FILE | --database FILE

FILE (or - for standard input, but for --database) is read whole and checked before anything is stored: all of it
comes in, or nothing. In the window, Undo takes it back.

  --bag FILE        a bag file, as a new player
  --prices FILE     CSV: archetype, price (or low, likely, high), currency, seen, condition, place, remark
  --roster FILE     CSV: name, handicap, target handicap, driver speed, handed, ground, budget, currency
  --database FILE   a .loftledger file: it replaces all records, which are backed up before
  --preview         say what would come, store nothing
  --skip-bad        leave out rows that cannot be used, instead of refusing the file
  --again           take in players whose name is on the roster already, too
  --currency CODE   for rows that name none (roster: default GBP)
  --distance yd|m, --speed mph|km/h|m/s   the units of a roster's rows (default: yd, mph)
  --decimal , | .   how the file writes decimals (default: .)
  --data DIR        another data folder

Exit code 0 when it is in, 2 for wrong input or use; nothing has been changed then.`,

  async run(words) {
    const { values } = readFlags(words, {
      bag: { type: 'string' },
      prices: { type: 'string' },
      roster: { type: 'string' },
      database: { type: 'string' },
      preview: { type: 'boolean' },
      'skip-bad': { type: 'boolean' },
      again: { type: 'boolean' },
      currency: { type: 'string' },
      distance: { type: 'string' },
      speed: { type: 'string' },
      decimal: { type: 'string' },
      data: { type: 'string' },
    });
    const asked = KINDS.filter((kind) => values[kind] !== undefined);
    const [kind] = asked;
    if (kind === undefined || asked.length > 1)
      throw new UsageError('give one of --bag, --prices, --roster and --database, with a FILE');
    const name = values[kind] ?? '';
    const folder = values.data === undefined ? defaultDataFolder() : userPath(values.data);
    const preview = values.preview === true;
    const at = new Date().toISOString();
    const options = { at, preview, skipBad: values['skip-bad'] === true };
    const decimal = oneOf('--decimal', values.decimal ?? '.', ['.', ',']);
    const say = (line: string) => process.stdout.write(`${line}\n`);

    if (kind === 'database') {
      const { rows, backup, movedAside } = importRecords(folder, userPath(name), options);
      const list = Object.entries(rows).map(([table, count]) => `${String(count)} ${table}`);
      say(
        `${preview ? 'Would replace all records by' : 'The records are now'}: ${list.join(', ') || 'none'}.`,
      );
      if (backup) say(`The records before are kept as ${backup.file}`);
      if (movedAside !== undefined && movedAside !== null) say(`What stood there is kept as ${movedAside}`);
      return EXIT.ok;
    }
    const bytes = await readAll(name, kind === 'bag' ? MAX_BAG_BYTES : MAX_CSV_BYTES, NAMES[kind]);
    withRecords(folder, (db) => {
      if (kind === 'bag') say(importBag(db, bytes, options));
      else if (kind === 'prices') {
        const { currency } = values;
        say(
          importPrices(db, bytes, { ...options, decimal, ...(currency === undefined ? {} : { currency }) }),
        );
      } else {
        const units = {
          distance: oneOf('--distance', values.distance ?? 'yd', ['yd', 'm']),
          speed: oneOf('--speed', values.speed ?? 'mph', ['mph', 'km/h', 'm/s']),
          currency: values.currency ?? 'GBP',
        };
        say(importPlayers(db, bytes, { ...options, decimal, units, skipKnown: values.again !== true }));
      }
    });
    return EXIT.ok;
  },
};

const NAMES = { bag: 'bag file', prices: 'price list', roster: 'roster' } as const;

function oneOf<const T extends string>(flag: string, value: string, allowed: readonly T[]): T {
  const found = allowed.find((one) => one === value);
  if (found === undefined)
    throw new UsageError(`${flag} ${value} is not known. Give ${allowed.join(' or ')}.`);
  return found;
}

/** A file, or standard input as far as it may go: what is too long is not waited for. */
async function readAll(name: string, mostBytes: number, what: string): Promise<Uint8Array> {
  if (name !== '-') return readInput(name, what, mostBytes);
  const parts: Buffer[] = [];
  let size = 0;
  for await (const part of process.stdin as AsyncIterable<Buffer>) {
    size += part.length;
    if (size > mostBytes) {
      const mb = String(Math.round(mostBytes / 1024 / 1024));
      throw new UsageError(
        `standard input is longer than ${mb} MB, the most for a ${what}. Check that it is the right file.`,
      );
    }
    parts.push(part);
  }
  return Buffer.concat(parts);
}
