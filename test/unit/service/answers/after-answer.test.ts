import { expect, test } from 'vitest';
import { createAfterAnswer } from '../../../../src-main/service/answers/after-answer.ts';

test('work waits until the answer is on its way, and is done once, in its order', async () => {
  const done: string[] = [];
  const after = createAfterAnswer();
  after.add(() => done.push('first'));
  after.add(() => done.push('second'));
  await Promise.resolve();
  expect(done).toEqual([]);
  await new Promise((turn) => setImmediate(turn));
  expect(done).toEqual(['first', 'second']);
  after.settle();
  expect(done).toEqual(['first', 'second']);
});

test('whoever cannot wait settles it, also work that brings more work', () => {
  const done: string[] = [];
  const after = createAfterAnswer();
  after.add(() => {
    done.push('first');
    after.add(() => done.push('brought'));
  });
  after.settle();
  expect(done).toEqual(['first', 'brought']);
});
