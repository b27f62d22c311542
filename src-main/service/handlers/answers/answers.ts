import type { BagFile } from '../../../contract/formats/bag-file.ts';
import { bagFromFile } from '../../../contract/formats/read-bag.ts';
import { readerFor } from '../../../contract/reader.ts';
import { ownedLadder } from '../../../domain/player/ladder/ladder.ts';
import { playerModel } from '../../../domain/player/model.ts';
import { ladderInAir } from '../../../domain/player/ladder/what-if.ts';
import { adviceWords } from '../../../domain/advice/words/index.ts';
import { compareBags } from '../../../worker/compare.ts';
import { flightsOf } from '../../../worker/flights.ts';
import type { Handlers, Subject } from '../../handler.ts';
import { keepPlan } from '../../answers/keep-plan.ts';
import { questionOf } from '../../answers/question.ts';

export const answerHandlers: Handlers<Subject<'answers'> | Subject<'catalogue'>> = {
  'answers.plan': async (context, { bagId, budget, locale, job }) => {
    const question = questionOf(context, bagId, locale);
    const task = { ...question, file: withBudget(question.file, budget) };
    const answer =
      job === undefined
        ? await context.answerer.answer(task)
        : await context.jobs.run(job, ({ cells }) => context.answerer.answer({ ...task, cells }));
    if (budget === undefined) {
      context.afterAnswer.add(() => {
        keepPlan(context, bagId, question, answer.plan);
      });
    }
    return answer;
  },
  'answers.compare': (context, { bagId, bags, locale }) => {
    const { file, catalogue, ...options } = questionOf(context, bagId, locale);
    return compareBags(file, catalogue, bags, options);
  },
  'answers.whatIf': (context, { bagId, temperatureC, altitudeM }) => {
    const { file, reckoning } = questionOf(context, bagId);
    const bag = bagFromFile(file);
    const model = playerModel(bag, reckoning.air);
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
  'answers.flight': (context, { bagId, locale }) => {
    const question = questionOf(context, bagId, locale);
    return flightsOf(question.file, question);
  },
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
