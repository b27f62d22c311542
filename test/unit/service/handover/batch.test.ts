import { describe, expect, it } from 'vitest';
import {
  printBatch,
  type BatchJob,
  type BatchProgress,
} from '../../../../src-main/service/handover/batch.ts';
import type { Printer } from '../../../../src-main/service/handover/printer.ts';

/** Prints by handing the page back; `hold` lets a test decide when a document is done. */
function printer(
  hold: (page: string) => Promise<void> = () => Promise.resolve(),
): Printer & { most: number } {
  let now = 0;
  const self = {
    most: 0,
    async print(page: string, signal?: AbortSignal) {
      signal?.throwIfAborted();
      self.most = Math.max(self.most, ++now);
      try {
        await hold(page);
        signal?.throwIfAborted();
        if (page === 'bad') throw new Error('this page cannot be printed');
        return new TextEncoder().encode(page);
      } finally {
        now--;
      }
    },
    close: () => Promise.resolve(),
  };
  return self;
}

const jobs = (...pages: string[]): BatchJob[] =>
  pages.map((page, i) => ({ fileName: `${String(i)}.pdf`, page: () => page }));
const tick = () => new Promise<void>((resolve) => setImmediate(resolve));

describe('batch', () => {
  it('saves every document and tells how far it is', async () => {
    const saved = new Map<string, string>();
    const seen: BatchProgress[] = [];
    const fake = printer(tick);
    const result = await printBatch(jobs(...Array.from({ length: 50 }, (_, i) => `page ${String(i)}`)), {
      printer: fake,
      save: (name, pdf) => void saved.set(name, new TextDecoder().decode(pdf)),
      onProgress: (progress) => seen.push(progress),
    });
    expect(result).toMatchObject({ failed: [], cancelled: false });
    expect(result.saved).toEqual(Array.from({ length: 50 }, (_, i) => `${String(i)}.pdf`));
    expect([...saved]).toHaveLength(50);
    expect(saved.get('7.pdf')).toBe('page 7');
    expect(seen.map(({ done, of }) => [done, of])).toEqual(Array.from({ length: 50 }, (_, i) => [i + 1, 50]));
    expect(fake.most).toBe(2);
  });

  it('goes on past one that fails, and names it', async () => {
    const saved: string[] = [];
    const result = await printBatch(jobs('a', 'bad', 'c'), {
      printer: printer(),
      save: (name) => void saved.push(name),
    });
    expect(result).toEqual({
      saved: ['0.pdf', '2.pdf'],
      failed: [{ fileName: '1.pdf', message: 'this page cannot be printed' }],
      cancelled: false,
    });
    expect(saved.sort()).toEqual(['0.pdf', '2.pdf']);
  });

  it('tells a full disk as a failure of that document', async () => {
    const result = await printBatch(jobs('a', 'b'), {
      printer: printer(),
      save: (name) => {
        if (name === '0.pdf') throw new Error('ENOSPC');
      },
    });
    expect(result.failed).toEqual([{ fileName: '0.pdf', message: 'ENOSPC' }]);
    expect(result.saved).toEqual(['1.pdf']);
  });

  it('stops when it is cancelled; what is saved stays', async () => {
    const stop = new AbortController();
    const made: string[] = [];
    const result = await printBatch(jobs('a', 'b', 'c', 'd', 'e', 'f'), {
      printer: printer(tick),
      save: (name) => void made.push(name),
      onProgress: ({ done }) => {
        if (done === 2) stop.abort();
      },
      signal: stop.signal,
      parallel: 1,
    });
    expect(result).toEqual({ saved: ['0.pdf', '1.pdf'], failed: [], cancelled: true });
    expect(made).toEqual(['0.pdf', '1.pdf']);
  });

  it('makes a page only when its turn comes', async () => {
    let pages = 0;
    const stop = new AbortController();
    stop.abort();
    const result = await printBatch([{ fileName: 'x.pdf', page: () => String(++pages) }], {
      printer: printer(),
      save: () => undefined,
      signal: stop.signal,
    });
    expect([pages, result.cancelled]).toEqual([0, true]);
    expect(await printBatch([], { printer: printer(), save: () => undefined })).toEqual({
      saved: [],
      failed: [],
      cancelled: false,
    });
  });
});
