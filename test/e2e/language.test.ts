import type { Page } from 'playwright';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { chooseFiles, demoBag } from './support/files.ts';
import { startProgram, type Program } from './support/program.ts';

let program: Program;
let page: Page;
let complaints: string[];

beforeAll(async () => {
  program = await startProgram();
  ({ page, complaints } = await program.openWindow());
  await page.getByRole('button', { name: 'Open the demo', exact: true }).click();
  await page.getByRole('img', { name: /^Ladder/ }).waitFor();
});

afterAll(() => (program as Program | undefined)?.close());

describe('another language', () => {
  test('is chosen in the settings and holds at once', async () => {
    await page.getByRole('button', { name: 'Settings' }).click();
    const language = page.getByLabel('Language');
    expect(await language.locator('option').allTextContents()).toEqual([
      'System (English)',
      'English',
      'Deutsch',
    ]);
    await language.focus();
    await language.selectOption({ label: 'Deutsch' });
    await page.getByRole('heading', { level: 1, name: /^Leiter/ }).waitFor();
    await page.getByRole('heading', { level: 2, name: 'Einstellungen' }).waitFor();
    expect(await page.getAttribute('html', 'lang')).toBe('de');
    expect(await page.title()).toMatch(/^Leiter · /);
    // The drawer stays, and the focus with it.
    expect(await page.evaluate(() => document.activeElement?.tagName)).toBe('SELECT');
    await page.keyboard.press('Escape');
  });

  test('is kept for the next window, and read before its first paint', async () => {
    const { page: other } = await program.openWindow({ locale: 'en-GB' });
    await other.getByRole('navigation', { name: 'Seiten des Buchs' }).waitFor();
    expect(await other.getAttribute('html', 'lang')).toBe('de');
    await other.close();
  });

  test('writes figures its own way and reads both ways', async () => {
    await page.getByRole('link', { name: 'Bag', exact: true }).click();
    const handicap = page.getByLabel('Handicap', { exact: true });
    await handicap.fill('14.3');
    await handicap.press('Tab');
    await expect.poll(() => handicap.inputValue()).toBe('14,3');
    await handicap.fill('15,2');
    await handicap.press('Tab');
    await expect.poll(() => handicap.inputValue()).toBe('15,2');
    expect(await page.getByRole('heading', { level: 1 }).textContent()).toMatch(/^Bag/);
  });

  test('says what is wrong with a value, and with a file', async () => {
    // Not the field of just now: its answer may still be on its way.
    const target = page.getByLabel('Zielhandicap', { exact: true });
    await target.fill('99');
    await target.press('Tab');
    await page.getByText('Muss höchstens 54 sein. Bitte den Wert berichtigen, oder').waitFor();
    await target.press('Escape');
    await page.getByRole('link', { name: 'Spieler' }).click();
    await page.getByRole('button', { name: 'Dateien' }).click();
    await chooseFiles(page, { 'x.json': demoBag.replace('"soft"', '"wet"') });
    const alert = page.getByRole('alert').filter({ hasText: 'x.json wurde nicht eingelesen' });
    await alert.getByText('Diese Bag-Datei ist nicht brauchbar:').waitFor();
    await alert
      .getByText('Dieser Wert gehört nicht zu den erlaubten. Möglich: "soft" oder "firm".')
      .waitFor();
    await alert.getByText('Boden = "wet"').waitFor();
    await page.getByRole('button', { name: 'Weglassen' }).click();
    await alert.waitFor({ state: 'detached' });
  });

  test('by the machine, until one is chosen, also while a file waits to be taken in', async () => {
    await chooseFiles(page, { 'y.json': demoBag });
    await page.getByRole('heading', { name: /^Eine Bag-Datei/ }).waitFor();
    await page.getByRole('button', { name: 'Einstellungen' }).click();
    await page.getByLabel('Sprache').focus();
    await page.getByLabel('Sprache').selectOption('system');
    await page.getByRole('heading', { name: /^A bag file/ }).waitFor();
    await page.getByRole('heading', { level: 2, name: 'Settings' }).waitFor();
    expect(await page.evaluate(() => document.activeElement?.tagName)).toBe('SELECT');
    await page.keyboard.press('Escape');
    await page.getByRole('button', { name: 'Leave it out' }).click();
    const { page: german } = await program.openWindow({ locale: 'de-AT' });
    await german.getByRole('navigation', { name: 'Seiten des Buchs' }).waitFor();
    await german.close();
  });

  test('complains of nothing', () => {
    expect(complaints).toEqual([]);
  });
});
