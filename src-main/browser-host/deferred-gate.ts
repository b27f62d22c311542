import type { Gate } from '../contract/gate.ts';

/**
 * A gate before its service is there: the window opens while the database does, and what it asks meanwhile waits. When
 * the service cannot open, every call rejects with its error.
 */
export function deferredGate(opening: Promise<Gate>): Gate {
  // Whoever opens it hears of the error; nobody else has to.
  opening.catch(() => undefined);
  return {
    call: async (request) => (await opening).call(request),
    upload: async (name, stream) => (await opening).upload(name, stream),
    open: async (file) => (await opening).open(file),
    page: async (id) => (await opening).page(id),
    close: async () => (await opening).close(),
    subscribe(listener) {
      let stop: (() => void) | null = null;
      let stopped = false;
      opening.then(
        (gate) => {
          if (!stopped) stop = gate.subscribe(listener);
        },
        () => undefined,
      );
      return () => {
        stopped = true;
        stop?.();
      };
    },
  };
}
