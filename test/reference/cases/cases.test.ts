import { describe, expect, it } from 'vitest';
import { loadCatalogue } from '../../../db/catalogue/index.ts';
import { answerBag } from '../../../src-main/worker/answer.ts';
import { CASES, type Case } from './cases.ts';

const catalogue = loadCatalogue();
const kindOf = new Map(catalogue.map((one) => [one.id, one.kind]));

function answer({ bag }: Case) {
  return answerBag(bag, catalogue, { today: '2026-11-26', withInstance: false }).plan;
}

// Common practice, no source: see cases.ts.
describe.each(CASES)('$name', (one) => {
  const { plan, findings } = answer(one);
  it('has the status that a coach would give', () => {
    expect(one.status).toContain(plan.status);
  });
  it('has the findings, and not those that would be wrong', () => {
    for (const expected of one.findings) expect(findings).toContainEqual(expect.objectContaining(expected));
    for (const kind of one.without ?? []) expect(findings.map((finding) => finding.kind)).not.toContain(kind);
  });
  it('buys and drops accordingly', () => {
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
    const holds = findings.some((finding) => finding.verdict === 'coach-first' || finding.verdict === 'stop');
    if (holds) expect(plan.swaps.filter((swap) => swap.action === 'buy')).toEqual([]);
    const kept = new Set(one.bag.clubs.filter((club) => club.goTo === true).map((club) => club.id));
    for (const swap of plan.swaps) expect(kept.has(swap.clubId ?? '')).toBe(false);
  });
});

describe('reading check over all cases', () => {
  const answers = CASES.map(answer);
  const texts = [
    ...new Set(
      answers.flatMap((plan) => [
        ...plan.findings.map((finding) => finding.text),
        ...plan.plan.swaps.map((swap) => swap.why),
        ...plan.questions.map((question) => question.ask),
        ...plan.cautions,
      ]),
    ),
  ];
  it('no sentence has more than 30 words', () => {
    const sentences = texts.flatMap((text) => text.split(/(?<=[.!?:])\s+/));
    expect(sentences.length).toBeGreaterThan(50);
    expect(sentences.filter((sentence) => sentence.split(/\s+/).length > 30)).toEqual([]);
  });
  it('none blames, promises, or says "loft down"', () => {
    const blame = /\b(bad|wrong swing|fault of yours|should have|must buy|guarantee|loft down|you fail)/i;
    expect(texts.filter((text) => blame.test(text))).toEqual([]);
  });
});
