import type { Page } from 'playwright';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { violations } from '../support/looks.ts';
import { startProgram, type Program } from '../support/program.ts';

let program: Program;
let page: Page;
let complaints: string[];

beforeAll(async () => {
  program = await startProgram();
  ({ page, complaints } = await program.openWindow());
  await page.getByRole('button', { name: 'Open the demo', exact: true }).click();
  await page.getByRole('img', { name: /^Ladder/ }).waitFor();
  await page.getByRole('link', { name: 'Bag' }).click();
  await page.getByRole('button', { name: 'More about 7-iron' }).click();
});

afterAll(() => (program as Program | undefined)?.close());

const carry = () => page.getByRole('textbox', { name: 'Carry, yd: 7-iron' });
const rows = () =>
  page
    .getByRole('table', { name: 'Dated carries of 7-iron' })
    .locator('tbody tr')
    .evaluateAll((all) =>
      all.map((row) => [...row.children].slice(0, 5).map((cell) => (cell as HTMLElement).innerText.trim())),
    );

async function note(day: string, yards: string, shots = ''): Promise<void> {
  await page.getByRole('button', { name: 'Note a carry of another day' }).click();
  await page.getByLabel('Day', { exact: true }).fill(day);
  await page.getByRole('textbox', { name: 'Carry, yd', exact: true }).fill(yards);
  await page.getByRole('textbox', { name: 'Shots behind it' }).fill(shots);
  await page.getByRole('button', { name: 'Keep the carry' }).click();
}

describe('a club’s carries', () => {
  test('are none dated at first', async () => {
    await page.getByText('None is dated yet.', { exact: false }).waitFor();
  });

  test('an older day goes into the history; the newest counts', async () => {
    await note('2026-01-10', '120');
    await expect.poll(async () => (await rows()).length).toBeGreaterThan(0);
    await note('2026-03-10', '123', '12');
    await note('2026-06-10', '126');
    await expect.poll(rows).toHaveLength(3);
    expect(await rows()).toEqual([
      ['10 Jun 2026', '126', '–', '–', 'typed in, ◆ counts'],
      ['10 Mar 2026', '123', '–', '12', 'typed in'],
      ['10 Jan 2026', '120', '–', '–', 'typed in'],
    ]);
    await expect.poll(() => carry().inputValue()).toBe('126');
  });

  test('three over a month or more tell a trend, with its range', async () => {
    // 6 yd in 151 days by least squares is 14.3 a year.
    await page.getByText(/Over these days 14\.3\syd a year, 90% range/).waitFor();
    expect(await violations(page)).toEqual([]);
  });

  test('a day to come, and what is no number, are refused beside the fields', async () => {
    await note('2099-01-01', '130');
    await page.getByText('Write a day that was.').waitFor();
    await page.getByLabel('Day', { exact: true }).fill('2026-07-01');
    await page.getByRole('textbox', { name: 'Carry, yd', exact: true }).fill('far');
    await page.getByRole('button', { name: 'Keep the carry' }).click();
    await page.getByText('“far” is not a number', { exact: false }).waitFor();
    await page.getByRole('textbox', { name: 'Carry, yd', exact: true }).fill('4000');
    await page.getByRole('button', { name: 'Keep the carry' }).click();
    await page.getByText(/lies between 1 and 450 yd/i).waitFor();
    expect(await rows()).toHaveLength(3);
  });

  test('one that is struck out comes back by undo', async () => {
    await page.getByRole('button', { name: 'Strike out the carry of 7-iron on 10 Jun 2026' }).click();
    await expect.poll(() => carry().inputValue()).toBe('123');
    await page.getByText('A trend takes three carries').waitFor();
    await page.getByRole('button', { name: 'Undo' }).first().click();
    await expect.poll(() => carry().inputValue()).toBe('126');
    expect(complaints).toEqual([]);
  });
});
