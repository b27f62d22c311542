import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { loadCatalogue } from '../../../db/catalogue/index.ts';
import type { BagFile } from '../../../src-main/contract/formats/bag-file.ts';
import type { PlanFile } from '../../../src-main/contract/formats/plan-file.ts';
import { checkBagFile } from '../../../src-main/contract/formats/read-bag.ts';
import { answerBag } from '../../../src-main/worker/answer.ts';
import { brief } from '../../../src-main/worker/brief.ts';
import { JobCells } from '../../../src-main/worker/job-cells.ts';
import { bagFile, withClub } from '../../support/bags.ts';
import { anyBag } from '../../support/random-bags.ts';
import { rosterOf } from '../../support/roster.ts';

const catalogue = loadCatalogue();
const today = '2026-11-26';

function briefly(file: BagFile): PlanFile {
  const outcome = brief({ file, catalogue, today });
  if (!outcome.ok) throw new Error('the bag was not planned');
  return outcome.plan;
}

/** All that a brief answer tells. */
function told({ plan, findings, ladder, frontier }: PlanFile) {
  const swaps = plan.swaps
    .filter((swap) => swap.stage === 'now')
    .map(({ walkAway: _notTold, ...swap }) => swap);
  return { findings, ladder, frontier, plan: { ...plan, items: undefined, swaps } };
}

describe('a brief answer tells the same as the whole one', () => {
  it('of any bag: 300 of them, of every status', () => {
    const statuses = new Set<string>();
    fc.assert(
      fc.property(anyBag, (bag) => {
        const file = checkBagFile(bag);
        const whole = answerBag(file, catalogue, { today, withInstance: false }).plan;
        statuses.add(whole.plan.status);
        expect(told(briefly(file))).toEqual(told(whole));
      }),
      { numRuns: 300, seed: 20261126 },
    );
    expect([...statuses].sort()).toEqual(
      ['ask-first', 'coach-first', 'nothing-needed', 'ok', 'over-budget', 'partly', 'stopped'].sort(),
    );
  });

  it('of a coach’s players with many prices', () => {
    const prices = catalogue.slice(0, 60).map(({ id, kind }, i) => {
      const likely = (kind === 'irons' ? 150 : 30) + ((i * 37) % 120);
      return { archetype: id, low: likely - 10, likely, high: likely + 25 };
    });
    let buys = 0;
    for (const bag of rosterOf(10, 5)) {
      const file = { ...bag, prices };
      const whole = answerBag(file, catalogue, { today, withInstance: false }).plan;
      const short = briefly(file);
      expect(told(short), file.player.name).toEqual(told(whole));
      for (const swap of short.plan.swaps) expect(swap).not.toHaveProperty('walkAway');
      buys += short.plan.swaps.filter(({ action }) => action === 'buy').length;
    }
    expect(buys).toBeGreaterThan(0);
  });

  it('and leaves out what only a bag’s own pages show', () => {
    const plan = briefly(bagFile());
    expect(plan).toMatchObject({ alternatives: [], questions: [] });
    expect(plan).not.toHaveProperty('instance');
  });
});

it('a bag that cannot be planned is told of, with the place and the remedy', () => {
  const file = bagFile({ clubs: [...bagFile().clubs, { id: 'p2', kind: 'putter', goTo: true }] });
  const outcome = brief({ file: withClub(file, 'putter', { goTo: true }), catalogue, today });
  expect(outcome).toMatchObject({ ok: false, stopped: false });
  expect(JSON.stringify(outcome)).toContain('Unmark the one that may go.');
});

it('ends when the job is stopped', () => {
  const cells = new JobCells();
  cells.stop();
  expect(brief({ file: bagFile(), catalogue, today, cells: cells.buffer })).toEqual({
    ok: false,
    stopped: true,
  });
});
