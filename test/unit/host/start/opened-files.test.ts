import { spawnSync } from 'node:child_process';
import { chmodSync, closeSync, openSync, symlinkSync, truncateSync, writeFileSync } from 'node:fs';
import { createServer } from 'node:net';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { CallError, OpenedFile } from '../../../../src-main/contract/gate.ts';
import { checkFiles, openAllForWindow, openForWindow } from '../../../../src-main/host/start/opened-files.ts';
import { makeTempDir } from '../../browser-host/kit.ts';

let temp: ReturnType<typeof makeTempDir>;
beforeEach(() => (temp = makeTempDir()));
afterEach(() => temp.remove());
const at = (name: string) => join(temp.dir, name);

/** A gate that reads what it is given. */
function reader() {
  const got: { name: string; text?: string; refused?: CallError }[] = [];
  return {
    got,
    async open(file: OpenedFile) {
      if ('refused' in file) return void got.push(file);
      let text = '';
      for await (const chunk of file.stream) text += Buffer.from(chunk).toString();
      got.push({ name: file.name, text });
    },
  };
}

describe('a file that the user names', () => {
  it('goes to the window by its own name, in order; its path stays here', async () => {
    writeFileSync(at('a.json'), 'one');
    writeFileSync(at('b.json'), '');
    symlinkSync(at('a.json'), at('link.json'));
    const gate = reader();
    await openAllForWindow(gate, [at('b.json'), at('a.json'), at('link.json')]);
    expect(gate.got).toEqual([
      { name: 'b.json', text: '' },
      { name: 'a.json', text: 'one' },
      { name: 'link.json', text: 'one' },
    ]);
  });

  it('is shut again when nobody reads it', async () => {
    writeFileSync(at('a.json'), 'one');
    for (let i = 0; i < 50; i++) await openForWindow({ open: () => Promise.resolve() }, at('a.json'));
    await openForWindow({ open: () => Promise.reject(new Error('closing')) }, at('a.json'));
    const next = openSync(at('a.json'), 'r');
    closeSync(next);
    expect(next).toBeLessThan(60);
  });

  const CASES: [string, (path: string) => void, RegExp][] = [
    ['nothing there', () => undefined, /there is no such file/],
    ['a link to nothing', (path) => symlinkSync(at('gone'), path), /there is no such file/],
    ['a link to a folder', (path) => symlinkSync(temp.dir, path), /it is a folder/],
    ['a link to itself', (path) => symlinkSync(path, path), /ELOOP/],
    ['a device', (path) => symlinkSync('/dev/zero', path), /no regular file/],
    ['a pipe', (path) => void spawnSync('mkfifo', [path]), /no regular file/],
    [
      'more than there can be',
      (path) => {
        writeFileSync(path, '');
        truncateSync(path, 200 * 1024 * 1024 + 1);
      },
      /larger than 200 MB/,
    ],
  ];
  it.runIf(process.platform !== 'win32').each(CASES)('%s is refused with a remedy', async (_, make, why) => {
    const path = at('x.loftledger');
    make(path);
    const gate = reader();
    await openForWindow(gate, path);
    const [{ name, refused } = { name: '', refused: undefined }] = gate.got;
    expect(name).toBe('x.loftledger');
    expect(refused?.refusals?.[0]?.message).toMatch(why);
    expect(refused?.refusals?.[0]?.remedy).toMatch(/\w/);
    expect(JSON.stringify(gate.got)).not.toContain(temp.dir);
    // For the terminal the path is said.
    expect(() => checkFiles([path])).toThrow(why);
    expect(() => checkFiles([path])).toThrow(path);
  });

  it('a socket is refused', async () => {
    const server = createServer();
    await new Promise<void>((done) => server.listen(at('s'), done));
    const gate = reader();
    await openForWindow(gate, at('s'));
    expect(gate.got[0]?.refused?.refusals?.[0]?.message).toMatch(/no regular file/);
    await new Promise((done) => server.close(done));
  });

  it.runIf(process.getuid?.() !== 0)('one that may not be read is refused', async () => {
    writeFileSync(at('a.json'), 'one');
    chmodSync(at('a.json'), 0);
    const gate = reader();
    await openForWindow(gate, at('a.json'));
    expect(gate.got[0]?.refused?.refusals?.[0]?.message).toMatch(/may not be read/);
  });

  it('with signs in its name that none can be shown with loses them', async () => {
    writeFileSync(at('a\\b\n.csv'), 'x');
    const gate = reader();
    await openForWindow(gate, at('a\\b\n.csv'));
    expect(gate.got).toEqual([{ name: 'a_b_.csv', text: 'x' }]);
  });
});
