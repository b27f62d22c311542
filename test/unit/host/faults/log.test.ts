import { existsSync, mkdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { createLog, LOG_BYTES, LOG_FILE, LOG_FOLDER } from '../../../../src-main/host/faults/log.ts';
import { makeTempDir } from '../../browser-host/kit.ts';

let temp: ReturnType<typeof makeTempDir>;
beforeEach(() => (temp = makeTempDir()));
afterEach(() => temp.remove());

const now = () => '2026-11-26T10:00:00.000Z';
const file = () => join(temp.dir, LOG_FOLDER, LOG_FILE);
const lines = () => readFileSync(file(), 'utf8').trimEnd().split('\n');

describe('the log', () => {
  it('keeps what was noted before it had a folder, and then each line at once, for the user alone', () => {
    const log = createLog(now);
    log.note('start', { host: 'browser', program: '0.1.0', node: undefined });
    log.keepIn(temp.dir);
    expect(lines()).toEqual(['2026-11-26T10:00:00.000Z start host=browser program=0.1.0']);
    log.note('window gone', { reason: 'oom', exitCode: -9, signal: null });
    expect(lines()[1]).toBe('2026-11-26T10:00:00.000Z window-gone reason=oom exitCode=-9 signal=null');
    if (process.platform === 'win32') return;
    expect(statSync(file()).mode & 0o777).toBe(0o600);
    expect(statSync(join(temp.dir, LOG_FOLDER)).mode & 0o777).toBe(0o700);
  });

  it('writes no name, no path, no address and no words, whoever puts them in', () => {
    const log = createLog(now);
    log.keepIn(temp.dir);
    const error = Object.assign(new RangeError('Invalid handicap of Ada Lovelace at /home/ada/x.db'), {
      code: 'SQLITE_FULL',
      cause: new Error('player Ada Lovelace'),
    });
    log.fault('players.update', error);
    log.note('opened', {
      file: '/home/ada/bags/Ada.json',
      who: 'Ada Lovelace',
      url: 'http://127.0.0.1:1/?token=x',
    });
    const text = readFileSync(file(), 'utf8');
    expect(text).not.toMatch(/Ada|Lovelace|home|token|handicap/);
    expect(text).toContain('fault in=players.update kind=RangeError code=SQLITE_FULL at=');
    expect(text).toContain('test.unit.host.faults.log.test.ts:');
    expect(text).toContain('cause.kind=Error');
    expect(text).toContain('opened file=(left-out) who=(left-out) url=(left-out)');
  });

  it('puts a full file by and lets the one before go', () => {
    const log = createLog(now);
    mkdirSync(join(temp.dir, LOG_FOLDER));
    writeFileSync(file(), 'x'.repeat(LOG_BYTES));
    writeFileSync(`${file()}.1`, 'oldest');
    log.keepIn(temp.dir);
    log.note('start');
    expect(lines()).toHaveLength(1);
    expect(statSync(`${file()}.1`).size).toBe(LOG_BYTES);
  });

  it('is no reason to stop when it cannot be written', () => {
    const log = createLog(now);
    writeFileSync(join(temp.dir, LOG_FOLDER), 'a file where the folder should be');
    log.keepIn(temp.dir);
    log.note('start');
    expect(existsSync(file())).toBe(false);
  });

  it('tells what was thrown that is no error', () => {
    const log = createLog(now);
    log.keepIn(temp.dir);
    log.fault('x', 'Ada');
    log.fault('x', null);
    expect(lines().map((line) => line.slice(25))).toEqual([
      'fault in=x thrown=string',
      'fault in=x thrown=null',
    ]);
  });
});
