import { readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import type { Page } from 'playwright';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { startProgram, type Program } from './support/program.ts';

const demo = readFileSync(
  join(resolve(import.meta.dirname, '..', '..'), 'db', 'demo', 'invented-bag.json'),
  'utf8',
);
const PLAYERS = ['Ada Invented', 'Ben Invented', 'Cy Invented'];

let program: Program;
let page: Page;
let complaints: string[];

beforeAll(async () => {
  program = await startProgram();
  ({ page, complaints } = await program.openWindow());
});

afterAll(() => (program as Program | undefined)?.close());

test('what is changed elsewhere while the window only begins to listen is not missed', async () => {
  let letThrough: () => void = () => undefined;
  const held = new Promise<void>((done) => (letThrough = done));
  await page.route('**/events', async (route) => {
    await held;
    await route.continue();
  });
  await page.reload();
  await page.getByRole('heading', { level: 1, name: 'Players' }).waitFor();
  // Time for the first reads to be answered, if they do not wait.
  await page.waitForTimeout(300);
  await page.evaluate(() =>
    fetch('/call', {
      method: 'POST',
      headers: { 'Content-Type': 'application/json' },
      body: JSON.stringify({ call: 'players.openDemo', args: { demo: 'invented-bag' } }),
    }),
  );
  letThrough();
  await page.getByRole('rowheader', { name: /Rowan Ashdown/ }).waitFor();
  await page.getByRole('banner').getByRole('button', { name: 'Undo' }).click();
  await page
    .getByText(/^Taken back: demo/)
    .first()
    .waitFor();
  await page.getByRole('heading', { name: /Which gaps in the bag matter/ }).waitFor();
  await page.unrouteAll();
});

test('the roster is planned anew as a whole, and those with open findings are kept in sight', async () => {
  await page.evaluate(
    async (texts) => {
      for (const text of texts) {
        const answer = await fetch('/call', {
          method: 'POST',
          headers: { 'Content-Type': 'application/json' },
          body: JSON.stringify({ call: 'players.importBag', args: { text } }),
        });
        if (!answer.ok) throw new Error(await answer.text());
      }
    },
    PLAYERS.map((name) => demo.replace(/Invented player: Rowan Ashdown|Rowan Ashdown/, name)),
  );
  const table = page.getByRole('table', { name: 'Players in use' });
  const names = () => table.getByRole('rowheader').allInnerTexts();
  await expect.poll(async () => (await names()).length, { timeout: 10_000 }).toBe(PLAYERS.length);
  await table.getByText('not reckoned yet').first().waitFor();

  await page.getByRole('button', { name: 'Plan 3 players anew' }).click();
  await page.getByText('Planned: 3 bags.').waitFor();
  await table
    .getByText(/mended by the plan, planned /)
    .first()
    .waitFor();
  await expect.poll(() => table.getByText('not reckoned yet').count(), { timeout: 10_000 }).toBe(0);

  await page.getByRole('checkbox', { name: 'Only with open findings' }).check();
  for (const row of await table.locator('tbody tr').allInnerTexts()) expect(row).toMatch(/[1-9]\d* finding/);
  await page.getByRole('checkbox', { name: 'Only with open findings' }).uncheck();
  expect((await names()).length).toBe(PLAYERS.length);
  expect(complaints).toEqual([]);
});
