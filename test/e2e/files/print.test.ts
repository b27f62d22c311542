import type { Page } from 'playwright';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { startProgram, type Program } from '../support/program.ts';

let program: Program;
let page: Page;

beforeAll(async () => {
  program = await startProgram();
  ({ page } = await program.openWindow());
  await page.getByRole('button', { name: 'Open the demo', exact: true }).click();
  await page.getByRole('img', { name: /^Ladder/ }).waitFor();
  await page.getByRole('button', { name: 'Settings' }).click();
  await page.getByRole('radio', { name: 'Lamp-lit', exact: true }).check();
  await page.keyboard.press('Escape');
});

afterAll(() => (program as Program | undefined)?.close());

const SCREENS = ['Players', 'Bag', 'Ladder', 'Prices', 'Spend', 'Side by side'] as const;

/** What would be printed that should not be, or not so that paper shows it. */
const faults = () =>
  page.evaluate(() => {
    const shown = (element: Element) => element.getClientRects().length > 0;
    const found: string[] = [];
    for (const element of document.querySelectorAll('nav, .desk > footer, button, [role=status], .skip')) {
      if (shown(element)) found.push(`printed: ${element.outerHTML.slice(0, 80)}`);
    }
    const light = (color: string) => {
      const [r = 0, g = 0, b = 0] = (/\(([^)]*)\)/.exec(color)?.[1] ?? '').split(/[ ,/]+/).map(Number);
      return (r + g + b) / 3;
    };
    for (const element of document.querySelectorAll('main *')) {
      const hasText = [...element.childNodes].some((node) => node.nodeType === 3 && node.textContent?.trim());
      const { color, backgroundColor, fontSize } = getComputedStyle(element);
      if (!shown(element)) continue;
      if (hasText && light(color) > 130) found.push(`pale: ${element.textContent ?? ''} ${color}`);
      if (hasText && parseFloat(fontSize) < 10) found.push(`small: ${element.textContent ?? ''} ${fontSize}`);
      const isFilled = backgroundColor !== 'rgba(0, 0, 0, 0)' && light(backgroundColor) < 200;
      if (isFilled) found.push(`ground: ${element.outerHTML.slice(0, 80)} ${backgroundColor}`);
    }
    return found;
  });

describe('a page on paper', () => {
  for (const screen of SCREENS) {
    test(`${screen}: black on white, without what is only pressed, with what, whose and when`, async () => {
      await page.getByRole('navigation').getByRole('link', { name: screen }).click();
      await page.getByRole('heading', { level: 1, name: new RegExp(`^${screen}`) }).waitFor();
      await expect.poll(() => page.getByText('Reading …').count()).toBe(0);
      await page.emulateMedia({ media: 'print' });
      expect(await faults()).toEqual([]);
      const head = page.getByText(/^Loftledger · \d{1,2} \w{3,4} \d{4}$/);
      expect(await head.isVisible()).toBe(true);
      const heading = await page.getByRole('heading', { level: 1 }).innerText();
      expect(heading).toContain(screen);
      if (screen !== 'Players') expect(heading).toContain('Rowan Ashdown');
      // A4 between its margins, as Chromium lays it out.
      await page.setViewportSize({ width: 703, height: 1000 });
      const over = await page.evaluate(
        () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
      );
      expect(over).toBeLessThanOrEqual(0);
      await page.setViewportSize({ width: 1280, height: 800 });
      await page.emulateMedia({ media: null });
    });
  }

  test('the shortcut and the footer print the page', async () => {
    await page.evaluate(() => {
      const counted = window as unknown as { printed: number };
      counted.printed = 0;
      window.print = () => void counted.printed++;
    });
    await page.keyboard.press('Control+p');
    await page.getByRole('button', { name: 'Print this page (Ctrl+P)' }).click();
    await expect.poll(() => page.evaluate(() => (window as unknown as { printed: number }).printed)).toBe(2);
    await page.evaluate(() => dispatchEvent(new Event('afterprint')));
  });

  test('charts are drawn to the paper’s width before printing begins, and to the window’s after it', async () => {
    await page.evaluate(() => (location.hash = location.hash.replace(/^#\/[a-z]+/, '#/ladder')));
    const plot = page.locator('figure .plot').first();
    await plot.waitFor();
    const width = () => plot.evaluate((element) => element.clientWidth);
    const before = await width();
    await page.evaluate(() => {
      window.print = () =>
        void Object.assign(window, { at: document.querySelector('figure .plot svg')?.clientWidth });
    });
    await page.keyboard.press('Control+p');
    await expect.poll(() => page.evaluate(() => (window as unknown as { at?: number }).at)).toBeLessThan(500);
    await page.evaluate(() => dispatchEvent(new Event('afterprint')));
    await expect.poll(width).toBe(before);
  });
});
