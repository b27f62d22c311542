import type { Page } from 'playwright';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { crampedWords, overflow, tooSmall, violations } from './support/looks.ts';
import { startProgram, type Program } from './support/program.ts';

let program: Program;
let page: Page;
let complaints: string[];

beforeAll(async () => {
  program = await startProgram();
  ({ page, complaints } = await program.openWindow());
  await openDemo('Open a demo from range shots', /range/i);
  await openDemo('Open the demo', /Rowan Ashdown/);
});

afterAll(() => (program as Program | undefined)?.close());

/** By "Find or do", which has both. */
async function openDemo(option: string, player: RegExp): Promise<void> {
  await page.keyboard.press('Control+k');
  await page.getByRole('option', { name: option, exact: true }).click();
  await page.getByRole('heading', { level: 1, name: player }).waitFor();
  await page.getByRole('img', { name: /^Ladder/ }).waitFor();
}

const focused = () =>
  page.evaluate(() => {
    const element = document.activeElement;
    return document.querySelector(`label[for="${element?.id ?? ''}"]`)?.textContent.trim() ?? '';
  });
const chart = () => page.getByRole('img', { name: /^Two ladders on one scale/ });

describe('another bag beside this one', () => {
  test('from the roster, by keys alone: the field is there to be typed into', async () => {
    await page.keyboard.press('Alt+1');
    const row = page.getByRole('row', { name: /Rowan Ashdown/ });
    await row.getByRole('button', { name: /^More for/ }).focus();
    await page.keyboard.press('Enter');
    const item = (name: string) => page.getByRole('menuitem', { name });
    const isAt = (name: string) => item(name).evaluate((one) => one === document.activeElement);
    await expect
      .poll(
        async () => {
          const isThere = await isAt('Compare with …');
          if (!isThere) await page.keyboard.press('ArrowDown');
          return isThere;
        },
        { timeout: 10_000 },
      )
      .toBe(true);
    await page.keyboard.press('Enter');
    await page.getByRole('heading', { level: 1, name: /^Side by side.*Rowan Ashdown/ }).waitFor();
    expect(await page.getByRole('radio', { name: 'Another bag' }).isChecked()).toBe(true);
    await expect.poll(focused).toMatch(/The bag on the right page/);
    await page.keyboard.type('range');
    await page.getByRole('option').first().waitFor();
    await page.keyboard.press('ArrowDown');
    await page.keyboard.press('Enter');
    await chart().waitFor();
    await expect.poll(focused).toMatch(/The bag on the right page/);
  });

  test('the field says which bag is picked, and what is typed takes its place until it is left', async () => {
    const field = page.getByRole('combobox', { name: /The bag on the right page/ });
    const picked = /range/i;
    expect(await field.inputValue()).toMatch(picked);
    await page.keyboard.type('zan');
    expect(await field.inputValue()).toBe('zan');
    await page.keyboard.press('Escape');
    await expect.poll(() => field.inputValue()).toMatch(picked);
    await field.click();
    await page.getByRole('option').first().waitFor();
    await page.keyboard.type('q');
    await page.keyboard.press('Backspace');
    expect(await field.inputValue()).toBe('');
    await page.keyboard.press('Tab');
    await expect.poll(() => field.inputValue()).toMatch(picked);
  });

  test('shows both ladders with their table, clubs by slot, gaps and findings of each', async () => {
    await page.getByRole('heading', { level: 2, name: 'Wide gaps and crowded pairs' }).waitFor();
    await page.getByText('5-wood to 6-iron').waitFor();
    await page.getByText(/^Distances are in the units of .*Rowan Ashdown/).waitFor();
    const rows = (await chart().getAttribute('aria-label')) ?? '';
    const clubs = Number(/(\d+) clubs in all/.exec(rows)?.[1]);
    const table = page.getByRole('table', { name: 'Both ladders as a table' });
    expect(await table.getByRole('row').count()).toBe(clubs + 1);
    const slots = page.getByRole('table', { name: /^Paired by kind/ });
    const driver = slots.getByRole('row', { name: /^Driver/ });
    expect((await driver.innerText()).replaceAll(/\s+/g, ' ')).toMatch(/201 \(195–207\) stated.*[+−]?\d+$/);
    await page.getByRole('heading', { level: 2, name: 'Findings' }).waitFor();
    expect(await page.getByText('act on first').count()).toBeGreaterThan(0);
    // It only shows: the edit of before is still the last.
    expect(await page.getByRole('button', { name: /^Keep|^Pick this/ }).count()).toBe(0);
  });

  test.each(['light', 'dark'] as const)(
    '%s: nothing that axe finds, wide and at twice the size',
    async (colorScheme) => {
      await page.emulateMedia({ colorScheme });
      for (const width of [1280, 640]) {
        await page.setViewportSize({ width, height: 800 });
        expect(await violations(page)).toEqual([]);
        expect(await tooSmall(page)).toEqual([]);
        expect(await crampedWords(page)).toEqual([]);
        expect(`${String(width)}: ${String(await overflow(page))}`).toBe(`${String(width)}: 0`);
      }
      await page.setViewportSize({ width: 1280, height: 800 });
    },
  );

  test('an edit of the open bag is followed', async () => {
    await page.keyboard.press('Alt+2');
    const carry = page.getByRole('textbox', { name: 'Carry, yd: driver' });
    await carry.fill('215');
    await carry.press('Tab');
    await page.keyboard.press('Alt+6');
    await page
      .getByRole('table', { name: /^Paired by kind/ })
      .getByRole('row', { name: /^Driver.*215/ })
      .waitFor();
  });

  test('turned back, the ways to spend are there; another player begins without a bag beside', async () => {
    await page.getByRole('radio', { name: 'Two ways to spend' }).check();
    await page.getByRole('table', { name: 'Money' }).waitFor();
    await page.getByRole('radio', { name: 'Another bag' }).check();
    await chart().waitFor();
    await page.keyboard.press('Control+k');
    await page.keyboard.type('Open a demo from range');
    await page.getByRole('option', { name: 'Open a demo from range shots' }).waitFor();
    await page.keyboard.press('Enter');
    await page.getByRole('heading', { level: 1, name: /^Ladder/ }).waitFor();
    await page.keyboard.press('Alt+6');
    await page.getByRole('radio', { name: 'Two ways to spend' }).waitFor();
    expect(await page.getByRole('radio', { name: 'Another bag' }).isChecked()).toBe(false);
    await page.getByRole('radio', { name: 'Another bag' }).check();
    await page.getByText('Choose a bag above.', { exact: false }).waitFor();
  });

  test('reached by "Find or do" too', async () => {
    await page.getByRole('radio', { name: 'Two ways to spend' }).check();
    await page.keyboard.press('Alt+3');
    await page.keyboard.press('Control+k');
    await page.keyboard.type('compare');
    await page.keyboard.press('Enter');
    await page.getByRole('radio', { name: 'Another bag', checked: true }).waitFor();
    await expect.poll(focused).toMatch(/The bag on the right page/);
  });

  test('a name that nobody has is said in the list', async () => {
    const field = page.getByRole('combobox', { name: /The bag on the right page/ });
    await field.fill('zanzibar');
    await page.getByText('No other bag is found.').waitFor();
    await page.keyboard.press('Escape');
  });
});

test('the browser has nothing to complain of', () => {
  expect(complaints).toEqual([]);
});
