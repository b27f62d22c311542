import { describe, expect, test } from 'vitest';
import { de } from '../../../../src-renderer/words/de/index.ts';
import { en } from '../../../../src-renderer/words/en/index.ts';
import { ENGLISH, leavesOf, longestSentence, type Samples } from '../../words/leaves.ts';

const STATES = ['wide', 'crowded', 'unsure-wide', 'unsure-crowded'];
const KINDS = Object.keys(en.kinds);

const SAMPLES: Samples = {
  'beside.clubs': [[1], [2]],
  'beside.choice': [
    ['A', ''],
    ['A', 'B'],
  ],
  'find.counted': [[1], [2]],
  title: [
    ['Page', undefined],
    ['Page', 'Player'],
  ],
  'players.findings': [[0], [1], [2]],
  'players.count': [[1], [2]],
  'bag.clubsNote': [[1], [2]],
  'bag.newLabel': KINDS.map((kind) => [kind]),
  'ladder.chartName': [
    [1, ''],
    [2, '7'],
  ],
  'ladder.step': STATES.map((state) => [state, '7', '8']),
  'ladder.stepShort': STATES.map((state) => [state, '7']),
  'findings.figure': [
    ['7', '8', null],
    ['7', '8', '9'],
  ],
  'priceBook.shownFound': [[1], [2]],
  'priceBook.notes': [[1], [2]],
  'priceBook.otherCurrency': [
    [1, '7'],
    [2, '7'],
  ],
  'priceBook.watch.alike': [[1], [2]],
  'spend.status.ok': [[{ buys: 0, cost: '7' }], [{ buys: 1, cost: '7' }], [{ buys: 2, cost: '7' }]],
  'spend.status.partly': [
    [{ buys: 0, swaps: 0, cost: '7' }],
    [{ buys: 0, swaps: 1, cost: '7' }],
    [{ buys: 2, swaps: 2, cost: '7' }],
  ],
  'spend.chartName': [[1], [2]],
  'side.chartName': [
    [1, ''],
    [2, '7'],
  ],
  'charts.band.chartName': [
    ['7', '8', '9', '10', 1],
    ['7', '8', '9', '10', 2],
  ],
  'charts.band.readNote': [true, false].map((isSeen) => [
    { number: '7', day: '8', isSeen, low: '9', likely: '10', high: '11', said: '12' },
  ]),
  'charts.need.chartName': [
    ['7', 1],
    ['7', 2],
  ],
  'charts.need.reading': [
    [{ range: '7', shots: '8', tee: null, clubs: null }],
    [{ range: '7', shots: '8', tee: '9', clubs: '10' }],
  ],
  'charts.flight.units': [
    ['7', 1],
    ['7', 2],
  ],
  'charts.flight.reading': [
    [
      {
        club: '7',
        carry: '8',
        range: '9',
        apex: '10',
        apexRange: '11',
        land: '12',
        landRange: '13',
        from: '14',
      },
    ],
  ],
  'side.stages': [[['7', '8']]],
  'ownUnits.confirm.what': [
    [1, '7', '8'],
    [2, '7', '8'],
  ],
  'limits.own': [[1], [2]],
  'refused.said': [['the file is empty']],
  'courses.holes': [
    [1, 4, '7'],
    [18, 72, '7'],
  ],
  'courses.bags': [[1], [2]],
  'erase.confirm.backups': [[0], [1], [2]],
  'erase.left': [[1], [2]],
  'files.waiting': [[0], [1], [2]],
  'files.bad.heading': [[0], [1], [2]],
  'files.bad.skip': [[0], [1], [2]],
  'files.bags.heading': [[0], [1], [2]],
  'files.bags.known': [[0], [1], [2]],
  'files.bags.run': [[0], [1], [2]],
  'files.prices.same': [[0], [1], [2]],
  'files.prices.run': [[0], [1], [2]],
  'files.prices.done': [[0], [1], [2]],
  'files.prices.skipped': [[0], [1], [2]],
  'files.roster.ready': [[0], [1], [2]],
  'files.roster.known': [[0], [1], [2]],
  'files.roster.run': [[0], [1], [2]],
  'files.roster.done': [[0], [1], [2]],
  'files.prices.ready': [
    [0, 0],
    [1, 1],
    [2, 2],
  ],
  'files.shots.sample': [
    [1, 1],
    [2, 2],
  ],
  'files.shots.run': [
    [1, 1],
    [2, 2],
  ],
  'files.shots.done': [
    [1, 1, '7'],
    [2, 2, '7'],
  ],
  'handover.batch.start': [[0], [1], [2]],
  'handover.batch.done': [[1], [2]],
  'handover.batch.cancelled': [[0], [1], [2]],
  'handover.batch.failed': [[1], [2]],
};

/** Names, signs, and words of the trade that German golfers use too. */
const SAME = new Set([
  'beside.choice',
  'beside.club',
  'beside.carry',
  'beside.groups.driver',
  'beside.groups.putter',
  'beside.noDifference',
  'files.bags.columns.handicap',
  'files.carries.carry',
  'files.carries.columns.carry',
  'files.database.rows.bag',
  'files.roster.columns.handicap',
  'files.roster.columns.name',
  'files.shots.columns.carry',
  'handover.pdf',
  'handover.formats.md',
  'handover.formats.csv',
  'handover.papers.a4',
  'handover.papers.letter',
  'handover.name',
  'name',
  'title',
  'withKeys',
  'theme.system',
  'keys.backKeys',
  'settings.languageSystem',
  'players.columns.name',
  'players.columns.handicap',
  'players.columns.budget',
  'newPlayer.name',
  'newPlayer.handicap',
  'bag.fields.name',
  'bag.fields.handicap',
  'bag.columns.loft',
  'bag.columns.carry',
  'bag.cell',
  'bag.reckoned',
  'bag.budget',
  'bag.details.lieDeg',
  'bag.details.flex',
  'bag.details.spinTier',
  'kinds.driver',
  'kinds.hybrid',
  'kinds.wedge',
  'kinds.putter',
  'tiers.1',
  'flexes.L',
  'flexes.A',
  'flexes.R',
  'flexes.S',
  'flexes.X',
  'units.mph',
  'units.km/h',
  'units.m/s',
  'players.batch.refused',
  'prices.cell',
  'screens.bag',
  'ladder.axis',
  'ladder.row',
  'ladder.stepShort',
  'ladder.columns.carry',
  'findings.figure',
  'priceBook.field',
  'spend.budget',
  'spend.budgetLine',
  'spend.nothing',
  'spend.stage',
  'spend.totals.budget',
  'side.point',
  'side.nothingLater',
  'side.markOn',
  'side.columns.carry',
  'side.none',
  'costs.amount',
  'costs.percent',
  'courses.name',
  'courses.par',
  'limits.cell',
  'print.head',
  'records.size',
  'steps.did.clubs.move',
  'steps.of',
  'steps.club',
]);

const english = leavesOf(en, SAMPLES);
const german = leavesOf(de, SAMPLES);

describe('the German window', () => {
  test('says something of its own for every text', () => {
    expect(german.map(({ path }) => path)).toEqual(english.map(({ path }) => path));
    const untold = german.filter(({ path, says }, i) => says === english[i]?.says && !SAME.has(path));
    expect(untold).toEqual([]);
    expect(german.filter(({ says }) => says.trim() === '' || /undefined|NaN|\[object/.test(says))).toEqual(
      [],
    );
  });

  test('has no English words among its own', () => {
    expect(german.filter(({ says }) => ENGLISH.test(says))).toEqual([]);
  });

  test('keeps its sentences to 30 words, and so does English', () => {
    const long = [...german, ...english].filter(({ says }) => longestSentence(says) > 30);
    expect(long).toEqual([]);
  });

  test('is never familiar', () => {
    expect(german.filter(({ says }) => /\b(du|dein|deine|deinen|dir|dich|euer|eure)\b/i.test(says))).toEqual(
      [],
    );
  });

  test('the list of what is the same holds nothing that has gone', () => {
    const paths = new Set(english.map(({ path }) => path));
    expect([...SAME].filter((path) => !paths.has(path))).toEqual([]);
  });
});

test('English words are found where there are some', () => {
  expect('Was the Leiter sagt').toMatch(ENGLISH);
  expect(longestSentence(`${'Wort '.repeat(31)}. Kurz.`)).toBe(32);
});
