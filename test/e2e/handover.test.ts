import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import type { Download, Page } from 'playwright';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { png } from '../unit/service/handover/pictures.ts';
import { startProgram, type Program, type Window } from './support/program.ts';

let program: Program;
let window: Window;
let page: Page;
let files = '';

beforeAll(async () => {
  files = mkdtempSync(join(tmpdir(), 'loftledger-e2e-files-'));
  program = await startProgram();
  window = await program.openWindow();
  ({ page } = window);
});

afterAll(async () => {
  await (program as Program | undefined)?.close();
  rmSync(files, { recursive: true, force: true });
});

const turn = (name: string, of: Page = page) =>
  of.getByRole('navigation').getByRole('link', { name, exact: true }).click();
const document = (of: Page = page) => of.frameLocator('iframe');
const verdict = (of: Page = page) => document(of).locator('.verdict');

async function saved(button: string): Promise<{ name: string; bytes: Buffer }> {
  const [download] = (await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: button, exact: true }).click(),
  ])) as [Download, unknown];
  const file = join(files, download.suggestedFilename());
  await download.saveAs(file);
  return { name: download.suggestedFilename(), bytes: readFileSync(file) };
}

/** Puts a counter in the place of printing: of the window, and of the document in it. */
const countPrints = () =>
  page.evaluate(() => {
    const counts = { window: 0, document: 0 };
    const frame = globalThis.document.querySelector('iframe')?.contentWindow;
    globalThis.print = () => void (counts.window += 1);
    if (frame) frame.print = () => void (counts.document += 1);
    Object.assign(globalThis, { counts });
  });
const prints = () =>
  page.evaluate(() => (globalThis as unknown as { counts: { window: number; document: number } }).counts);

describe('without a player', () => {
  test('it says what to do, and offers documents for several', async () => {
    await turn('Hand-over');
    await page.getByRole('heading', { name: 'No player is open' }).waitFor();
    await page.getByText('Nobody is on the roster.').waitFor();
    await countPrints();
    await page.keyboard.press('Control+P');
    // There is no document yet, so it is the page that is printed, like any other, two frames later.
    await expect.poll(prints, { timeout: 5000 }).toEqual({ window: 1, document: 0 });
    // Nothing was printed in truth, as where printing is not allowed: the page must not stay as narrow as paper.
    expect(await page.locator('html.on-paper').count()).toBe(0);
  });
});

describe('from a new bag to a document', () => {
  test('a few entries give a document with verdict, price and reason', async () => {
    await turn('Players');
    await page.getByRole('button', { name: 'New player' }).click();
    await page.getByRole('textbox', { name: 'Name' }).fill('Vera Invented');
    await page.getByRole('textbox', { name: 'Handicap' }).fill('18.5');
    await page.getByRole('combobox', { name: 'Money in' }).selectOption('EUR');
    await page.getByRole('button', { name: 'Lay out the bag' }).click();
    await page.getByRole('textbox', { name: 'Driver speed, mph' }).fill('90');
    const write = async (field: string, text: string) => {
      await page.getByRole('textbox', { name: field, exact: true }).fill(text);
      await page.keyboard.press('Enter');
    };
    for (const [club, carry] of [
      ['Driver', '200'],
      ['5-wood', '178'],
      ['6-iron', '138'],
      ['7-iron', '128'],
    ]) {
      await write(`Carry, yd: ${club ?? ''}`, carry ?? '');
    }
    for (const club of ['4-hybrid', '5-iron']) {
      await page.getByRole('button', { name: `Strike out ${club}` }).click();
      await expect.poll(() => page.getByRole('button', { name: `Strike out ${club}` }).count()).toBe(0);
    }
    await turn('Hand-over');
    await page.getByText('No used prices are noted, so the document can plan nothing to buy.').waitFor();
    await turn('Bag');
    await write('Budget, EUR', '120');
    await page.getByRole('combobox', { name: 'Add a price for' }).fill('22 hybrid game');
    await page.getByRole('option', { name: '22° hybrid (game improvement)', exact: true }).click();
    await write('low: 22° hybrid (game improvement)', '40');
    await write('likely: 22° hybrid (game improvement)', '55');
    await write('high: 22° hybrid (game improvement)', '70');

    await page.keyboard.press('Alt+7');
    await page.getByRole('heading', { level: 1, name: /^Hand-over.*Vera Invented/ }).waitFor();
    await verdict().waitFor();
    expect(await verdict().innerText()).toMatch(/^Buy 22° hybrid \(game improvement\) for about €55 in all/);
    expect(await document().getByRole('heading', { level: 1 }).innerText()).toBe(
      'Bag plan for Vera Invented',
    );
    expect(await document().getByText('goes between 5-wood and 6-iron').count()).toBe(1);
    expect(await page.getByTitle('The document: Bag plan for Vera Invented').count()).toBe(1);
  });

  test('is printed alone, by the button and by the key, wherever the focus is', async () => {
    await countPrints();
    await page.getByRole('button', { name: 'Print', exact: true }).click();
    expect(await prints()).toEqual({ window: 0, document: 1 });
    await page.getByRole('textbox', { name: 'Cover note' }).focus();
    await page.keyboard.press('Control+p');
    expect(await prints()).toEqual({ window: 0, document: 2 });
    await verdict().click();
    await page.keyboard.press('Control+p');
    await expect.poll(prints).toEqual({ window: 0, document: 3 });
    // The window's other keys reach it from there, too.
    await page.keyboard.press('Alt+2');
    await page.getByRole('heading', { level: 1, name: /^Bag/ }).waitFor();
    await page.keyboard.press('Alt+7');
    await verdict().waitFor();
  });

  test('is saved as PDF, among the downloads and the exports', async () => {
    const { name, bytes } = await saved('PDF');
    expect(name).toMatch(/^Bag-plan-for-Vera-Invented-[\d-T]+\.pdf$/);
    expect(bytes.subarray(0, 5).toString()).toBe('%PDF-');
    const said = await page.getByText(/^✓\s*Saved as/).innerText();
    const kept = /and kept as (.*)\.$/.exec(said)?.[1] ?? '';
    expect(readFileSync(kept)).toEqual(bytes);
    expect(dirname(kept)).toMatch(/exports$/);
  });

  test('is saved as Markdown, CSV and plan file with the same facts', async () => {
    const markdown = await saved('Markdown');
    expect(markdown.name).toMatch(/\.md$/);
    expect(markdown.bytes.toString()).toContain('**Buy 22° hybrid (game improvement) for about €55 in all');
    const csv = await saved('CSV');
    expect(csv.bytes.toString()).toMatch(/^\uFEFFsection,no\.,item,/);
    const plan = await saved('Plan file');
    expect(JSON.parse(plan.bytes.toString())).toMatchObject({
      format: 'loftledger-plan',
      plan: { cash: 55 },
    });
  });

  test('every text of it is at least 12 px high on the screen, and it is as high as it needs', async () => {
    for (const width of [1280, 1024, 480]) {
      await page.setViewportSize({ width, height: 800 });
      await expect.poll(overhang).toEqual({ x: 0, y: 0 });
      const small = await page.evaluate(() => {
        const inside = globalThis.document.querySelector('iframe')?.contentDocument;
        return [...(inside?.querySelectorAll('body *') ?? [])].flatMap((element) => {
          const hasText = [...element.childNodes].some(
            (node) => node.nodeType === 3 && node.textContent?.trim(),
          );
          if (!hasText || element.getClientRects().length === 0) return [];
          const drawn = element.closest('svg');
          const scale = drawn ? (drawn.getScreenCTM()?.a ?? 1) : element.currentCSSZoom;
          const px = parseFloat(getComputedStyle(element).fontSize) * scale;
          return px < 11.95 ? [`${String(px)}: ${element.textContent ?? ''}`] : [];
        });
      });
      expect([width, small]).toEqual([width, []]);
    }
    await page.setViewportSize({ width: 1280, height: 800 });
  });
});

/** By how much the document is larger than its frame. */
const overhang = () =>
  page.evaluate(() => {
    const frame = globalThis.document.querySelector('iframe');
    const inside = frame?.contentDocument?.documentElement;
    if (!frame || !inside) return null;
    return { x: inside.scrollWidth - frame.clientWidth, y: inside.scrollHeight - frame.clientHeight };
  });

describe('what a coach adds', () => {
  test('stands in the document at once and is kept; it can be taken back', async () => {
    await page.getByRole('textbox', { name: 'Cover note' }).fill('Dear Vera,\n\nsee below.');
    await page.getByRole('textbox', { name: 'Name' }).fill('Coach Invented');
    await page.getByRole('textbox', { name: 'Contact' }).fill('Range 3');
    await page.getByLabel('Measure again on').fill('2027-02-28');
    await page.getByLabel('Measure again on').blur();
    await page.getByLabel('Paper').selectOption('letter');
    await document().getByText('28 February 2027, or as soon as').waitFor();
    for (const text of ['Dear Vera,', 'see below.', 'Coach Invented', 'Range 3']) {
      await document().getByText(text, { exact: true }).waitFor();
    }
    await page.getByRole('banner').getByRole('button', { name: 'Undo' }).click();
    await page.getByText('Taken back: letterhead: paper.').first().waitFor();
    await page.getByRole('banner').getByRole('button', { name: 'Undo' }).click();
    await document().getByText('May 2027, or as soon as').waitFor();
    expect(await page.getByLabel('Measure again on').inputValue()).toBe('');
    expect(window.complaints).toEqual([]);
    await program.restart();
    await page.close();
    window = await program.openWindow();
    ({ page } = window);
    await turn('Players');
    await page.getByRole('link', { name: 'Vera Invented' }).click();
    await turn('Hand-over');
    await document().getByText('Coach Invented').waitFor();
    expect(await page.getByRole('textbox', { name: 'Cover note' }).inputValue()).toBe(
      'Dear Vera,\n\nsee below.',
    );
    expect(await page.getByRole('textbox', { name: 'Contact' }).inputValue()).toBe('Range 3');
  });

  test('a picture is drawn anew, shown and taken out; what is none is refused', async () => {
    const input = page.locator('input[type=file][accept="image/*"]');
    writeFileSync(join(files, 'logo.png'), png(3000, 600));
    await input.setInputFiles(join(files, 'logo.png'));
    await page.getByText(/Picture: chosen, \d+ kB/).waitFor();
    const image = document().locator('header img');
    await image.waitFor();
    expect(await image.evaluate((one: HTMLImageElement) => [one.naturalWidth, one.naturalHeight])).toEqual([
      1063, 213,
    ]);
    writeFileSync(join(files, 'logo.svg'), '<svg xmlns="http://www.w3.org/2000/svg" onload="alert(1)"/>');
    await input.setInputFiles(join(files, 'logo.svg'));
    await page.getByText('logo.svg cannot be read as a picture. Choose a PNG or JPEG.').waitFor();
    await page.getByRole('button', { name: 'Take the picture out of the letterhead' }).click();
    await page.getByText('Picture: none').waitFor();
    await expect.poll(() => image.count()).toBe(0);
  });

  test('the document speaks the language that is chosen for the player', async () => {
    await page.getByLabel('Language of the document').selectOption({ label: 'German' });
    await document().getByRole('heading', { name: 'Schlägerplan für Vera Invented' }).waitFor();
    expect(await document().locator('html').getAttribute('lang')).toBe('de');
    await page.getByLabel('Language of the document').selectOption({ label: 'As this window (English)' });
    await document().getByRole('heading', { name: 'Bag plan for Vera Invented' }).waitFor();
  });

  test('a record of what was picked can be handed over as well', async () => {
    await turn('Side by side');
    await page
      .getByRole('textbox', { name: /^Why this one/ })
      .last()
      .fill('It is enough for now.');
    await page
      .getByRole('button', { name: /^Pick this one/ })
      .last()
      .click();
    await page.getByText('Picked:', { exact: false }).first().waitFor();
    await turn('Hand-over');
    const which = page.getByLabel('Which plan');
    await which.selectOption({ index: 1 });
    await document().getByText('The reason given: It is enough for now.', { exact: false }).waitFor();
    await which.selectOption({ label: 'The plan as it is now' });
    await expect.poll(() => document().getByText('The reason given', { exact: false }).count()).toBe(0);
  });
});

describe('what must not run', () => {
  const ATTACK = `<img src=x onerror="top.ran=1"><script>top.ran=1</script><style>*{display:none}</style>`;

  test('names and notes that hold HTML are shown as they were typed', async () => {
    const { page: other, complaints } = await program.openWindow();
    await turn('Players', other);
    await other.getByRole('button', { name: 'New player' }).click();
    await other.getByRole('textbox', { name: 'Name' }).fill(`Eve ${ATTACK}`);
    await other.getByRole('textbox', { name: 'Handicap' }).fill('18');
    await other.getByRole('button', { name: 'Lay out the bag' }).click();
    await other.getByRole('textbox', { name: 'Driver speed, mph' }).fill('90');
    await turn('Hand-over', other);
    await other.getByRole('textbox', { name: 'Cover note' }).fill(ATTACK);
    await other.getByRole('textbox', { name: 'Name' }).fill(ATTACK);
    await other.getByRole('textbox', { name: 'Name' }).blur();
    await expect.poll(() => document(other).getByText('<script>top.ran=1</script>').count()).toBe(3);
    expect(await document(other).locator('script, img, [onerror]').count()).toBe(0);
    expect(await document(other).locator('style').count()).toBe(1);
    expect(await other.evaluate(() => 'ran' in globalThis)).toBe(false);
    expect(complaints).toEqual([]);
    await other.getByRole('textbox', { name: 'Name' }).fill('');
    await other.getByRole('textbox', { name: 'Name' }).blur();
    await other.close();
  });

  test('were a page ever to hold a script, its own policy would stop it, and the frame without that', async () => {
    const { page: other } = await program.openWindow();
    for (const keepsPolicy of [true, false]) {
      await other.route('**/page?id=*', async (route) => {
        const answer = await route.fetch();
        const headers = answer.headers();
        if (!keepsPolicy) delete headers['content-security-policy'];
        const attack = `${ATTACK.replace('src=x', 'src=/icon.svg onload="top.ran=1"')}<p>loaded</p>`;
        await route.fulfill({ status: 200, headers, body: `<!doctype html><title>x</title>${attack}` });
      });
      await turn('Players', other);
      await other.getByRole('link', { name: 'Vera Invented' }).click();
      await turn('Hand-over', other);
      await document(other).locator('p').waitFor({ state: 'attached' });
      await other.waitForTimeout(300);
      expect(await other.evaluate(() => 'ran' in globalThis)).toBe(false);
      await other.unroute('**/page?id=*');
    }
    await other.close();
  });

  test('a page that is opened by itself is sandboxed as well', async () => {
    const address = (await page.locator('iframe').getAttribute('src')) ?? '';
    const answer = await page.evaluate(async (url) => {
      const response = await fetch(url);
      return response.headers.get('content-security-policy');
    }, address);
    expect(answer).toMatch(
      /^default-src 'none'; style-src 'sha256-.*sandbox allow-same-origin allow-modals$/,
    );
  });
});

describe('documents for several players', () => {
  test('those who are ticked get one each; how far it is is told', async () => {
    await turn('Players');
    for (let i = 0; i < 3; i++) {
      await page.getByRole('button', { name: 'More for Vera Invented', exact: true }).click();
      await page.getByRole('menuitem', { name: 'Duplicate' }).click();
      await expect.poll(() => page.getByRole('link', { name: /^Vera Invented/ }).count()).toBe(i + 2);
    }
    await turn('Hand-over');
    await page.getByRole('button', { name: 'Make PDFs' }).click();
    await page.getByText('Tick at least one player.').waitFor();
    const boxes = page.getByRole('checkbox', { name: /^Document for Vera Invented/ });
    await expect.poll(() => boxes.count()).toBe(4);
    for (const box of await boxes.all()) await box.check();
    await page.getByRole('button', { name: 'Make 4 PDFs' }).click();
    await page.getByText('4 PDFs are made.').waitFor();
    const folder = await page.locator('.result .folder').innerText();
    expect(readdirSync(folder).sort()).toEqual([
      'Vera-Invented-copy-2.pdf',
      'Vera-Invented-copy-3.pdf',
      'Vera-Invented-copy.pdf',
      'Vera-Invented.pdf',
    ]);
    expect(window.complaints).toEqual([]);
  });

  test('can be stopped; what is made stays', async () => {
    await page.getByRole('checkbox', { name: 'All that are shown' }).check();
    await page.getByRole('button', { name: /^Make \d PDFs/ }).click();
    await page.getByRole('button', { name: 'Stop', exact: true }).click();
    await page.getByText(/^■\s*Stopped/).waitFor();
    const folder = page.locator('.result .folder');
    if ((await folder.count()) > 0) expect(existsSync(await folder.innerText())).toBe(true);
  });
});
