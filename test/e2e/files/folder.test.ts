import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { bagOf } from '../support/files.ts';
import { startProgram, type Program } from '../support/program.ts';

let program: Program;
let page: Page;
let complaints: string[];
const root = mkdtempSync(join(tmpdir(), 'loftledger-folder-'));

function folder(name: string, files: Record<string, string>): string {
  for (const [file, text] of Object.entries(files)) {
    mkdirSync(join(root, name, file, '..'), { recursive: true });
    writeFileSync(join(root, name, file), text);
  }
  return join(root, name);
}

beforeAll(async () => {
  program = await startProgram();
  ({ page, complaints } = await program.openWindow());
  await page.goto(`${new URL(page.url()).origin}/#/files`);
  await page.getByRole('heading', { level: 1, name: 'Files' }).waitFor();
});

afterAll(async () => {
  await (program as Program | undefined)?.close();
  rmSync(root, { recursive: true, force: true });
});

async function choose(path: string): Promise<void> {
  const chooser = page.waitForEvent('filechooser');
  await page.getByRole('button', { name: 'Choose a folder of bag files …' }).click();
  await (await chooser).setFiles(path);
}

test('a folder’s bag files are looked at together; what is left aside is named', async () => {
  await choose(
    folder('Juniors', {
      'kay.json': bagOf('Kay Invented'),
      'late/bo.json': bagOf('Bo Invented'),
      'wrong.json': bagOf('Di Invented').replace('"handicap": 17.2', '"handicap": 99'),
      'notes.txt': 'not for the program',
      'prices.csv': 'archetype,price\nhybrid-22-t3,45\n',
    }),
  );
  const table = page.getByRole('table', { name: 'Bag files' });
  await table.getByRole('rowheader', { name: 'Bo Invented' }).waitFor();
  expect(await table.getByRole('rowheader').allInnerTexts()).toEqual(['Kay Invented', 'Bo Invented']);
  await page.getByText('Left aside in Juniors: notes.txt and prices.csv.').waitFor();
  await page.getByText('wrong.json was not taken in. Nothing was changed.').waitFor();
  await page.getByRole('button', { name: 'Take 2 players in' }).click();
  await page.getByText('Bo Invented has come in.').waitFor();
  await page.getByText('Kay Invented has come in.').waitFor();
});

test('a folder without any says so, and changes nothing', async () => {
  await choose(folder('Empty', { 'notes.txt': 'x' }));
  await page.getByText('There is no bag file in Empty.').waitFor();
  await page.getByText('Left aside in Empty: notes.txt.').waitFor();
  // The next choice is another matter.
  await page.locator('input[type=file][multiple]').setInputFiles({
    name: 'cy.json',
    mimeType: 'application/json',
    buffer: Buffer.from(bagOf('Cy Invented')),
  });
  await page.getByRole('rowheader', { name: 'Cy Invented' }).waitFor();
  expect(await page.getByText(/Left aside|no bag file/).count()).toBe(0);
  expect(complaints).toEqual([]);
});
