import type { Locator, Page } from 'playwright';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { inventedRoster } from './support/invented-roster.ts';
import { crampedWords, overflow, tooSmall, violations } from './support/looks.ts';
import { startProgram, type Program } from './support/program.ts';

// One evening of a coach, from files on a disk to a pick on record; each test goes on where the one before stopped.

const PLAYERS = inventedRoster(20);
const FIRST = 'Invented player 01';
const PRICED = '25° hybrid (game improvement)';

let program: Program;
let page: Page;
let complaints: string[];

beforeAll(async () => {
  program = await startProgram();
  ({ page, complaints } = await program.openWindow());
});

afterAll(() => (program as Program | undefined)?.close());

const turnTo = (screen: string) =>
  page.getByRole('navigation').getByRole('link', { name: screen, exact: true }).click();
const button = (name: string | RegExp) => page.getByRole('button', { name });
const roster = () => page.getByRole('table', { name: 'Players in use' });
const names = () => roster().getByRole('rowheader').allInnerTexts();
const heading = (name: RegExp) => page.getByRole('heading', { level: 1, name }).waitFor();
const row = (table: string, name: RegExp | string) =>
  page.getByRole('table', { name: table }).getByRole('row', { name });

const isInSight = (one: Locator) =>
  one.evaluate((element) => {
    const { top, bottom } = element.getBoundingClientRect();
    return top >= 0 && bottom <= innerHeight;
  });

async function looksWell(): Promise<void> {
  expect(await violations(page)).toEqual([]);
  expect(await tooSmall(page)).toEqual([]);
  expect(await crampedWords(page)).toEqual([]);
  expect(await overflow(page)).toBe(0);
}

test('twenty bag files come in at once, seen before they are kept', async () => {
  const choosing = page.waitForEvent('filechooser');
  await button('Import files …').click();
  await (
    await choosing
  ).setFiles(
    PLAYERS.map(({ name, file }) => ({
      name: `${name.replaceAll(' ', '-')}.loftledger-bag.json`,
      mimeType: 'application/json',
      buffer: Buffer.from(JSON.stringify(file)),
    })),
  );
  await page.getByRole('region', { name: '20 bag files' }).waitFor();
  const files = page.getByRole('table', { name: 'Bag files' });
  await expect.poll(() => files.locator('tbody tr').count()).toBe(20);
  await looksWell();
  await button('Take 20 players in').click();
  await heading(/^Players/);
  await expect.poll(names).toEqual(PLAYERS.map(({ name }) => name));
  expect(await roster().getByText('not reckoned yet').count()).toBe(20);
});

test('all are planned, and only those with open findings are left in sight', async () => {
  await button('Plan 20 players anew').click();
  await page.getByText('Planned: 20 bags.').waitFor();
  await expect.poll(() => roster().getByText('not reckoned yet').count()).toBe(0);
  await roster()
    .getByText(/^stopped, planned /)
    .waitFor();
  await page.getByRole('checkbox', { name: 'Only with open findings' }).check();
  await expect.poll(async () => (await names()).length).toBeLessThan(20);
  const open = await names();
  expect(open).not.toContain('Invented player 08');
  for (const text of await roster().locator('tbody tr').allInnerTexts()) {
    expect(text).toMatch(/[1-9]\d* findings?/);
  }
  await looksWell();
});

test('three players are opened one after the other; the roster stays as it was left', async () => {
  const open = await names();
  const link = (name: string) => roster().getByRole('link', { name, exact: true });
  for (const name of [open.at(-1) ?? '', open[1] ?? '', FIRST]) {
    await link(name).click();
    await heading(new RegExp(`^Bag.*${name}`));
    await turnTo('Ladder');
    await page.getByRole('img', { name: /^Ladder of/ }).waitFor();
    if (name === FIRST) break;
    await turnTo('Players');
    expect(await page.getByRole('checkbox', { name: 'Only with open findings' }).isChecked()).toBe(true);
    await expect.poll(names).toEqual(open);
    await expect.poll(() => isInSight(link(name))).toBe(true);
  }
  await heading(/^Ladder.*Invented player 01/);
  await looksWell();
});

test('a note about the lesson goes into the diary', async () => {
  await turnTo('Bag');
  await page.locator('details.diary > summary').click();
  await page.getByRole('textbox', { name: 'New note' }).fill('Half swings with the wedges until May.');
  await button('Keep the note').click();
  await page
    .locator('details.diary > summary')
    .getByText(/^1 note, /)
    .waitFor();
});

test('a lower price changes the answer', async () => {
  await turnTo('Spend');
  const buy = () => row('The plan', /buy/);
  await buy().first().waitFor();
  const before = await buy().allInnerTexts();
  await turnTo('Bag');
  // Typed on while the figure before is still on its way to the records.
  await page.route('**/call', async (route) => {
    if (route.request().postData()?.includes('bags.setPrice') === true) await page.waitForTimeout(300);
    await route.continue();
  });
  for (const [part, amount] of Object.entries({ low: '4', likely: '5', high: '6' })) {
    const field = page.getByRole('textbox', { name: `${part}: ${PRICED}` });
    await field.fill(amount);
    await field.press('Enter');
  }
  for (const [part, amount] of Object.entries({ low: '4', likely: '5', high: '6' })) {
    const field = page.getByRole('textbox', { name: `${part}: ${PRICED}` });
    await expect.poll(() => field.getAttribute('data-dirty'), { timeout: 10_000 }).toBe(null);
    expect([part, await field.inputValue()]).toEqual([part, amount]);
  }
  await page.unroute('**/call');
  await looksWell();
  await turnTo('Spend');
  await expect.poll(() => buy().allInnerTexts()).not.toEqual(before);
  await buy().getByText(PRICED).first().waitFor();
  expect(await buy().first().innerText()).toMatch(/\b5\.00\b/);
  await looksWell();
});

test('two ways are set side by side, and one is picked with a reason', async () => {
  await turnTo('Side by side');
  const total = row('Money', 'All in all, after sales').getByRole('cell');
  await expect.poll(async () => (await total.allInnerTexts())[0]).toBe('0.00');
  const [, planned] = await total.allInnerTexts();
  const left = page.getByRole('combobox', { name: 'On the left page' });
  const points = left.locator('optgroup[label="Points of the spend curve"] option');
  await left.selectOption(await points.first().getAttribute('value'));
  await expect.poll(() => total.allInnerTexts()).toEqual([expect.not.stringMatching(/^0\.00$/), planned]);
  await page
    .getByRole('textbox', { name: 'Why this one: The plan' })
    .fill('Agreed over the phone; the rest waits for spring.');
  await looksWell();
  await button('Pick this one: The plan').click();
  await row('What was picked', /The plan/)
    .getByText('the pick now')
    .waitFor();
});

test('on record after a restart, with the note, and nobody complained', async () => {
  expect(complaints).toEqual([]);
  await program.restart();
  ({ page, complaints } = await program.openWindow());
  await heading(/^Players/);
  await page.getByRole('link', { name: FIRST, exact: true }).click();
  await page
    .locator('details.diary > summary')
    .getByText(/^1 note, /)
    .waitFor();
  await turnTo('Side by side');
  const kept = row('What was picked', /The plan/);
  await kept.getByText('Agreed over the phone; the rest waits for spring.').waitFor();
  expect(await kept.innerText()).toContain('the pick now');
  expect(await row('What was picked', /./).count()).toBe(2);
  expect(complaints).toEqual([]);
});
