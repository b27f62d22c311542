import { expect, it } from 'vitest';
import type { ProgressEvent } from '../../../../src-main/contract/calls/index.ts';
import { createJobs } from '../../../../src-main/service/answers/jobs.ts';
import { JobCells } from '../../../../src-main/worker/job-cells.ts';

const later = (ms: number) => new Promise((done) => setTimeout(done, ms));

it('tells how far a job is, the last step too, and each step once', async () => {
  const told: ProgressEvent['data'][] = [];
  const jobs = createJobs(({ data }) => told.push(data));
  const answer = await jobs.run('a', async ({ cells, report }) => {
    // As a thread would, that has only the memory.
    new JobCells(cells).report(1, 3);
    await later(400);
    report(3, 3);
    return 'done';
  });
  expect(answer).toBe('done');
  expect(told).toEqual([
    { job: 'a', done: 1, of: 3 },
    { job: 'a', done: 3, of: 3 },
  ]);
});

it('a cancelled job sees it and is told of no more', async () => {
  const told: unknown[] = [];
  const jobs = createJobs((event) => told.push(event));
  const ended = jobs.run('a', async ({ isStopped, report }) => {
    while (!isStopped()) await later(1);
    report(1, 2);
    return 'stopped';
  });
  expect(jobs.cancel('a')).toBe(true);
  expect(await ended).toBe('stopped');
  expect(told).toEqual([]);
  expect(jobs.cancel('a')).toBe(false);
});

it('a second job of a name cancels the first and is not ended by its end', async () => {
  const jobs = createJobs();
  const first = jobs.run('a', async ({ isStopped }) => {
    while (!isStopped()) await later(1);
  });
  let isStopped = () => false;
  let end: () => void = () => undefined;
  const second = jobs.run('a', (job) => {
    isStopped = job.isStopped;
    return new Promise<void>((done) => (end = done));
  });
  await first;
  expect(isStopped()).toBe(false);
  expect(jobs.cancel('a')).toBe(true);
  expect(isStopped()).toBe(true);
  end();
  await second;
});
