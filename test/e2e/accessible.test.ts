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
});

afterAll(() => (program as Program | undefined)?.close());

const SCREENS = ['Players', 'Bag', 'Ladder', 'Prices', 'Spend', 'Side by side', 'Hand-over'] as const;

async function turnTo(screen: (typeof SCREENS)[number]): Promise<void> {
  await page.getByRole('navigation').getByRole('link', { name: screen }).click();
  await page.getByRole('heading', { level: 1, name: new RegExp(`^${screen}`) }).waitFor();
  await expect.poll(() => page.getByText('Reading …').count()).toBe(0);
  if (screen === 'Hand-over') await page.frameLocator('iframe').locator('h1').waitFor();
}

describe('every screen, both themes', () => {
  test('the empty roster', async () => {
    expect(await violations(page)).toEqual([]);
    await page.getByRole('button', { name: 'Open the demo', exact: true }).click();
    await page.getByRole('img', { name: /^Ladder/ }).waitFor();
  });

  for (const theme of ['Light', 'Lamp-lit'] as const) {
    test(`the settings, ${theme.toLowerCase()}: nothing that axe finds`, async () => {
      await page.getByRole('button', { name: 'Settings' }).click();
      await page.getByRole('radio', { name: theme, exact: true }).check();
      await page.evaluate(() => {
        for (const folded of document.querySelectorAll('#settings details')) folded.setAttribute('open', '');
      });
      await page.getByRole('group', { name: 'Data folder' }).waitFor();
      expect(await violations(page)).toEqual([]);
      expect(await tooSmall(page)).toEqual([]);
      await page.keyboard.press('Escape');
    });

    for (const screen of SCREENS) {
      test(`${screen}, ${theme.toLowerCase()}: nothing that axe finds`, async () => {
        await turnTo(screen);
        expect(await violations(page)).toEqual([]);
        expect(await tooSmall(page)).toEqual([]);
      });
    }
  }

  test('the document itself: nothing that axe finds, wide or narrow', async () => {
    await turnTo('Hand-over');
    const html = await page.evaluate(async () => {
      const address = document.querySelector('iframe')?.src ?? '';
      return (await fetch(address)).text();
    });
    const alone = await page.context().newPage();
    await alone.setContent(html);
    expect(await alone.locator('h1').innerText()).toMatch(/^Bag plan for/);
    for (const width of [1280, 480]) {
      await alone.setViewportSize({ width, height: 800 });
      expect(await violations(alone)).toEqual([]);
    }
    await alone.close();
  });

  test('what opens over a page', async () => {
    await turnTo('Bag');
    await page.getByRole('button', { name: 'More about driver' }).click();
    await page.getByRole('textbox', { name: 'Carry, yd: driver' }).fill('nothing');
    await page.keyboard.press('Tab');
    await page.getByText('“nothing” is not a number', { exact: false }).waitFor();
    await page.getByRole('button', { name: 'Strike out LW', exact: true }).click();
    await page.getByText('Struck out: LW.').first().waitFor();
    await page.getByRole('combobox', { name: 'Add a price for' }).fill('hybrid');
    await page.getByRole('listbox').getByRole('option').first().waitFor();
    expect(await violations(page)).toEqual([]);
    await page.keyboard.press('Escape');

    await turnTo('Prices');
    await page.getByRole('button', { name: 'Notes on 25° hybrid (game improvement)' }).click();
    await page.getByRole('table', { name: 'Price notes on 25° hybrid (game improvement)' }).waitFor();
    await page.getByRole('button', { name: 'Seen one: 25° hybrid (game improvement)' }).click();
    await page.keyboard.type('30');
    await page.keyboard.press('Enter');
    await page.getByText('Walk away above').waitFor();
    expect(await violations(page)).toEqual([]);
    expect(await tooSmall(page)).toEqual([]);
  });

  test('the browser has nothing to complain of: no breach of the content security policy', () => {
    expect(complaints).toEqual([]);
  });
});

describe('the room that there is', () => {
  for (const [width, height] of [
    [480, 800],
    [640, 400],
    [1024, 700],
  ] as const) {
    test(`${String(width)}×${String(height)}: no screen is wider than the window, and nothing is too small`, async () => {
      await page.setViewportSize({ width, height });
      for (const screen of SCREENS) {
        await turnTo(screen);
        expect(`${screen}: ${String(await overflow(page))}`).toBe(`${screen}: 0`);
        expect(await tooSmall(page)).toEqual([]);
        expect(await crampedWords(page)).toEqual([]);
      }
    });
  }

  test('the theme is kept for the next window', async () => {
    const next = await program.openWindow();
    await next.page.getByRole('button', { name: 'Settings' }).click();
    expect(await next.page.getByRole('radio', { name: 'Lamp-lit' }).isChecked()).toBe(true);
    expect(await next.page.evaluate(() => getComputedStyle(document.documentElement).colorScheme)).toBe(
      'dark',
    );
  });
});
