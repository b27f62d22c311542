import type { Question } from './finding.ts';
import { inconsistencies, type Inconsistency } from '../player/consistency.ts';
import type { BagView } from './view.ts';

/** What to measure or look up next, the most telling first; ties by text. */
export function questionsOf(view: BagView): Question[] {
  const { bag, ladder, model, name, pairs, words } = view;
  const questions: Question[] = [];
  const ask = (ask: string, about: string[], worth: number) => {
    questions.push({ ask, about, worth: Math.round(worth * 100) / 100 });
  };
  const putters = bag.clubs.filter((club) => club.kind === 'putter');
  if (model.driverSpeedMph === null && ladder.length === 0) ask(words.questions.nothingKnown(), [], 1);
  const placed = new Set(ladder.map((rung) => rung.clubId));
  if (ladder.length > 0) {
    for (const club of bag.clubs) {
      if (club.kind !== 'putter' && !placed.has(club.id)) {
        ask(words.questions.unplaced({ club: name(club.id) }), [club.id], 0.8);
      }
    }
    if (ladder.every((rung) => rung.source === 'modelled')) ask(words.questions.allModelled(), [], 0.7);
  }
  for (const odd of inconsistencies(bag, model)) ask(oddText(view, odd), odd.clubs, 0.6);
  for (const rung of ladder) {
    if (rung.fromTotal === true)
      ask(words.questions.fromTotal({ club: name(rung.clubId) }), [rung.clubId], 0.5);
  }
  for (const pair of pairs) {
    if (pair.state !== 'unsure-wide' && pair.state !== 'unsure-crowded') continue;
    const about = [pair.longer.clubId, pair.shorter.clubId];
    ask(
      words.questions.unsure({ longer: name(about[0] ?? ''), shorter: name(about[1] ?? '') }),
      about,
      pair.chance,
    );
  }
  for (const rung of ladder) {
    if (rung.loftAssumed === true && (rung.source === 'modelled' || rung.source === 'interpolated')) {
      ask(words.questions.loftAssumed({ club: name(rung.clubId) }), [rung.clubId], 0.3);
    }
  }
  if (putters.length === 0 && bag.clubs.length > 0) ask(words.questions.putter(), [], 0.6);
  if (putters.length > 1)
    ask(
      words.questions.twoPutters(),
      putters.map((club) => club.id),
      0.6,
    );
  if (bag.prices.length === 0) ask(words.questions.prices(), [], 0.4);
  return questions.sort((a, b) => b.worth - a.worth || (a.ask < b.ask ? -1 : a.ask > b.ask ? 1 : 0));
}

function oddText({ name, reader, words }: BagView, odd: Inconsistency): string {
  switch (odd.kind) {
    case 'carry-rises-with-loft': {
      const [stronger, weaker] = odd.clubs;
      return words.questions.carryRises({
        stronger: name(stronger),
        weaker: name(weaker),
        by: reader.distanceText(odd.byYd),
      });
    }
    case 'maybe-total':
      return words.questions.maybeTotal({
        club: name(odd.clubs[0]),
        carry: reader.distanceText(odd.carryYd),
      });
    case 'impossible-for-speed':
      return words.questions.impossible({
        club: name(odd.clubs[0]),
        carry: reader.distanceText(odd.carryYd),
        most: reader.distanceText(odd.atMostYd),
      });
  }
}
