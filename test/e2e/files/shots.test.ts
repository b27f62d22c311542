import type { Page } from 'playwright';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { chooseFiles, demoShots } from '../support/files.ts';
import { filesPage, takeInAda } from '../support/files-page.ts';
import { startProgram, type Program } from '../support/program.ts';

let program: Program;
let page: Page;
let complaints: string[];

beforeAll(async () => {
  program = await startProgram();
  ({ page, complaints } = await program.openWindow());
  await takeInAda(page);
});

afterAll(() => (program as Program | undefined)?.close());

const { toFiles, preview, taken, button, choice, rowsOf } = filesPage(() => page);

describe('shots', () => {
  const session = [
    'Session of the range',
    '',
    'Schläger;Carry [m];Spin',
    ...[128, 130, 129, 131, 127, 130, 128].map((carry) => `7 iron;${String(carry)},5;6400`),
    '7 iron;62,5;2000',
    'my wedge;80;9000',
    'my wedge;82;9000',
    '7 iron;NaN;1',
    '7 iron;1e5;1',
    '=1+1;130;1',
    '<b>7</b>;130;1',
    'putter;9;1',
  ].join('\n');

  test('are read by the columns and words that the user agrees to', async () => {
    await toFiles();
    await chooseFiles(page, { 'range.csv': session });
    await preview('Shots: range.csv').waitFor();
    await page.getByText('Into the bag of Ada Invented').waitFor();
    // Proposed from the headings, below a title: club, carry and its unit, spin; the decimal comma from the figures.
    expect(await choice('Club').locator('option:checked').innerText()).toBe('Schläger · 7 iron');
    expect(await choice('Carry').locator('option:checked').innerText()).toBe('Carry [m] · 128,5');
    expect(await choice('Total').locator('option:checked').innerText()).toBe('not in the file');
    expect(await choice('Distances are in').inputValue()).toBe('m');
    expect(await choice('The headings are in row').inputValue()).toBe('3');
    expect(await page.getByRole('radio', { name: /comma/ }).isChecked()).toBe(true);

    expect(await rowsOf('Which club is which')).toMatchObject([
      ['7 iron', '8', expect.stringContaining('proposed') as string],
      ['my wedge', '2', expect.not.stringContaining('proposed') as string],
      ['putter', '1', expect.not.stringContaining('proposed') as string],
    ]);
    await choice('Club of the bag for “my wedge”').selectOption({ label: 'PW' });
    await expect.poll(() => rowsOf('What it comes to')).toHaveLength(2);
    // 121.125 m, SD 23.72, the mean of all eight, in the bag's yards; t of 7 degrees of freedom at 90 % 1.895.
    expect((await rowsOf('What it comes to'))[0]).toEqual([
      '7-iron',
      '132',
      '8',
      '132.5',
      '25.9',
      '115.1–149.8',
      expect.stringContaining('row 11: 68.4'),
    ] as unknown[]);
  });

  test('far from the others are left out by a tick, and the mean follows', async () => {
    await page.getByRole('checkbox', { name: 'Leave out row 11: 68.4' }).check();
    await expect
      .poll(async () => (await rowsOf('What it comes to'))[0]?.slice(2, 6))
      .toEqual(['7', '141.6', '1.5', '140.5–142.8']);
    await page.getByText('row 11: 68.4, left out').waitFor();
  });

  test('that cannot be read are listed with place and value, and skipped only with consent', async () => {
    expect(await rowsOf('4 rows cannot be used')).toEqual([
      ['14', 'Carry', 'NaN', 'carry is not a number'],
      ['15', 'Carry', '1e5', 'carry is not a number'],
      ['16', 'Club', '=1+1', expect.stringContaining('formula')],
      ['17', 'Club', '<b>7</b>', expect.stringContaining('markup')],
    ] as unknown[]);
    const take = button('Take in 9 shots of 2 clubs');
    expect(await take.getAttribute('aria-disabled')).toBe('true');
    // Pressed all the same, as a person may.
    await take.dispatchEvent('click');
    expect(await taken().count()).toBe(0);
    await page.getByRole('checkbox', { name: 'Skip these 4 rows' }).check();
    await page.getByLabel('Day of the session').fill('2026-11-20');
    await take.click();
    await taken().getByText('9 shots of 2 clubs came in for Ada Invented. 4 rows were skipped.').waitFor();
    await taken().getByRole('button', { name: 'To the ladder' }).click();
    await page.getByRole('heading', { level: 1, name: /Ladder/ }).waitFor();
    await page.getByRole('link', { name: 'Bag' }).click();
    expect(await page.getByRole('textbox', { name: 'Carry, yd: 7-iron' }).inputValue()).toBe('141.6229');
  });

  test('of the next file with these headings are read the same way, and one that was in before is known', async () => {
    await toFiles();
    await chooseFiles(page, { 'range.csv': session });
    await page.getByText('As you had it for the last file with these headings.').waitFor();
    await expect
      .poll(() => choice('Club of the bag for “my wedge”').locator('option:checked').innerText())
      .toBe('PW');
    await page.getByText(/came in before, as the session of 20 Nov 2026/).waitFor();
    await button('Leave it out').click();
    await button('Choose files …').waitFor();
  });

  test('go back out with one step of undo', async () => {
    await page.keyboard.press('Control+z');
    await page
      .getByText(/^Taken back: shots of range.csv imported/)
      .first()
      .waitFor();
    await page.getByRole('link', { name: 'Bag' }).click();
    await expect
      .poll(() => page.getByRole('textbox', { name: 'Carry, yd: 7-iron' }).inputValue())
      .toBe('132');
  });

  test('of a device’s file need their player first, where none is open', async () => {
    await page.goto(`${new URL(page.url()).origin}/#/files`);
    await chooseFiles(page, { 'device.csv': demoShots });
    await page.getByRole('heading', { name: 'Whose shots' }).waitFor();
    // Asked once: below, the button only says what it waits for.
    expect(await page.getByText(/^whose/i).count()).toBe(1);
    await page.getByText('Choose whose shots they are.').waitFor();
    await button('Ada Invented').click();
    await page.getByText('Into the bag of Ada Invented').waitFor();
    await expect.poll(async () => (await rowsOf('Which club is which')).length).toBeGreaterThan(5);
    await choice('Carry').selectOption({ label: 'club · Driver' });
    await page
      .getByText(/rows cannot be used/)
      .first()
      .waitFor();
    await button('Leave it out').click();
  });
});

test('the browser has nothing to complain of', () => {
  expect(complaints).toEqual([]);
});
