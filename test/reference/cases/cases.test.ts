import { describe, expect, it } from 'vitest';
import { loadCatalogue } from '../../../db/catalogue/index.ts';
import { answerBag } from '../../../src-main/worker/answer.ts';
import { CASES, type Case } from './cases.ts';

const catalogue = loadCatalogue();
const kindOf = new Map(catalogue.map((one) => [one.id, one.kind]));

function answer({ bag }: Case, locale = 'en-GB') {
  return answerBag(bag, catalogue, { today: '2026-11-26', withInstance: false, locale }).plan;
}

// Common practice, no source: see cases.ts. Each test asks anew, so that mutation testing sees what it runs.
describe.each(CASES)('$name', (one) => {
  it('has the status that a coach would give', () => {
    expect(one.status).toContain(answer(one).plan.status);
  });
  it('has the findings, and not those that would be wrong', () => {
    const { findings } = answer(one);
    for (const expected of one.findings) expect(findings).toContainEqual(expect.objectContaining(expected));
    for (const kind of one.without ?? []) expect(findings.map((finding) => finding.kind)).not.toContain(kind);
  });
  it('buys and drops accordingly', () => {
    const { plan } = answer(one);
    const bought = plan.swaps.flatMap((swap) =>
      swap.action === 'buy' && swap.stage === 'now' ? [kindOf.get(swap.archetype ?? '') ?? '?'] : [],
    );
    if (one.buys) expect(bought.sort()).toEqual([...one.buys].sort());
    if (one.leaves)
      expect(plan.swaps.filter((swap) => swap.action !== 'buy').map((swap) => swap.clubId)).toEqual(
        one.leaves,
      );
  });
  it('never buys against coach-first or stop, nor drops a go-to club', () => {
    const { plan, findings } = answer(one);
    const holds = findings.some((finding) => finding.verdict === 'coach-first' || finding.verdict === 'stop');
    if (holds) expect(plan.swaps.filter((swap) => swap.action === 'buy')).toEqual([]);
    const kept = new Set(one.bag.clubs.filter((club) => club.goTo === true).map((club) => club.id));
    for (const swap of plan.swaps) expect(kept.has(swap.clubId ?? '')).toBe(false);
  });
});

const textsIn = (locale: string) => {
  const answers = CASES.map((one) => answer(one, locale));
  return [
    ...new Set(
      answers.flatMap((plan) => [
        ...plan.findings.map((finding) => finding.text),
        ...plan.plan.swaps.map((swap) => swap.why),
        ...plan.questions.map((question) => question.ask),
        ...plan.cautions,
      ]),
    ),
  ];
};

describe('reading check over all cases', () => {
  it('no sentence has more than 30 words', () => {
    const sentences = textsIn('en-GB').flatMap((text) => text.split(/(?<=[.!?:])\s+/));
    expect(sentences.length).toBeGreaterThan(50);
    expect(sentences.filter((sentence) => sentence.split(/\s+/).length > 30)).toEqual([]);
  });
  it('none blames, promises, or says "loft down"', () => {
    const blame = /\b(bad|wrong swing|fault of yours|should have|must buy|guarantee|loft down|you fail)/i;
    expect(textsIn('en-GB').filter((text) => blame.test(text))).toEqual([]);
  });
});

describe('the same in German', () => {
  it('no sentence has more than 30 words', () => {
    const sentences = textsIn('de-DE').flatMap((text) => text.split(/(?<=[.!?:])\s+/));
    expect(sentences.length).toBeGreaterThan(50);
    expect(sentences.filter((sentence) => sentence.split(/\s+/).length > 30)).toEqual([]);
  });
  it('nothing English is left but what the bags call their clubs', () => {
    const english = /\b(the|and|of|is|are|with|between|about|carries)\b/i;
    expect(textsIn('de-DE').filter((text) => english.test(text))).toEqual([]);
  });
  it('decimals have a comma', () => {
    const point = /\d\.\d(?!\d\d)/;
    expect(textsIn('de-DE').filter((text) => point.test(text.replace('4.1b', '')))).toEqual([]);
  });
  it('the answer is the same but for the words', () => {
    const figures = (locale: string) =>
      CASES.map((one) => {
        const { plan, ladder, frontier } = answer(one, locale);
        return [plan.status, plan.cash, plan.net, ladder, frontier];
      });
    expect(figures('de-DE')).toEqual(figures('en-GB'));
  });
});
