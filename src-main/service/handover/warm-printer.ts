import { PrintError, type OpenPrinter, type Printer } from './printer.ts';

/** To open a printer takes a second, so it is kept for a while after its last document. */
const IDLE_MS = 60_000;

type Open = { printer: Printer; printing: number };

/**
 * A printer that is opened for the first document, kept warm, and closed when nothing was printed for a while. One that
 * failed may have crashed: what it still prints is let end, and the next document gets another.
 */
export function createWarmPrinter(open: OpenPrinter, idleMs = IDLE_MS): Printer {
  let current: Open | null = null;
  let timer: NodeJS.Timeout | undefined;
  const all = new Map<Open, Promise<void> | null>();

  const close = (one: Open): Promise<void> => {
    if (current === one) current = null;
    const closing = all.get(one) ?? one.printer.close().catch(() => undefined);
    all.set(one, closing);
    return closing.finally(() => all.delete(one));
  };
  const take = (): Open => {
    clearTimeout(timer);
    if (current === null) {
      current = { printer: open(), printing: 0 };
      all.set(current, null);
    }
    current.printing += 1;
    return current;
  };
  const giveBack = (one: Open): void => {
    one.printing -= 1;
    if (one.printing > 0) return;
    if (current !== one) void close(one);
    else {
      timer = setTimeout(() => void close(one), idleMs);
      timer.unref();
    }
  };

  return {
    async print(page, signal) {
      const one = take();
      try {
        return await one.printer.print(page, signal);
      } catch (error) {
        if (error instanceof PrintError && current === one) current = null;
        throw error;
      } finally {
        giveBack(one);
      }
    },
    async close() {
      clearTimeout(timer);
      await Promise.all([...all.keys()].map(close));
    },
  };
}
