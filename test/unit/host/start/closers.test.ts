import { describe, expect, it } from 'vitest';
import { createClosers } from '../../../../src-main/host/start/closers.ts';

describe('closers', () => {
  it('close the last first, wait for each, and go on after one that fails', async () => {
    const done: string[] = [];
    const closers = createClosers((what, error) => done.push(`${what}: ${String(error)}`));
    closers.add('first', () => void done.push('first'));
    closers.add('second', () => Promise.reject(new Error('stuck')));
    closers.add('third', async () => {
      await Promise.resolve();
      done.push('third');
    });
    await closers.closeAll();
    expect(done).toEqual(['third', 'second: Error: stuck', 'first']);
  });

  it('close each once', async () => {
    let closed = 0;
    const closers = createClosers(() => undefined);
    closers.add('it', () => void closed++);
    await Promise.all([closers.closeAll(), closers.closeAll()]);
    expect(closed).toBe(1);
  });
});
