import { describe, expect, it } from 'vitest';
import { loadCatalogue } from '../../../../db/catalogue/index.ts';
import { readerFor } from '../../../../src-main/contract/reader.ts';
import { advise } from '../../../../src-main/domain/advice/advise.ts';
import { Effort } from '../../../../src-main/domain/advice/effort.ts';
import { english } from '../../../../src-main/domain/advice/words/en.ts';
import { frontier, SolveStopped } from '../../../../src-main/domain/solve/index.ts';
import { smallInstance } from '../../../reference/solve/small-instances.ts';
import { bagFile, domainBag, without } from '../../../support/bags.ts';

const instance = smallInstance(3, 12);

describe('an effort', () => {
  it('is shared: what one piece of work used, the next has not', () => {
    let labels = 0;
    frontier(instance, { onProgress: (made) => (labels = made) });
    const twice = new Effort({}, labels * 2);
    const curve = (effort: Effort) => effort.within(null, (hooks) => frontier(instance, hooks));
    expect([curve(twice), curve(twice)]).toEqual([frontier(instance), frontier(instance)]);
    expect(twice.isShort).toBe(false);
    expect(curve(twice)).toBeNull();
    expect(twice.isShort).toBe(true);
    const once = new Effort({}, labels + 1);
    expect([curve(once), curve(once)]).toEqual([frontier(instance), null]);
  });
  it('lets a stop through, and does not take it for its own end', () => {
    const effort = new Effort({ shouldStop: () => true });
    expect(() => effort.within(null, (hooks) => frontier(instance, hooks))).toThrow(SolveStopped);
    expect(effort.isShort).toBe(false);
  });
  it('tells of steps up to the last and never beyond', () => {
    const told: number[] = [];
    const effort = new Effort({ onStep: (done, of) => told.push(done / of) });
    effort.step(60);
    effort.step(60);
    expect(told).toEqual([0.6, 1]);
  });
});

it('an answer that is told to stop stops, wherever it is', () => {
  const file = without(
    bagFile({
      prices: [{ archetype: 'hybrid-22-t3', low: 30, likely: 40, high: 60 }],
      budget: { amount: 100 },
    }),
    '4h',
  );
  const input = {
    bag: domainBag(file),
    catalogue: loadCatalogue(),
    reader: readerFor(file.units),
    words: english,
    today: '2026-11-26',
  };
  // Once before, so that all that follow know the curve alike.
  advise(input);
  let asked = 0;
  advise({ ...input, watcher: { shouldStop: () => (asked++, false) } });
  expect(asked).toBeGreaterThan(10);
  for (let at = 1; at <= asked; at += Math.ceil(asked / 20)) {
    let left = at;
    expect(() => advise({ ...input, watcher: { shouldStop: () => --left === 0 } }), String(at)).toThrow(
      SolveStopped,
    );
  }
});
