import { describe, expect, it } from 'vitest';
import { loadCatalogue } from '../../../db/catalogue/index.ts';
import { answerBag } from '../../../src-main/worker/answer.ts';
import { answerForWindow } from '../../../src-main/worker/answer-view.ts';
import { pricedBag } from '../../bench/plan.ts';

const catalogue = loadCatalogue();
const file = { ...pricedBag(1, catalogue), budget: { amount: 400 } };
const today = '2026-11-26';
const answer = answerForWindow(file, catalogue, { today });
const { plan, explanation, paths } = answer;
const whole = answerBag(file, catalogue, { today, withInstance: true }).plan;

/** Every id of a bag, and of a purchase, that the answer has anywhere. */
const itemsTold = new Set([
  ...(plan.plan.items ?? []),
  ...[...plan.frontier, ...plan.alternatives, ...paths.flatMap(({ stages }) => stages)].flatMap(
    ({ items }) => items,
  ),
]);
const purchasesTold = [
  ...explanation.purchases.flatMap(({ id, without }) => [id, ...(without?.buys ?? [])]),
  ...(explanation.nextStep?.buys ?? []),
  ...(explanation.cheapestHelp?.buys ?? []),
  ...Object.keys(plan.walkAway),
];

describe('the answer as the window has it', () => {
  it('tells of purchases, so that the following mean something', () => {
    expect([...itemsTold].filter((id) => id.startsWith('buy:')).length).toBeGreaterThan(0);
    expect(purchasesTold.length).toBeGreaterThan(0);
    expect(whole.instance?.items.length).toBeGreaterThan(200);
  });

  it('holds every club of today, and every candidate that it tells of, as the question has them', () => {
    const held = new Map(plan.instance.items.map((item) => [item.id, item]));
    for (const item of whole.instance?.items ?? []) {
      if (item.origin === 'owned' || itemsTold.has(item.id)) expect(held.get(item.id)).toEqual(item);
    }
    expect({ ...plan.instance, items: [], lots: [] }).toEqual({ ...whole.instance, items: [], lots: [] });
  });

  it('leaves out what is in no bag that it tells of', () => {
    expect(plan.instance.items.length).toBeLessThan((whole.instance?.items.length ?? 0) / 2);
    expect(Object.keys(answer.names).length).toBeLessThan(60);
  });

  it('has a name for everything that it tells of', () => {
    for (const id of [...itemsTold].map((item) => item.replace(/^own:/, ''))) {
      expect(answer.names, id).toHaveProperty([id]);
    }
    for (const id of purchasesTold) expect(answer.names, id).toHaveProperty([id]);
  });
});
