import type { CostKind } from '../../state/settings/cost-kinds.ts';
import { count } from './plural.ts';

type AmountKind = 'budget' | 'costs' | 'sales' | 'prices';

const AMOUNTS: Record<AmountKind, string> = {
  budget: 'budget',
  costs: 'costs',
  sales: 'sale prices',
  prices: 'price notes of this bag',
};

const COSTS: Record<CostKind, string> = {
  delivery: 'Delivery of a purchase',
  regrip: 'New grip, each',
  'sell-fee': 'Selling fee',
  'sell-postage': 'Postage of a sale',
  bend: 'Bending a club',
  shaft: 'Work on a shaft',
  other: 'Something else',
};

/** What plans are reckoned with, as the Settings drawer lets it be changed. */
export const reckoning = {
  ownUnits: {
    of: (player: string) => `Of the bag of ${player}`,
    distance: 'Distances in',
    speed: 'Speeds in',
    currency: 'Money in',
    note: 'Distances and speeds are only shown otherwise; what is stored stays. Money is never converted.',
    confirm: {
      heading: (from: string, to: string) => `From ${from} to ${to}: the numbers stay`,
      what: (n: number, kinds: string, from: string) =>
        `${count(n, 'amount', 'amounts')} of this bag ${n === 1 ? 'is' : 'are'} in ${from} (${kinds}).`,
      meaning: (from: string, to: string) =>
        `Nothing is converted: 45 ${from} becomes 45 ${to}. Go on only if the numbers were meant in ${to} all along.`,
      others: (from: string) => `Price notes that speak for every bag stay in ${from} and do not count here.`,
      keep: (to: string) => `Keep the numbers, in ${to}`,
      cancel: (from: string) => `Leave it in ${from}`,
    },
    kinds: AMOUNTS,
    changed: (currency: string) => `Money of this bag is in ${currency} now.`,
  },

  air: {
    program: 'For every player',
    own: (player: string) => `For ${player} alone`,
    temperature: 'Temperature, °C',
    altitude: 'Altitude, m',
    fromProgram: 'As for every player.',
    fromUsual: 'A mild day at sea level: 15 °C, 0 m. Common practice, no source.',
    ownOn: 'This player has another air',
    reset: 'Back to 15 °C at sea level',
    note: 'Carries that were given stay as they are. Speeds reckoned from them, and clubs without a carry, follow the air.',
  },

  limits: {
    source: 'Common practice, no source.',
    note: 'What you change here holds for every player. Plans and documents say that it is your own.',
    gaps: (unit: string) => `Gap limits by driver speed, ${unit}`,
    speed: 'Driver speed',
    from: (speed: string) => `from ${speed}`,
    columns: {
      crowdedYd: 'crowded under',
      wideYd: 'wide over',
      wideLongYd: 'long clubs: wide over',
      firstPairYd: 'driver to the next: wide over',
    },
    cell: (column: string, row: string) => `${column}, ${row}`,
    usual: (value: string) => `usual ${value}`,
    longShare: 'A club is long from this share of the driver’s carry on, %',
    tiers: 'Forgiveness by handicap',
    tierUpTo: (tier: string) => `${tier}: up to handicap`,
    tierLast: 'Above the last, tier 4. Irons may be one tier below, woods two.',
    weights: 'Weights',
    weightNames: {
      wide: 'Wide gap, a tenth of a yard (average)',
      crowd: 'Crowded pair, a tenth of a yard',
      tier: 'Each tier below the least',
    },
    weightsNote: 'Whole numbers. 0 leaves it out of account.',
    own: (n: number) => `${count(n, 'value is', 'values are')} your own.`,
    allUsual: 'All values are the usual ones.',
    reset: 'Back to the usual values',
    wasReset: 'Limits and weights are the usual ones again.',
  },

  costs: {
    ofBag: (player: string) => `Of the bag of ${player}`,
    ofNew: 'For new bags',
    newNote: 'New players of the same currency begin with these.',
    note: 'All are your own assumptions. Delivery, grip, fee and postage are in the plan; the others stand beside it. A cost without its tick stays noted and does not count.',
    kinds: COSTS,
    none: 'None is noted.',
    counts: (cost: string) => `${cost} counts`,
    amount: (cost: string, currency: string) => `${cost}, ${currency}`,
    percent: (cost: string) => `${cost}, %`,
    label: (cost: string) => `What for: ${cost}`,
    strike: (cost: string) => `Strike out: ${cost}`,
    strikeShort: 'Strike out',
    add: 'Add a cost',
    kind: 'Kind',
    currency: 'Currency',
    sum: 'Amount',
    share: 'Per cent',
    keep: 'Add it',
  },

  courses: {
    note: 'How often a gap is met depends on the course.',
    pick: (player: string) => `Course of ${player}`,
    usual: 'The usual one by the drive',
    fromFile: 'The one of the bag’s file',
    holes: (n: number, par: number, length: string) =>
      `${count(n, 'hole', 'holes')}, par ${String(par)}, ${length}`,
    noDrive: 'no drive is known yet',
    bags: (n: number) => `picked for ${count(n, 'bag', 'bags')}`,
    named: 'Named courses',
    none: 'None has a name yet.',
    edit: (course: string) => `Change ${course}`,
    editShort: 'Change',
    done: 'Done',
    strike: (course: string) => `Strike out ${course}`,
    strikeShort: 'Strike out',
    struck: (course: string) => `Struck out: the course ${course}.`,
    name: 'Name',
    hole: 'Hole',
    par: 'Par',
    length: (unit: string) => `Length, ${unit}`,
    cell: (column: string, hole: string) => `${column}, hole ${hole}`,
    addHole: 'Add a hole',
    dropHole: 'Take the last hole out',
    add: 'Add a course',
    layOut: 'Lay it out from tees of',
    tees: (length: string) => `${length} in all`,
    create: 'Lay it out',
    layOutNote: 'An invented usual layout of 18 holes, to be changed to yours.',
    change: 'A change holds for every bag that it is picked for.',
  },
};
