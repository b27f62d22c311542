import type { Page } from 'playwright';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { overflow, tooSmall, violations } from './support/looks.ts';
import { startProgram, type Program } from './support/program.ts';

let program: Program;
let page: Page;
let complaints: string[];

beforeAll(async () => {
  program = await startProgram();
  ({ page, complaints } = await program.openWindow());
});

afterAll(() => (program as Program | undefined)?.close());

const panel = () => page.getByRole('dialog', { name: 'Find or do' });
const field = () => panel().getByRole('combobox', { name: 'What to find or do' });
const line = (name: string | RegExp) => panel().getByRole('option', { name });
const isFocused = (id: string) => page.evaluate((wanted) => document.activeElement?.id === wanted, id);

/** The text of the line that Enter would take, as the field tells a screen reader. */
function chosen(): Promise<string> {
  // At once: the line may be gone a moment later.
  return field().evaluate((one) => {
    const line = document.getElementById(one.getAttribute('aria-activedescendant') ?? '');
    return (line?.innerText ?? '').replaceAll(/\s+/g, ' ').trim();
  });
}

async function open(): Promise<void> {
  await page.keyboard.press('Control+k');
  await expect.poll(() => field().evaluate((one) => one === document.activeElement)).toBe(true);
}

/** Typed as a person would, and not taken before it is found. */
async function take(typed: string, name: RegExp): Promise<void> {
  await open();
  // Until the last letter is answered, another line may still come first and be taken by Enter.
  const answered = page.waitForResponse((response) =>
    (response.request().postData() ?? '').includes(`"text":${JSON.stringify(typed.trim())}`),
  );
  await page.keyboard.type(typed);
  await answered;
  await line(name).first().waitFor();
  await expect
    .poll(
      async () => {
        const now = await chosen();
        if (!name.test(now)) await page.keyboard.press('ArrowDown');
        return now;
      },
      { timeout: 10_000 },
    )
    .toMatch(name);
  await page.keyboard.press('Enter');
  await expect.poll(() => panel().count()).toBe(0);
}

const heading = (name: RegExp) => page.getByRole('heading', { level: 1, name }).waitFor();

describe('with the keyboard alone', () => {
  test('opens, says what it is, and gives the focus back where it was', async () => {
    await page.getByText('Which gaps in the bag matter', { exact: false }).waitFor();
    await page.getByRole('button', { name: 'New player' }).first().focus();
    const before = await page.evaluateHandle(() => document.activeElement);
    await open();
    expect(await page.getByRole('button', { name: 'Find', exact: true }).getAttribute('aria-expanded')).toBe(
      'true',
    );
    await expect.poll(chosen).toBe('Players Alt+1');
    await page.keyboard.press('Escape');
    await expect.poll(() => panel().count()).toBe(0);
    expect(await before.evaluate((one) => one === document.activeElement)).toBe(true);
    // Its own shortcut closes it too.
    await open();
    await page.keyboard.press('Control+k');
    await expect.poll(() => panel().count()).toBe(0);
    expect(await before.evaluate((one) => one === document.activeElement)).toBe(true);
  });

  test('arrows go round, pages from group to group; what cannot be done is passed over', async () => {
    await open();
    await page.keyboard.press('ArrowUp');
    await expect.poll(chosen).toBe('Settings: About');
    await page.keyboard.press('ArrowDown');
    await expect.poll(chosen).toBe('Players Alt+1');
    await page.keyboard.press('PageDown');
    await expect.poll(chosen).toBe('New player');
    // Undo and redo have nothing to do yet.
    await page.keyboard.press('ArrowDown');
    await expect.poll(chosen).toBe('Print this page Ctrl+P');
    await page.keyboard.press('PageDown');
    await expect.poll(chosen).toBe('Open the settings');
    await page.keyboard.press('PageUp');
    await expect.poll(chosen).toBe('New player');
    expect(await line(/^Undo/).getAttribute('aria-disabled')).toBe('true');
    expect(await line(/^Undo/).innerText()).toMatch(/nothing to take back/);
    await page.keyboard.press('Escape');
  });

  test('a command is found by another word for it, and done', async () => {
    await take('example', /^Open the demo/);
    await page.getByRole('img', { name: /^Ladder/ }).waitFor();
    await take('plan', /^Spend/);
    await heading(/^Spend/);
    expect(await isFocused('page-heading')).toBe(true);
    await take('add', /^New player/);
    await heading(/^Players/);
    await expect.poll(() => page.evaluate(() => document.activeElement?.tagName)).toBe('INPUT');
    await page.keyboard.press('Escape');
  });

  test('a player is found with a slip of the pen, and leads to the bag', async () => {
    await page.keyboard.press('Alt+1');
    const name = (await page.getByRole('row').nth(1).getByRole('rowheader').innerText()).trim();
    const letters = [...name.toLowerCase()];
    // The second and the third letter stand the wrong way round.
    const slip = [letters[0], letters[2], letters[1], ...letters.slice(3)].join('');
    await take(slip, new RegExp(`^${name}$`));
    await heading(new RegExp(`^Bag.*${name}`));
    expect(await isFocused('page-heading')).toBe(true);
  });

  test('a club leads to its row, an archetype to its line of the price book, a note to itself', async () => {
    await take('gap wedge', /^GW/);
    await expect
      .poll(() => page.evaluate(() => document.activeElement?.getAttribute('aria-label')))
      .toMatch(/^Club: /);
    expect(await page.evaluate(() => (document.activeElement as HTMLInputElement).value)).toBe('GW');

    await take('22 hybrid super', /^22° hybrid \(super game improvement\)/);
    await heading(/^Prices/);
    await expect
      .poll(() => page.evaluate(() => document.activeElement?.getAttribute('aria-label')))
      .toMatch(/22° hybrid \(super game improvement\)/);
    await page.getByText('Nothing is noted on this club yet.').first().waitFor();
  });

  test('a note of a diary leads to itself, unfolded', async () => {
    await page.keyboard.press('Alt+2');
    await page.locator('summary', { hasText: 'Diary' }).click();
    const blank = page.getByLabel('New note');
    await blank.fill('Thins the long irons from a tight lie.');
    await page.getByRole('button', { name: 'Keep the note' }).click();
    await page.getByRole('list', { name: 'Notes, the newest first' }).waitFor();
    await page.locator('summary', { hasText: 'Diary' }).click();
    await page.keyboard.press('Alt+5');
    await take('tight lie', /^Thins the long irons/);
    await expect
      .poll(() => page.evaluate(() => document.activeElement?.closest('.diary li')?.textContent ?? ''))
      .toMatch(/Strike out/);
  });

  test('nothing found is said, with a way on', async () => {
    await open();
    await page.keyboard.type('zanzibar');
    await panel().getByText('Nothing here goes by “zanzibar”.').waitFor();
    expect(await panel().getByRole('listbox').count()).toBe(0);
    expect(await violations(page)).toEqual([]);
    // Undo is the field's own while something is typed.
    await page.keyboard.press('Control+z');
    await expect.poll(() => field().inputValue()).not.toBe('zanzibar');
    expect(await page.getByText('There is nothing to take back').count()).toBe(0);
    await page.keyboard.press('Escape');
  });

  test('undo and theme are done from anywhere, and the focus stays where it was', async () => {
    await page.keyboard.press('Alt+2');
    const handicap = page.getByLabel('Handicap', { exact: true });
    await handicap.fill('11');
    await handicap.press('Tab');
    await handicap.focus();
    await take('take back', /^Undo: handicap/);
    await expect.poll(() => handicap.inputValue()).not.toBe('11');
    expect(await handicap.evaluate((one) => one === document.activeElement)).toBe(true);
    await take('dark', /^Light of the page: Lamp-lit/);
    await expect.poll(() => page.getAttribute('html', 'data-theme')).toBe('lamp-lit');
    await open();
    await page.keyboard.type('lamp');
    await expect.poll(() => line(/Lamp-lit/).getAttribute('aria-disabled')).toBe('true');
    await page.keyboard.press('Escape');
  });

  test('a group of the settings is opened at once; the keys are listed at the foot', async () => {
    await take('backup', /^Settings: Records and backups/);
    await page.getByRole('complementary', { name: 'Settings' }).waitFor();
    await expect
      .poll(() => page.evaluate(() => document.activeElement?.textContent.trim()))
      .toBe('Records and backups');
    // From within the drawer and back into it.
    await open();
    await page.keyboard.press('Escape');
    expect(await page.evaluate(() => document.activeElement?.closest('#settings') !== null)).toBe(true);
    await page.keyboard.press('Escape');
    await take('shortcuts', /^Show all keys/);
    await page.getByText('Find anything, or have something done').waitFor();
    expect(await page.evaluate(() => document.activeElement?.tagName)).toBe('SUMMARY');
  });
});

describe('how it looks', () => {
  test.each(['Light', 'Lamp-lit'])(
    '%s: nothing that axe finds, nothing too small, at twice the size too',
    async (theme) => {
      await open();
      await page.keyboard.type(theme === 'Light' ? 'page light' : 'page lamp');
      await page.keyboard.press('Enter');
      for (const typed of ['', 'hybrid']) {
        for (const viewport of [
          { width: 1280, height: 800 },
          { width: 640, height: 400 },
        ]) {
          await page.setViewportSize(viewport);
          await open();
          await page.keyboard.type(typed);
          await line(typed === '' ? /^Players/ : /hybrid/)
            .first()
            .waitFor();
          expect(await violations(page)).toEqual([]);
          expect(await tooSmall(page)).toEqual([]);
          expect(await overflow(page)).toBe(0);
          // Each line is a target, and the last is reached.
          const sizes = await panel()
            .getByRole('option')
            .evaluateAll((all) => all.map((one) => one.getBoundingClientRect().height));
          expect(Math.min(...sizes)).toBeGreaterThanOrEqual(24);
          await page.keyboard.press('ArrowUp');
          await expect
            .poll(async () => {
              const [last, frame] = [await panel().getByRole('option').last().boundingBox(), viewport.height];
              return last !== null && last.y > 0 && last.y + last.height <= frame;
            })
            .toBe(true);
          await page.keyboard.press('Escape');
        }
      }
      await page.setViewportSize({ width: 1280, height: 800 });
    },
  );

  test('speaks German', async () => {
    await take('german', /^Language: Deutsch/);
    await page.getByRole('button', { name: 'Suchen', exact: true }).click();
    const german = page.getByRole('dialog', { name: 'Suchen oder tun' });
    await german.getByRole('combobox').waitFor();
    await page.keyboard.type('luck');
    await german.getByRole('option', { name: /^Leiter/ }).waitFor();
    expect(await violations(page)).toEqual([]);
    await page.keyboard.press('Escape');
    expect(await isFocused('find-button')).toBe(true);
  });
});

test('the pointer opens and closes it, and a press beside it closes it', async () => {
  const german = page.getByRole('dialog');
  await page.locator('#find-button').click();
  await german.waitFor();
  await page.locator('#find-button').click();
  await expect.poll(() => german.count()).toBe(0);
  await page.locator('#find-button').click();
  await german.waitFor();
  await page.mouse.click(5, 700);
  await expect.poll(() => german.count()).toBe(0);
});

test('the browser has nothing to complain of', () => {
  expect(complaints).toEqual([]);
});
