import { expect, test } from 'vitest';
import type { HostEvent } from '../../../../../src-main/contract/gate.ts';
import { sharedEvents } from '../../../../../src-renderer/state/service/shared-events.ts';

test('however many listen, one stream is open, and none when nobody does', () => {
  const streams = new Set<(event: HostEvent) => void>();
  const onEvent = sharedEvents((listener) => {
    streams.add(listener);
    return () => void streams.delete(listener);
  });
  const send = (event: string) => streams.forEach((listener) => listener({ event, data: null }));
  const heard: string[] = [];
  expect(streams.size).toBe(0);
  const first = onEvent(({ event }) => heard.push(`first ${event}`));
  const second = onEvent(({ event }) => {
    heard.push(`second ${event}`);
    second();
  });
  expect(streams.size).toBe(1);
  send('a');
  send('b');
  expect(heard).toEqual(['first a', 'second a', 'first b']);
  first();
  expect(streams.size).toBe(0);
  onEvent(({ event }) => heard.push(`third ${event}`));
  expect(streams.size).toBe(1);
  send('c');
  expect(heard.at(-1)).toBe('third c');
});
