import { inconsistencies, type Inconsistency } from '../../player/consistency.ts';
import type { Question } from '../finding.ts';
import { driverBehindIrons } from '../rules/clubs/driver-behind-irons.ts';
import { flex } from '../rules/clubs/flex.ts';
import { longEnd } from '../rules/gaps/long-end.ts';
import type { Worth } from './robustness.ts';
import type { Varied } from './sampled.ts';
import type { BagView } from '../bag-view/view.ts';

/** Knows how much an answer about some clubs would change the plan; null: that would take too long. */
export type Weigh = (varied: Varied) => Worth | null;

/** A question with what its answer would change: `share` of sampled ladders in which something else is bought. */
export type WeighedQuestion = Question & { share: number };

/** The most questions that are weighed by re-planning; the rest rank below them by rule of thumb. */
const MOST_WEIGHED = 6;

type Draft = {
  ask: string;
  about: string[];
  /** Which carries the answer would settle; null where it settles none. */
  varied: Varied | null;
  /** Rank before weighing, and after it where nothing is at stake. */
  rank: number;
};

/**
 * What to measure or look up next. Worth is how often the best plan would change times the money at stake, in the
 * reader's currency; what no re-planning can weigh keeps a small rank below 1. The most telling first, ties by text.
 */
export function questionsOf(view: BagView, weigh: Weigh): WeighedQuestion[] {
  const drafts = draftsOf(view).sort((a, b) => b.rank - a.rank || (a.ask < b.ask ? -1 : 1));
  let weighed = 0;
  return drafts
    .map(({ ask, about, varied, rank }): WeighedQuestion => {
      if (varied === null || weighed >= MOST_WEIGHED) return { ask, about, worth: rank, share: 0 };
      weighed++;
      const worth = weigh(varied);
      if (worth === null) return { ask, about, worth: rank, share: 0 };
      const { share, stakeMinor } = worth;
      const money = view.reader.money(Math.round(share * stakeMinor));
      return { ask, about, worth: share === 0 ? rank / 10 : Math.max(rank, money), share };
    })
    .sort((a, b) => b.worth - a.worth || (a.ask < b.ask ? -1 : 1));
}

function draftsOf(view: BagView): Draft[] {
  const { bag, ladder, model, name, pairs, words } = view;
  const drafts: Draft[] = [];
  const ask = (text: string, about: string[], rank: number, varied: Varied | null = null) => {
    drafts.push({ ask: text, about, rank, varied });
  };
  if (bag.clubs.every((club) => club.kind === 'putter')) ask(words.questions.noClubs(), [], 0.99);
  else if (model.driverSpeedMph === null && ladder.length === 0)
    ask(words.questions.nothingKnown(), [], 0.99);
  const placed = new Set(ladder.map((rung) => rung.clubId));
  if (ladder.length > 0) {
    for (const club of bag.clubs) {
      if (club.kind !== 'putter' && !placed.has(club.id)) {
        ask(words.questions.unplaced({ club: name(club.id) }), [club.id], 0.8);
      }
    }
    if (ladder.every((rung) => rung.source === 'modelled'))
      ask(words.questions.allModelled(), [], 0.7, 'all');
  }
  for (const odd of inconsistencies(bag, model)) ask(oddText(view, odd), odd.clubs, 0.6);
  for (const { clubId, fromTotal } of ladder) {
    if (fromTotal === true)
      ask(words.questions.fromTotal({ club: name(clubId) }), [clubId], 0.5, new Set([clubId]));
  }
  const fall = longEnd(view);
  if (fall && (fall.cause === 'unknown' || fall.cause === 'odd-pair')) {
    const about = [...new Set(fall.pairs.flatMap(({ longer, shorter }) => [longer.clubId, shorter.clubId]))];
    ask(
      words.questions.longEnd({ clubs: about.map(name).join(', '), cause: fall.cause }),
      about,
      0.6,
      new Set(about),
    );
  }
  const behind = driverBehindIrons(view).find((finding) => finding.verdict === 'ask');
  if (behind) ask(words.questions.driver({ club: name(behind.clubs[0] ?? '') }), behind.clubs, 0.55);
  for (const finding of flex(view))
    ask(words.questions.flex({ club: name(finding.clubs[0] ?? '') }), finding.clubs, 0.2);
  for (const pair of pairs) {
    const { state, longer, shorter, chance } = pair;
    if (state !== 'unsure-wide' && state !== 'unsure-crowded') continue;
    if (fall?.pairs.includes(pair)) continue;
    const about = [longer.clubId, shorter.clubId];
    const text = words.questions.unsure({ longer: name(longer.clubId), shorter: name(shorter.clubId) });
    ask(text, about, Math.round(chance * 100) / 200, new Set(about));
  }
  for (const { clubId, loftAssumed, source } of ladder) {
    if (loftAssumed === true && (source === 'modelled' || source === 'interpolated')) {
      ask(words.questions.loftAssumed({ club: name(clubId) }), [clubId], 0.3);
    }
  }
  const putters = bag.clubs.filter((club) => club.kind === 'putter').map((club) => club.id);
  if (putters.length === 0 && bag.clubs.length > 0) ask(words.questions.putter(), [], 0.6);
  if (putters.length > 1) ask(words.questions.twoPutters(), putters, 0.6);
  if (bag.prices.length === 0) ask(words.questions.prices(), [], 0.4);
  return drafts;
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
