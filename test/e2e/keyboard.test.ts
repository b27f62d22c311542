import type { Page } from 'playwright';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { startProgram, type Program } from './support/program.ts';

let program: Program;
let page: Page;

beforeAll(async () => {
  program = await startProgram();
  ({ page } = await program.openWindow());
});

afterAll(() => (program as Program | undefined)?.close());

/** The name that a screen reader would begin with. */
const focused = () =>
  page.evaluate(() => {
    const element = document.activeElement as HTMLElement | null;
    if (!element || element === document.body) return '';
    const label = element.id === '' ? null : document.querySelector(`label[for="${element.id}"]`);
    return (element.getAttribute('aria-label') ?? label?.textContent ?? element.innerText).trim();
  });

async function tabTo(name: string | RegExp, most = 80): Promise<void> {
  for (let i = 0; i < most; i++) {
    await page.keyboard.press('Tab');
    const here = await focused();
    if (typeof name === 'string' ? here === name : name.test(here)) return;
  }
  throw new Error(`${String(name)} was not reached in ${String(most)} steps`);
}

describe('with the keyboard alone', () => {
  test('the first step skips to the page', async () => {
    await page.keyboard.press('Tab');
    expect(await focused()).toBe('Skip to the page');
    await page.keyboard.press('Enter');
    expect(await focused()).toBe('Players');
  });

  test('a player is laid out and a column filled', async () => {
    await tabTo('New player');
    await page.keyboard.press('Enter');
    await expect.poll(focused).toBe('Name');
    await page.keyboard.type('Kay Invented');
    await page.keyboard.press('Enter');
    expect(await focused()).toBe('Handicap');
    await page.keyboard.press('Control+Enter');
    await page.getByText('This is needed.').waitFor();
    expect(await focused()).toBe('Handicap');
    await page.keyboard.type('12');
    for (const field of ['Distances in', 'Speeds in', 'Money in']) {
      await page.keyboard.press('Enter');
      expect(await focused()).toBe(field);
    }
    await page.keyboard.press('Shift+Enter');
    expect(await focused()).toBe('Speeds in');
    await page.keyboard.press('Enter');
    await page.keyboard.press('Enter');
    await page.getByRole('heading', { level: 1, name: /Bag.*Kay Invented/ }).waitFor();

    await page.keyboard.press('Alt+2');
    expect(await focused()).toMatch(/^Bag/);
    await tabTo('Carry, yd: Driver');
    await page.keyboard.type('220');
    await page.keyboard.press('Enter');
    expect(await focused()).toBe('Carry, yd: 5-wood');
    await page.keyboard.type('196');
    await page.keyboard.press('Shift+Enter');
    expect(await focused()).toBe('Carry, yd: Driver');
    await expect
      .poll(() => page.getByRole('textbox', { name: 'Carry, yd: 5-wood' }).inputValue())
      .toBe('196');
  });

  test('the pages turn, and the slider moves', async () => {
    await page.keyboard.press('Alt+3');
    await page.getByRole('img', { name: /^Ladder of 11 clubs/ }).waitFor();
    expect(await focused()).toMatch(/^Ladder/);
    await tabTo('', 1).catch(() => undefined);
    await page.getByRole('radio', { name: 'Today' }).focus();
    await page.keyboard.press('ArrowRight');
    expect(await page.getByRole('radio', { name: 'After the plan' }).isChecked()).toBe(true);

    await page.keyboard.press('Alt+5');
    await tabTo('Try another budget');
    await page.keyboard.press('Home');
    await page.getByText(/^Trying .*0\. The bag’s budget is still none\.$/).waitFor();
    await tabTo(/^Keep .*0 as the budget$/);
    await page.keyboard.press('Enter');
    await page.getByText('Slide or type').waitFor();
    await page.keyboard.press('Control+z');
    await page.getByText('Taken back: budget (Kay Invented).').first().waitFor();
  });

  test('the settings open beside the page, are left by Escape, and give the focus back', async () => {
    await page.getByRole('button', { name: 'Settings' }).focus();
    await page.keyboard.press('Enter');
    await expect.poll(focused).toBe('Settings');
    await tabTo('Close the settings', 1);
    await page.keyboard.press('Tab');
    const inDrawer = () => page.evaluate(() => document.activeElement?.closest('#settings summary') !== null);
    expect(await inDrawer()).toBe(true);
    await page.keyboard.press('Escape');
    expect(await page.getByRole('complementary', { name: 'Settings' }).count()).toBe(0);
    expect(await focused()).toBe('Settings');
  });

  test('a price is asked about, and two ways are set side by side', async () => {
    await page.keyboard.press('Alt+4');
    await tabTo('Which club');
    await page.keyboard.type('22 hybrid game');
    await page.getByRole('option').first().waitFor();
    await page.keyboard.press('ArrowDown');
    await page.keyboard.press('Enter');
    await expect.poll(focused).toMatch(/^Price, /);
    await page.keyboard.type('30');
    await page.keyboard.press('Enter');
    await page.getByText('Walk away above').waitFor();
    await tabTo('Note this price');

    await page.keyboard.press('Alt+6');
    await page.getByRole('heading', { level: 1, name: /^Side by side/ }).waitFor();
    await page.getByRole('table', { name: 'Money' }).waitFor();
    await tabTo(/On the left page$/);
    await tabTo(/^Why this one/);
    await tabTo(/^Pick this one/);
  });

  test('nothing holds the focus: from the top of the longest page to its end', async () => {
    await page.keyboard.press('Alt+2');
    await page.getByRole('table').first().waitFor();
    await tabTo('Keys', 160);
  });

  test('a menu opens, is gone through and left again', async () => {
    await page.keyboard.press('Alt+1');
    await tabTo('More for Kay Invented');
    await page.keyboard.press('Enter');
    await expect.poll(focused).toBe('Diary');
    await page.keyboard.press('ArrowDown');
    expect(await focused()).toBe('Duplicate');
    await page.keyboard.press('Escape');
    await expect.poll(focused).toBe('More for Kay Invented');
  });
});
