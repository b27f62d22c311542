import { expect, it } from 'vitest';
import { loadCatalogue } from '../../../db/catalogue/index.ts';
import type { BagFile } from '../../../src-main/contract/formats/bag-file.ts';
import { answerBag } from '../../../src-main/worker/answer.ts';
import { bagFile } from '../../support/bags.ts';

const planOf = (file: BagFile) =>
  answerBag(file, loadCatalogue(), { today: '2026-11-26', withInstance: false }).plan.plan;

it('a full bag of clubs that nothing places has an answer, the kept putter with it', () => {
  const unknown = Array.from({ length: 15 }, (_, i) => ({ id: `i${String(i)}`, kind: 'iron' as const }));
  const { driverSpeed: _speed, ...player } = bagFile().player;
  const file = { ...bagFile({ clubs: [...unknown, { id: 'p', kind: 'putter', goTo: true }] }), player };
  expect(planOf(file).swaps.filter((swap) => swap.clubId === 'p')).toEqual([]);
});

it('fourteen go-to clubs and no putter have an answer, and all stay', () => {
  const kept = Array.from({ length: 14 }, (_, i) => ({
    id: `c${String(i)}`,
    kind: 'iron' as const,
    loftDeg: 18 + 3 * i,
    carry: 210 - 10 * i,
    goTo: true,
  }));
  expect(planOf(bagFile({ clubs: kept })).swaps.filter((swap) => swap.action !== 'buy')).toEqual([]);
});
