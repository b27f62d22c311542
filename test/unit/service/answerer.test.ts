import { afterEach, expect, it } from 'vitest';
import { loadCatalogue } from '../../../db/catalogue/index.ts';
import { createAnswerer, type Answerer } from '../../../src-main/service/answerer.ts';
import { bagFile, withClub } from '../../support/bags.ts';

let answerer: Answerer | undefined;
afterEach(async () => {
  await answerer?.close();
});
const start = () => {
  answerer = createAnswerer(new URL('../../../src-main/worker/solve-worker.ts', import.meta.url));
  return answerer;
};
const task = { file: bagFile(), catalogue: loadCatalogue(), today: '2026-11-26' };

it('a cancelled answer ends with AbortError, and the next one is answered', async () => {
  const pool = start();
  const stop = new AbortController();
  const answer = pool.answer(task, stop.signal);
  stop.abort();
  await expect(answer).rejects.toMatchObject({ name: 'AbortError' });
  expect((await pool.answer(task)).plan.plan.status).toBe('nothing-needed');
});

it('a refusal comes back from the thread with its places', async () => {
  const kept = withClub(bagFile(), 'putter', { goTo: true });
  const file = { ...kept, clubs: [...kept.clubs, { id: 'p2', kind: 'putter' as const, goTo: true }] };
  await expect(start().answer({ ...task, file })).rejects.toMatchObject({
    name: 'RefusedInput',
    refusals: [{ path: '$.clubs[12].goTo' }],
  });
});
