import type { BagFile } from '../../contract/bag-file.ts';
import type { Answer } from '../../contract/calls/answers.ts';
import { bagFromFile } from '../../contract/read-bag.ts';
import { readerFor } from '../../contract/reader.ts';
import { ownedLadder } from '../../domain/player/ladder.ts';
import { playerModel } from '../../domain/player/model.ts';
import { ladderInAir } from '../../domain/player/what-if.ts';
import { adviceWords } from '../../domain/advice/words/index.ts';
import { keepLatestPlan } from '../../../db/repositories/plans.ts';
import { compareBags } from '../../worker/compare.ts';
import { flightsOf } from '../../worker/flights.ts';
import { toMoney } from '../bag-rows.ts';
import { loadBag } from '../bag-store.ts';
import type { Context, Handlers, Subject } from '../handler.ts';

export const answerHandlers: Handlers<Subject<'answers'> | Subject<'catalogue'>> = {
  'answers.plan': async (context, { bagId, budget, locale, job }) => {
    const { file } = loadBag(context.db, bagId);
    const asked = withBudget(file, budget);
    const task = { file: asked, catalogue: context.catalogue(), today: context.today(), locale };
    const answer =
      job === undefined
        ? await context.answerer.answer(task)
        : await context.jobs.run(job, ({ cells }) => context.answerer.answer({ ...task, cells }));
    if (budget === undefined) keepAnswer(context, bagId, file, answer);
    return answer;
  },
  'answers.compare': ({ db, catalogue, today }, { bagId, bags, locale }) =>
    compareBags(loadBag(db, bagId).file, catalogue(), bags, { today: today(), locale }),
  'answers.whatIf': ({ db }, { bagId, temperatureC, altitudeM }) => {
    const { file } = loadBag(db, bagId);
    const bag = bagFromFile(file);
    const model = playerModel(bag);
    const reader = readerFor(file.units);
    const air = { ...model.air, temperatureC, altitudeM };
    return {
      ladder: ladderInAir(ownedLadder(bag, model), model, air).map(
        ({ clubId, carryYd, lowYd, highYd, source }) => ({
          clubId,
          carry: reader.distance(carryYd),
          low: reader.distance(lowYd),
          high: reader.distance(highYd),
          source,
        }),
      ),
    };
  },
  'answers.flight': ({ db }, { bagId, locale }) => flightsOf(loadBag(db, bagId).file, locale),
  'catalogue.list': ({ catalogue }, { locale }) => {
    const words = adviceWords(locale);
    return catalogue().map((archetype) => ({ archetype, name: words.archetypeName(archetype) }));
  },
};

function withBudget(file: BagFile, amount: number | null | undefined): BagFile {
  if (amount === undefined) return file;
  const { budget, ...rest } = file;
  return amount === null ? rest : { ...rest, budget: { ...budget, amount } };
}

/** The roster shows the newest answer's open findings; the bag may have gone while it was reckoned. */
function keepAnswer({ db, now, version }: Context, bagId: number, input: BagFile, { plan }: Answer): void {
  const { currency } = input.units;
  const open = plan.findings.filter((finding) => finding.verdict !== 'keep').length;
  try {
    keepLatestPlan(
      db,
      {
        bagId,
        status: plan.plan.status,
        openFindings: open,
        cash: toMoney(plan.plan.cash, currency),
        net: toMoney(plan.plan.net, currency),
        input,
        output: plan,
        programVersion: version,
      },
      now(),
    );
  } catch {
    // Only a cache: the next answer writes it again.
  }
}
