import type { Page } from 'playwright';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { bagOf, chooseFiles, demoShots } from '../support/files.ts';
import { crampedWords, overflow, tooSmall, violations } from '../support/looks.ts';
import { startProgram, type Program } from '../support/program.ts';

let program: Program;
let page: Page;
let complaints: string[];

beforeAll(async () => {
  program = await startProgram();
  ({ page, complaints } = await program.openWindow());
  await page.getByRole('button', { name: 'Open the demo', exact: true }).click();
  await page.getByRole('img', { name: /^Ladder/ }).waitFor();
  await page.getByRole('link', { name: 'Players' }).click();
  await page.getByRole('button', { name: 'Files' }).click();
});

afterAll(() => (program as Program | undefined)?.close());

const LONG = 'Aurelia Longstocking-Featherstonehaugh '.repeat(4).trim();

/** Each kind of file with something wrong in it, so that all that a preview can show is there. */
const FILES: [string, Record<string, string>, () => Promise<void>][] = [
  [
    'bag files',
    { 'a.json': bagOf(LONG), 'demo.json': bagOf('Invented player: Rowan Ashdown'), 'wrong.json': '{}' },
    () => page.getByRole('alert').getByText('wrong.json was not taken in').waitFor(),
  ],
  [
    'prices',
    { 'p.csv': 'archetype,price,currency,shelf\nhybrid-22-t3,45,GBP,1\nx,1,GBP,2\n' },
    () => page.getByText('1 row cannot be used').first().waitFor(),
  ],
  [
    'a roster',
    { 'r.csv': `name,handicap\n${LONG},1\nInvented player: Rowan Ashdown,1\nBea,x\n` },
    () => page.getByText('1 row cannot be used').first().waitFor(),
  ],
  [
    'shots',
    { 's.csv': demoShots.replace('270.8', '120.8').replace('262.3', 'x') },
    () => page.getByText('What it comes to').first().waitFor(),
  ],
  ['what is none of these', { 'x.md': 'Dear coach' }, () => page.getByRole('alert').first().waitFor()],
];

async function putAway(): Promise<void> {
  await page
    .getByRole('button', { name: /^(Leave it out|Leave them out|Put this away)$/ })
    .first()
    .click();
}

for (const theme of ['Light', 'Lamp-lit'] as const) {
  describe(theme.toLowerCase(), () => {
    test('the page before a file is chosen', async () => {
      await page.getByRole('button', { name: 'Settings' }).click();
      await page.getByRole('radio', { name: theme, exact: true }).check();
      await page.keyboard.press('Escape');
      expect(await violations(page)).toEqual([]);
      expect(await tooSmall(page)).toEqual([]);
    });

    test.each(FILES)('the preview of %s', async (_, files, shown) => {
      await chooseFiles(page, files);
      await shown();
      expect(await violations(page)).toEqual([]);
      expect(await tooSmall(page)).toEqual([]);
      await putAway();
    });
  });
}

describe('the room that there is', () => {
  test.each(FILES)('%s is never wider than the window', async (_, files, shown) => {
    await chooseFiles(page, files);
    await shown();
    for (const [width, height] of [
      [480, 800],
      [640, 400],
      [1024, 700],
    ] as const) {
      await page.setViewportSize({ width, height });
      expect(`${String(width)}: ${String(await overflow(page))}`).toBe(`${String(width)}: 0`);
      expect(await crampedWords(page)).toEqual([]);
      expect(await tooSmall(page)).toEqual([]);
    }
    await putAway();
  });

  test('the browser has nothing to complain of', () => {
    expect(complaints).toEqual([]);
  });
});
