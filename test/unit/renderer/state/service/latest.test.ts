import { expect, test } from 'vitest';
import { createLatest } from '../../../../../src-renderer/state/service/latest.ts';

/** A question whose answers come when the test says. */
function slowly() {
  const waiting: { args: number; answer: (value: string) => void; fail: (error: Error) => void }[] = [];
  const done: unknown[] = [];
  const ask = createLatest<number, string>(
    (args) => new Promise((answer, fail) => waiting.push({ args, answer, fail })),
    (args, outcome) => done.push([args, 'value' in outcome ? outcome.value : 'failed']),
  );
  const settle = () => new Promise((then) => setTimeout(then, 0));
  return { ask, waiting, done, settle };
}

test('one question at a time; of those that wait only the newest is asked', async () => {
  const { ask, waiting, done, settle } = slowly();
  for (const budget of [1, 2, 3, 4]) ask(budget);
  expect(waiting.map(({ args }) => args)).toEqual([1]);
  waiting[0]?.answer('one');
  await settle();
  expect(waiting.map(({ args }) => args)).toEqual([1, 4]);
  waiting[1]?.answer('four');
  await settle();
  expect(done).toEqual([
    [1, 'one'],
    [4, 'four'],
  ]);
});

test('a failed question does not hold up the next', async () => {
  const { ask, waiting, done, settle } = slowly();
  ask(1);
  ask(2);
  waiting[0]?.fail(new Error('no'));
  await settle();
  waiting[1]?.answer('two');
  await settle();
  expect(done).toEqual([
    [1, 'failed'],
    [2, 'two'],
  ]);
});

test('a run that takes long is ended for a newer question, and its failure is not told', async () => {
  const ended: number[] = [];
  const done: unknown[] = [];
  const fail = new Map<number, () => void>();
  const ask = createLatest<number, number>(
    (args) =>
      new Promise((answer, reject) => {
        if (args === 2) answer(2);
        else fail.set(args, () => reject(new Error('stopped')));
      }),
    (args, outcome) => done.push([args, 'value' in outcome ? outcome.value : 'failed']),
    { overtaken: { afterMs: 10, end: (args) => (ended.push(args), fail.get(args)?.()) } },
  );
  ask(1);
  await new Promise((then) => setTimeout(then, 40));
  expect(ended).toEqual([]);
  ask(2);
  await new Promise((then) => setTimeout(then, 40));
  expect(ended).toEqual([1]);
  expect(done).toEqual([[2, 2]]);
});
