import type { BagFile } from '../contract/bag-file.ts';
import type { Answer } from '../contract/calls/answers.ts';
import type { Archetype } from '../contract/catalogue.ts';
import type { Advice } from '../domain/advice/advise.ts';
import { answerBag } from './answer.ts';

/** The answer as the window shows it: the plan file with its instance, and what charts and tables need beside it. */
export function answerForWindow(
  file: BagFile,
  catalogue: readonly Archetype[],
  options: { today: string; locale?: string },
): Answer {
  const { advice, plan } = answerBag(file, catalogue, { ...options, withInstance: true });
  const { view, solution, built } = advice;
  return {
    plan: { ...plan, instance: built.instance, walkAway: solution.walkAway },
    names: namesOf(advice),
    marks: view.pairs.flatMap(({ state, longer, shorter, gapYd, wideYd, crowdedYd }) =>
      state === 'fine'
        ? []
        : [
            {
              state,
              longer: longer.clubId,
              shorter: shorter.clubId,
              gap: view.reader.distance(gapYd),
              limit: view.reader.distance(state.endsWith('wide') ? wideYd : crowdedYd),
            },
          ],
    ),
    speed: {
      value: view.model.driverSpeedMph === null ? null : view.reader.speed(view.model.driverSpeedMph),
      from: view.model.speedFrom,
    },
    todayPenalty: (solution.today ?? solution.frontier[0])?.penalty ?? 0,
  };
}

function namesOf({ view, built }: Advice): Record<string, string> {
  const names: Record<string, string> = {};
  for (const club of view.bag.clubs) names[club.id] = view.name(club.id);
  for (const [id, { archetype, clubs }] of built.candidates) {
    const name = view.words.archetypeName(archetype);
    names[id] = name;
    for (const club of clubs) {
      if (club.number !== undefined)
        names[`${id}:${club.number}`] = view.words.memberName(club.number, archetype);
    }
  }
  return names;
}
