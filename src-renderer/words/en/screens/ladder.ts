import type { PairState, Source } from '../../../state/ladder/ladder-view.ts';
import { count } from '../plural.ts';

const SOURCES: Record<Source, string> = {
  measured: 'measured',
  stated: 'stated',
  interpolated: 'interpolated',
  modelled: 'modelled',
};

const STATES: Record<Exclude<PairState, 'fine'>, string> = {
  wide: 'wide gap',
  crowded: 'crowded pair',
  'unsure-wide': 'unsure: perhaps wide',
  'unsure-crowded': 'unsure: perhaps crowded',
};

export const ladder = {
  ladder: {
    heading: 'Ladder',
    side: 'Which bag',
    today: 'Today',
    after: 'After the plan',
    chart: (unit: string) => `Carries in ${unit} with their 90% ranges, longest club on top`,
    chartName: (clubs: number, marks: string) =>
      `Ladder of ${count(clubs, 'club', 'clubs')} by carry. ${marks === '' ? 'No gap is beyond its limit.' : marks} The table below has the same figures.`,
    axis: (unit: string) => `carry, ${unit}`,
    row: (carry: string, range: string, source: string) => `${carry}, ${range}, ${source}`,
    states: STATES,
    step: (state: Exclude<PairState, 'fine'>, gap: string, limit: string) =>
      state === 'wide' || state === 'unsure-wide'
        ? `${STATES[state]}: ${gap}, usual up to ${limit}`
        : `${STATES[state]}: ${gap}, usual from ${limit}`,
    stepShort: (state: Exclude<PairState, 'fine'>, gap: string) => `${STATES[state]}: ${gap}`,
    note: (n: string) => `note ${n}`,
    bought: 'new',
    leaving: 'goes out',
    legend: 'How to read it',
    legendKnown: 'carry and 90% range, measured or stated',
    legendReckoned: 'reckoned: interpolated or modelled',
    legendBought: 'bought by the plan',
    legendUnsure: 'unsure: measure both',
    table: 'The same as a table',
    columns: {
      club: 'Club',
      carry: (unit: string) => `Carry, ${unit}`,
      range: '90% range',
      source: 'Source',
      gap: (unit: string) => `Gap to the next, ${unit}`,
      said: 'What is said of the gap',
    },
    inside: 'inside its limits',
    last: 'last of the ladder',
    sources: SOURCES,
    ranges:
      'Carry is the mean of all shots; the range holds it nine times in ten. Totals are rough and play no part. The putter is on no ladder.',
    notes: 'Findings',
    notesOfToday: 'Findings of today’s bag',
    noNotes: 'No finding: nothing here asks for anything.',
    empty: 'No club can be placed yet',
    emptyText: 'Give a driver speed, or the carry of one iron, on the Bag page. Lofts place the other clubs.',
    unchanged: 'The plan changes nothing on the ladder.',
    speed: (speed: string, from: string) => `Driver speed ${speed}, ${from}.`,
    speedFrom: {
      given: 'as given',
      'driver carry': 'reckoned from the driver’s carry',
      'driver total': 'reckoned from the driver’s total, roughly',
      '7-iron carry': 'reckoned from the 7-iron’s carry',
      'another carry': 'reckoned from a carry, roughly',
      nothing: 'not known',
    },
    toSpend: 'See what it costs to mend',
  },

  findings: {
    kinds: {
      pain: 'Pain',
      'too-little-data': 'Too little known',
      'wide-gap': 'Wide gap',
      'unsure-gap': 'Unsure gap',
      'crowded-pair': 'Crowded pair',
      'long-end-falls-off': 'Long end falls off',
      'driver-behind-irons': 'Driver behind the irons',
      'driver-launch-spin': 'Driver launch and spin',
      flex: 'Flex',
      'wedge-surplus': 'Surplus wedge',
      'wedge-shortage': 'Missing wedge',
      forgiveness: 'Forgiveness',
      improving: 'Improving',
      'go-to': 'Go-to club',
      'why-this-club': 'Seldom needed',
      'hard-from-the-deck': 'Hard from the deck',
      'firm-ground': 'Firm ground',
      'strong-lofts': 'Strong lofts',
      'one-length': 'One length',
      'check-conformity': 'Check conformity',
      count: 'Too many clubs',
      bend: 'A bend may do',
      'nothing-needed': 'Nothing needed',
    } as Record<string, string>,
    verdicts: {
      keep: 'keep',
      drop: 'drop',
      replace: 'replace',
      add: 'add',
      ask: 'measure first',
      'coach-first': 'coach first',
      wait: 'wait',
      stop: 'stop',
    },
    severities: { 1: 'note', 2: 'worth acting on', 3: 'act on first' } as Record<number, string>,
    evidence: 'Evidence',
    figure: (figure: string, value: string, range: string | null) =>
      range === null ? `${figure}: ${value}` : `${figure}: ${value} (${range})`,
  },
};
