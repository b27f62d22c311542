import { beforeEach, describe, expect, it, vi } from 'vitest';
import { CALL_CHANNEL, EVENT_CHANNEL } from '../../../src-main/contract/gate.ts';
import { mountIpcGate } from '../../../src-main/electron-host/ipc-gate.ts';
import { WINDOW_URL } from '../../../src-main/electron-host/policy/urls.ts';
import { fakeGate, type FakeGate } from '../browser-host/kit.ts';

type Handler = (event: { senderFrame: unknown }, message: unknown) => Promise<unknown>;
const handlers = vi.hoisted(() => new Map<string, Handler>());
vi.mock('electron', () => ({
  ipcMain: {
    handle: (channel: string, handler: Handler) => handlers.set(channel, handler),
    removeHandler: (channel: string) => handlers.delete(channel),
  },
}));

const OWN = { senderFrame: { url: WINDOW_URL, parent: null } };

let gate: FakeGate;
let sent: unknown[];
let faults: unknown[];
let destroyed: boolean;
let takeDown: () => void;
beforeEach(() => {
  [gate, sent, faults, destroyed] = [fakeGate(), [], [], false];
  const window = { send: (...args: unknown[]) => void sent.push(args), isDestroyed: () => destroyed };
  takeDown = mountIpcGate(gate, window, (error) => faults.push(error));
});

const invoke = (event: { senderFrame: unknown }, message: unknown) =>
  handlers.get(CALL_CHANNEL)?.(event, message);

describe('the IPC gate', () => {
  it('has one channel', () => {
    expect([...handlers.keys()]).toEqual([CALL_CHANNEL]);
  });

  it('answers the own window', async () => {
    const request = { call: 'players.list', args: {} };
    expect(await invoke(OWN, request)).toEqual({ ok: true, value: request });
  });

  it.each([
    ['a frame that is gone', null],
    ['a frame inside', { url: WINDOW_URL, parent: {} }],
    ['another page', { url: 'https://example.org/', parent: null }],
    ['a file', { url: 'file:///tmp/index.html', parent: null }],
  ])('refuses %s without asking the gate', async (_name, senderFrame) => {
    expect(await invoke({ senderFrame }, { call: 'a', args: {} })).toMatchObject({
      ok: false,
      error: { kind: 'refused' },
    });
    expect(gate.calls).toEqual([]);
  });

  it.each([undefined, 'a', { args: 1 }, { call: 'a', more: 1 }])(
    'refuses %j, which is no call',
    async (message) => {
      expect(await invoke(OWN, message)).toMatchObject({ ok: false, error: { kind: 'refused' } });
      expect(gate.calls).toEqual([]);
    },
  );

  it('tells the window of a fault, but not which', async () => {
    gate.onCall = () => Promise.reject(new Error('at /home/coach/x.ts'));
    const answer = await invoke(OWN, { call: 'a', args: {} });
    expect(answer).toMatchObject({ ok: false, error: { kind: 'bug' } });
    expect(JSON.stringify(answer)).not.toContain('/home');
    expect(faults).toHaveLength(1);
  });

  it('sends events while the window is there, and nothing after it was taken down', () => {
    const event = { event: 'changed', data: 1 };
    gate.emit(event);
    destroyed = true;
    gate.emit(event);
    destroyed = false;
    takeDown();
    gate.emit(event);
    expect(sent).toEqual([[EVENT_CHANNEL, event]]);
    expect(handlers.size).toBe(0);
  });
});
