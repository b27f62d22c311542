import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { startPackaged } from '../../../build/package/start-packaged.ts';
import { makeTempDir } from '../browser-host/kit.ts';

const temp = makeTempDir();
afterAll(() => temp.remove());

/** A program that does what the shell lines say. */
function program(name: string, lines: string): string {
  const file = join(temp.dir, name);
  writeFileSync(file, `#!/bin/sh\n${lines}\n`, { mode: 0o755 });
  return file;
}

describe.skipIf(process.platform === 'win32')('startPackaged', () => {
  it('asks for a check and gives its line', async () => {
    const good = program('good', `[ "$*" = --check ] && echo '{"host":"electron","readyMs":12}'`);
    expect(await startPackaged(good)).toMatchObject({ readyMs: 12 });
  });

  it('fails for a bad end, an empty answer, another host, and no end', async () => {
    await expect(startPackaged(program('bad', 'exit 3'))).rejects.toThrow('ended with 3');
    await expect(startPackaged(program('empty', 'exit 0'))).rejects.toThrow('did not say');
    const other = program('other', `echo '{"host":"browser","readyMs":12}'`);
    await expect(startPackaged(other)).rejects.toThrow('did not say');
    await expect(startPackaged(program('endless', 'exec sleep 60'), 300)).rejects.toThrow('SIGKILL');
    await expect(startPackaged(join(temp.dir, 'none'))).rejects.toThrow('ENOENT');
  });
});
