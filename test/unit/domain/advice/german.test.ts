import { describe, expect, test } from 'vitest';
import { german } from '../../../../src-main/domain/advice/words/de.ts';
import { english } from '../../../../src-main/domain/advice/words/en.ts';
import { adviceWords } from '../../../../src-main/domain/advice/words/index.ts';
import type { LongEndCause } from '../../../../src-main/domain/advice/rules/gaps/long-end-cause.ts';
import { english as seenEnglish } from '../../../../src-main/worker/seen-one-words/en.ts';
import { seenOneWords } from '../../../../src-main/worker/seen-one-words/index.ts';
import { ENGLISH, FIGURE, figures, leavesOf, longestSentence, type Samples } from '../../words/leaves.ts';

const CAUSES: Record<LongEndCause, true> = {
  'flat-ball-speed': true,
  'wide-spread': true,
  'make-up': true,
  'odd-pair': true,
  unknown: true,
};
const both = (key: string) => [[figures({ [key]: true })], [figures({ [key]: false })]];
const each = (key: string, values: readonly unknown[]) => values.map((value) => [figures({ [key]: value })]);
const causes = each('cause', Object.keys(CAUSES));
const signs = [-1, 0, 1];

const hybrid = { id: 'h', kind: 'hybrid', loftDeg: 22.5, forgiveness: 3, spinTier: 'low', lengthIn: 40 };
const irons = {
  ...hybrid,
  kind: 'irons',
  spinTier: 'mid',
  members: [
    { kind: 'iron', number: '5', loftDeg: 24 },
    { kind: 'iron', number: 'PW', loftDeg: 44 },
  ],
};

const SAMPLES: Samples = {
  clubName: [
    [{ id: 'd', kind: 'driver' }],
    [{ id: 'd', kind: 'driver', label: 'Mine' }],
    [{ id: 'x', kind: 'iron' }],
  ],
  archetypeName: [
    [hybrid],
    [irons],
    [{ ...hybrid, kind: 'putter', loftDeg: 3 }],
    [{ ...hybrid, kind: 'fairway' }],
  ],
  memberName: [
    ['5', irons],
    ['PW', irons],
  ],
  tierName: [[1], [2], [3], [4], [9]],
  source: [['measured'], ['stated'], ['interpolated'], ['modelled']],
  needSource: [
    [{ holes: 18, parTotal: 72, totalYd: 6000.4, source: 'given' }],
    [{ holes: 9, parTotal: 36, totalYd: 3000, source: 'default' }],
  ],
  speedSource: ['given', 'driver carry', 'driver total', '7-iron carry', 'another carry', 'nothing'].map(
    (one) => [one],
  ),
  unsureGap: each('state', ['unsure-wide', 'unsure-crowded']),
  count: [[{ count: 15, most: 14, dropped: '' }], [{ count: 15, most: 14, dropped: '7' }]],
  nothingNeeded: [[{ retest: '2027-05' }]],
  longEnd: causes,
  driverBehindIrons: [
    [figures({ behind: true, fitIsFine: true })],
    [figures({ behind: false, fitIsFine: true })],
    [figures({ behind: true, fitIsFine: false })],
  ],
  driverLaunchSpin: signs.flatMap((launch) =>
    signs.flatMap((spin) => [true, false].map((left) => [figures({ launch, spin, left })])),
  ),
  flex: ['too-soft', 'too-stiff'].flatMap((fit) => [true, false].map((miss) => [figures({ fit, miss })])),
  whyThisClub: each('need', ['0.0', '0,0', '0,2']),
  strongLofts: both('measured'),
  bend: both('weaker'),
  'questions.longEnd': causes,
};

/** The trade's own names, signs, and what is the user's. */
const SAME = new Set([
  'clubName',
  'tierName',
  'archetypeName',
  'figures.carry',
  'figures.handicap',
  'figures.flex',
]);

// Asked within each test, so that mutation testing sees what it runs.
const germanLeaves = () => leavesOf(german, SAMPLES, FIGURE);
const seenLeaves = () =>
  leavesOf(seenOneWords('de'), {}, FIGURE).concat(leavesOf(seenOneWords('de'), seenClubs()));

/** A club's own name with a small letter in front, wherever the samples have a figure. */
const named = (sample: unknown): unknown =>
  typeof sample === 'object' && sample !== null
    ? new Proxy(sample, {
        get: (target, key) => {
          const value = Reflect.get(target, key) as unknown;
          return value === '7' ? 'eXtra' : value;
        },
      })
    : sample;
const LISTS = new Set(['clubName', 'archetypeName', 'memberName', 'needSource', 'speedSource']);

describe.each([english, german])('advice in $language', (words) => {
  test('begins each sentence with a capital, whatever a club is called, and leaves the rest of its name', () => {
    const samples = Object.fromEntries(
      Object.entries(SAMPLES)
        .filter(([path]) => !LISTS.has(path))
        .map(([path, calls]) => [path, calls.map((args) => args.map(named))]),
    );
    const texts = leavesOf(words, samples, named(FIGURE)).filter(({ says }) => /[.?]$/.test(says));
    const heads = texts.flatMap(({ path, says }) =>
      says.split(/(?<=[.?!])\s+/).map((sentence) => ({ path, sentence })),
    );
    expect(heads.filter(({ sentence }) => sentence.startsWith('eXtra'))).toEqual([]);
    expect(heads.filter(({ sentence }) => sentence.startsWith('EXtra')).length).toBeGreaterThan(9);
  });
});

describe('advice in German', () => {
  test('says something of its own for every text', () => {
    const [says, inEnglish, seen] = [germanLeaves(), leavesOf(english, SAMPLES, FIGURE), seenLeaves()];
    expect(says.map(({ path }) => path)).toEqual(inEnglish.map(({ path }) => path));
    expect(says.filter((leaf, i) => leaf.says === inEnglish[i]?.says && !SAME.has(leaf.path))).toEqual([]);
    expect([...says, ...seen].filter(({ says: text }) => /undefined|NaN|\[object/.test(text))).toEqual([]);
    expect(Object.keys(seenOneWords('de')).sort()).toEqual(Object.keys(seenEnglish).sort());
  });

  test('has no English words among its own', () => {
    const texts = [...germanLeaves(), ...seenLeaves()].filter(({ path }) => path !== 'clubName');
    expect(texts.filter((leaf) => ENGLISH.test(leaf.says))).toEqual([]);
  });

  test('keeps its sentences to 30 words, and is never familiar', () => {
    const texts = [...germanLeaves(), ...seenLeaves()];
    expect(texts.filter((leaf) => longestSentence(leaf.says) > 30)).toEqual([]);
    expect(texts.filter((leaf) => /\b(du|dein\w*|dir|dich|euer|eure)\b/i.test(leaf.says))).toEqual([]);
  });

  test('writes decimals with a comma and months by name', () => {
    expect(german.archetypeName(hybrid as Parameters<typeof german.archetypeName>[0])).toBe(
      'Hybrid 22,5° (Game Improvement, niedriger Spin)',
    );
    expect(german.nothingNeeded({ retest: '2027-05' })).toContain('Mai 2027');
  });

  test('is what a German locale gets; others get English', () => {
    expect(adviceWords('de-CH')).toBe(german);
    expect(adviceWords('de')).toBe(german);
    expect(adviceWords('fr-FR')).toBe(english);
    expect(adviceWords()).toBe(english);
  });
});

function seenClubs(): Samples {
  return Object.fromEntries(
    Object.keys(seenEnglish).map((why) => [why, [[figures({ clubs: '' })], [FIGURE]]]),
  );
}
