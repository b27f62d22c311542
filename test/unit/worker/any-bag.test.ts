import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { loadCatalogue } from '../../../db/catalogue/index.ts';
import type { BagFile } from '../../../src-main/contract/formats/bag-file.ts';
import { planFileSchema, type PlanFile } from '../../../src-main/contract/formats/plan-file.ts';
import { checkBagFile } from '../../../src-main/contract/formats/read-bag.ts';
import { answerBag } from '../../../src-main/worker/answer.ts';
import { anyBag } from '../../support/random-bags.ts';

const catalogue = loadCatalogue();
const SEED = 20261126;

function answer(file: BagFile): PlanFile {
  // zod's numbers are finite, so a NaN anywhere is caught here.
  return planFileSchema.parse(
    answerBag(checkBagFile(file), catalogue, { today: '2026-11-26', withInstance: true }).plan,
  );
}
const buys = (plan: PlanFile) => plan.plan.swaps.filter((swap) => swap.action === 'buy');
const now = (plan: PlanFile) => plan.plan.swaps.filter((swap) => swap.stage === 'now');

/** What must hold of every answer, whatever the bag: no finding and no swap contradicts another. */
function consistent(file: BagFile, plan: PlanFile): void {
  const out = new Set(plan.plan.swaps.flatMap((swap) => (swap.clubId === undefined ? [] : [swap.clubId])));
  for (const club of file.clubs) if (club.goTo === true) expect(out.has(club.id)).toBe(false);
  for (const finding of plan.findings) {
    if (finding.verdict === 'keep')
      for (const id of finding.clubs)
        if (finding.kind === 'go-to' || finding.kind === 'crowded-pair') expect(out.has(id)).toBe(false);
    if (finding.verdict === 'stop' || finding.verdict === 'coach-first') expect(buys(plan)).toEqual([]);
  }
  if (file.player.pain === true) {
    expect(plan.plan).toMatchObject({ status: 'stopped', swaps: [], cash: 0, net: 0 });
    expect(plan).toMatchObject({ frontier: [], alternatives: [], walkAway: {} });
  }
  const pairs = plan.findings
    .filter((finding) => ['wide-gap', 'crowded-pair', 'unsure-gap', 'wedge-shortage'].includes(finding.kind))
    .map((finding) => finding.clubs.join());
  expect(new Set(pairs).size).toBe(pairs.length);
  if (plan.plan.status === 'nothing-needed') expect(now(plan)).toEqual([]);
  if (file.budget && buys(plan).length > 0) expect(plan.plan.remaining).toBeGreaterThanOrEqual(0);
  const kinds = plan.findings.map((finding) => finding.kind);
  if (kinds.includes('nothing-needed'))
    expect(plan.findings.some((finding) => finding.verdict === 'add' || finding.verdict === 'replace')).toBe(
      false,
    );
  const after = plan.plan.afterLadder.map((row) => row.carry);
  expect(after).toEqual([...after].sort((a, b) => b - a));
}

describe('any bag', () => {
  it('gets a valid answer that does not contradict itself: 2,000 bags', () => {
    const statuses = new Map<string, number>();
    fc.assert(
      fc.property(anyBag, (file) => {
        const plan = answer(file);
        statuses.set(plan.plan.status, (statuses.get(plan.plan.status) ?? 0) + 1);
        consistent(file, plan);
      }),
      { numRuns: 2000, seed: SEED },
    );
    // The generator must reach every status, or the check above says less than it seems to.
    expect([...statuses.keys()].sort()).toEqual([
      'ask-first',
      'coach-first',
      'nothing-needed',
      'ok',
      'over-budget',
      'partly',
      'stopped',
    ]);
  }, 300_000);

  it('metres and km/h give the same integers', () => {
    fc.assert(
      fc.property(anyBag, (file) => {
        const m = (yd: number) => Number((yd * 0.9144).toFixed(9));
        const metric: BagFile = {
          ...file,
          units: { ...file.units, distance: 'm', speed: 'km/h' },
          player: {
            ...file.player,
            ...(file.player.driverSpeed === undefined
              ? {}
              : { driverSpeed: file.player.driverSpeed * 1.609344 }),
          },
          clubs: file.clubs.map((club) => ({
            ...club,
            ...(club.carry === undefined ? {} : { carry: m(club.carry) }),
            ...(club.carrySd === undefined ? {} : { carrySd: m(club.carrySd) }),
            ...(club.ballSpeed === undefined ? {} : { ballSpeed: club.ballSpeed * 1.609344 }),
          })),
        };
        expect(answer(metric).instance).toEqual(answer(file).instance);
      }),
      { numRuns: 150, seed: SEED },
    );
  });

  it('a left-handed mirror gets the same plan', () => {
    fc.assert(
      fc.property(anyBag, (file) => {
        const flip = {
          left: 'right',
          right: 'left',
          high: 'high',
          low: 'low',
          fat: 'fat',
          thin: 'thin',
        } as const;
        const { miss } = file.player;
        const mirror: BagFile = {
          ...file,
          player: {
            ...file.player,
            handed: flip[file.player.handed],
            ...(miss ? { miss: miss.map((one) => flip[one]) } : {}),
          },
        };
        expect(answer(mirror)).toEqual(answer(file));
      }),
      { numRuns: 150, seed: SEED },
    );
  });

  it('more shots at the same means never add an ask', () => {
    fc.assert(
      fc.property(anyBag, (file) => {
        const withShots = (shots: number): BagFile => ({
          ...file,
          clubs: file.clubs.map((club) => (club.carry === undefined ? club : { ...club, shots, carrySd: 5 })),
        });
        const asks = (plan: PlanFile) =>
          plan.findings.filter((finding) => finding.kind === 'unsure-gap').length;
        expect(asks(answer(withShots(40)))).toBeLessThanOrEqual(asks(answer(withShots(12))));
      }),
      { numRuns: 100, seed: SEED },
    );
  });
});
