import { statSync, writeFileSync } from 'node:fs';
import { connect } from 'node:net';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import {
  askTheFirst,
  controlAddress,
  listenForOthers,
  type FirstSays,
} from '../../../../src-main/host/start/single-instance.ts';
import { secondStart } from '../../../../src-main/host/start/second-start.ts';
import type { Asked } from '../../../../src-main/host/start/asked.ts';
import { makeTempDir } from '../../browser-host/kit.ts';

let temp: ReturnType<typeof makeTempDir>;
beforeEach(() => (temp = makeTempDir()));
afterEach(() => temp.remove());

const first = (says: FirstSays) => listenForOthers(temp.dir, () => Promise.resolve(says));

describe('controlAddress', () => {
  it('is in the data folder, or a short name of it elsewhere', () => {
    expect(controlAddress('/data', 'linux')).toBe('/data/window.sock');
    const long = controlAddress(`/${'a'.repeat(120)}`, 'linux');
    expect(long).toMatch(/loftledger-[0-9a-f]{24}\.sock$/);
    expect(long).not.toBe(controlAddress(`/${'b'.repeat(120)}`, 'linux'));
    expect(controlAddress('C:\\data', 'win32')).toMatch(/^\\\\\.\\pipe\\loftledger-[0-9a-f]{24}$/);
  });
});

describe('a second start', () => {
  it('has the first brought to the front', async () => {
    let fronts = 0;
    const others = await listenForOthers(temp.dir, () => {
      fronts++;
      return Promise.resolve('brought-to-front');
    });
    expect(await askTheFirst(temp.dir)).toBe('brought-to-front');
    expect(fronts).toBe(1);
    await others.close();
  });

  it('learns that the first has no window', async () => {
    const others = await first('has-no-window');
    expect(await askTheFirst(temp.dir)).toBe('has-no-window');
    await others.close();
  });

  it('learns nothing when nobody listens, or the first cannot', async () => {
    expect(await askTheFirst(temp.dir, undefined, 0)).toBeNull();
    const others = await listenForOthers(temp.dir, () => Promise.reject(new Error('no window any more')));
    expect(await askTheFirst(temp.dir, undefined, 0)).toBeNull();
    await others.close();
  });

  it('waits for a first that is just starting', async () => {
    const asked = askTheFirst(temp.dir);
    const others = await first('brought-to-front');
    expect(await asked).toBe('brought-to-front');
    await others.close();
  });

  it('hands its files to the first, whose window shows them', async () => {
    const asked: Asked[] = [];
    const said: string[] = [];
    const others = await listenForOthers(temp.dir, (one) => {
      asked.push(one);
      return Promise.resolve('brought-to-front');
    });
    const files = ['/home/coach/ä "b".loftledger', '/x.csv'];
    expect(await secondStart({ mode: 'window', files }, temp.dir, (line) => said.push(line))).toBe(0);
    expect(asked).toEqual([{ files }]);
    expect(said.join()).toContain('shows what was opened');
    await others.close();
  });

  it('says what happened, with the exit code', async () => {
    const said: string[] = [];
    const say = (line: string) => void said.push(line);
    const others = await first('brought-to-front');
    expect(await secondStart({ mode: 'window', files: [] }, temp.dir, say)).toBe(0);
    expect(await secondStart({ mode: 'no-window', files: [] }, temp.dir, say)).toBe(1);
    expect(await secondStart({ mode: 'check', files: [] }, temp.dir, say)).toBe(1);
    await others.close();
    const silent = await first('has-no-window');
    expect(await secondStart({ mode: 'window', files: [] }, temp.dir, say)).toBe(0);
    await silent.close();
    expect(said[0]).toContain('brought to the front');
    expect(said[1]).toContain('--data');
    expect(said[3]).toContain('without a window');
  });
});

describe('the control socket', () => {
  it('is the user’s alone, and takes the place of one that was left behind', async () => {
    writeFileSync(join(temp.dir, 'window.sock'), 'left behind');
    const others = await first('brought-to-front');
    expect(statSync(join(temp.dir, 'window.sock')).mode & 0o777).toBe(0o600);
    expect(await askTheFirst(temp.dir, undefined, 0)).toBe('brought-to-front');
    await others.close();
  });

  it.each([
    ['another word', 'open the pod bay doors\n'],
    ['a path from nowhere', 'open ["mine.loftledger"]\n'],
    ['a path with a zero byte', 'open ["/mine\\u0000.loftledger"]\n'],
    ['a path with half a letter', 'open ["/\\ud800"]\n'],
    ['a path without end', `open ["/${'x'.repeat(5000)}"]\n`],
    ['no list', 'open {"length":1}\n'],
    ['a list of others', 'open [1]\n'],
    ['an empty list', 'open []\n'],
    ['too many', `open ${JSON.stringify(Array.from({ length: 101 }, () => '/x'))}\n`],
    ['two lines', 'front\nfront\n'],
    ['more than there can be', 'x'.repeat(1024 * 1024 + 1)],
  ])('hangs up on %s', async (_, sent) => {
    const asked: Asked[] = [];
    const others = await listenForOthers(temp.dir, (one) => {
      asked.push(one);
      return Promise.resolve('brought-to-front');
    });
    const answer = await new Promise<string>((resolve) => {
      let text = '';
      const socket = connect(join(temp.dir, 'window.sock'), () => socket.write(sent));
      socket.on('data', (part) => (text += String(part))).on('error', () => undefined);
      socket.on('close', () => resolve(text));
    });
    expect(answer).toBe('');
    expect(asked).toEqual([]);
    await others.close();
  });
});
