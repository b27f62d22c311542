import { existsSync } from 'node:fs';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { createUploads, type Uploads } from '../../../../src-main/service/files/uploads.ts';

let uploads: Uploads;
beforeEach(() => (uploads = createUploads(':memory:', { files: 3, bytes: 100 })));
afterEach(() => uploads.close());

async function take(name: string, bytes: number) {
  async function* parts() {
    yield new Uint8Array(bytes);
    await Promise.resolve();
  }
  return uploads.take(name, parts(), 1000);
}

describe('the room for uploads', () => {
  it('holds so many files; then the oldest goes', async () => {
    const [a, b] = [await take('a', 1), await take('b', 1)];
    await take('c', 1);
    expect(uploads.find(a.id)).toEqual(a);
    await take('d', 1);
    expect(() => uploads.find(a.id)).toThrow(/no upload/);
    expect(existsSync(a.file)).toBe(false);
    expect(uploads.read(b.id)).toHaveLength(1);
  });
  it('holds so many bytes; the newest stays, however large it is', async () => {
    const [a, b] = [await take('a', 40), await take('b', 60)];
    expect(uploads.find(a.id)).toEqual(a);
    const c = await take('c', 30);
    expect(() => uploads.find(a.id)).toThrow(/no upload/);
    expect(uploads.find(b.id)).toEqual(b);
    const d = await take('d', 900);
    for (const { id } of [b, c]) expect(() => uploads.find(id)).toThrow(/no upload/);
    expect(uploads.read(d.id)).toHaveLength(900);
  });
});
