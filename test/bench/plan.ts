import { loadCatalogue } from '../../db/catalogue/index.ts';
import type { BagFile } from '../../src-main/contract/formats/bag-file.ts';
import { checkBagFile } from '../../src-main/contract/formats/read-bag.ts';
import { answerBag } from '../../src-main/worker/answer.ts';
import { bagFile, without } from '../support/bags.ts';
import { mulberry32 } from '../support/random.ts';
import { digest, spread, timeEach, timesOf, type BenchResult } from './support/report.ts';

const PRICED = 150;
const TODAY = '2026-11-26';
/** Clubs left out of the usual bag, one way after the other: none, one hole, two holes. */
const MISSING = [[], ['gw'], ['4h', '8i']];

/** A bag with prices for 150 archetypes, drawn anew for each seed. */
export function pricedBag(seed: number, archetypes: readonly { id: string; kind: string }[]): BagFile {
  const random = mulberry32(seed);
  const drawn = archetypes
    .map((archetype) => ({ archetype, at: random() }))
    .sort((a, b) => a.at - b.at)
    .slice(0, PRICED);
  const prices = drawn.map(({ archetype: { id, kind } }) => {
    const likely = Math.round((kind === 'irons' ? 150 : 30) + random() * (kind === 'irons' ? 250 : 120));
    return { archetype: id, low: likely - 10, likely, high: likely + 25 };
  });
  return checkBagFile(
    without(
      bagFile({ prices, budget: { amount: 150 + 50 * (seed % 5) } }),
      ...(MISSING[seed % MISSING.length] ?? []),
    ),
  );
}

/** The whole answer, from bag to plan file, with 150 archetypes priced. */
export function benchPlan({ quick = false } = {}): BenchResult[] {
  const catalogue = loadCatalogue();
  const bags = (from: number, count: number): BagFile[] =>
    Array.from({ length: count }, (_, i) => pricedBag(from + i, catalogue));
  const answer = (bag: BagFile) => answerBag(bag, catalogue, { today: TODAY, withInstance: true });
  bags(1001, quick ? 1 : 3).forEach(answer);
  const { times, answers } = timeEach(bags(1, quick ? 3 : 24), answer);
  return [
    {
      name: 'plan-150',
      ...timesOf(times),
      inputs: [
        `${String(PRICED)} archetypes priced`,
        spread(
          'items',
          answers.map(({ advice }) => advice.built.instance.items.length),
        ),
        spread(
          'swaps',
          answers.map(({ advice }) => advice.swaps.length),
        ),
        spread(
          'questions',
          answers.map(({ advice }) => advice.questions.length),
        ),
      ].join(', '),
      checksum: digest(answers.map(({ plan }) => plan)),
    },
  ];
}
