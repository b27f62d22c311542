import { mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { bagOf } from '../support/files.ts';
import { startProgram, type Program } from '../support/program.ts';

const mine = mkdtempSync(join(tmpdir(), 'loftledger-opened-'));
let program: Program;
let page: Page;

const file = (name: string, text: string) => {
  writeFileSync(join(mine, name), text);
  return join(mine, name);
};

beforeAll(async () => {
  program = await startProgram(file('first.json', bagOf('Ada First')));
  ({ page } = await program.openWindow());
});

afterAll(async () => {
  await (program as Program | undefined)?.close();
  rmSync(mine, { recursive: true, force: true });
});

describe('a file that the program is started with', () => {
  test('is shown, and comes in once that is agreed to', async () => {
    await page.getByRole('rowheader', { name: 'Ada First' }).waitFor();
    expect(await page.getByRole('heading', { level: 1 }).innerText()).toBe('Files');
    await page.getByRole('button', { name: 'Take the player in' }).click();
    await page.getByRole('heading', { level: 1, name: /Ladder.*Ada First/ }).waitFor();
  });
});

describe('a file that is opened while the program runs', () => {
  test('is handed to the running one, whose window shows it', async () => {
    const again = await program.startAgain(file('second.json', bagOf('Bea Second')));
    expect(again.code, again.said).toBe(0);
    expect(again.said).toContain('Its page shows what was opened.');
    await page.getByRole('rowheader', { name: 'Bea Second' }).waitFor();
    await page.getByRole('button', { name: 'Take the player in' }).click();
    await page.getByRole('heading', { level: 1, name: /Bea Second/ }).waitFor();
  });

  test('whole records as a double click opens them: checked first, then they take the place of all', async () => {
    await page.getByRole('link', { name: 'Players' }).click();
    await page.getByRole('button', { name: 'Files' }).click();
    await page.getByRole('button', { name: 'Save: Everything, as whole records' }).click();
    const path = await page.getByText(/exports.*\.loftledger$/).innerText();
    await page.getByRole('link', { name: 'Ladder' }).click();
    const again = await program.startAgain(`file://${encodeURI(path)}`);
    expect(again.code, again.said).toBe(0);
    await page.getByRole('table', { name: 'What is here and what would be' }).waitFor();
    await page.getByRole('checkbox', { name: /^Replace all/ }).check();
    await page.getByRole('button', { name: 'Replace the records' }).click();
    await page.getByText('The records are now those of', { exact: false }).first().waitFor();
  });

  test('that is none of the kinds is refused in the window, by its name alone', async () => {
    const again = await program.startAgain(file('notes.md', 'Dear coach'));
    expect(again.code).toBe(0);
    const alert = page.getByRole('alert');
    await alert.getByText('notes.md was not taken in. Nothing was changed.').waitFor();
    expect(await alert.innerText()).not.toContain(mine);
  });

  test('that is not there is said at once, with exit code 2', async () => {
    const again = await program.startAgain(join(mine, 'typo.loftledger'));
    expect(again.code).toBe(2);
    expect(again.said).toContain('typo.loftledger: there is no such file. Check the path.');
  });

  test('is gone from the folder of what came in, when all is done', async () => {
    await page.getByRole('button', { name: 'Put this away' }).click();
    expect(readdirSync(join(program.folder, 'incoming'))).toEqual([]);
  });
});
