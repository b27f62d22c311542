import { describe, expect, it } from 'vitest';
import { loadCatalogue } from '../../../../db/catalogue/index.ts';
import type { BagFile } from '../../../../src-main/contract/formats/bag-file.ts';
import { PickGone } from '../../../../src-main/domain/advice/plan/picked.ts';
import { handOver } from '../../../../src-main/domain/report/document.ts';
import { markdown } from '../../../../src-main/domain/report/formats/markdown.ts';
import { answerBag } from '../../../../src-main/worker/answer.ts';
import { make, TODAY } from './variants.ts';

const catalogue = loadCatalogue();
const PICKED = { name: 'Path B', why: '', day: '2026-11-05' };

function pick(file: BagFile, picked: readonly string[], locale = 'en-GB') {
  const { advice, plan } = answerBag(file, catalogue, { today: TODAY, withInstance: true, locale, picked });
  const document = handOver(advice, { today: TODAY, locale, currency: 'GBP', picked: PICKED });
  return { advice, plan, text: markdown(document) };
}
const owned = (file: BagFile) =>
  answerBag(file, catalogue, { today: TODAY, withInstance: true })
    .advice.built.instance.items.filter(({ origin }) => origin === 'owned')
    .map(({ id }) => id);

describe('the document of a pick', () => {
  it('of the plan itself has the plan’s swaps, money and walk-away prices', () => {
    const { file, advice } = make('six purchases');
    const { advice: picked, text } = pick(file, advice.items);
    expect(picked.swaps).toEqual(advice.swaps);
    expect([picked.cashMinor, picked.netMinor, picked.status]).toEqual([
      advice.cashMinor,
      advice.netMinor,
      advice.status,
    ]);
    expect(text).toContain('Picked on 5 November 2026: Path B. Bag and prices are those of that day.');
    expect(text).not.toContain('The reason given');
  });

  it('of another point of the curve has walk-away prices of its own penalty', () => {
    const { file, advice } = make('six purchases');
    const point = advice.solution.frontier.find(({ items }) => items.some((id) => id.startsWith('buy:')));
    const { advice: picked } = pick(file, point?.items ?? []);
    const buys = picked.swaps.filter(({ action, stage }) => action === 'buy' && stage === 'now');
    expect(buys.length).toBeGreaterThan(0);
    expect(picked.cashMinor).toBe(point?.cost);
    for (const { walkAwayMinor, priceMinor } of buys) {
      expect(walkAwayMinor).toBeDefined();
      if (typeof walkAwayMinor === 'number') expect(walkAwayMinor).toBeGreaterThanOrEqual(priceMinor ?? 0);
    }
  });

  it('that another plan beats says so in the place of a walk-away price', () => {
    const { file, advice } = make('usual');
    const dearer = [...advice.items.filter((id) => id !== 'buy:hybrid-25-t3'), 'buy:hybrid-22-t3'];
    expect(advice.items).toContain('buy:hybrid-25-t3');
    const { advice: picked, text } = pick(file, dearer);
    expect(picked.swaps[0]).not.toHaveProperty('walkAwayMinor');
    expect(text).toContain('none: the pick is not the cheapest way');
  });

  it('is told as it is where the figures alone would hold back, and says what they say', () => {
    const { file, advice } = make('coach first');
    expect(advice.swaps.some(({ action }) => action === 'buy')).toBe(false);
    const { advice: picked, text } = pick(file, [...owned(file), 'buy:hybrid-25-t3']);
    expect(picked.status).toBe('coach-first');
    expect(text).toMatch(/\*\*Buy 25° hybrid \(game improvement\) for about £\d+/);
    expect(text).toContain('The figures alone would say: see a coach first');
    expect(text).toContain('### 1\\. 25° hybrid');
  });

  it('buys nothing for a player in pain, whatever was picked', () => {
    const { file } = make('stopped');
    const { advice: picked, text } = pick(file, [...owned(file), 'buy:hybrid-22-t3']);
    expect([picked.status, picked.swaps, picked.cashMinor]).toEqual(['stopped', [], 0]);
    expect(text).toMatch(/\*\*No buying advice/);
    expect(text).not.toContain('Picked on');
  });

  it('refuses a club that is not there', () => {
    const { file } = make('usual');
    expect(() => pick(file, ['buy:nothing'])).toThrow(PickGone);
  });
});

describe('the day to measure again', () => {
  const retest = (options: Parameters<typeof make>[1], name: Parameters<typeof make>[0] = 'usual') =>
    JSON.stringify(make(name, options).document.sections.find(({ id }) => id === 'retest'));
  it('is the usual month, or the day agreed on', () => {
    expect(retest({})).toContain('May 2027, or as soon as');
    expect(retest({ retestOn: '2027-02-28' })).toContain('28 February 2027, or as soon as');
    expect(retest({ retestOn: '2027-02-28' }, 'german')).toContain('28. Februar 2027');
  });
  it('waits for the end of pain all the same', () => {
    expect(retest({ retestOn: '2027-02-28' }, 'stopped')).not.toContain('2027');
  });
});
