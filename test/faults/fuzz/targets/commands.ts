import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { COMMANDS } from '../../../../src-main/cli/commands/index.ts';
import { runCommand } from '../../../../src-main/cli/run.ts';
import { DATABASE_NAME } from '../../../../src-main/service/records/data-folder.ts';
import { openStore } from '../../../../src-main/service/records/store.ts';
import { importBag } from '../../../../src-main/service/files/transfer.ts';
import type { Draw } from '../draw.ts';
import { brokenText, broken, NASTY_TEXTS } from '../nasty.ts';
import { BAG_TEXT, PRICES_TEXT, ROSTER_TEXT } from '../pools.ts';
import { Wrong, type Target } from '../target.ts';
import { Watch } from '../watch.ts';
import { INSTANCE } from './instance.ts';

const LAUNCHES = JSON.stringify([{ ballSpeedMph: 140, launchDeg: 12, spinRpm: 2800 }]);
const CONTENTS = {
  bag: BAG_TEXT,
  prices: PRICES_TEXT,
  roster: ROSTER_TEXT,
  instance: INSTANCE,
  launches: LAUNCHES,
};

/** Words of a command line: flags that some command knows, files, and what nobody would type. */
const FLAGS: Readonly<Record<string, readonly string[]>> = {
  plan: ['--bag', '--budget', '--json', '--with-instance', '--out', '--today'],
  solve: ['--instance', '--json'],
  catalogue: ['--json'],
  flight: ['--json'],
  handover: ['--bag', '--format', '--out', '--paper', '--lang', '--budget', '--today'],
  import: [
    '--bag',
    '--prices',
    '--roster',
    '--database',
    '--preview',
    '--skip-bad',
    '--again',
    '--currency',
    '--distance',
    '--speed',
    '--decimal',
  ],
  export: ['--bag', '--prices', '--roster', '--database', '--list', '--out'],
  backup: ['--list'],
  restore: ['--backup'],
};
const SWITCHES = ['--json', '--with-instance', '--preview', '--skip-bad', '--again', '--list'];
const VALUES: Readonly<Record<string, readonly string[]>> = {
  '--budget': ['150', '0', '-1', '1e9', '12.345', 'NaN'],
  '--today': ['2026-11-26', '2026-02-30', 'today', '0000-01-01', '99999-01-01'],
  '--format': ['md', 'csv', 'json', 'html', 'pdf', 'doc'],
  '--paper': ['a4', 'letter', 'a3'],
  '--lang': ['en', 'de', '__proto__'],
  '--currency': ['GBP', 'EUR', 'XXX', 'gbp'],
  '--distance': ['yd', 'm', 'ft'],
  '--speed': ['mph', 'km/h', 'm/s', 'knots'],
  '--decimal': ['.', ',', ''],
  '--backup': ['1', '999', '0', '-1', 'no-such-file'],
};

function words(draw: Draw, name: string, file: () => string): string[] {
  const known = FLAGS[name] ?? [];
  const list: string[] = [];
  for (const flag of known) {
    if (!draw.chance(flag === '--bag' && name !== 'import' && name !== 'export' ? 0.95 : 0.4)) continue;
    if (SWITCHES.includes(flag) || (name === 'export' && flag !== '--bag' && flag !== '--out'))
      list.push(flag);
    else {
      const value = draw.chance(0.9) ? (VALUES[flag] ? draw.pick(VALUES[flag]) : file()) : plain(draw);
      list.push(...(draw.chance(0.2) ? [`${flag}=${value}`] : [flag, value]));
    }
  }
  if (name === 'flight') list.push(file());
  if (draw.chance(0.1)) list.splice(draw.below(list.length + 1), 0, plain(draw));
  return list;
}

/** Not "-": it would wait for the standard input of whoever started this. No line of a shell holds a zero byte. */
function plain(draw: Draw): string {
  const text = draw
    .pick([...NASTY_TEXTS, '--', '--no-such', '-x', '--bag', '--help=1', '--data'])
    .slice(0, 2000);
  return text.replaceAll('\u0000', '') === '-' ? '--' : text.replaceAll('\u0000', '');
}

/** Every command, in this process: its words and its files. */
export const commandsTarget: Target = {
  name: 'commands',
  weight: 4,
  casesASession: 300,
  async open() {
    const base = mkdtempSync(join(tmpdir(), 'loftledger-fuzz-'));
    const folder = join(base, 'data');
    mkdirSync(folder, { mode: 0o700 });
    const { db } = openStore(folder);
    importBag(db, Buffer.from(BAG_TEXT), { at: '2026-11-26T00:00:00Z', preview: false, skipBad: false });
    db.close();
    const watch = new Watch(join(folder, DATABASE_NAME));
    const env = { INIT_CWD: base, XDG_DATA_HOME: base, LOFTLEDGER_CHROMIUM: join(base, 'no-chromium') };
    const before = Object.fromEntries(Object.keys(env).map((name) => [name, process.env[name]]));
    Object.assign(process.env, env);
    return {
      async run(draw) {
        const command = draw.pick(COMMANDS);
        let files = 0;
        const file = () => {
          if (draw.chance(0.05)) return draw.pick(['no-such-file', '.', 'data', '../..', '/dev/null']);
          const [kind, whole] = draw.pick(Object.entries(CONTENTS));
          const name = `${kind}-${String(files++)}`;
          const isJson = kind === 'bag' || kind === 'instance' || kind === 'launches';
          const text = draw.chance(0.3)
            ? whole
            : isJson && draw.chance(0.6)
              ? JSON.stringify(broken(draw, JSON.parse(whole)))
              : brokenText(draw, whole);
          writeFileSync(join(base, name), text ?? '');
          return name;
        };
        const line = [...words(draw, command.name, file), '--data', 'data'];
        draw.gives({ command: command.name, line, files: contents(base, files) });
        watch.begin(true);
        const { status, out, err } = await captured(() => runCommand(command, line));
        const input = { command: command.name, line, files: contents(base, files) };
        if (![0, 1, 2].includes(status)) throw new Wrong(`exit code ${String(status)}`, input);
        if (/fault of the program/.test(err)) throw new Wrong(`a fault of the program: ${err}`, input);
        // 1 is kept for what is no fault of the user: a document that needs a browser that is not there.
        if (status === 1 && !/Chromium/.test(err)) throw new Wrong(`exit code 1: ${err}`, input);
        if (status === 2 && out !== '')
          throw new Wrong(`refused, and yet it printed: ${out.slice(0, 300)}`, input);
        if (status !== 0) {
          if (err.trim() === '') throw new Wrong('refused without a word', input);
          watch.expectSame('it was refused and yet the records are not as they were', input);
        }
        return status === 0 ? 'taken' : 'refused';
      },
      close() {
        watch.close();
        for (const [name, value] of Object.entries(before)) {
          if (value === undefined) Reflect.deleteProperty(process.env, name);
          else process.env[name] = value;
        }
        rmSync(base, { recursive: true, force: true });
        return Promise.resolve();
      },
    };
  },
};

function contents(base: string, files: number): Record<string, string> {
  const found: Record<string, string> = {};
  for (const kind of Object.keys(CONTENTS)) {
    for (let n = 0; n < files; n += 1) {
      try {
        found[`${kind}-${String(n)}`] = readFileSync(join(base, `${kind}-${String(n)}`), 'utf8').slice(
          0,
          400,
        );
      } catch {
        // That number was of another kind.
      }
    }
  }
  return found;
}

/** Runs fn; what it prints is caught instead. */
async function captured(fn: () => Promise<number>): Promise<{ status: number; out: string; err: string }> {
  const text = { out: '', err: '' };
  const { stdout, stderr } = process;
  const writeOut = stdout.write.bind(stdout);
  const writeErr = stderr.write.bind(stderr);
  stdout.write = ((part: string | Uint8Array) => ((text.out += String(part)), true)) as typeof stdout.write;
  stderr.write = ((part: string | Uint8Array) => ((text.err += String(part)), true)) as typeof stderr.write;
  try {
    return { status: await fn(), ...text };
  } finally {
    stdout.write = writeOut;
    stderr.write = writeErr;
  }
}
