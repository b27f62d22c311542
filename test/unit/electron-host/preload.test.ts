import { beforeAll, describe, expect, it, vi } from 'vitest';
import type { Bridge } from '../../../src-main/contract/gate.ts';

type Listener = (event: unknown, ...rest: unknown[]) => void;
const electron = vi.hoisted(() => ({
  exposed: {} as Record<string, unknown>,
  invoked: [] as unknown[][],
  listeners: [] as { channel: string; listener: (event: unknown, ...rest: unknown[]) => void }[],
}));
vi.mock('electron', () => ({
  contextBridge: {
    exposeInMainWorld: (name: string, value: unknown) => (electron.exposed[name] = value),
  },
  ipcRenderer: {
    invoke: (...args: unknown[]) => {
      electron.invoked.push(args);
      return Promise.resolve({ ok: true, value: 1 });
    },
    on: (channel: string, listener: Listener) => electron.listeners.push({ channel, listener }),
    off: (_channel: string, listener: Listener) => {
      electron.listeners = electron.listeners.filter((entry) => entry.listener !== listener);
    },
  },
}));

let bridge: Bridge;
beforeAll(async () => {
  await import('../../../src-main/preload.ts');
  bridge = electron.exposed['loftledger'] as Bridge;
});

describe('the preload', () => {
  it('exposes one object with two functions', () => {
    expect(Object.keys(electron.exposed)).toEqual(['loftledger']);
    expect(Object.keys(bridge)).toEqual(['call', 'onEvent']);
  });

  it('calls on one channel', async () => {
    expect(await bridge.call({ call: 'a', args: 1 })).toEqual({ ok: true, value: 1 });
    expect(electron.invoked).toEqual([['loftledger:call', { call: 'a', args: 1 }]]);
  });

  it('hands on the event alone, without Electron’s own object, until it is told to stop', () => {
    const heard: unknown[][] = [];
    const stop = bridge.onEvent((...args) => heard.push(args));
    electron.listeners[0]?.listener({ sender: 'ipcRenderer' }, { event: 'changed', data: 1 });
    expect(heard).toEqual([[{ event: 'changed', data: 1 }]]);
    expect(electron.listeners[0]?.channel).toBe('loftledger:event');
    stop();
    expect(electron.listeners).toEqual([]);
  });
});
