import { globSync } from 'node:fs';
import { resolve } from 'node:path';
import type { Browser, Page } from 'playwright';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { crampedWords, overflow, tooSmall, violations } from './support/looks.ts';
import { CASES, startParts, type Case, type Parts } from './support/parts.ts';
import { launchChromium } from './support/program.ts';

const SCREENS = ['players', 'bag', 'ladder', 'prices', 'spend', 'side', 'handover', 'files'] as const;
type Screen = (typeof SCREENS)[number];

let parts: Parts;
let browser: Browser;
let page: Page;
const complaints: string[] = [];
/** Both where there is most to see; colours do not change with the length of a text. */
const THEMES: Record<Case, readonly ('light' | 'dark')[]> = {
  usual: ['light', 'dark'],
  long: ['dark'],
  empty: ['light'],
  error: ['light', 'dark'],
};
/** Calls that were sent and not answered yet. */
let open = 0;
/** Parts stand there in several states, each with the same name. */
const SHOWN_TWICE = ['landmark-unique'];
const shown = new Set<string>();

beforeAll(async () => {
  parts = await startParts();
  browser = await launchChromium();
  const context = await browser.newContext({ locale: 'en-GB', reducedMotion: 'reduce' });
  page = await context.newPage();
  page.setDefaultTimeout(20_000);
  page.on('pageerror', (error) => complaints.push(error.message));
  const isCall = (url: string) => new URL(url).pathname === '/call';
  page.on('request', (request) => void (open += isCall(request.url()) ? 1 : 0));
  page.on('requestfinished', (request) => void (open -= isCall(request.url()) ? 1 : 0));
  page.on('requestfailed', (request) => void (open -= isCall(request.url()) ? 1 : 0));
  page.on('console', (message) => {
    if (message.type() === 'error') complaints.push(message.text());
  });
});

afterAll(async () => {
  await (browser as Browser | undefined)?.close();
  await (parts as Parts | undefined)?.close();
});

async function look(of: Case, screen: Screen): Promise<void> {
  // A turn within one address would keep what was open there.
  await page.goto('about:blank');
  await page.goto(parts.url(of, screen));
  await page.getByRole('heading', { level: 1, name: `Parts: ${screen}` }).waitFor();
  await settle();
  expect(await page.getByText('Reading …').count()).toBe(0);
  for (const part of await page.locator('[data-shown]').all()) {
    shown.add((await part.getAttribute('data-shown')) ?? '');
  }
}

/** One answer may be followed by the next question: it is quiet when it was so a few times in a row. */
async function settle(): Promise<void> {
  let quiet = 0;
  await expect
    .poll(() => (quiet = open === 0 ? quiet + 1 : 0), { interval: 60, timeout: 20_000 })
    .toBeGreaterThan(3);
}

describe.each(CASES)('every part, %s', (of) => {
  test.each(SCREENS)('%s: nothing that axe finds, nothing too small, clipped or cramped', async (screen) => {
    await page.setViewportSize({ width: 1280, height: 800 });
    await look(of, screen);
    for (const colorScheme of THEMES[of]) {
      await page.emulateMedia({ colorScheme });
      expect(await violations(page, SHOWN_TWICE)).toEqual([]);
    }
    expect(await tooSmall(page)).toEqual([]);
    expect(await crampedWords(page)).toEqual([]);
    for (const width of [1024, 512]) {
      await page.setViewportSize({ width, height: 700 });
      expect(`${String(width)}: ${String(await overflow(page))}`).toBe(`${String(width)}: 0`);
      expect(await tooSmall(page)).toEqual([]);
      expect(await crampedWords(page)).toEqual([]);
    }
  });
});

describe('keys', () => {
  const focus = () =>
    page.evaluate(
      () =>
        document.activeElement?.getAttribute('aria-label') ??
        document.activeElement?.textContent?.trim() ??
        '',
    );
  const part = (name: string, state = 'usual') =>
    page.getByRole('region', { name: `${name}, ${state}`, exact: true });

  test('segments: one stop of the tab key, arrows choose', async () => {
    await look('usual', 'players');
    const segments = part('parts/segments/segments');
    await segments.getByRole('radio', { name: 'One' }).focus();
    await page.keyboard.press('ArrowRight');
    expect(await segments.getByRole('radio', { name: 'Two' }).isChecked()).toBe(true);
    await page.keyboard.press('ArrowLeft');
    await page.keyboard.press('ArrowLeft');
    expect(await segments.getByRole('radio', { name: 'Three' }).isChecked()).toBe(true);
    await page.keyboard.press('Tab');
    expect(await segments.evaluate((one) => one.contains(document.activeElement))).toBe(false);
  });

  test('a tip: shown to the focus, told to who cannot see it, and put away by Escape', async () => {
    const button = part('parts/tip/tip').getByRole('button', { name: 'With a tip' });
    await button.focus();
    const tip = page.getByText('What this does (Alt+1)');
    await tip.waitFor();
    const described = await button.getAttribute('aria-describedby');
    expect(await page.locator(`[id="${described ?? ''}"]`).textContent()).toContain('What this does');
    await page.keyboard.press('Escape');
    await tip.waitFor({ state: 'hidden' });
  });

  test('a menu: opened by a key, gone through by arrows, left by Escape with the focus back', async () => {
    const button = part('parts/roster/player-menu').getByRole('button');
    await button.focus();
    await page.keyboard.press('Enter');
    await expect.poll(focus).toBe('Duplicate');
    await page.keyboard.press('ArrowDown');
    expect(await focus()).toMatch(/^Bartholomew/);
    await page.keyboard.press('Escape');
    await expect.poll(() => button.evaluate((one) => one === document.activeElement)).toBe(true);
  });

  test('a field: Escape gives an edit up, leaving it is refused with a message that is tied to it', async () => {
    await look('usual', 'bag');
    const name = part('parts/field/field').getByRole('textbox');
    await name.fill('something else');
    await page.keyboard.press('Escape');
    expect(await name.inputValue()).toBe('Kay');

    const refused = part('parts/field/field', 'refused when it is left').getByRole('textbox');
    await refused.fill('8');
    await page.keyboard.press('Tab');
    await expect.poll(() => refused.getAttribute('aria-invalid')).toBe('true');
    const described = (await refused.getAttribute('aria-describedby')) ?? '';
    expect(await page.locator(`[id="${described.split(' ')[0] ?? ''}"]`).textContent()).toMatch(
      /Whatever is written/,
    );

    const choice = part('parts/field/choice', 'refused when it is changed').getByRole('combobox');
    await choice.focus();
    await page.keyboard.press('ArrowDown');
    await part('parts/field/choice', 'refused when it is changed').locator('.message').waitFor();
    expect(await choice.inputValue()).toBe('one');

    const tick = part('parts/field/tick', 'ticked, long, refused when it is changed');
    await tick.getByRole('checkbox').focus();
    await page.keyboard.press('Space');
    await tick.locator('.message').waitFor();
    expect(await tick.getByRole('checkbox').isChecked()).toBe(true);
    expect(await violations(page, SHOWN_TWICE)).toEqual([]);
  });

  test('three prices: kept or given up together', async () => {
    const band = part('parts/band/band');
    const low = band.getByRole('textbox').first();
    await low.fill('20');
    await page.keyboard.press('Escape');
    expect(await low.inputValue()).toBe('30');
    const refused = part('parts/band/band', 'blank, refused when it is left');
    await refused.getByRole('textbox').first().fill('20');
    await page.keyboard.press('Tab');
    await page.keyboard.press('Tab');
    expect(await refused.locator('.message').count()).toBe(0);
    await page.keyboard.press('Tab');
    await refused.locator('.message').first().waitFor();
  });

  test('the picker: typed into, gone through by arrows, taken by Enter, closed by Escape', async () => {
    const picker = part('parts/prices/archetype-picker');
    const box = picker.getByRole('combobox');
    await box.focus();
    await page.keyboard.type('22 hyb');
    await page.getByRole('listbox').getByRole('option').first().waitFor();
    await page.keyboard.press('ArrowDown');
    const active = (await box.getAttribute('aria-activedescendant')) ?? '';
    expect(await page.locator(`[id="${active}"]`).getAttribute('role')).toBe('option');
    await page.keyboard.press('Escape');
    await expect.poll(() => page.getByRole('listbox').getByRole('option').count()).toBe(0);
    expect(await box.inputValue()).toBe('');
    await page.keyboard.type('wedge');
    await page.getByRole('listbox').getByRole('option').first().waitFor();
    await page.keyboard.press('ArrowDown');
    await page.keyboard.press('Enter');
    await expect.poll(() => picker.getByRole('combobox').inputValue()).toBe('');
  });

  test('a column of clubs: Enter goes down, with Shift up', async () => {
    const table = part('parts/clubs/club-table');
    const carries = table.locator('[data-column="carry"]');
    await carries.first().focus();
    await page.keyboard.press('Enter');
    expect(await carries.nth(1).evaluate((one) => one === document.activeElement)).toBe(true);
    await page.keyboard.press('Shift+Enter');
    expect(await carries.first().evaluate((one) => one === document.activeElement)).toBe(true);
  });
});

describe('reading a chart by keys', () => {
  test.each([
    ['ladder', 'Carry ladder', 'ArrowDown', /^5-wood: 178 yd, 173–183, stated; wide gap: 37 yd/],
    ['ladder', 'Full shots a round', 'ArrowDown', /^190 to 200 yards: 0\.0 shots a round\. No club/],
    [
      'ladder',
      'Height over distance',
      'ArrowDown',
      /^5-wood: carry 178 yd \(173–183\), apex about \d+ yd .* modelled from loft/,
    ],
    [
      'prices',
      'Price band: 25° hybrid',
      'ArrowDown',
      /^Note 1, seen 1 Nov 2026: likely £45, from £36 to £54; \d+% of the band/,
    ],
    ['spend', 'Spend curve', 'ArrowRight', /^£54.88 mends 100%: buying 25° hybrid .*, the plan/],
    ['spend', 'Chance that a sum', 'ArrowRight', /^£\d+\.\d\d is enough with a chance of 0%/],
    [
      'side',
      'Two ladders',
      'ArrowDown',
      /^5-wood: 178 yd, 173–183, on both pages; on the left page wide gap/,
    ],
  ] as const)('%s: %s', async (screen, title, key, said) => {
    await look('usual', screen);
    const figure = page.getByRole('figure', { name: title }).first();
    const slider = figure.getByRole('slider', { name: `Read figures: ${title}` });
    const readout = figure.locator('[aria-live]');
    expect(await readout.textContent()).toMatch(/^\s*Point at the drawing/);
    expect(await slider.getAttribute('aria-valuetext')).toBe('nothing read yet');

    await slider.focus();
    const first = await readout.textContent();
    expect(first).not.toMatch(/Point at the drawing/);
    expect(await readout.getAttribute('aria-live')).toBe('polite');
    await page.keyboard.press(key);
    const second = await readout.textContent();
    expect(second).not.toBe(first);
    expect((second ?? '').trim().replaceAll('\u00a0', ' ')).toMatch(said);
    expect(await slider.inputValue()).toBe('2');
    await page.keyboard.press('Home');
    expect(await readout.textContent()).toBe(first);
    await page.keyboard.press('Escape');
    expect(await readout.textContent()).toMatch(/Point at the drawing/);

    // A pointer reads too, and says nothing aloud.
    await slider.blur();
    const box = await figure.getByRole('img').boundingBox();
    if (!box) throw new Error('the chart has no place');
    await figure.getByRole('img').hover({ position: { x: box.width / 2, y: 60 } });
    expect(await readout.textContent()).not.toMatch(/Point at the drawing/);
    expect(await readout.getAttribute('aria-live')).toBe('off');
  });

  test('its table opens by a key, and is there on paper by itself, by day and without the slider', async () => {
    await look('usual', 'spend');
    const section = page.getByRole('region', { name: 'parts/spend/chance/chance-section, usual' });
    const table = section.getByRole('table');
    expect(await table.isVisible()).toBe(false);
    await section.locator('summary').focus();
    await page.keyboard.press('Enter');
    expect(await table.isVisible()).toBe(true);
    await page.keyboard.press('Enter');
    expect(await table.isVisible()).toBe(false);

    await page.emulateMedia({ media: 'print', colorScheme: 'dark' });
    expect((await table.boundingBox())?.height).toBeGreaterThan(100);
    expect(await section.getByRole('slider').isVisible()).toBe(false);
    expect(await page.evaluate(() => getComputedStyle(document.documentElement).colorScheme)).toBe('light');
    await page.emulateMedia({ media: 'screen', colorScheme: 'light' });
  });
});

/** Parts of the Settings drawer: it is looked at as a whole, by axe in both themes and languages, in settings.test.ts. */
const IN_THE_DRAWER = /^parts\/(settings|confirm|message)\//;

test('no part is left out: each has its place in test/parts/pages', () => {
  const root = resolve(import.meta.dirname, '..', '..', 'src-renderer');
  const files = globSync(['parts/**/*.svelte', 'charts/**/*.svelte'], { cwd: root }).map((file) =>
    file
      .split(/[/\\]/)
      .join('/')
      .replace(/\.svelte$/, ''),
  );
  expect(files.length).toBeGreaterThan(70);
  expect(files.filter((file) => !shown.has(file) && !IN_THE_DRAWER.test(file)).sort()).toEqual([]);
  expect([...shown].filter((part) => !files.includes(part))).toEqual([]);
});

test('the browser has nothing to complain of', () => {
  expect(complaints).toEqual([]);
});
