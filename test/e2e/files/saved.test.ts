import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { logicalDump } from '../../../db/schema/dump.ts';
import { openDatabase } from '../../../db/open.ts';
import { bagOf, chooseFiles } from '../support/files.ts';
import { filesPage, takeInAda } from '../support/files-page.ts';
import { startProgram, type Program } from '../support/program.ts';

let program: Program;
let page: Page;
let complaints: string[];

beforeAll(async () => {
  program = await startProgram();
  ({ page, complaints } = await program.openWindow());
  await takeInAda(page);
  await toFiles();
  await chooseFiles(page, { 'roster.csv': 'name,handicap\nBea,-1.5\n' });
  await button('Take in 1 player').click();
  await taken().getByText('1 player came in.').waitFor();
});

afterAll(() => (program as Program | undefined)?.close());

const { toFiles, taken, button, rowsOf } = filesPage(() => page);

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
});

test('the browser has nothing to complain of', () => {
  expect(complaints).toEqual([]);
});
