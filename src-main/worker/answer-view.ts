import type { BagFile } from '../contract/formats/bag-file.ts';
import type { Answer } from '../contract/calls/answers/answers.ts';
import type { Archetype } from '../contract/formats/catalogue.ts';
import type { OtherStep } from '../domain/advice/plan/explain.ts';
import { stageName, type Advice } from '../domain/advice/advise.ts';
import type { BagView, Pair } from '../domain/advice/bag-view/view.ts';
import type { Instance } from '../domain/solve/index.ts';
import { purchasesOf, withoutPurchases } from '../domain/solve/model/purchases.ts';
import { answerBag, type AnswerOptions } from './answer.ts';
import { costSpreadOf, intervalsOf } from './chart-data.ts';

/** The answer as the window shows it: the plan file with its instance as far as it matters here, and what charts and tables need beside it. */
export function answerForWindow(
  file: BagFile,
  catalogue: readonly Archetype[],
  options: Omit<AnswerOptions, 'withInstance'>,
): Answer {
  const { advice, plan } = answerBag(file, catalogue, { ...options, withInstance: true });
  const { view, solution, built } = advice;
  const told = toldOf(advice);
  const step = ({ cost, penalty, buys }: OtherStep) => ({ cost: view.reader.money(cost), penalty, buys });
  return {
    plan: { ...plan, instance: withoutOthers(built.instance, told), walkAway: solution.walkAway },
    names: namesOf(advice, told),
    marks: view.pairs.flatMap((pair) => markOf(view, pair)),
    speed: {
      value: view.model.driverSpeedMph === null ? null : view.reader.speed(view.model.driverSpeedMph),
      from: view.model.speedFrom,
    },
    todayPenalty: (solution.today ?? solution.frontier[0])?.penalty ?? 0,
    stageNow: view.words.stageNow,
    paths: advice.paths.map(({ name, stages }) => ({
      name,
      stages: stages.map(({ when, items, cashMinor, netMinor, penalty }) => ({
        when: stageName(view, when),
        items,
        cash: view.reader.money(cashMinor),
        net: view.reader.money(netMinor),
        penalty,
      })),
    })),
    explanation: {
      purchases: advice.explanation.purchases.map(({ id, removes, without }) => ({
        id,
        removes,
        without: without && step(without),
      })),
      nextStep: advice.explanation.nextStep && step(advice.explanation.nextStep),
      cheapestHelp: advice.explanation.cheapestHelp && step(advice.explanation.cheapestHelp),
    },
    need:
      view.need === null
        ? null
        : {
            source: view.words.needSource(view.need.assumption),
            byClub: Object.fromEntries(
              [...view.need.byClub].map(([id, uses]) => [id, Math.round(uses * 10) / 10]),
            ),
            intervals: intervalsOf(view.need, view.ladder[0]?.carryYd ?? 0, file.units.distance),
          },
    costSpread: costSpreadOf(advice),
  };
}

/** A pair beyond a limit as the window shows it; none for one inside. */
export function markOf(
  view: BagView,
  { state, longer, shorter, gapYd, wideYd, crowdedYd }: Pair,
): Answer['marks'] {
  if (state === 'fine') return [];
  return [
    {
      state,
      longer: longer.clubId,
      shorter: shorter.clubId,
      gap: view.reader.distance(gapYd),
      limit: view.reader.distance(state.endsWith('wide') ? wideYd : crowdedYd),
    },
  ];
}

/** Ids of the items and purchases that the answer tells of. */
function toldOf({ solution, items, paths, alternatives, explanation }: Advice): Set<string> {
  const { purchases, nextStep, cheapestHelp } = explanation;
  const bags = [
    ...solution.frontier,
    ...paths.flatMap(({ stages }) => stages),
    ...alternatives.map(({ point }) => point),
  ];
  const steps = [...purchases.map(({ without }) => without), nextStep, cheapestHelp];
  return new Set([
    ...items,
    ...bags.flatMap((bag) => bag.items),
    ...steps.flatMap((step) => step?.buys ?? []),
  ]);
}

/** The instance as far as the answer tells of it: most candidates are in no bag that is worth telling of. */
function withoutOthers(instance: Instance, told: ReadonlySet<string>): Instance {
  const bought = new Set(purchasesOf(instance, [...told]));
  const others = instance.items
    .filter(({ origin }) => origin === 'candidate')
    .map(({ id, lot }) => lot ?? id)
    .filter((id) => !bought.has(id));
  return withoutPurchases(instance, new Set(others));
}

/** What the reader calls the clubs: the bag's own, and of the candidates those in bags that are told of. */
export function namesOf(
  { view, built }: Pick<Advice, 'view' | 'built'>,
  told: ReadonlySet<string>,
): Record<string, string> {
  const names: Record<string, string> = {};
  for (const club of view.bag.clubs) names[club.id] = view.name(club.id);
  for (const [id, { archetype, clubs }] of built.candidates) {
    const ids = [id, ...clubs.map(({ number }) => `${id}:${number ?? ''}`)];
    if (!ids.some((one) => told.has(one))) continue;
    const name = view.words.archetypeName(archetype);
    names[id] = name;
    for (const club of clubs) {
      if (club.number !== undefined)
        names[`${id}:${club.number}`] = view.words.memberName(club.number, archetype);
    }
  }
  return names;
}
