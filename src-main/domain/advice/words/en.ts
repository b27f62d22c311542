import type { Archetype, Club } from '../../bag/types.ts';
import type { Words } from './words.ts';

const KIND: Record<Club['kind'], string> = {
  driver: 'driver',
  fairway: 'fairway wood',
  hybrid: 'hybrid',
  iron: 'iron',
  wedge: 'wedge',
  putter: 'putter',
};

const TIER = ["players'", "players' distance", 'game improvement', 'super game improvement'];

function tierName(tier: number): string {
  return TIER[tier - 1] ?? `tier ${String(tier)}`;
}

function archetypeName({ kind, loftDeg, forgiveness, spinTier, members }: Archetype): string {
  const tier = tierName(forgiveness);
  const spin = spinTier === 'mid' ? '' : `, ${spinTier} spin`;
  if (kind === 'irons') {
    const first = members?.[0]?.number ?? '';
    const last = members?.at(-1)?.number ?? '';
    return `irons ${first}–${last} (7-iron ${String(loftDeg)}°, ${tier}${spin})`;
  }
  if (kind === 'putter') return `putter (${String(loftDeg)}°, forgiveness ${String(forgiveness)} of 4)`;
  return `${String(loftDeg)}° ${KIND[kind]} (${tier}${spin})`;
}

/** English. Sentences of at most 30 words, hedged where the figures are, without blame. */
export const english: Words = {
  clubName: ({ id, label, kind }) => label ?? (kind === 'driver' || kind === 'putter' ? KIND[kind] : id),
  archetypeName,
  memberName: (number, { loftDeg }) =>
    /^\d+$/.test(number)
      ? `${number}-iron (set of 7-iron ${String(loftDeg)}°)`
      : `${number} (set of 7-iron ${String(loftDeg)}°)`,
  tierName,
  source: (source) => source,
  stageNow: 'now',
  figures: {
    gap: 'gap',
    limit: 'limit',
    chance: 'chance that the gap is beyond the limit',
    tier: 'forgiveness tier',
    leastTier: 'least tier for the handicap',
    clubs: 'clubs in the bag',
    carry: 'carry',
    handicap: 'handicap',
    limitSource: 'common practice, by driver speed',
    tierSource: 'common practice, by handicap',
    ruleSource: 'Rules of Golf, Rule 4.1b',
    playerSource: 'stated by the player',
  },
  pain: () =>
    'Pain is reported, so there is no buying advice here. Please see a medical professional first, then measure again.',
  nothingKnown: () =>
    'No carry and no speed is known yet, so nothing can be said about gaps. Measure one or two clubs first.',
  clubUnplaced: ({ club }) =>
    `The ${club} has neither a carry nor a loft, so its place on the ladder is not known yet.`,
  allModelled: () =>
    'No carry is known: the whole ladder is reckoned from driver speed. A few measured carries would make it yours.',
  wideGap: ({ longer, shorter, gap, limit }) =>
    `About ${gap} lie between ${longer} and ${shorter}; up to ${limit} is usual at this speed. Shots between them are likely to need a part swing.`,
  unsureGap: ({ longer, shorter, gap, limit, state }) =>
    state === 'unsure-wide'
      ? `${longer} and ${shorter} look ${gap} apart, beyond the usual ${limit}, but the figures are too loose to be sure. Measure both before buying.`
      : `${longer} and ${shorter} look only ${gap} apart, under the usual ${limit}, but the figures are too loose to be sure. Measure both first.`,
  crowdedDrop: ({ longer, shorter, gap, limit, dropped }) =>
    `${longer} and ${shorter} carry within ${gap} of each other (under ${limit}). The ${dropped} can come out; the other does its job.`,
  crowdedKeep: ({ longer, shorter, gap, limit }) =>
    `${longer} and ${shorter} carry within ${gap} of each other (under ${limit}). Taking one out would not make the bag better, so keep both.`,
  crowdedGoTo: ({ longer, shorter, gap }) =>
    `${longer} and ${shorter} carry within ${gap} of each other, but both stay: they are marked to be kept.`,
  forgiveness: ({ clubs, tier, least, handicap }) =>
    `${clubs}: ${tier} heads. At handicap ${handicap} at least ${least} heads usually cost fewer shots off centre.`,
  goTo: ({ club }) => `${club} is a go-to club. It stays, and nothing is planned against it.`,
  count: ({ count, most, dropped }) =>
    `${String(count)} clubs are in the bag; ${String(most)} may be carried in a round.${dropped === '' ? '' : ` The plan takes out: ${dropped}.`}`,
  nothingNeeded: ({ retest }) =>
    `Nothing here asks for money: keep the bag as it is. Look again about ${retest}, or when the swing changes.`,
  nothingToBuy: () => 'Nothing here asks for money: what the plan changes is free.',
  swap: {
    fillsGap: ({ archetype, longer, shorter, before, above, below }) =>
      `The ${archetype} goes between ${longer} and ${shorter}: ${before} becomes about ${above} and ${below}.`,
    moreForgiving: ({ archetype, clubs }) => `The ${archetype} forgives more off centre than ${clubs}.`,
    takesPlaceOf: ({ archetype, clubs }) =>
      `The ${archetype} takes the place of ${clubs} and evens the gaps around it.`,
    evensSet: ({ archetype }) => `The ${archetype} evens the gaps around it.`,
    topEnd: ({ archetype, carry }) =>
      `The ${archetype} gives the bag its longest club again, about ${carry} of carry.`,
    bottomEnd: ({ archetype, carry }) =>
      `The ${archetype} gives the bag its shortest full shot, about ${carry} of carry.`,
    replaced: ({ by }) => `Its job goes to the ${by}.`,
    crowded: ({ neighbour, gap }) => `It carries within ${gap} of ${neighbour}, which does its job.`,
    overCount: ({ most }) => `Only ${String(most)} clubs may be carried; this one is missed least.`,
    spare: () => 'Leaving it at home costs nothing on this ladder.',
    soldToPay: ({ money }) => `Selling it brings about ${money}.`,
  },
  questions: {
    putter: () => 'No putter is listed. Is there one? A place in the bag is kept for it until you say.',
    twoPutters: () => 'More than one putter is listed, and one can be in the bag. Which one stays?',
    nothingKnown: () =>
      'Give a driver speed, or the carry of one iron: about 10 shots, carry not total, leaving out clear mis-hits.',
    unplaced: ({ club }) => `What is the loft of ${club}, or its carry over about 10 shots?`,
    allModelled: () =>
      'Hit about 10 shots with a middle iron and with the driver, and note the carry, not the total.',
    unsure: ({ longer, shorter }) =>
      `Hit about 10 shots each with ${longer} and ${shorter} and note the carry, not the total: is the gap real?`,
    fromTotal: ({ club }) => `Only a total is known for ${club}. What does it carry? Roll is a rough guess.`,
    loftAssumed: ({ club }) => `The loft of ${club} is taken as typical for its name. What does it measure?`,
    prices: () =>
      'No used prices are noted, so nothing can be planned to buy. Note what you saw for clubs of interest.',
  },
  cautions: {
    ranges: () => 'Carries are means of all shots with their 90 % range; totals are rough and play no part.',
    prices: () => 'Used prices are the figures you typed in, not a market survey.',
    usedClub: () =>
      'Before paying for a used club: look for a loose ferrule, a cracked face, worn grooves and a bent shaft, and have its true loft measured.',
    rules: () =>
      "For competitions the governing bodies' current rules and lists, and the local committee, decide.",
    work: () => 'Leave shafts, bending, heat and solvents to a qualified club maker.',
    pain: () => 'Pain comes first: a medical professional, not equipment.',
  },
};
