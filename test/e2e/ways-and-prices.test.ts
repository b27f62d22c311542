import type { Page } from 'playwright';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { startProgram, type Program } from './support/program.ts';

let program: Program;
let page: Page;
let complaints: string[];

beforeAll(async () => {
  program = await startProgram();
  ({ page, complaints } = await program.openWindow());
  await page.getByRole('button', { name: 'Open the demo', exact: true }).click();
  await page.getByRole('img', { name: /^Ladder of 10 clubs/ }).waitFor();
});

afterAll(() => (program as Program | undefined)?.close());

const turnTo = (screen: string) => page.getByRole('navigation').getByRole('link', { name: screen }).click();
const club = '25° hybrid (game improvement)';

describe('the plan', () => {
  test('says what solving again without a purchase has shown', async () => {
    await turnTo('Spend');
    const buy = page.getByRole('table', { name: 'The plan' }).getByRole('row', { name: /buy/ });
    await buy.getByText('Leave it out and 81% of today’s faults come back.').waitFor();
    await buy.getByText(/^Best without it: £57\.88, buying 24° hybrid/).waitFor();
  });
});

describe('side by side', () => {
  const money = () => page.getByRole('table', { name: 'Money' });
  const row = (name: string) => money().getByRole('row', { name }).getByRole('cell').allInnerTexts();

  test('today and the plan: money, what is mended and what is not, both ladders', async () => {
    await turnTo('Side by side');
    await expect.poll(() => row('To pay now')).toEqual(['0.00', '62.00']);
    expect(await row('Of today’s faults, mended')).toEqual(['0%', '100%']);
    expect(await page.getByText('✗ not mended', { exact: true }).count()).toBe(2);
    expect(await page.getByText('✓ mended', { exact: true }).count()).toBe(2);
    const chart = page.getByRole('img', { name: /^Two ladders on one scale, 11 clubs in all/ });
    expect(await chart.getAttribute('aria-label')).toMatch(/Left page: wide gap: 37\syd/);
    const table = page.getByRole('table', { name: 'Both ladders as a table' });
    expect(await table.getByRole('row', { name: /25° hybrid/ }).innerText()).toContain('right only');
  });

  test('another way is chosen on one page; the other stays', async () => {
    await page
      .getByRole('combobox', { name: 'On the left page' })
      .selectOption({ label: '−£7.12: buy nothing' });
    await expect.poll(() => row('All in all, after sales')).toEqual(['−7.12', '54.88']);
    await turnTo('Ladder');
    await turnTo('Side by side');
    await expect.poll(() => row('All in all, after sales')).toEqual(['−7.12', '54.88']);
  });

  test('one is picked with a reason; the record stands below and can be taken back', async () => {
    await page.getByRole('textbox', { name: 'Why this one: The plan' }).fill('Mends all for the least.');
    await page.getByRole('button', { name: 'Pick this one: The plan' }).click();
    const records = page.getByRole('table', { name: 'What was picked' });
    const kept = records.getByRole('row', { name: /The plan/ });
    await kept.getByText('Mends all for the least.').waitFor();
    expect(await kept.innerText()).toMatch(/the pick now[\s\S]*62\.00[\s\S]*54\.88/);

    await page.getByRole('button', { name: 'Strike out the record of The plan' }).click();
    await page.getByText('Nothing was picked yet.').waitFor();
    await page.keyboard.press('Control+z');
    await kept.waitFor();
    expect(complaints).toEqual([]);
  });
});

describe('prices', () => {
  const line = () => page.getByRole('row', { name: new RegExp(`^${club.replace(/[()]/g, '\\$&')}`) });

  test('one that was seen: buy below the walk-away price, leave far above it', async () => {
    await turnTo('Prices');
    await page.getByRole('button', { name: `Seen one: ${club}` }).click();
    const price = page.getByRole('textbox', { name: 'Price, GBP' });
    await price.fill('30');
    await price.press('Enter');
    await page.getByText('Buy it.').waitFor();
    await price.fill('400');
    await price.press('Enter');
    await page.getByText('Leave it.').waitFor();
    await price.fill('dear');
    await price.press('Enter');
    await page.getByText('“dear” is not a number. Write digits, such as 18 or 10.5.').waitFor();
  });

  test('a note is added, changed and struck out, and each can be taken back', async () => {
    await page.getByRole('button', { name: `Notes on ${club}` }).click();
    const notes = page.getByRole('table', { name: `Price notes on ${club}` });
    await notes.waitFor();
    const form = page.getByRole('form', { name: /^Note a price/ });
    await form.getByRole('textbox', { name: 'Likely' }).fill('51');
    await form.getByRole('textbox', { name: 'Where' }).fill('a fair');
    await form.getByRole('button', { name: 'Keep the note' }).click();
    await line().getByText('2 notes').waitFor();

    const place = notes.getByRole('textbox', { name: `Where: ${club}, note 1` });
    await place.fill('the club’s board');
    await place.press('Enter');
    await notes.getByRole('button', { name: `Strike out note 1 on ${club}` }).click();
    await line().getByText('1 note', { exact: false }).waitFor();
    await expect.poll(() => notes.getByRole('button', { name: /^Strike out note/ }).count()).toBe(1);
    await page.keyboard.press('Control+z');
    await expect.poll(() => place.inputValue()).toBe('the club’s board');
    await page.keyboard.press('Control+z');
    await expect.poll(() => place.inputValue()).toBe('a fair');
  });

  test('the catalogue is searched, also for clubs without a price', async () => {
    await page.getByRole('searchbox', { name: 'Search the catalogue' }).fill('driver super');
    await page
      .getByText(/^Found: \d+ clubs?$/)
      .first()
      .waitFor();
    expect(await page.getByText('no price', { exact: true }).count()).toBeGreaterThan(0);
    await page.getByRole('searchbox').fill('cleek');
    await page.getByText('No club in the catalogue is like that.').waitFor();
    await page.getByRole('searchbox').fill('');
  });

  test('the watch list names clubs without a price, and one of them can be asked about', async () => {
    await page.getByRole('button', { name: 'Look through the catalogue' }).click();
    await page.getByRole('button', { name: 'Look again' }).waitFor();
    const watch = page.getByRole('complementary', { name: 'Worth watching for' });
    const first = watch.getByRole('listitem').first();
    expect(await first.innerText()).toMatch(/below £|at any price/);
    await first.getByRole('button').click();
    expect(
      await page.getByRole('textbox', { name: 'Price, GBP' }).evaluate((one) => one.matches(':focus')),
    ).toBe(true);
    expect(complaints).toEqual([]);
  });
});

describe('settings', () => {
  test('show where everything is kept, and how prices are reckoned; that can be changed and taken back', async () => {
    await page.getByRole('button', { name: 'Settings' }).click();
    const drawer = page.getByRole('complementary', { name: 'Settings' });
    const unfold = (group: string) => drawer.locator(`[data-group=${group}] summary`).click();
    await unfold('records');
    await drawer
      .getByText(/loftledger-e2e-/)
      .first()
      .waitFor();
    await unfold('prices');
    const days = drawer.getByRole('textbox', { name: 'A price is stale after, days' });
    await days.fill('5');
    await days.press('Enter');
    await drawer.getByRole('button', { name: 'Close the settings' }).click();
    await page.getByText('◔ stale').first().waitFor();
    await page.keyboard.press('Control+z');
    await expect.poll(() => page.getByText('◔ stale').count()).toBe(0);
    expect(complaints).toEqual([]);
  });
});
