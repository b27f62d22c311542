import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { startProgram, type Program, type Window } from './support/program.ts';

let program: Program;
let window: Window;

beforeAll(async () => {
  program = await startProgram();
  window = await program.openWindow();
});

afterAll(() => (program as Program | undefined)?.close());

describe('from the start to a first answer', () => {
  test('the demo’s plan is two clicks away', async () => {
    const { page, complaints } = window;
    await page.getByRole('button', { name: 'Open the demo', exact: true }).click();
    await page.getByRole('img', { name: /^Ladder of 10 clubs/ }).waitFor();
    await page.getByRole('link', { name: 'Spend' }).click();

    const plan = page.getByRole('table', { name: 'The plan' });
    await expect.poll(() => plan.getByRole('row', { name: /buy/ }).count()).toBeGreaterThan(0);
    expect(await page.getByText(/puts the bag right|mends part of what is wrong/).count()).toBe(1);
    expect(
      await page.getByText('Used prices are the figures you typed in, not a market survey.').count(),
    ).toBe(1);
    expect(complaints).toEqual([]);
  });

  test('the ladder marks gaps in words, before the plan and not after it', async () => {
    const { page } = window;
    await page.getByRole('link', { name: 'Ladder' }).click();
    const table = page.getByRole('table', { name: 'The same as a table' });
    await table.getByRole('cell', { name: /^wide gap: 37 yd, usual up to \d+$/ }).waitFor();
    expect(await table.getByRole('row', { name: /driver/ }).innerText()).toMatch(/201\s+195–207\s+stated/);

    await page.getByRole('radio', { name: 'After the plan' }).check();
    await table
      .getByRole('rowheader', { name: /\(new\)/ })
      .first()
      .waitFor();
    expect(await table.getByText(/wide gap/).count()).toBe(0);
    await page.getByRole('radio', { name: 'Today' }).check();
  });

  test('another budget is tried without being kept, then kept', async () => {
    const { page } = window;
    await page.getByRole('link', { name: 'Spend' }).click();
    const budget = page.getByRole('textbox', { name: 'Budget, GBP' });
    const slider = page.getByRole('slider', { name: 'Try another budget' });
    await slider.fill('20');
    await page.getByText('Trying £20. The bag’s budget is still £180.').waitFor();
    await page
      .getByText('Taking clubs out mends part of what is wrong and costs nothing. The rest stays.')
      .waitFor();

    await page.getByRole('button', { name: 'Back to £180' }).click();
    expect(await budget.inputValue()).toBe('180');

    await budget.fill('150');
    await budget.press('Enter');
    await page.getByRole('button', { name: 'Keep £150 as the budget' }).click();
    await page.getByText('Slide or type').waitFor();
    await page.getByRole('link', { name: 'Bag' }).click();
    expect(await page.getByRole('textbox', { name: 'Budget, GBP' }).inputValue()).toBe('150');
  });

  test('a new bag: a few entries in pre-ruled rows give a plan with a price and a reason', async () => {
    const { page, complaints } = window;
    await page.getByRole('link', { name: 'Players' }).click();
    await page.getByRole('button', { name: 'New player' }).click();
    await page.getByRole('textbox', { name: 'Name' }).fill('Vera Invented');
    await page.getByRole('textbox', { name: 'Handicap' }).fill('18,5');
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
    await write('Budget, EUR', '120');
    const picker = page.getByRole('combobox', { name: 'Add a price for' });
    await picker.fill('22 hybrid game');
    await page.getByRole('option', { name: '22° hybrid (game improvement)', exact: true }).click();
    await write('low: 22° hybrid (game improvement)', '40');
    await write('likely: 22° hybrid (game improvement)', '55');
    await write('high: 22° hybrid (game improvement)', '70');

    await page.getByRole('link', { name: 'Spend' }).click();
    const buy = page.getByRole('table', { name: 'The plan' }).getByRole('row', { name: /^buy/ });
    await expect
      .poll(() => buy.innerText())
      .toMatch(/22° hybrid[\s\S]*55\.00[\s\S]*goes between 5-wood and 6-iron/);
    await page.getByText('€65 of the budget is left.').waitFor();
    expect(complaints).toEqual([]);
  });
});

describe('what is typed on', () => {
  test('while the figure before is on its way to the records stays, and is kept as well', async () => {
    const { page, complaints } = window;
    await page.getByRole('link', { name: 'Bag' }).click();
    const carry = page.getByRole('textbox', { name: 'Carry, yd: 9-iron' });
    await carry.waitFor();
    await page.route('**/call', async (route) => {
      if (route.request().postData()?.includes('110') === true) await page.waitForTimeout(300);
      await route.continue();
    });
    const told = (text: string) =>
      page.waitForResponse((response) => response.request().postData()?.includes(text) === true);
    const saved = told('110');
    await carry.fill('110');
    await carry.press('Enter');
    await carry.fill('115');
    await saved;
    await told('bags.read');
    // Two frames: the records are on the page by then.
    await page.evaluate(
      () => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done))),
    );
    expect(await carry.inputValue()).toBe('115');
    await carry.press('Tab');
    await expect.poll(() => carry.getAttribute('data-dirty')).toBe(null);
    await page.unroute('**/call');
    expect(await carry.inputValue()).toBe('115');

    await page.getByRole('banner').getByRole('button', { name: 'Undo' }).click();
    await expect.poll(() => carry.inputValue()).toBe('110');
    await page.getByRole('banner').getByRole('button', { name: 'Undo' }).click();
    await expect.poll(() => carry.inputValue()).toBe('');
    expect(complaints).toEqual([]);
  });
});

describe('what cannot be kept', () => {
  test('is said beside the field, with the remedy, and stays to be mended', async () => {
    const { page } = window;
    await page.getByRole('link', { name: 'Bag' }).click();
    const carry = page.getByRole('textbox', { name: 'Carry, yd: 8-iron' });
    await carry.fill('far');
    await carry.press('Tab');
    await page.getByText('“far” is not a number. Write digits, such as 18 or 10.5.').waitFor();
    expect(await carry.getAttribute('aria-invalid')).toBe('true');

    await carry.fill('2000');
    await carry.press('Tab');
    await page.getByText(/A distance here lies between 1 and 450 yd\. Check the number/).waitFor();
    expect(await carry.inputValue()).toBe('2000');

    await carry.press('Escape');
    expect(await carry.inputValue()).toBe('');
    expect(await carry.getAttribute('aria-invalid')).toBeNull();
  });
});
