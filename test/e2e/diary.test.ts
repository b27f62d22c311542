import type { Page } from 'playwright';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { overflow, tooSmall, violations } from './support/looks.ts';
import { startProgram, type Program } from './support/program.ts';

let program: Program;
let page: Page;
let complaints: string[];

beforeAll(async () => {
  program = await startProgram();
  ({ page, complaints } = await program.openWindow());
  await page.getByRole('button', { name: 'Open the demo', exact: true }).click();
  await page.getByRole('img', { name: /^Ladder of/ }).waitFor();
  await page.getByRole('link', { name: 'Bag' }).click();
});

afterAll(() => (program as Program | undefined)?.close());

const summary = () => page.locator('details.diary > summary');
const blank = () => page.getByRole('textbox', { name: 'New note' });
const notes = () => page.getByRole('list', { name: 'Notes, the newest first' }).getByRole('listitem');
const textOf = (n: number) => page.getByRole('textbox', { name: new RegExp(`^Note ${String(n)}, of`) });
const said = (text: string) => page.getByText(text).first().waitFor();
const roster = () => page.getByRole('table', { name: 'Players in use' });

test('it is folded away and says that it is empty; a note is kept by key', async () => {
  await summary().getByText('nothing noted yet').waitFor();
  await summary().focus();
  await page.keyboard.press('Enter');
  await said('Notes stay in these records');
  await blank().fill('Grip a touch stronger.\n\nLeft wrist sore since spring.');
  await page.keyboard.press('Control+Enter');
  await said('Noted for');
  await summary()
    .getByText(/^1 note, the newest of/)
    .waitFor();
  expect(await blank().inputValue()).toBe('');
  expect(await textOf(1).inputValue()).toBe('Grip a touch stronger.\n\nLeft wrist sore since spring.');
});

test('what is written is kept when it is left for another page, and once', async () => {
  await page.getByRole('textbox', { name: 'Name', exact: true }).waitFor();
  await page.getByLabel('Day', { exact: true }).fill('2026-03-01');
  await blank().fill('First lesson.');
  await blank().press('Alt+Digit3');
  await page.getByRole('img', { name: /^Ladder of/ }).waitFor();
  await said('Noted for 1 Mar 2026.');
  await page.getByRole('link', { name: 'Bag' }).click();
  await expect.poll(() => notes().count()).toBe(2);
  expect(await textOf(2).inputValue()).toBe('First lesson.');
  expect(await blank().inputValue()).toBe('');
});

test('a day that has not come is refused beside it, and the text stays', async () => {
  await page.getByLabel('Day', { exact: true }).fill('2999-01-01');
  await blank().fill('Later.');
  await page.getByRole('button', { name: 'Keep the note' }).click();
  await said('Give a day, today or before.');
  expect(await blank().inputValue()).toBe('Later.');
  await blank().fill('');
  await summary().focus();
  await expect.poll(() => page.getByLabel('Day', { exact: true }).inputValue()).not.toBe('2999-01-01');
  expect(await page.getByText('Give a day, today or before.').count()).toBe(0);
  expect(await notes().count()).toBe(2);
});

test('a note is changed where it stands, put on another day, and each is taken back', async () => {
  await textOf(2).fill('First lesson: ball position.');
  await page.keyboard.press('Tab');
  const day = page.getByLabel('Day of note 2', { exact: true });
  await day.fill('2026-03-02');
  await day.press('Enter');
  await page.getByRole('textbox', { name: 'Note 2, of 2 Mar 2026' }).waitFor();
  await textOf(1).fill('  ');
  await page.keyboard.press('Tab');
  await said('A note has a text. To be rid of it, strike it out.');
  await textOf(1).focus();
  await page.keyboard.press('Escape');
  expect(await textOf(1).inputValue()).toMatch(/^Grip/);
  await summary().focus();
  await page.keyboard.press('Control+z');
  await said('Taken back: change of the note of 1 Mar 2026');
  await page.keyboard.press('Control+z');
  await expect.poll(() => textOf(2).inputValue()).toBe('First lesson.');
});

test('one is struck out and brought back by the button of the message', async () => {
  await page.getByRole('button', { name: 'Strike out note 2, of 1 Mar 2026' }).click();
  await expect.poll(() => notes().count()).toBe(1);
  await said('Struck out: the note of 1 Mar 2026.');
  await page.getByRole('button', { name: 'Undo', exact: true }).last().click();
  await expect.poll(() => notes().count()).toBe(2);
});

test('a slow press on something below does not slip off it when the note is kept', async () => {
  await blank().fill('Pressed away from.');
  const strike = page.getByRole('button', { name: 'Strike out note 2, of 1 Mar 2026' });
  const box = await strike.boundingBox();
  if (!box) throw new Error('the button is not in sight');
  await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
  await page.mouse.down();
  await page.waitForTimeout(500);
  await page.mouse.up();
  await said('Struck out: the note of 1 Mar 2026.');
  await expect.poll(() => textOf(1).inputValue()).toBe('Pressed away from.');
  expect(await notes().count()).toBe(2);
  await page.keyboard.press('Control+z');
  await page.keyboard.press('Control+z');
  await expect.poll(() => textOf(2).inputValue()).toBe('First lesson.');
});

test('nothing that axe finds, nothing too small or out of a narrow window', async () => {
  for (const colorScheme of ['light', 'dark'] as const) {
    await page.emulateMedia({ colorScheme });
    expect(await violations(page)).toEqual([]);
  }
  expect(await tooSmall(page)).toEqual([]);
  await page.emulateMedia({ media: 'print' });
  expect(await summary().isVisible()).toBe(false);
  await page.emulateMedia({ media: 'screen' });
  await page.setViewportSize({ width: 512, height: 700 });
  expect(await overflow(page)).toBe(0);
  await page.setViewportSize({ width: 1280, height: 800 });
});

test('the roster tells the day, finds a note by its words, and opens the diary to write', async () => {
  await page.getByRole('link', { name: 'Players' }).click();
  await roster()
    .getByText(/^note of /)
    .waitFor();
  await page.getByRole('searchbox').fill('wrsist');
  const found = page.getByRole('region', { name: 'Notes that hold “wrsist”' });
  await found.getByText(/Left wrist sore/).waitFor();
  await found.getByRole('link').click();
  await expect
    .poll(() => page.evaluate(() => document.activeElement?.closest('li')?.querySelector('textarea')?.value))
    .toMatch(/Left wrist sore/);

  await page.getByRole('link', { name: 'Players' }).click();
  await page.getByRole('searchbox').fill('');
  await summary().waitFor({ state: 'detached' });
  await page.getByRole('button', { name: /^More for/ }).click();
  await page.getByRole('menuitem', { name: 'Diary' }).click();
  await expect.poll(() => blank().evaluate((one) => one === document.activeElement)).toBe(true);
});

test('a copy begins without; a restart keeps what was noted', async () => {
  await page.getByRole('link', { name: 'Players' }).click();
  await page.getByRole('button', { name: /^More for/ }).click();
  await page.getByRole('menuitem', { name: 'Duplicate' }).click();
  await page.getByRole('button', { name: 'Open the copy' }).click();
  await summary().getByText('nothing noted yet').waitFor();
  // Of another player it is folded away.
  expect(await blank().count()).toBe(0);
  expect(complaints).toEqual([]);

  await program.restart();
  const { page: anew } = await program.openWindow();
  await anew
    .getByRole('table', { name: 'Players in use' })
    .getByText(/^note of /)
    .waitFor();
});
