import { describe, expect, it } from 'vitest';
import type { Gate } from '../../../src-main/contract/gate.ts';
import { deferredGate } from '../../../src-main/browser-host/deferred-gate.ts';
import { fakeGate } from './kit.ts';

describe('deferredGate', () => {
  it('has what is asked wait for the service', async () => {
    const opening = Promise.withResolvers<Gate>();
    const gate = deferredGate(opening.promise);
    const asked = gate.call({ call: 'a', args: 1 });
    const heard: unknown[] = [];
    const stop = gate.subscribe((event) => heard.push(event));
    const real = fakeGate();
    opening.resolve(real);
    expect(await asked).toEqual({ ok: true, value: { call: 'a', args: 1 } });
    real.emit({ event: 'changed', data: 1 });
    stop();
    real.emit({ event: 'changed', data: 2 });
    expect(heard).toEqual([{ event: 'changed', data: 1 }]);
    await gate.close();
    expect(real.closed).toBe(true);
  });

  it('does not listen for one who has left before', async () => {
    const opening = Promise.withResolvers<Gate>();
    const gate = deferredGate(opening.promise);
    gate.subscribe(() => undefined)();
    const real = fakeGate();
    opening.resolve(real);
    await opening.promise;
    expect(real.listeners()).toBe(0);
  });

  it('rejects every call when the service cannot open', async () => {
    const gate = deferredGate(Promise.reject(new Error('locked')));
    gate.subscribe(() => undefined)();
    await expect(gate.call({ call: 'a', args: 1 })).rejects.toThrow('locked');
  });
});
