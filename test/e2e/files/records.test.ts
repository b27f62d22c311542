import { readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import type { Page } from 'playwright';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { startProgram, type Program } from '../support/program.ts';

const demo = readFileSync(
  join(resolve(import.meta.dirname, '..', '..', '..'), 'db', 'demo', 'invented-bag.json'),
  'utf8',
);

let program: Program;
let page: Page;
let complaints: string[];

beforeAll(async () => {
  program = await startProgram();
  ({ page, complaints } = await program.openWindow());
});

afterAll(() => (program as Program | undefined)?.close());

const bagFile = (name: string, text: string) => ({
  name,
  mimeType: 'application/json',
  buffer: Buffer.from(text),
});
const chooseFile = (file: ReturnType<typeof bagFile>) =>
  page.locator('input[type=file][multiple]').setInputFiles(file);
const names = () =>
  page.getByRole('table', { name: 'Players in use' }).getByRole('rowheader').allInnerTexts();

describe('bag files', () => {
  test('a refused one says where, why and what to do, and changes nothing', async () => {
    const bad = demo
      .replace('"handicap": 17.2', '"handicap": 99')
      .replace('"kind": "driver"', '"kind": "cleek"');
    await chooseFile(bagFile('wrong.json', bad));
    const alert = page.getByRole('alert');
    await alert.getByText('wrong.json was not taken in. Nothing was changed.').waitFor();
    expect(await alert.innerText()).toMatch(
      /Must be at most 54\.[\s\S]*Handicap = 99 · in the file: player\.handicap/,
    );
    expect(await alert.innerText()).toContain('driver: Kind = "cleek" · in the file: clubs[0].kind');
    await page.getByRole('button', { name: 'Leave it out' }).click();
    expect(await alert.count()).toBe(0);
    // Still the empty state: nobody was added.
    await page.getByRole('link', { name: 'Players' }).click();
    await page.getByRole('heading', { name: /Which gaps in the bag matter/ }).waitFor();
    expect(complaints).toEqual([]);
  });

  test('a good one is shown, and opens on its ladder once it is taken in', async () => {
    await chooseFile(bagFile('rowan.json', demo));
    await page.getByRole('rowheader', { name: 'Invented player: Rowan Ashdown' }).waitFor();
    await page.getByRole('button', { name: 'Take the player in' }).click();
    await page.getByRole('heading', { level: 1, name: /Ladder.*Rowan Ashdown/ }).waitFor();
    await page.getByRole('img', { name: /^Ladder of 10 clubs/ }).waitFor();
  });

  test('one that is dropped on the window is taken in too', async () => {
    const file = demo.replace('Rowan Ashdown', 'Robin Dropped');
    const data = await page.evaluateHandle((text) => {
      const transfer = new DataTransfer();
      transfer.items.add(new File([text], 'robin.json', { type: 'application/json' }));
      return transfer;
    }, file);
    await page.dispatchEvent('body', 'dragenter', { dataTransfer: data });
    await page.getByText('Let go to see what it would bring').waitFor();
    await page.dispatchEvent('body', 'drop', { dataTransfer: data });
    await page.getByRole('button', { name: 'Take the player in' }).click();
    await page.getByRole('heading', { level: 1, name: /Robin Dropped/ }).waitFor();
    expect(await page.getByText('Let go to see what it would bring').count()).toBe(0);
  });

  test('what is exported is a bag file again', async () => {
    await page.getByRole('link', { name: 'Players' }).click();
    await page.getByRole('button', { name: /^More for .*Rowan/ }).click();
    const download = page.waitForEvent('download');
    await page.getByRole('menuitem', { name: 'Export bag file' }).click();
    const saved = await download;
    expect(saved.suggestedFilename()).toBe('Invented-player-Rowan-Ashdown.loftledger-bag.json');
    expect(JSON.parse(readFileSync(await saved.path(), 'utf8'))).toEqual(JSON.parse(demo));
  });
});

describe('the roster', () => {
  test('copies, puts away and brings back, and finds by part of a name', async () => {
    await page.getByRole('button', { name: /^More for .*Rowan/ }).click();
    await page.getByRole('menuitem', { name: 'Duplicate' }).click();
    await expect.poll(names).toContain('Invented player: Rowan Ashdown (copy)');

    await page.getByRole('button', { name: /^More for .*copy/ }).click();
    await page.getByRole('menuitem', { name: 'Archive' }).click();
    await expect.poll(names).not.toContain('Invented player: Rowan Ashdown (copy)');
    await page.getByRole('radio', { name: 'Archived' }).check();
    await page.getByRole('button', { name: /^More for .*copy/ }).click();
    await page.getByRole('menuitem', { name: 'Bring back' }).click();
    await page.getByText('Nobody is archived.').waitFor();
    await page.getByRole('radio', { name: 'In use' }).check();

    await page.keyboard.press('/');
    await page.getByRole('searchbox', { name: 'Search names and notes' }).fill('drop');
    await expect.poll(names).toEqual(['Invented player: Robin Dropped']);
    await page.getByRole('searchbox').fill('');
  });
});

describe('undo', () => {
  test('takes back the newest edit after the program was ended and started again, and names it', async () => {
    await page.getByRole('link', { name: 'Invented player: Robin Dropped' }).click();
    const carry = () => page.getByRole('textbox', { name: 'Carry, yd: 7-iron' });
    await carry().fill('140');
    await carry().press('Enter');
    await expect.poll(() => page.getByRole('row', { name: /135–145 stated/ }).count()).toBe(1);

    await program.restart();
    ({ page, complaints } = await program.openWindow());
    await page.getByRole('link', { name: 'Invented player: Robin Dropped' }).click();
    expect(await carry().inputValue()).toBe('140');

    await page.keyboard.press('Control+z');
    await page
      .getByText(/^Taken back: .*carry/)
      .first()
      .waitFor();
    await expect.poll(() => carry().inputValue()).toBe('132');

    await page.keyboard.press('Control+Shift+Z');
    await page
      .getByText(/^Done again: .*carry/)
      .first()
      .waitFor();
    await expect.poll(() => carry().inputValue()).toBe('140');
    expect(complaints).toEqual([]);
  });

  test('leaves a field that is being written to itself', async () => {
    const loft = page.getByRole('textbox', { name: 'Loft °: 7-iron' });
    await loft.click();
    await page.keyboard.type('9');
    await page.keyboard.press('Control+z');
    expect(await page.getByRole('textbox', { name: 'Carry, yd: 7-iron' }).inputValue()).toBe('140');
    await loft.press('Escape');
    expect(await loft.inputValue()).toBe('31');
  });
});

describe('when nobody answers', () => {
  test('it is said, what was read stays in sight, and what was written too', async () => {
    await program.endHost();
    const carry = page.getByRole('textbox', { name: 'Carry, yd: 7-iron' });
    await carry.fill('150');
    await carry.press('Enter');
    await page
      .getByRole('alert')
      .getByText(/Loftledger does not answer/)
      .waitFor();
    expect(await carry.inputValue()).toBe('150');
    expect(await page.getByRole('heading', { level: 1 }).innerText()).toContain('Robin Dropped');
  });
});
