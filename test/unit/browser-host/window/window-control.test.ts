import { PassThrough } from 'node:stream';
import { describe, expect, it } from 'vitest';
import { openChromiumPipe } from '../../../../src-main/host/chromium/chromium-pipe.ts';
import {
  bringToFront,
  currentPlace,
  hasPage,
} from '../../../../src-main/browser-host/window/window-control.ts';

type Command = { id: number; method: string; params: Record<string, unknown> };

/** A Chromium at the other end of the pipes, which answers each method with what the table says. */
function fakeChromium(answers: Record<string, unknown>) {
  const toChromium = new PassThrough();
  const fromChromium = new PassThrough();
  const commands: Command[] = [];
  toChromium.on('data', (bytes: Buffer) => {
    for (const text of bytes.toString().split('\0').filter(Boolean)) {
      const command = JSON.parse(text) as Command;
      commands.push(command);
      const result = answers[command.method];
      if (result !== undefined) fromChromium.write(`${JSON.stringify({ id: command.id, result })}\0`);
    }
  });
  return { pipe: openChromiumPipe(toChromium, fromChromium), commands, toChromium, fromChromium };
}

const PAGE = {
  'Target.getTargets': {
    targetInfos: [
      { type: 'other', targetId: 'o' },
      { type: 'page', targetId: 'p' },
    ],
  },
};
const NO_PAGE = { 'Target.getTargets': { targetInfos: [{ type: 'other', targetId: 'o' }] } };
const windowAt = (bounds: Record<string, unknown>) => ({
  ...PAGE,
  'Browser.getWindowForTarget': { windowId: 9, bounds },
  'Browser.setWindowBounds': {},
  'Target.activateTarget': {},
});
const NORMAL = { left: 1, top: 2, width: 800, height: 600, windowState: 'normal' };

describe('the pipe', () => {
  it('puts together answers that come in parts, in any order', async () => {
    const { pipe, fromChromium } = fakeChromium({});
    const [first, second] = [pipe.send('A'), pipe.send('B')];
    fromChromium.write('{"method":"event"}\0{"id":2,"result":{"b"');
    fromChromium.write(':1}}\0{"id":1,"result":{}}\0');
    expect(await second).toEqual({ b: 1 });
    expect(await first).toEqual({});
  });

  it('passes on what Chromium refuses', async () => {
    const { pipe, fromChromium } = fakeChromium({});
    const asked = pipe.send('A');
    fromChromium.write('{"id":1,"error":{"message":"no such method"}}\0');
    await expect(asked).rejects.toThrow('no such method');
  });

  it('leaves nobody waiting when Chromium ends', async () => {
    const { pipe, fromChromium } = fakeChromium({});
    const asked = pipe.send('A');
    fromChromium.destroy();
    await expect(asked).rejects.toThrow('ended');
    await expect(pipe.send('B')).rejects.toThrow('ended');
  });

  it('does not fall over a pipe that breaks while writing', async () => {
    const { pipe, toChromium } = fakeChromium({});
    const asked = pipe.send('A');
    toChromium.destroy(new Error('EPIPE'));
    await expect(asked).rejects.toThrow('ended');
  });
});

describe('bringToFront', () => {
  const methods = (commands: Command[]) => commands.map(({ method }) => method);

  it('raises the window', async () => {
    const { pipe, commands } = fakeChromium(windowAt(NORMAL));
    await bringToFront(pipe);
    expect(methods(commands)).toEqual([
      'Target.getTargets',
      'Browser.getWindowForTarget',
      'Target.activateTarget',
    ]);
    expect(commands.at(-1)?.params).toEqual({ targetId: 'p' });
  });

  it('un-minimises it first', async () => {
    const { pipe, commands } = fakeChromium(windowAt({ ...NORMAL, windowState: 'minimized' }));
    await bringToFront(pipe);
    expect(commands[2]?.params).toEqual({ windowId: 9, bounds: { windowState: 'normal' } });
  });

  it('does nothing without a page', async () => {
    const { pipe, commands } = fakeChromium(NO_PAGE);
    await bringToFront(pipe);
    expect(methods(commands)).toEqual(['Target.getTargets']);
  });
});

describe('currentPlace', () => {
  const before = { left: 5, top: 5, width: 700, height: 500, maximized: false };
  const placeAt = (bounds: Record<string, unknown>) =>
    currentPlace(fakeChromium(windowAt(bounds)).pipe, before);

  it('is where the window is', async () => {
    expect(await placeAt(NORMAL)).toEqual({ left: 1, top: 2, width: 800, height: 600, maximized: false });
  });

  it('of a maximised window is where it goes back to', async () => {
    expect(await placeAt({ ...NORMAL, windowState: 'maximized' })).toEqual({ ...before, maximized: true });
  });

  it('is none while minimised, or without a page', async () => {
    expect(await placeAt({ ...NORMAL, windowState: 'minimized' })).toBeNull();
    expect(await currentPlace(fakeChromium(NO_PAGE).pipe, before)).toBeNull();
  });
});

it('hasPage tells whether there is still a window', async () => {
  expect(await hasPage(fakeChromium(PAGE).pipe)).toBe(true);
  expect(await hasPage(fakeChromium(NO_PAGE).pipe)).toBe(false);
});
