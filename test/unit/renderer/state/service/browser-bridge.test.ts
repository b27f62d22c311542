import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import type { HostEvent } from '../../../../../src-main/contract/gate.ts';
import { browserBridge } from '../../../../../src-renderer/state/service/browser-bridge.ts';

class Stream extends EventTarget {
  static last: Stream;
  isClosed = false;
  constructor() {
    super();
    Stream.last = this;
  }
  close(): void {
    this.isClosed = true;
  }
}

const sent: string[] = [];
const request = { call: 'history.state', args: {} };
const heard: HostEvent[] = [];
const hear = (event: HostEvent) => void heard.push(event);
const happens = (type: string) => Stream.last.dispatchEvent(new Event(type));
const tells = (event: HostEvent) =>
  Stream.last.dispatchEvent(new MessageEvent('message', { data: JSON.stringify(event) }));
const REREAD = { event: 'changed', data: { call: 'reconnected' } };
/** All that is due without the clock. */
const settle = () => vi.advanceTimersByTimeAsync(0);

beforeEach(() => {
  vi.useFakeTimers();
  sent.length = heard.length = 0;
  vi.stubGlobal('EventSource', Stream);
  vi.stubGlobal('fetch', (url: string) => {
    sent.push(url);
    return Promise.resolve(Response.json({ ok: true, value: 7 }));
  });
});

afterEach(() => {
  vi.useRealTimers();
  vi.unstubAllGlobals();
});

test('while nobody listens, a call is sent at once', async () => {
  expect(await browserBridge().call(request)).toEqual({ ok: true, value: 7 });
  expect(sent).toEqual(['/call']);
});

test('a call waits until changes are heard of, so that none falls in between', async () => {
  const bridge = browserBridge();
  bridge.onEvent(hear);
  const asked = bridge.call(request);
  await settle();
  expect(sent).toEqual([]);
  happens('open');
  expect(await asked).toEqual({ ok: true, value: 7 });
  tells({ event: 'changed', data: { call: 'players.openDemo' } });
  expect(heard).toEqual([{ event: 'changed', data: { call: 'players.openDemo' } }]);
});

test.each([
  ['that fails', () => happens('error')],
  ['that takes long', () => vi.advanceTimersByTimeAsync(1000)],
])('a stream %s holds no call back, and has all read anew once it is open', async (_, goesAmiss) => {
  const bridge = browserBridge();
  bridge.onEvent(hear);
  const asked = bridge.call(request);
  await goesAmiss();
  expect(await asked).toEqual({ ok: true, value: 7 });
  expect(heard).toEqual([]);
  happens('open');
  expect(heard).toEqual([REREAD]);
});

test('after a lost connection all is read anew, once', () => {
  const stop = browserBridge().onEvent(hear);
  happens('open');
  happens('error');
  happens('error');
  happens('open');
  happens('open');
  expect(heard).toEqual([REREAD]);
  stop();
  expect(Stream.last.isClosed).toBe(true);
});
