import type { Archetype, Club } from '../../bag/types.ts';
import { atHead } from './at-head.ts';
import type { Words } from './words.ts';

const KIND: Record<Club['kind'], string> = {
  driver: 'driver',
  fairway: 'fairway wood',
  hybrid: 'hybrid',
  iron: 'iron',
  wedge: 'wedge',
  putter: 'putter',
};

const capital = (name: string) => atHead(name, 'en');

const TIER = ['players’', 'players’ distance', 'game improvement', 'super game improvement'];

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
  language: 'en',
  clubName: ({ id, label, kind }) => label ?? (kind === 'driver' || kind === 'putter' ? KIND[kind] : id),
  archetypeName,
  memberName: (number, { loftDeg }) =>
    /^\d+$/.test(number)
      ? `${number}-iron (set of 7-iron ${String(loftDeg)}°)`
      : `${number} (set of 7-iron ${String(loftDeg)}°)`,
  tierName,
  source: (source) => source,
  stageNow: 'now',
  stageHandicap: (handicap) => `when handicap ≤ ${handicap}`,
  stageSale: 'after the sale',
  stageSeason: 'next season',
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
    ownSource: 'set by the user',
    ruleSource: 'Rules of Golf, Rule 4.1b',
    playerSource: 'stated by the player',
    ladderSource: 'the player’s own ladder',
    practice: 'common practice',
    typical: 'typical for its name',
    loft: 'loft, degrees',
    length: 'length, inches',
    speed: 'driver speed',
    ballSpeed: 'ball speed',
    launch: 'launch, degrees',
    spin: 'spin, rpm',
    flex: 'flex',
    yearMade: 'year made',
    target: 'target handicap',
    expected: 'carry that the 7-iron lets expect',
    usualGap: 'usual gap at the short end',
    bend: 'loft bend, degrees',
    need: 'shots a round that ask for it',
  },
  needSource: ({ holes, parTotal, totalYd, source }) =>
    `${source === 'given' ? 'course given' : 'default course'}: ${String(holes)} holes, par ${String(parTotal)}, ${String(Math.round(totalYd))} yd; own model`,
  speedSource: (from) => (from === 'given' ? 'stated by the player' : `reckoned from ${from}`),
  pain: () =>
    'Pain is reported, so there is no buying advice here. Please see a medical professional first, then measure again.',
  noClubs: () => 'No club but a putter is listed yet, so there is no ladder to look at.',
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
      ? `${capital(longer)} and ${shorter} look ${gap} apart, beyond the usual ${limit}, but the figures are too loose to be sure. Measure both before buying.`
      : `${capital(longer)} and ${shorter} look only ${gap} apart, under the usual ${limit}, but the figures are too loose to be sure. Measure both first.`,
  crowdedDrop: ({ longer, shorter, gap, limit, dropped }) =>
    `${capital(longer)} and ${shorter} carry within ${gap} of each other (under ${limit}). The ${dropped} can come out; the other does its job.`,
  crowdedKeep: ({ longer, shorter, gap, limit }) =>
    `${capital(longer)} and ${shorter} carry within ${gap} of each other (under ${limit}). Taking one out would not make the bag better, so keep both.`,
  crowdedGoTo: ({ longer, shorter, gap }) =>
    `${capital(longer)} and ${shorter} carry within ${gap} of each other, but both stay: they are marked to be kept.`,
  forgiveness: ({ clubs, tier, least, handicap }) =>
    `${capital(clubs)}: ${tier} heads. At handicap ${handicap} at least ${least} heads usually cost fewer shots off centre.`,
  goTo: ({ club }) => `${capital(club)} is a go-to club. It stays, and nothing is planned against it.`,
  count: ({ count, most, dropped }) =>
    `${String(count)} clubs are in the bag; ${String(most)} may be carried in a round.${dropped === '' ? '' : ` The plan takes out: ${dropped}.`}`,
  nothingNeeded: ({ retest }) =>
    `Nothing here asks for money: keep the bag as it is. Look again about ${retest}, or when the swing changes.`,
  longEnd: ({ clubs, cause, usual }) => {
    const seen = `The gaps of ${clubs} close up, while the short end steps about ${usual}.`;
    switch (cause) {
      case 'flat-ball-speed':
        return `${seen} Ball speed hardly rises from club to club, so delivery is the likelier cause: see a coach before buying.`;
      case 'wide-spread':
        return `${seen} Single shots scatter by more than half a usual gap, so see a coach before buying.`;
      case 'make-up':
        return `${seen} Ball speed does rise, so the make-up is the likelier cause: loft or length give too little for this speed.`;
      case 'odd-pair':
        return `One pair (${clubs}) stands out in its set, where ${usual} is usual. Have loft, lie and length of both measured first.`;
      default:
        return `${seen} Bag or delivery cannot be told apart without ball speeds: note about 10 shots a club.`;
    }
  },
  driverBehindIrons: ({ club, by, behind, fitIsFine }) => {
    const seen = `${capital(club)} carries about ${by} ${behind ? 'less' : 'more'} than the 7-iron lets expect.`;
    return fitIsFine
      ? `${seen} Launch and spin are inside their window, so a head is unlikely to be the answer: see a coach first.`
      : `${seen} Delivery, fit or both may be behind it. Measure launch and spin before any purchase; no head promises it all back.`;
  },
  driverLaunchSpin: ({ club, launch, spin, left }) => {
    const off = [
      ...(launch === 0 ? [] : [`launches ${launch > 0 ? 'high' : 'low'}`]),
      ...(spin === 0 ? [] : [`spins ${spin > 0 ? 'much' : 'little'}`]),
    ].join(' and ');
    const head = spin > 0 ? 'A lower-spin head' : spin < 0 ? 'A higher-spin head' : 'Another head';
    return `${capital(club)} ${off} for its ball speed. ${head} may take part of it, the shaft another${
      left ? ' (the left miss points there too)' : ''
    }. Strike and attack have their share: equipment cannot remove all of it.`;
  },
  flex: ({ club, flex, fit, speed, miss }) =>
    `Flex ${flex} of ${club} looks ${fit === 'too-soft' ? 'soft' : 'stiff'} for ${speed}${
      miss ? ', and the miss fits that' : ''
    }. Labels differ between makers, so ask a fitter rather than the label.`,
  wedgeTooHigh: ({ club }) =>
    `${capital(club)} has more than 60° of loft, which few shots ask for. It can come out; part swings with the others do its job.`,
  wedgeStep: ({ club, other }) =>
    `${capital(club)} and ${other} lie within 3° of loft. ${capital(club)} can come out: practise part swings with the others instead.`,
  wedgeShortage: ({ longer, shorter, gap, limit }) =>
    `About ${gap} lie between ${longer} and ${shorter}, where ${limit} is usual. Many approach shots fall into that range.`,
  improving: ({ now, target }) =>
    `From ${now} towards ${target}: what only adds forgiveness can wait for the new handicap. Buying it now is the other path.`,
  forgivenessWaits: ({ clubs, target }) =>
    `${capital(clubs)} forgive little for today, but would do at handicap ${target}. That is near enough to wait.`,
  whyThisClub: ({ club, need }) =>
    `${capital(club)} is asked for ${need === '0.0' ? 'hardly ever' : `about ${need} times a round`} on this course. What is it for? Low priority, unless you know.`,
  hardFromTheDeck: ({ club }) =>
    `${capital(club)} has little loft for shots off the ground at this speed. A higher-lofted wood or a hybrid usually carries as far.`,
  firmGround: ({ longer, shorter, gap }) =>
    `${capital(longer)} and ${shorter} are within ${gap} of carry. On firm ground or with a low flight that is normal: change nothing.`,
  strongLofts: ({ club, measured }) =>
    `${capital(club)} has a strong loft${measured ? '' : ' (have it measured)'}: flyers are likelier. Choose wedges by the PW’s loft, never by the number on the sole.`,
  oneLength: ({ speed }) =>
    `All irons have one length. At ${speed} the long ones may not fly high enough to hold a green.`,
  checkConformity: ({ club }) =>
    `${capital(club)} was made before newer limits. Check the governing body’s current lists before a competition.`,
  bend: ({ club, by, weaker, longer, shorter }) =>
    `Bending ${club} ${by} ${weaker ? 'weaker' : 'stronger'} might put ${longer} and ${shorter} right. Ask a club maker: it costs little, if the head allows it.`,
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
    noClubs: () => 'Which clubs are in the bag? Lofts help, and the carry of one iron tells most.',
    nothingKnown: () =>
      'Give a driver speed, or the carry of one iron: about 10 shots, carry not total, leaving out clear mis-hits.',
    unplaced: ({ club }) => `What is the loft of ${club}, or its carry over about 10 shots?`,
    allModelled: () =>
      'Hit about 10 shots with a middle iron and with the driver, and note the carry, not the total.',
    unsure: ({ longer, shorter }) =>
      `Hit about 10 shots each with ${longer} and ${shorter} and note the carry, not the total: is the gap real?`,
    fromTotal: ({ club }) => `Only a total is known for ${club}. What does it carry? Roll is a rough guess.`,
    loftAssumed: ({ club }) => `The loft of ${club} is taken as typical for its name. What does it measure?`,
    longEnd: ({ clubs, cause }) =>
      cause === 'odd-pair'
        ? `What do loft, lie and length of ${clubs} measure? That decides whether one of them is bent or worn.`
        : `What are ball speed and carry of ${clubs}, about 10 shots each? That tells bag and delivery apart.`,
    driver: ({ club }) =>
      `What are ball speed, launch and spin of ${club} over about 10 shots? That tells fit and delivery apart.`,
    flex: ({ club }) => `What does a fitter say to the shaft of ${club}? The label alone decides nothing.`,
    carryRises: ({ stronger, weaker, by }) =>
      `${capital(weaker)} is said to carry ${by} further than ${stronger}, which has less loft. Is one of the two typed wrongly?`,
    maybeTotal: ({ club, carry }) =>
      `Is the ${carry} of ${club} a total with roll? Please give the carry alone.`,
    impossible: ({ club, carry, most }) =>
      `${capital(club)} is said to carry ${carry}; about ${most} would be the most at the speed given. Which of the two is right?`,
    prices: () =>
      'No used prices are noted, so nothing can be planned to buy. Note what you saw for clubs of interest.',
  },
  cautions: {
    ranges: () => 'Carries are means of all shots with their 90% range; totals are rough and play no part.',
    prices: () => 'Used prices are the figures you typed in, not a market survey.',
    usedClub: () =>
      'Before paying for a used club: look for a loose ferrule, a cracked face, worn grooves and a bent shaft, and have its true loft measured.',
    rules: () =>
      'For competitions the governing bodies’ current rules and lists, and the local committee, decide.',
    work: () => 'Leave shafts, bending, heat and solvents to a qualified club maker.',
    unproven: ({ least }) =>
      `This question has too many sets to prove the plan the best: it is the best found. No bag within budget leaves less than ${least} wrong.`,
    leftOut: () =>
      'So many sets are priced that not every reason, question and other way was reckoned. The plan itself is not touched by that.',
    ownConventions: ({ limits, tiers, weights }) =>
      `This plan was reckoned with the user’s own ${[
        ...(limits ? ['gap limits'] : []),
        ...(tiers ? ['forgiveness by handicap'] : []),
        ...(weights ? ['weights'] : []),
      ].join(', ')}, not with common practice.`,
    pain: () => 'Pain comes first: a medical professional, not equipment.',
  },
};
