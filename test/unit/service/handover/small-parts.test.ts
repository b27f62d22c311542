import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { fileNamesFor } from '../../../../src-main/service/handover/file-names.ts';
import { SaveError, saveWhole } from '../../../../src-main/service/handover/save.ts';

describe('file names of a batch', () => {
  it('are letters and digits, and never the same twice', () => {
    expect(fileNamesFor(['Ann Óg', 'ann óg', 'Ann-Óg', '李 雷'], 'pdf')).toEqual([
      'Ann-Óg.pdf',
      'ann-óg-2.pdf',
      'Ann-Óg-3.pdf',
      '李-雷.pdf',
    ]);
  });
  it('lead nowhere else and are no device', () => {
    expect(fileNamesFor(['../../etc/passwd', 'a\\b:c', '...', '', 'CON', 'x\0y'], 'pdf')).toEqual([
      'etc-passwd.pdf',
      'a-b-c.pdf',
      'plan.pdf',
      'plan-2.pdf',
      'plan-CON.pdf',
      'x-y.pdf',
    ]);
  });
  it('are of bounded length, cut between letters', () => {
    const [name = ''] = fileNamesFor(['𝒞'.repeat(300)], 'pdf');
    expect([...name]).toHaveLength(80 + '.pdf'.length);
    expect(name.isWellFormed()).toBe(true);
  });
});

describe('saving', () => {
  const folder = mkdtempSync(path.join(tmpdir(), 'loftledger-save-'));
  afterAll(() => rmSync(folder, { recursive: true, force: true }));
  it('writes whole, over what was there, and leaves no draft', () => {
    const file = path.join(folder, 'a.pdf');
    saveWhole(file, 'old');
    saveWhole(file, Uint8Array.from([1, 2, 0, 3]));
    expect([...readFileSync(file)]).toEqual([1, 2, 0, 3]);
    expect(readdirSync(folder)).toEqual(['a.pdf']);
  });
  it('names the file, the reason and the way out', () => {
    const file = path.join(folder, 'no', 'a.pdf');
    expect(() => saveWhole(file, 'x')).toThrow(SaveError);
    expect(() => saveWhole(file, 'x')).toThrow(/a\.pdf cannot be written \(ENOENT\)\. Choose another place/);
    // A folder of that name: the draft must go again.
    expect(() => saveWhole(folder, 'x')).toThrow(SaveError);
    expect(
      readdirSync(path.dirname(folder)).filter((name) => name.startsWith(`${path.basename(folder)}.`)),
    ).toEqual([]);
  });
});
