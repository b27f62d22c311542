import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { bagFile } from '../../support/bags.ts';

const root = path.resolve(import.meta.dirname, '../../..');
type Name = 'import' | 'export' | 'backup' | 'restore';

let folder = '';
beforeEach(() => {
  folder = mkdtempSync(path.join(tmpdir(), 'loftledger-transfer-'));
});
afterEach(() => {
  rmSync(folder, { recursive: true, force: true });
});

/** One command, as the command line runs it, on records of its own; paths are taken from `folder`. */
function run(name: Name, words: readonly string[], input: string | Buffer = '') {
  const program = `
    import { runCommand } from './src-main/cli/run.ts';
    import { ${name}Command } from './src-main/cli/commands/${name}.ts';
    process.exitCode = await runCommand(${name}Command, process.argv.slice(1));`;
  const { status, stdout, stderr } = spawnSync(
    process.execPath,
    [
      '--input-type=module',
      '-e',
      program,
      '--',
      ...words,
      ...(words.includes('--help') ? [] : ['--data', 'data']),
    ],
    {
      cwd: root,
      env: { ...process.env, INIT_CWD: folder },
      input,
      encoding: 'utf8',
      maxBuffer: 64 * 1024 * 1024,
    },
  );
  return { status, stdout, stderr };
}
const file = (name: string, text: string | Buffer) => {
  writeFileSync(path.join(folder, name), text);
  return name;
};

describe('import and export', () => {
  it('a bag comes in and goes out as it was', () => {
    const bag = bagFile({ budget: { amount: 120 } });
    const name = file('bag.json', JSON.stringify(bag));
    expect(run('import', ['--bag', name, '--preview'])).toMatchObject({
      status: 0,
      stdout: 'Would add: Invented, 12 clubs, 0 prices.\n',
    });
    expect(run('import', ['--bag', name])).toMatchObject({
      status: 0,
      stdout: 'Added: Invented, 12 clubs, 0 prices; bag 1.\n',
    });
    expect(run('export', ['--list']).stdout).toMatch(/1\s+Invented\s+15\s+12/);
    expect(JSON.parse(run('export', ['--bag', '1']).stdout)).toEqual(bag);
    expect(run('export', ['--bag', '1', '--out', 'out.json']).status).toBe(0);
    expect(JSON.parse(readFileSync(path.join(folder, 'out.json'), 'utf8'))).toEqual(bag);
  });
  it('prices and a roster, from a file or standard input; what is there already is not doubled', () => {
    const prices = 'archetype;price;currency\nhybrid-22-t3;45,5;\nwedge-50-t2;30;EUR\n';
    const words = ['--prices', '-', '--decimal', ',', '--currency', 'GBP'];
    expect(run('import', words, prices)).toMatchObject({
      status: 0,
      stdout: 'Added 2 price notes; 0 there already, 0 rows skipped.\n',
    });
    expect(run('import', words, prices).stdout).toContain('Added 0 price notes; 2 there already');
    expect(run('export', ['--prices']).stdout).toContain('hybrid-22-t3,45.5,45.5,45.5,GBP,');
    const roster = file('roster.csv', 'name,handicap,club colour\nAda,18,red\nBea,x,blue\n');
    const refused = run('import', ['--roster', roster]);
    expect(refused).toMatchObject({ status: 2, stdout: '' });
    expect(refused.stderr).toContain('row 3, handicap = "x"');
    expect(run('export', ['--list']).stdout).not.toContain('Ada');
    expect(run('import', ['--roster', roster, '--skip-bad']).stdout).toBe(
      'Added 1 player; 0 there already, 1 row skipped. Columns that mean nothing here: club colour.\n',
    );
    expect(run('import', ['--roster', roster, '--skip-bad']).stdout).toContain(
      'Added 0 players; 1 there already',
    );
    expect(run('import', ['--roster', roster, '--skip-bad', '--again']).stdout).toContain('Added 1 player');
    expect(run('export', ['--roster', '--out', 'r.csv'])).toMatchObject({ status: 0, stdout: '' });
    expect(readFileSync(path.join(folder, 'r.csv'), 'utf8')).toContain('\r\nAda,18,');
  });
  it('whole records, into other records, which are kept as a backup', () => {
    run('import', ['--bag', file('a.json', JSON.stringify(bagFile({}, { name: 'Ada' })))]);
    expect(run('export', ['--database', '--out', 'all.loftledger'])).toMatchObject({ status: 0, stdout: '' });
    run('import', ['--bag', file('b.json', JSON.stringify(bagFile({}, { name: 'Bea' })))]);
    expect(run('import', ['--database', 'all.loftledger', '--preview']).stdout).toContain('1 player');
    expect(run('export', ['--list']).stdout).toContain('Bea');
    const { status, stdout } = run('import', ['--database', 'all.loftledger']);
    expect(status).toBe(0);
    expect(stdout).toMatch(/The records before are kept as .*before-import/);
    expect(run('export', ['--list']).stdout).not.toContain('Bea');
    // And back, by the number of the backup.
    expect(run('backup', ['--list']).stdout).toMatch(/1\s+\S+\s+before-import/);
    expect(run('restore', ['--backup', '1']).status).toBe(0);
    expect(run('export', ['--list']).stdout).toContain('Bea');
    // Into a folder that is not there yet.
    rmSync(path.join(folder, 'data'), { recursive: true });
    expect(run('import', ['--database', 'all.loftledger']).status).toBe(0);
    expect(run('export', ['--list']).stdout).toContain('Ada');
  });
});

describe('backup and restore', () => {
  it('copies, lists, and brings back by number or path', () => {
    run('import', ['--bag', file('a.json', JSON.stringify(bagFile({}, { name: 'Ada' })))]);
    expect(run('backup', ['--list'])).toMatchObject({ status: 0, stdout: 'There are no backups.\n' });
    const { stdout } = run('backup', []);
    const backup = stdout.trim().replace(/^1 /, '');
    expect(existsSync(backup)).toBe(true);
    run('import', ['--bag', file('b.json', JSON.stringify(bagFile({}, { name: 'Bea' })))]);
    expect(run('restore', ['--backup', backup]).stdout).toContain('Those before are kept as');
    expect(run('export', ['--list']).stdout).not.toContain('Bea');
    expect(run('restore', ['--backup', '2']).status).toBe(0);
    expect(run('export', ['--list']).stdout).toContain('Bea');
  });
});

describe('wrong input and use end with 2, say what to do, and change nothing', () => {
  it.each<[Name, string[], RegExp]>([
    ['import', [], /give one of --bag/],
    ['import', ['--bag', 'a', '--roster', 'b'], /give one of --bag/],
    ['import', ['--bag', 'no-such.json'], /no such file/],
    ['import', ['--database', 'no-such.loftledger'], /does not exist\. Check the path\.$/m],
    ['import', ['--prices', 'x.csv', '--decimal', 'x'], /--decimal x is not known/],
    ['import', ['--dance'], /dance/],
    ['export', [], /give one of --bag ID/],
    ['export', ['--database'], /give --out/],
    ['export', ['--bag', 'x'], /no bag's number/],
    ['export', ['--bag', '99'], /There is no bag 99/],
    ['export', ['--list', '--out', 'no/such/folder/x'], /cannot be written/],
    ['restore', [], /give --backup/],
    ['restore', ['--backup', '7'], /There is no backup 7\. \S/],
    ['restore', ['--backup', 'no-such.loftledger'], /does not exist\. \S/],
    ['backup', ['--out', 'x'], /out/],
  ])('%s %j', (name, words, message) => {
    const { status, stdout, stderr } = run(name, words);
    expect([status, stdout]).toEqual([2, '']);
    expect(stderr).toMatch(message);
  });
  it('a hostile file is named by place and value', () => {
    const deep = run('import', ['--bag', '-'], '['.repeat(500_000));
    expect(deep).toMatchObject({ status: 2, stdout: '' });
    expect(deep.stderr).toContain('brackets are nested deeper than 64');
    const formula = run(
      'import',
      ['--prices', '-'],
      'archetype,price,currency,remark\nhybrid-22-t3,1,GBP,=1+1\n',
    );
    expect(formula).toMatchObject({ status: 2, stdout: '' });
    expect(formula.stderr).toContain('row 2, remark = "=1+1": it begins like a formula');
    const junk = run('import', ['--database', file('x.loftledger', Buffer.alloc(9000, 7))]);
    expect(junk).toMatchObject({ status: 2, stdout: '' });
    expect(junk.stderr).toContain('no Loftledger database');
  });
  it('100 MB of rows: a file is refused by its size, standard input after 20 MB', () => {
    const rows = Buffer.alloc(100 * 1024 * 1024, 'hybrid-22-t3,45,GBP\n');
    const name = file('big.csv', rows);
    const fromFile = run('import', ['--prices', name]);
    expect(fromFile).toMatchObject({ status: 2, stdout: '' });
    expect(fromFile.stderr).toContain('100.0 MB; a price list has at most 20.0 MB');
    const piped = run('import', ['--prices', '-'], rows.subarray(0, 60 * 1024 * 1024));
    expect(piped).toMatchObject({ status: 2, stdout: '' });
    expect(piped.stderr).toContain('longer than 20 MB');
  });
  it.each<Name>(['import', 'export', 'backup', 'restore'])('%s --help', (name) => {
    const { status, stdout } = run(name, ['--help']);
    expect(status).toBe(0);
    expect(stdout).toContain(`npm run --silent ${name} --`);
    expect(stdout.split('\n').every((line) => line.length <= 120)).toBe(true);
  });
});
