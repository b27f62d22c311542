import { count } from '../plural.ts';

export const spend = {
  spend: {
    heading: 'Spend',
    status: {
      'nothing-needed': () => 'Nothing to buy. Keep the bag as it is.',
      ok: ({ buys, cost }: { buys: number; cost: string }) =>
        buys === 0
          ? 'The bag can be put right without buying anything.'
          : `${cost} puts the bag right: ${count(buys, 'purchase', 'purchases')}.`,
      partly: ({ buys, swaps, cost }: { buys: number; swaps: number; cost: string }) =>
        buys === 0
          ? swaps === 0
            ? 'With the prices you have noted, no purchase makes this bag better.'
            : 'Taking clubs out mends part of what is wrong and costs nothing. The rest stays.'
          : `${cost} mends part of what is wrong, not all of it: ${count(buys, 'purchase', 'purchases')}.`,
      'over-budget': () => 'Nothing within the budget makes this bag better.',
      'ask-first': () => 'Measure first: the open question decides what is worth buying.',
      'coach-first': () => 'See a coach first: clubs are not what is missing.',
      stopped: () => 'No buying advice: please see a medical professional first.',
    },
    left: (money: string) => `${money} of the budget is left.`,
    over: (money: string) => `${money} over the budget.`,
    noBudget: 'No budget is set, so the cheapest mend is shown.',
    completeMend: (money: string) => `The complete mend costs ${money}.`,
    fromToday: (share: string) => `${share} of what is wrong today is mended.`,
    allMended: 'All that is wrong today is mended.',
    chance: (share: string) => `Chance that it fits the budget: ${share}.`,

    budget: 'Budget',
    slider: 'Try another budget',
    trying: (tried: string, kept: string) => `Trying ${tried}. The bag’s budget is still ${kept}.`,
    noneKept: 'none',
    slideHint: 'Slide or type to see what another sum would do. Nothing is kept until you say so.',
    keep: (money: string) => `Keep ${money} as the budget`,
    keepNone: 'Keep no budget',
    back: (money: string) => `Back to ${money}`,

    curve: 'What each sum mends',
    chartName: (points: number) =>
      `Spend curve with ${count(points, 'point', 'points')}: cost against what is still wrong. The table below has the same figures.`,
    axisCost: 'cost',
    axisWrong: 'still wrong, of today’s bag',
    today: 'today',
    thePlan: 'the plan',
    budgetLine: (money: string) => `budget ${money}`,
    wrongNote:
      'Still wrong: distance beyond the gap limits and missing forgiveness, weighed together; today’s bag is 100%.',
    curveColumns: {
      cost: 'Cost',
      mended: 'Mended',
      changes: 'Changes',
      buys: 'What is bought',
      leaves: 'What goes out',
      which: 'Which',
    },
    nothing: '—',
    within: 'within the budget',
    beyond: 'beyond the budget',
    nothingPlaced: 'No club can be placed yet, so there is nothing to plot.',
    noCurve: 'Nothing to plot: no purchase that you have priced makes this bag better.',
    nothingWrong: 'Nothing is wrong with today’s ladder, so there is nothing to plot.',
    noPrices: 'No used prices are noted, so nothing can be planned to buy.',
    toPrices: 'Note prices on the Bag page',

    plan: 'The plan',
    planColumns: {
      action: 'Do',
      club: 'Club',
      inPlaceOf: 'In place of',
      pay: 'You pay',
      get: 'You get',
      walkAway: 'Walk away above',
      why: 'Why',
    },
    actions: { buy: 'buy', drop: 'take out', sell: 'sell' },
    stage: (stage: string) => stage,
    noCeiling: 'no ceiling but your budget',
    withSet: 'with its set',
    noSwaps: 'No swaps. The bag stays as it is.',
    totals: {
      clubs: 'Clubs',
      delivery: 'Delivery and new grips',
      cash: 'To pay',
      sales: 'From sales',
      saleCosts: 'Selling fees and postage',
      net: 'Cost after sales',
      budget: 'Budget',
      remaining: 'Left of the budget',
      over: 'Over the budget',
    },
    pricesNote: 'Prices are the likely ones of your own notes.',
    walkAwayNote:
      'Walk away above: beyond this price for the club alone, another plan is better for this player.',
    questions: 'Worth finding out first',
    worth: { much: 'would decide much', some: 'would decide some', little: 'would decide little' },
    cautions: 'Bear in mind',

    removes: (share: string) => `Leave it out and ${share} of today’s faults come back.`,
    removesNothing: 'Leave it out and nothing comes back: it saves money elsewhere.',
    without: (cost: string, buys: string, share: string) =>
      `Best without it: ${cost}, ${buys}, ${share} mended.`,
    buysNothing: 'buying nothing',
    buys: (clubs: string) => `buying ${clubs}`,
    next: 'The next step up',
    nextStep: (more: string, buys: string, share: string) =>
      `${more} more, ${buys}: ${share} of today’s faults mended.`,
    cheapest: 'The cheapest help',
    cheapestHelp: (cost: string, buys: string, share: string) =>
      `${cost}, ${buys}: ${share} of today’s faults mended.`,
    toSide: 'Set two ways side by side',
  },
};
