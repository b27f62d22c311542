import { afterEach, describe, expect, it, vi } from 'vitest';
import { loadCatalogue } from '../../../../db/catalogue/index.ts';
import type { BagFile } from '../../../../src-main/contract/formats/bag-file.ts';
import { readerFor } from '../../../../src-main/contract/reader.ts';
import { advise, type AdviseInput } from '../../../../src-main/domain/advice/advise.ts';
import { USUAL_RECKONING } from '../../../../src-main/domain/advice/bag-view/reckoning.ts';
import { Effort } from '../../../../src-main/domain/advice/effort.ts';
import { english } from '../../../../src-main/domain/advice/words/en.ts';
import { USUAL_CONVENTIONS, type Conventions } from '../../../../src-main/domain/bag/conventions.ts';
import { bagFile, domainBag, without } from '../../../support/bags.ts';

const prices: BagFile['prices'] = [{ archetype: 'hybrid-24-t3', low: 40, likely: 55, high: 70 }];
/** 177 to 138 yd without anything between: a hybrid is bought. */
const gappy = { ...without(bagFile({ prices }), '4h', '5i'), budget: { amount: 200 } };
const adviceOf = (file: BagFile, more: Partial<AdviseInput> = {}) =>
  advise({
    bag: domainBag(file),
    catalogue: loadCatalogue(),
    reader: readerFor(file.units),
    words: english,
    today: '2026-11-26',
    ...more,
  });
const { cautions } = english;

describe('cautions', () => {
  it('begin with what the user set otherwise, each by name', () => {
    const own = (changed: Partial<Conventions>) =>
      adviceOf(gappy, {
        reckoning: { ...USUAL_RECKONING, conventions: { ...USUAL_CONVENTIONS, ...changed } },
      }).cautions;
    const limits = USUAL_CONVENTIONS.limits.map((row) => ({ ...row, crowdedYd: row.crowdedYd - 1 }));
    const tierUpTo = [5, 12, 20] as const;
    const weights = { ...USUAL_CONVENTIONS.weights, crowd: 2 };
    const said = (...which: ('limits' | 'tiers' | 'weights')[]) =>
      cautions.ownConventions({
        limits: which.includes('limits'),
        tiers: which.includes('tiers'),
        weights: which.includes('weights'),
      });
    expect(own({ limits })[0]).toBe(said('limits'));
    expect(own({ tierUpTo })[0]).toBe(said('tiers'));
    expect(own({ weights })[0]).toBe(said('weights'));
    expect(own({ limits, weights })[0]).toBe(said('limits', 'weights'));
    expect(own({})[0]).toBe(cautions.ranges());
    expect(adviceOf(gappy).cautions[0]).toBe(cautions.ranges());
  });
});

describe('where the time for all that is beside the plan is used up', () => {
  afterEach(() => {
    vi.restoreAllMocks();
  });
  it('the plan stands, what was left out is not made up, and a caution says so', () => {
    const unsure = {
      ...gappy,
      clubs: gappy.clubs.map((one) => (one.id === 'sw' ? { ...one, carry: 73 } : one)),
    };
    const whole = adviceOf(unsure);
    expect(whole.cautions).not.toContain(cautions.leftOut());
    vi.spyOn(Effort.prototype, 'within').mockImplementation(function (this: Effort, otherwise) {
      this.isShort = true;
      return otherwise;
    });
    const short = adviceOf(unsure);
    expect(short.cautions).toEqual([cautions.leftOut(), ...whole.cautions]);
    expect(short).toMatchObject({
      status: whole.status,
      items: whole.items,
      explanation: { purchases: [], nextStep: null, cheapestHelp: null },
      alternatives: [],
    });
    expect(short.paths.map(({ stages }) => stages.length)).toEqual([1, 1]);
    // Asked all the same, by rule of thumb.
    expect(short.questions.map(({ ask }) => ask)).toEqual(whole.questions.map(({ ask }) => ask));
    expect(short.questions.every(({ worth }) => worth < 1)).toBe(true);
    expect(adviceOf(unsure, { isBrief: true }).status).toBe(whole.status);
  });
});
