import { afterEach, expect, it } from 'vitest';
import { loadCatalogue } from '../../../../db/catalogue/index.ts';
import { Cancelled, createAnswerer, type Answerer } from '../../../../src-main/service/answers/answerer.ts';
import { JobCells } from '../../../../src-main/worker/job-cells.ts';
import { bagFile, withClub } from '../../../support/bags.ts';

let answerer: Answerer | undefined;
afterEach(async () => {
  await answerer?.close();
});
const start = () => {
  answerer = createAnswerer(new URL('../../../../src-main/worker/solve-worker.ts', import.meta.url));
  return answerer;
};
const task = { file: bagFile(), catalogue: loadCatalogue(), today: '2026-11-26' };

it('a cancelled answer ends with Cancelled, and the next one is answered on the same threads', async () => {
  const pool = start();
  const job = new JobCells();
  const answer = pool.answer({ ...task, cells: job.buffer });
  job.stop();
  await expect(answer).rejects.toBeInstanceOf(Cancelled);
  expect((await pool.answer(task)).plan.plan.status).toBe('nothing-needed');
});

it('tells how far it is, up to its end', async () => {
  const job = new JobCells();
  await start().answer({ ...task, cells: job.buffer });
  expect(job.progress.of).toBe(100);
  expect(job.progress.done).toBeGreaterThan(40);
});

it('a refusal comes back from the thread with its places', async () => {
  const kept = withClub(bagFile(), 'putter', { goTo: true });
  const file = { ...kept, clubs: [...kept.clubs, { id: 'p2', kind: 'putter' as const, goTo: true }] };
  await expect(start().answer({ ...task, file })).rejects.toMatchObject({
    name: 'RefusedInput',
    refusals: [{ path: '$.clubs[12].goTo' }],
  });
});
