import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { logicalDump } from '../../../db/schema/dump.ts';
import { openDatabase } from '../../../db/open.ts';
import { bagOf, chooseFiles, demoShots, dropFiles } from '../support/files.ts';
import { startProgram, type Program } from '../support/program.ts';

let program: Program;
let page: Page;
let complaints: string[];

beforeAll(async () => {
  program = await startProgram();
  ({ page, complaints } = await program.openWindow());
  await chooseFiles(page, { 'ada.json': bagOf('Ada Invented') });
  await page.getByRole('button', { name: 'Take the player in' }).click();
  await page.getByRole('heading', { level: 1, name: /Ladder.*Ada/ }).waitFor();
});

afterAll(() => (program as Program | undefined)?.close());

async function toFiles(): Promise<void> {
  await page.getByRole('link', { name: 'Players' }).click();
  await page.getByRole('button', { name: 'Files' }).click();
  await page.getByRole('heading', { level: 1, name: 'Files' }).waitFor();
}
const preview = (name: string) => page.getByRole('region', { name });
const taken = () => page.getByRole('list', { name: 'Taken in' });
const button = (name: string | RegExp) => page.getByRole('button', { name });
const choice = (name: string) => page.getByRole('combobox', { name, exact: true });
/** What each row of a table says, cell by cell. */
const rowsOf = (name: string) =>
  page
    .getByRole('table', { name })
    .locator('tbody tr')
    .evaluateAll((rows) =>
      rows.map((row) =>
        [...row.children].map((cell) => (cell as HTMLElement).innerText.replace(/\s+/g, ' ').trim()),
      ),
    );

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

describe('saving', () => {
  test('prices and roster come as tables that are taken in again', async () => {
    await toFiles();
    for (const [what, name, heading] of [
      [
        'Save: Price notes that speak for every bag',
        /^loftledger-prices-\d{4}-\d\d-\d\d\.csv$/,
        /A price list/,
      ],
      ['Save: Players in use', /^loftledger-roster-\d{4}-\d\d-\d\d\.csv$/, /A roster/],
    ] as const) {
      const download = page.waitForEvent('download');
      await button(what).click();
      const saved = await download;
      expect(saved.suggestedFilename()).toMatch(name);
      const bytes = readFileSync(await saved.path());
      await chooseFiles(page, { [saved.suggestedFilename()]: bytes });
      await page.getByRole('region', { name: heading }).waitFor();
      expect(await page.getByRole('checkbox', { name: /^Skip/ }).count()).toBe(0);
      await button('Leave it out').click();
    }
  });

  test('the open bag comes as its file', async () => {
    await page.getByRole('link', { name: 'Players' }).click();
    await page.getByRole('link', { name: 'Ada Invented' }).click();
    await toFiles();
    const download = page.waitForEvent('download');
    await button('Save: Bag of Ada Invented').click();
    expect((await download).suggestedFilename()).toBe('Ada-Invented.loftledger-bag.json');
  });
});

describe('whole records', () => {
  test('are written, checked, and take the place of all that is here once that is agreed to', async () => {
    await button('Save: Everything, as whole records').click();
    const path = await page.getByText(/exports.*\.loftledger$/).innerText();
    expect(path.startsWith(program.folder)).toBe(true);
    await chooseFiles(page, { 'late.json': bagOf('Late Comer') });
    await button('Take the player in').click();
    await page.getByRole('heading', { level: 1, name: /Late Comer/ }).waitFor();

    await toFiles();
    await chooseFiles(page, { 'all.loftledger': readFileSync(path) });
    await page.getByRole('table', { name: 'What is here and what would be' }).waitFor();
    expect((await rowsOf('What is here and what would be'))[0]).toEqual(['Players', '3', '2']);
    const run = button('Replace the records');
    await run.dispatchEvent('click');
    await page.getByText('Tick that all that is here is replaced.').waitFor();
    await page.getByRole('checkbox', { name: 'Replace all that is here by what is in this file' }).check();
    await run.click();
    await page.getByText('The records are now those of all.loftledger.', { exact: false }).first().waitFor();
    const names = page.getByRole('table', { name: 'Players in use' }).getByRole('rowheader');
    expect(await names.allInnerTexts()).toEqual(['Ada Invented', 'Bea']);
    // The window goes on.
    await page.getByRole('link', { name: 'Ada Invented' }).click();
    await page.getByRole('heading', { level: 1, name: /Ada Invented/ }).waitFor();
  });
});

/** A print of every row of the records but the latest answers, which are reckoned anew as pages are looked at. */
function dump(): string {
  const file = join(program.folder, 'loftledger.db');
  const { db } = openDatabase({ file, now: '2026-11-26T00:00:00Z', readonly: true });
  try {
    const tables = logicalDump(db)
      .split(/^(?=# )/m)
      .filter((table) => !table.startsWith('# plan '));
    return createHash('sha256').update(tables.join('')).digest('hex');
  } finally {
    db.close();
  }
}

describe('files that are meant to hurt', () => {
  const HOSTILE: [string, string, string | Uint8Array, RegExp][] = [
    ['nothing', 'empty.csv', '', /the file is empty/i],
    ['a picture called a table', 'pic.csv', new Uint8Array([0x89, 0x50, 0x4e, 0x47, 0]), /not UTF-8 text/],
    ['a bag of brackets', 'deep.json', '['.repeat(1_000_000), /nested deeper than 64/],
    ['NaN in a bag', 'nan.json', bagOf('X').replace('"handicap": 17.2', '"handicap": NaN'), /NaN/],
    [
      'a huge number in a bag',
      'huge.json',
      bagOf('X').replace('"handicap": 17.2', '"handicap": 1e999'),
      /handicap/,
    ],
    ['half a letter', 'half.json', bagOf('X\\ud800'), /surrogate/],
    ['records that are none', 'none.loftledger', 'no records', /no Loftledger database/],
    ['records that break off', 'cut.loftledger', 'SQLite format 3\u0000 and no more', /\w/],
    ['a plan', 'plan.json', '{"format":"loftledger-plan","version":1}', /this is a plan/i],
    ['a page', 'page.html', '<!doctype html><script>alert(1)</script>', /none of the kinds/],
  ];
  test.each(HOSTILE)(
    '%s is refused with a plain message, and nothing is changed',
    async (_, name, bytes, words) => {
      const before = dump();
      await toFiles();
      await chooseFiles(page, { [name]: bytes });
      const alert = page.getByRole('alert');
      await alert.getByText(`${name} was not taken in. Nothing was changed.`).waitFor();
      expect(await alert.innerText()).toMatch(words);
      await button(/^(Put this away|Leave it out)$/)
        .first()
        .click();
      await alert.waitFor({ state: 'detached' });
      expect(dump()).toBe(before);
    },
  );

  test('a table of 100 MB is refused before it is sent', async () => {
    await toFiles();
    await page.evaluate(() => {
      const chunk = 'hybrid-22-t3,45,GBP\n'.repeat(50_000);
      const file = new File(
        Array.from({ length: 105 }, () => chunk),
        'big.csv',
      );
      const transfer = new DataTransfer();
      transfer.items.add(file);
      document.body.dispatchEvent(
        new DragEvent('drop', { dataTransfer: transfer, bubbles: true, cancelable: true }),
      );
    });
    const alert = page.getByRole('alert');
    await alert.getByText(/It has 101 MB, and a file of its kind at most 20 MB/).waitFor();
    await button('Put this away').click();
  });

  test('HTML in a name is text', async () => {
    await chooseFiles(page, { 'html.json': bagOf('<img src=x onerror=alert(1)>') });
    await page.getByRole('rowheader', { name: '<img src=x onerror=alert(1)>' }).waitFor();
    await button('Leave it out').click();
  });

  test('the browser has nothing to complain of', () => {
    expect(complaints).toEqual([]);
  });
});
