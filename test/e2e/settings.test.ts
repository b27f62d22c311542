import AxeBuilder from '@axe-core/playwright';
import type { Page } from 'playwright';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { startProgram, type Program } from './support/program.ts';

let program: Program;
let page: Page;
let complaints: string[];

beforeAll(async () => {
  program = await startProgram();
  ({ page, complaints } = await program.openWindow());
});

afterAll(() => (program as Program | undefined)?.close());

const GROUPS = [
  'look',
  'units',
  'air',
  'limits',
  'costs',
  'courses',
  'prices',
  'records',
  'erase',
  'about',
] as const;
type Group = (typeof GROUPS)[number];

const group = (name: Group) => page.locator(`[data-group=${name}]`);
const drawer = () => page.locator('#settings');

async function unfold(...names: Group[]): Promise<void> {
  if ((await drawer().count()) === 0) await page.locator('#settings-button').click();
  for (const name of GROUPS) {
    const isOpen = (await group(name).getAttribute('open')) !== null;
    if (isOpen !== names.includes(name)) await group(name).locator('summary').click();
  }
}

async function openDemo(): Promise<void> {
  await page.getByRole('link', { name: 'Players' }).click();
  await page.getByRole('button', { name: 'Open the demo', exact: true }).click();
  await page.getByRole('img', { name: /^Ladder/ }).waitFor();
}

const alert = () => page.getByRole('alertdialog');
const toast = (text: string | RegExp) => page.getByRole('status').getByText(text);

describe('before anybody is there', () => {
  test('what belongs to a bag says that it needs one; the rest stands', async () => {
    await unfold(...GROUPS);
    await expect.poll(() => group('units').textContent()).toContain('Open a player first');
    expect(await group('courses').textContent()).toContain('Open a player first');
    await expect.poll(() => group('erase').textContent()).toContain('Nobody is on the roster.');
    await expect.poll(() => group('records').textContent()).toContain('There is no backup yet.');
    await expect.poll(() => group('about').textContent()).toContain('browser host');
    expect(await group('limits').getByRole('row').count()).toBe(5);
    await page.keyboard.press('Escape');
    await expect.poll(() => drawer().count()).toBe(0);
    expect(await page.evaluate(() => document.activeElement?.id)).toBe('settings-button');
  });
});

describe('what plans are reckoned with', () => {
  test('a changed limit changes the plan, says so, and is taken back', async () => {
    await openDemo();
    const marks = () => page.getByRole('img', { name: /^Ladder/ }).getAttribute('aria-label');
    const before = await marks();
    await unfold('limits');
    // The demo swings 92 mph: its row is the third.
    const wide = page.getByLabel('wide over, from 90 mph', { exact: true });
    await expect.poll(() => wide.inputValue()).toBe('16');
    await wide.fill('8');
    await wide.press('Tab');
    await group('limits').getByText('usual 16').waitFor();
    await group('limits').getByText('1 value is your own.').waitFor();
    await page.getByRole('button', { name: 'Close the settings' }).click();
    await expect.poll(marks).not.toBe(before);
    await page.getByRole('link', { name: 'Spend', exact: true }).click();
    await page.getByText('reckoned with the user’s own gap limits').waitFor();
    await unfold('limits');
    await page.getByRole('button', { name: 'Back to the usual values' }).click();
    await group('limits').getByText('All values are the usual ones.').waitFor();
    await expect.poll(() => page.getByText('user’s own gap limits').count()).toBe(0);
    await page.getByRole('button', { name: 'Undo', exact: true }).last().click();
    await page.getByText('reckoned with the user’s own gap limits').waitFor();
    await page.keyboard.press('Control+z');
    await expect.poll(() => page.getByText('user’s own gap limits').count()).toBe(0);
  });

  test('a contradiction is said beside the field, and the old value holds', async () => {
    await unfold('limits');
    const crowded = page.getByLabel('crowded under, from 90 mph', { exact: true });
    await crowded.fill('40');
    await crowded.press('Tab');
    await group('limits')
      .getByText(/cannot be wide from/)
      .waitFor();
    await crowded.press('Escape');
    await expect.poll(() => crowded.inputValue()).toBe('5');
  });

  test('air of the player’s own', async () => {
    await unfold('air');
    await group('air').getByLabel('This player has another air').check();
    await expect.poll(() => group('air').getByLabel('Altitude, m').count()).toBe(2);
    const altitude = group('air').getByLabel('Altitude, m').last();
    await altitude.fill('1500');
    await altitude.press('Tab');
    await expect.poll(() => group('air').getByLabel('Altitude, m').first().inputValue()).toBe('0');
    await group('air').getByLabel('This player has another air').uncheck();
    await group('air').getByText('As for every player.').waitFor();
  });

  test('a course is laid out, changed, picked, and struck out', async () => {
    await unfold('courses');
    await page.getByRole('button', { name: 'Add a course' }).click();
    await group('courses').getByLabel('Name').fill('Home');
    await page.getByRole('button', { name: 'Lay it out', exact: true }).click();
    const first = page.getByLabel('Length, yd, hole 1', { exact: true });
    await first.fill('1200');
    await first.press('Tab');
    await group('courses')
      .getByText(/Hole 1 must be between 30 and 1000 yd long/)
      .waitFor();
    await first.fill('401');
    await first.press('Tab');
    const pick = page.getByLabel(/^Course of/);
    await expect.poll(() => pick.locator('option').count()).toBe(2);
    await pick.selectOption({ index: 1 });
    await group('courses')
      .getByText(/picked for 1 bag/)
      .waitFor();
    await page.getByRole('button', { name: 'Strike out Home' }).click();
    await toast('Struck out: the course Home.').waitFor();
    await expect.poll(() => pick.inputValue()).toBe('usual');
  });

  test('a cost is added, switched off and struck out', async () => {
    await unfold('costs');
    const ofBag = group('costs').getByRole('group', { name: /^Of the bag/ });
    await ofBag.getByRole('button', { name: 'Add a cost' }).click();
    await ofBag.getByLabel('Kind').selectOption('bend');
    await ofBag.getByLabel('What for: Bending a club').fill('sand wedge');
    await ofBag.getByLabel('Amount').fill('four');
    await ofBag.getByRole('button', { name: 'Add it' }).click();
    await ofBag.getByText('is not a number').waitFor();
    await ofBag.getByLabel('Amount').fill('4.50');
    await ofBag.getByRole('button', { name: 'Add it' }).click();
    const line = ofBag.getByLabel('Bending a club: sand wedge, GBP');
    await expect.poll(() => line.inputValue()).toBe('4.5');
    await ofBag.getByLabel('Bending a club: sand wedge counts').uncheck();
    await ofBag.getByRole('button', { name: 'Strike out: Bending a club: sand wedge' }).click();
    await expect.poll(() => line.count()).toBe(0);
  });

  test('another currency converts nothing, and asks first', async () => {
    await unfold('units');
    const money = page.getByLabel('Money in');
    await money.selectOption('EUR');
    await alert()
      .getByText(/amounts of this bag are in GBP \(.*budget.*\)/)
      .waitFor();
    await alert().getByText('45 GBP becomes 45 EUR').waitFor();
    // The button that changes nothing has the focus, and Escape is the same.
    expect(await page.evaluate(() => document.activeElement?.textContent)).toBe('Leave it in GBP');
    await page.keyboard.press('Escape');
    await expect.poll(() => alert().count()).toBe(0);
    expect(await money.inputValue()).toBe('GBP');
    expect(await drawer().count()).toBe(1);
    await money.selectOption('EUR');
    await alert().getByRole('button', { name: 'Keep the numbers, in EUR' }).click();
    await toast('Money of this bag is in EUR now.').waitFor();
    await expect.poll(() => money.inputValue()).toBe('EUR');
    await page.keyboard.press('Escape');
    await page.keyboard.press('Control+z');
    await toast(/^Taken back/).waitFor();
  });
});

describe('records', () => {
  test('a backup is made, restored, and the window begins anew', async () => {
    await unfold('records');
    await page.getByRole('button', { name: 'Back up now' }).click();
    await group('records').getByText('made by hand').waitFor();
    await page.keyboard.press('Escape');
    await page.getByRole('link', { name: 'Players' }).click();
    await page.getByRole('button', { name: 'New player' }).click();
    await page.getByLabel('Name', { exact: true }).fill('Came Later');
    await page.getByLabel('Handicap', { exact: true }).fill('20');
    await page.getByRole('button', { name: 'Lay out the bag' }).click();
    await page.getByRole('heading', { level: 1, name: /^Bag/ }).waitFor();
    await unfold('records');
    await page.getByRole('button', { name: /^Restore the backup of/ }).click();
    await alert().getByText('a backup of today is made first').waitFor();
    await alert().getByRole('button', { name: 'Restore it' }).click();
    await page.getByRole('heading', { level: 1, name: /^Players/ }).waitFor();
    await toast(/^The records are those of/).waitFor();
    await page.getByText('Rowan Ashdown').first().waitFor();
    expect(await page.getByText('Came Later').count()).toBe(0);
    await unfold('records');
    await group('records').getByText('before a restore').waitFor();
  });

  test('the data folder is shown; what this host cannot open can be copied', async () => {
    await unfold('records');
    expect(await group('records').textContent()).toContain('loftledger-e2e-');
    expect(await page.getByRole('button', { name: 'Open the folder' }).count()).toBe(0);
    await page.getByRole('button', { name: 'Copy the path' }).waitFor();
    await page.getByRole('button', { name: 'Save all records as one file' }).click();
    await group('records')
      .getByText(/^Saved as .*exports.*\.loftledger\.$/)
      .waitFor();
  });

  test('a backup is deleted only after a question', async () => {
    await unfold('records');
    const rows = group('records').locator('tbody tr');
    const before = await rows.count();
    await page
      .getByRole('button', { name: /^Delete the backup/ })
      .first()
      .click();
    await alert().getByRole('button', { name: 'Cancel' }).click();
    expect(await rows.count()).toBe(before);
    await page
      .getByRole('button', { name: /^Delete the backup/ })
      .first()
      .click();
    await alert().getByRole('button', { name: 'Delete it' }).click();
    await expect.poll(() => rows.count()).toBe(before - 1);
  });
});

/** What axe finds, as short lines that say where. */
async function violations(): Promise<string[]> {
  const { violations: found } = await new AxeBuilder({ page })
    .include('#settings')
    .options({ resultTypes: ['violations'] })
    .analyze();
  return found.flatMap(({ id, nodes }) => nodes.map((node) => `${id}: ${node.html.slice(0, 120)}`));
}

describe('every group, both themes, both languages', () => {
  test.each([
    ['English', 'light'],
    ['English', 'lamp-lit'],
    ['Deutsch', 'lamp-lit'],
    ['Deutsch', 'light'],
  ] as const)('%s, %s: nothing that axe finds, and nothing beside its place', async (language, theme) => {
    if ((await page.getByRole('link', { name: /^(Players|Spieler)$/ }).count()) > 0) {
      await page.getByRole('link', { name: /^(Players|Spieler)$/ }).click();
      await page.getByText('Rowan Ashdown').first().click();
    }
    await unfold('look');
    await group('look').locator('select').selectOption({ label: language });
    await group('look').locator(`input[value=${theme}]`).check();
    for (const name of GROUPS) {
      await unfold(name);
      await expect
        .poll(() =>
          group(name)
            .getByText(/^(Reading|Wird gelesen)/)
            .count(),
        )
        .toBe(0);
      expect(await violations(), `${name} for axe`).toEqual([]);
      const wide = await drawer().evaluate((element) => element.scrollWidth - element.clientWidth);
      expect(wide, `${name} is wider than the drawer`).toBeLessThanOrEqual(0);
    }
    await unfold('look');
    await group('look').locator('select').selectOption({ label: 'English' });
    await page.keyboard.press('Escape');
  });
});

describe('erasing', () => {
  test('lists the backups that still hold the player, and leaves nobody', async () => {
    await unfold('erase');
    await group('erase').locator('select').selectOption({ index: 1 });
    await page.getByRole('button', { name: 'Erase …' }).click();
    await alert().getByText('Pain and notes are health data').waitFor();
    await alert()
      .getByText(/made by hand/)
      .waitFor();
    await alert().getByRole('button', { name: 'Keep the player' }).click();
    await expect.poll(() => alert().count()).toBe(0);
    await page.getByRole('button', { name: 'Erase …' }).click();
    await alert().getByLabel('Delete these backups too').check();
    await alert()
      .getByRole('button', { name: /^Erase Invented player/ })
      .click();
    await toast(/is erased\.$/).waitFor();
    await group('erase').getByText('Nobody is on the roster.').waitFor();
    await unfold('records');
    await group('records').getByText('There is no backup yet.').waitFor();
    await page.keyboard.press('Escape');
    await page.getByRole('heading', { level: 1, name: /^Players/ }).waitFor();
    await page.keyboard.press('Control+z');
    await toast('There is nothing to take back.').waitFor();
  });

  test('nothing was complained of', () => {
    expect(complaints).toEqual([]);
  });
});
