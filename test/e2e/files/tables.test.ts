import type { Page } from 'playwright';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { bagOf, chooseFiles, dropFiles } from '../support/files.ts';
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

const { toFiles, preview, taken, button, rowsOf } = filesPage(() => page);

describe('price lists and rosters', () => {
  test('prices: what is new, what is there, what cannot be used', async () => {
    await toFiles();
    const list =
      'archetype;price;currency;seen;shelf\nhybrid-22-t3;45,5;GBP;2026-11-01;3\nwedge-50-t2;25;;;\nwedge-51-t2;25;GBP;;\n';
    await chooseFiles(page, { 'prices.csv': list });
    await preview('A price list: prices.csv').waitFor();
    await page.getByText('2 new price notes on 2 clubs.').waitFor();
    await page.getByText('Not read, since their headings mean nothing here: shelf.').waitFor();
    expect((await rowsOf('The first of them'))[0]).toEqual([
      '22° hybrid (game improvement)',
      '£45.50',
      '£45.50',
      '£45.50',
      '1 Nov 2026',
      '–',
    ]);
    expect(await rowsOf('1 row cannot be used')).toEqual([
      ['4', 'archetype', 'wedge-51-t2', 'the catalogue has no such archetype'],
    ]);
    await page.getByRole('radio', { name: /point/ }).check();
    await expect.poll(() => rowsOf('2 rows cannot be used')).toHaveLength(2);
    await page.getByRole('radio', { name: /comma/ }).check();
    await page.getByRole('checkbox', { name: 'Skip this row' }).check();
    await button('Take in 2 price notes').click();
    await taken().getByText('2 price notes came in. 1 row was skipped.').waitFor();

    await chooseFiles(page, { 'prices.csv': list });
    await page.getByText('2 notes are there already and stay as they are.').waitFor();
    expect(await button('Take in 0 price notes').getAttribute('aria-disabled')).toBe('true');
    await button('Leave it out').click();
  });

  test('a roster: who is there already is left out unless wanted', async () => {
    await chooseFiles(page, { 'roster.csv': 'name,handicap\nAda Invented,18\nBea,-1.5\n' });
    await page.getByText('1 is on the roster already, by name.').waitFor();
    await button('Take in 1 player').waitFor();
    await page.getByRole('checkbox', { name: 'Leave out who is on the roster already' }).uncheck();
    await button('Take in 2 players').waitFor();
    await page.getByRole('checkbox', { name: 'Leave out who is on the roster already' }).check();
    await button('Take in 1 player').click();
    await taken().getByRole('button', { name: 'To the players' }).click();
    await page.getByRole('link', { name: 'Bea' }).waitFor();
  });

  test('a table is read as something else where the user says so', async () => {
    await toFiles();
    await chooseFiles(page, { 'odd.csv': 'name,handicap,carry\n7 iron,18,150\n' });
    await preview('A roster: odd.csv').waitFor();
    await page.getByRole('radio', { name: 'Shots' }).check();
    await preview('Shots: odd.csv').waitFor();
    await page.getByRole('radio', { name: 'Price list' }).check();
    await page
      .getByRole('alert')
      .getByText(/There is no column archetype/)
      .waitFor();
    await button('Leave it out').click();
  });
});

describe('files dropped on any page', () => {
  test('each is known by what it holds; all are shown before anything comes in', async () => {
    await page.getByRole('link', { name: 'Spend' }).click();
    await dropFiles(page, {
      'one.txt': bagOf('Cara Dropped'),
      'notes.md': 'Dear coach,\nthis is no table.',
      'prices.csv': 'archetype,price,currency\nhybrid-25-t3,30,GBP\n',
      'two.json': bagOf('Dora Dropped'),
    });
    await page.getByRole('alert').getByText('notes.md was not taken in. Nothing was changed.').waitFor();
    await page
      .getByRole('alert')
      .getByText(/bag files \(\.json\), price lists/)
      .waitFor();
    await preview('2 bag files').waitFor();
    await page.getByText('Then 1 more file').waitFor();
    await button('Take 2 players in').click();
    await taken().getByText('Dora Dropped has come in.').waitFor();
    await preview('A price list: prices.csv').waitFor();
    await button('Take in 1 price note').click();
    await taken().getByText('1 price note came in.').waitFor();
    await button('Put this away').click();
    // One step each: bag files together.
    await page.keyboard.press('Control+z');
    await page.keyboard.press('Control+z');
    await page
      .getByText(/^Taken back: 2 bag files imported/)
      .first()
      .waitFor();
  });

  test('of one that is dropped a second time, the player is known', async () => {
    await dropFiles(page, { 'ada.json': bagOf('Ada Invented') });
    await page.getByText('already on the roster').waitFor();
    expect(await page.getByRole('checkbox', { name: 'Take in Ada Invented from ada.json' }).isChecked()).toBe(
      false,
    );
    await page.getByText('Tick a player to take in.').waitFor();
    await button('Leave it out').click();
  });
});

test('the browser has nothing to complain of', () => {
  expect(complaints).toEqual([]);
});
