import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { fileNamesFor } from '../../../../src-main/service/handover/file-names.ts';
import {
  MAX_PICTURE_BYTES,
  pictureData,
  PictureError,
} from '../../../../src-main/service/handover/picture.ts';
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

describe('letterhead picture', () => {
  const png = Uint8Array.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 1, 2]);
  it('becomes a data address of what its bytes are', () => {
    expect(pictureData(png)).toBe('data:image/png;base64,iVBORw0KGgoBAg==');
    expect(pictureData(Uint8Array.from([0xff, 0xd8, 0xff, 0xe0]))).toMatch(/^data:image\/jpeg;/);
    expect(pictureData(Buffer.from('RIFF\0\0\0\0WEBPVP8 ', 'latin1'))).toMatch(/^data:image\/webp;/);
  });
  it('is refused when it is no picture, may hold script, or is too large', () => {
    expect(() => pictureData(Buffer.from('<svg onload="x"/>'))).toThrow(PictureError);
    expect(() => pictureData(new Uint8Array())).toThrow(/PNG, JPEG, GIF or WebP/);
    const large = new Uint8Array(MAX_PICTURE_BYTES + 1);
    large.set(png);
    expect(() => pictureData(large)).toThrow(/at most 2/);
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
