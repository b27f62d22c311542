import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it, vi } from 'vitest';
import { findChromium } from '../../../build/find/find-chromium.mjs';
import { planFileSchema } from '../../../src-main/contract/formats/plan-file.ts';
import { handoverCommand } from '../../../src-main/cli/commands/handover.ts';
import { runCommand } from '../../../src-main/cli/run.ts';

const BAG = path.resolve('db/demo/invented-bag.json');
let folder = '';
let said = { out: '', err: '' };

beforeAll(() => {
  folder = mkdtempSync(path.join(tmpdir(), 'loftledger-handover-'));
});
afterAll(() => {
  rmSync(folder, { recursive: true, force: true });
});
beforeEach(() => {
  said = { out: '', err: '' };
  vi.spyOn(process.stdout, 'write').mockImplementation((text) => {
    said.out += String(text);
    return true;
  });
  vi.spyOn(process.stderr, 'write').mockImplementation((text) => {
    said.err += String(text);
    return true;
  });
});
afterEach(() => {
  vi.restoreAllMocks();
  vi.unstubAllEnvs();
});

const run = (...words: string[]) =>
  runCommand(handoverCommand, ['--data', path.join(folder, 'data'), '--today', '2026-11-20', ...words]);
const at = (name: string) => path.join(folder, name);

describe('handover command', () => {
  it('writes the text formats to standard output, or whole to a file', async () => {
    expect(await run('--bag', BAG, '--format', 'md')).toBe(0);
    expect(said.out).toMatch(/^# Bag plan for/);
    const printed = said.out;
    expect(await run('--bag', BAG, '--format', 'md', '--out', at('plan.md'))).toBe(0);
    expect(readFileSync(at('plan.md'), 'utf8')).toBe(printed);
    expect(said.out).toBe(printed);
    expect(said.err).toBe('');
  });

  it('gives the plan file as json, and csv and html as they are', async () => {
    expect(await run('--bag', BAG, '--format', 'json')).toBe(0);
    expect(planFileSchema.parse(JSON.parse(said.out)).plan.status).toBe('ok');
    expect(await run('--bag', BAG, '--format', 'csv', '--out', at('plan.csv'))).toBe(0);
    expect(readFileSync(at('plan.csv'), 'utf8')).toMatch(/^\uFEFFsection,no\.,item,/);
    expect(await run('--bag', BAG, '--format', 'html', '--paper', 'letter', '--out', at('plan.html'))).toBe(
      0,
    );
    expect(readFileSync(at('plan.html'), 'utf8')).toContain('size: letter');
  });

  it('speaks German, and takes another budget', async () => {
    expect(await run('--bag', BAG, '--format', 'md', '--lang', 'de')).toBe(0);
    expect(said.out).toMatch(/^# Schlägerplan für/);
    said.out = '';
    expect(await run('--bag', BAG, '--format', 'json', '--budget', '20')).toBe(0);
    expect(planFileSchema.parse(JSON.parse(said.out)).plan.cash).toBe(0);
  });

  it.skipIf(findChromium() === null)('makes a pdf', async () => {
    expect(await run('--bag', BAG, '--format', 'pdf', '--out', at('plan.pdf'))).toBe(0);
    expect(said.err).toBe('');
    expect(readFileSync(at('plan.pdf')).subarray(0, 5).toString()).toBe('%PDF-');
  });

  it('says what to do where there is no Chromium, and ends with 1', async () => {
    vi.stubEnv('LOFTLEDGER_CHROMIUM', at('no-such-program'));
    expect(await run('--bag', BAG, '--format', 'pdf', '--out', at('none.pdf'))).toBe(1);
    expect(said.err).toMatch(/PDF needs Chromium.*LOFTLEDGER_CHROMIUM/);
    expect(said.err).toMatch(/md, csv, json and html need none/);
    expect(() => readFileSync(at('none.pdf'))).toThrow();
  });

  it('says so where Chromium is no Chromium, and ends with 1', async () => {
    writeFileSync(at('not-chromium'), '#!/bin/sh\necho "not me" >&2\nexit 3\n', { mode: 0o755 });
    vi.stubEnv('LOFTLEDGER_CHROMIUM', at('not-chromium'));
    expect(await run('--bag', BAG, '--format', 'pdf', '--out', at('none.pdf'))).toBe(1);
    expect(said.err).toMatch(/could not be made: Chromium has ended/);
  });

  it.each([
    [['--format', 'md'], /give --bag FILE/],
    [['--bag', BAG], /--format is missing\. Give one of: pdf, md, csv, json, html/],
    [['--bag', BAG, '--format', 'doc'], /--format doc is not offered/],
    [['--bag', BAG, '--format', 'pdf'], /give --out F for a pdf/],
    [
      ['--bag', BAG, '--format', 'md', '--paper', 'a3'],
      /--paper a3 is not offered\. Give one of: a4, letter/,
    ],
    [['--bag', BAG, '--format', 'md', '--lang', 'xx'], /--lang xx is not offered\. Give one of: en, de/],
    [['--bag', BAG, '--format', 'md', '--budget', '-1'], /--budget/],
    [['--bag', 'no-such-file.json', '--format', 'md'], /no such file/],
    [['--bag', BAG, '--format', 'md', '--out', '/no/such/folder/x.md'], /cannot be written \(ENOENT\)/],
    [['--bag', BAG, '--format', 'md', '--shout'], /--shout/],
  ])('wrong use ends with 2: %j', async (words, message) => {
    expect(await run(...words)).toBe(2);
    expect(said.err).toMatch(message);
    expect(said.out).toBe('');
  });
});
