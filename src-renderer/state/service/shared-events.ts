import type { Bridge, HostEvent } from '../../../src-main/contract/gate.ts';

/**
 * One stream of events for the whole window, however many listen: a host lets few be open, and a browser no more than
 * six connections at all.
 */
export function sharedEvents(open: Bridge['onEvent']): Bridge['onEvent'] {
  const listeners = new Set<(event: HostEvent) => void>();
  let stop: (() => void) | null = null;
  return (listener) => {
    listeners.add(listener);
    stop ??= open((event) => {
      for (const one of [...listeners]) one(event);
    });
    return () => {
      listeners.delete(listener);
      if (listeners.size > 0) return;
      stop?.();
      stop = null;
    };
  };
}
