import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { PrintError, type Printer } from '../../../../src-main/service/handover/printer.ts';
import { createWarmPrinter } from '../../../../src-main/service/handover/warm-printer.ts';

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

/** Printers that say which of them printed; a page "crash" has one fail, as "slow" waits for `release`. */
function press() {
  const opened: { closed: boolean }[] = [];
  const slow = Promise.withResolvers<undefined>();
  const open = (): Printer => {
    const state = { closed: false };
    const no = opened.push(state);
    return {
      async print(page) {
        if (state.closed) throw new Error(`printer ${String(no)} is closed`);
        if (page === 'slow') await slow.promise;
        if (page === 'crash') throw new PrintError('it crashed');
        if (page === 'bad') throw new Error('bad page');
        return Uint8Array.of(no);
      },
      close: () => {
        state.closed = true;
        return Promise.resolve();
      },
    };
  };
  return { open, opened, release: () => slow.resolve(undefined) };
}

it('opens one for the first document, keeps it, and closes it when nothing was printed for a while', async () => {
  const { open, opened } = press();
  const printer = createWarmPrinter(open, 1000);
  expect(opened).toEqual([]);
  expect(await printer.print('a')).toEqual(Uint8Array.of(1));
  vi.advanceTimersByTime(900);
  expect(await printer.print('b')).toEqual(Uint8Array.of(1));
  vi.advanceTimersByTime(900);
  expect(opened).toEqual([{ closed: false }]);
  vi.advanceTimersByTime(100);
  expect(opened).toEqual([{ closed: true }]);
  expect(await printer.print('c')).toEqual(Uint8Array.of(2));
});

it('is not closed while it still prints', async () => {
  const { open, opened, release } = press();
  const printer = createWarmPrinter(open, 1000);
  const slow = printer.print('slow');
  await printer.print('quick');
  vi.advanceTimersByTime(5000);
  expect(opened).toEqual([{ closed: false }]);
  release();
  expect(await slow).toEqual(Uint8Array.of(1));
});

it('after a failure the next document gets another, and what still prints is let end', async () => {
  const { open, opened, release } = press();
  const printer = createWarmPrinter(open, 1000);
  const slow = printer.print('slow');
  await expect(printer.print('crash')).rejects.toThrow('it crashed');
  expect(await printer.print('next')).toEqual(Uint8Array.of(2));
  expect(opened).toEqual([{ closed: false }, { closed: false }]);
  release();
  expect(await slow).toEqual(Uint8Array.of(1));
  expect(opened).toEqual([{ closed: true }, { closed: false }]);
  await printer.close();
  expect(opened).toEqual([{ closed: true }, { closed: true }]);
});

it('what is no fault of the printer does not cost it its place', async () => {
  const { open } = press();
  const printer = createWarmPrinter(open, 1000);
  await expect(printer.print('bad')).rejects.toThrow('bad page');
  expect(await printer.print('next')).toEqual(Uint8Array.of(1));
});

it('tells when none can be opened, and tries again the next time', async () => {
  let can = false;
  const { open } = press();
  const printer = createWarmPrinter(() => {
    if (!can) throw new PrintError('none here');
    return open();
  });
  await expect(printer.print('a')).rejects.toThrow('none here');
  can = true;
  expect(await printer.print('a')).toEqual(Uint8Array.of(1));
  await printer.close();
  await printer.close();
});
