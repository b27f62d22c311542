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
  await table.getByText('not reckoned yet').first().waitFor();
  expect((await names()).length).toBe(PLAYERS.length);

  await page.getByRole('button', { name: 'Plan 3 players anew' }).click();
  await page.getByText('Planned: 3 bags.').waitFor();
  await table
    .getByText(/mended by the plan, planned /)
    .first()
    .waitFor();
  expect(await table.getByText('not reckoned yet').count()).toBe(0);

  await page.getByRole('checkbox', { name: 'Only with open findings' }).check();
  for (const row of await table.locator('tbody tr').allInnerTexts()) expect(row).toMatch(/[1-9]\d* finding/);
  await page.getByRole('checkbox', { name: 'Only with open findings' }).uncheck();
  expect((await names()).length).toBe(PLAYERS.length);
  expect(complaints).toEqual([]);
});
