import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { ALL_FUSES, fuseProblems, setFuses } from '../../../build/package/fuses.ts';
import { makeStubElectron } from '../../../build/package/checks/stub-electron.ts';
import { FUSES } from '../../../src-main/electron-host/policy/security-policy.ts';
import { makeTempDir } from '../browser-host/kit.ts';

const temp = makeTempDir();
afterAll(() => temp.remove());

function stub(name: string): string {
  makeStubElectron(join(temp.dir, name), '45.5.0');
  return join(temp.dir, name, 'electron');
}

describe('the fuses', () => {
  it('are the policy’s and every other that the tool knows', () => {
    expect(ALL_FUSES).toMatchObject(FUSES);
    expect(Object.keys(ALL_FUSES)).toHaveLength(9);
  });

  it('stand wrong before and right after', async () => {
    const program = stub('flipped');
    expect(await fuseProblems(program)).toHaveLength(9);
    await setFuses(program);
    expect(await fuseProblems(program)).toEqual([]);
  });

  it('are named when one stands wrong', async () => {
    const program = stub('one-wrong');
    await setFuses(program);
    const bytes = readFileSync(program);
    // The first fuse, RunAsNode, comes after the sentinel, its version and its length.
    const first = bytes.indexOf('dL7pKGdnNz796PbbjQWNKmHXBZaB9tsX') + 32 + 2;
    bytes[first] = '1'.charCodeAt(0);
    writeFileSync(program, bytes);
    expect(await fuseProblems(program)).toEqual(['RunAsNode is ENABLE, not DISABLE']);
  });

  it('stop the packaging when Electron has one more than is named here', async () => {
    const program = stub('longer');
    const bytes = readFileSync(program);
    bytes[bytes.indexOf('dL7pKGdnNz796PbbjQWNKmHXBZaB9tsX') + 32 + 1] = 10;
    writeFileSync(program, bytes);
    await expect(setFuses(program)).rejects.toThrow(/10 fuses/);
  });

  it('stop the packaging when the binary has none', async () => {
    const file = join(temp.dir, 'nothing');
    writeFileSync(file, 'no sentinel in here');
    await expect(setFuses(file)).rejects.toThrow(/sentinel/);
  });
});
