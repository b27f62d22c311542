import type { BagFile } from '../../../src-main/contract/formats/bag-file.ts';
import { bagFile, withClub, without } from '../../support/bags.ts';

/**
 * Invented players as a coach would tell of them, with the verdicts a good coach would sign and why. All of it is
 * common practice, no source: a second opinion on the rules, not a published table.
 */
export type Case = {
  name: string;
  story: string;
  bag: BagFile;
  status: readonly string[];
  /** Findings that must be there: kind, verdict, and clubs where they matter. */
  findings: readonly { kind: string; verdict: string; clubs?: string[] }[];
  /** Kinds that must not be there. */
  without?: readonly string[];
  /** Archetype kinds bought now, in any order; an empty list: nothing is bought. Undefined: either is right. */
  buys?: readonly string[];
  leaves?: readonly string[];
  why: string;
};

type ClubFile = BagFile['clubs'][number];
const priced = (...list: [string, number][]): BagFile['prices'] =>
  list.map(([archetype, likely]) => ({
    archetype,
    low: Math.round(likely * 0.7),
    likely,
    high: Math.round(likely * 1.4),
  }));
const add = (file: BagFile, ...clubs: ClubFile[]): BagFile => ({ ...file, clubs: [...file.clubs, ...clubs] });
function each(file: BagFile, changes: Record<string, Partial<ClubFile>>): BagFile {
  return Object.entries(changes).reduce((bag, [id, change]) => withClub(bag, id, change), file);
}

const MARKET = priced(
  ['hybrid-22-t3', 50],
  ['hybrid-25-t3', 45],
  ['fairway-21-t3', 60],
  ['fairway-18-t3', 55],
  ['wedge-48-t3', 30],
  ['wedge-52-t3', 30],
  ['wedge-54-t3', 30],
  ['wedge-50-t3', 30],
  ['irons-5-pw-30-t3', 180],
);
const BUDGET = { amount: 200 };
const shop = (file: BagFile): BagFile => ({ ...file, prices: MARKET, budget: BUDGET });

const longEnd = { '5w': { carry: 156 }, '4h': { carry: 153 }, '5i': { carry: 149 } };

export const CASES: Case[] = [
  {
    name: 'steep player, long end falls off, no ball speeds',
    story: 'Nothing from the 5-iron up goes past 156; the short irons step nicely. No launch data.',
    bag: shop(each(bagFile(), longEnd)),
    status: ['ask-first', 'nothing-needed', 'ok', 'partly'],
    findings: [{ kind: 'long-end-falls-off', verdict: 'ask' }],
    without: ['crowded-pair'],
    buys: [],
    why: 'Narrow long gaps alone do not prove technique, nor the bag: ask for ball speeds.',
  },
  {
    name: 'steep player, long end falls off, ball speed flat',
    story: 'The same player on a launch monitor: 121, 120.5 and 120 mph with 5-wood, hybrid and 5-iron.',
    bag: shop(
      each(bagFile(), {
        '5w': { carry: 156, ballSpeed: 121 },
        '4h': { carry: 153, ballSpeed: 120.5 },
        '5i': { carry: 149, ballSpeed: 120 },
      }),
    ),
    status: ['coach-first'],
    findings: [{ kind: 'long-end-falls-off', verdict: 'coach-first' }],
    buys: [],
    why: 'Ball speed that does not rise from club to club is delivery; no club mends it.',
  },
  {
    name: 'firm ground, low handicap, driver and 3-wood alike',
    story: 'Links player, flights it low; driver and fairway wood carry within six yards and run out.',
    bag: shop(
      withClub(bagFile({}, { handicap: 4, ground: 'firm', flighted: true }), '5w', {
        carry: 195,
        loftDeg: 15,
      }),
    ),
    status: ['nothing-needed', 'ask-first', 'ok', 'partly'],
    findings: [{ kind: 'firm-ground', verdict: 'keep', clubs: ['driver', '5w'] }],
    without: ['crowded-pair'],
    why: 'On firm ground that is a choice, not a fault.',
  },
  {
    name: 'high launch, high spin, left miss, soft shaft',
    story: 'Balloons it with a hook, senior flex at 92 mph.',
    bag: shop(
      each(bagFile({}, { driverSpeed: 92, miss: ['left', 'high'] }), {
        driver: { ballSpeed: 132, launchDeg: 18, spinRpm: 3700, flex: 'A' },
      }),
    ),
    status: ['ask-first', 'ok', 'partly', 'nothing-needed', 'over-budget'],
    findings: [
      { kind: 'driver-launch-spin', verdict: 'ask', clubs: ['driver'] },
      { kind: 'flex', verdict: 'ask', clubs: ['driver'] },
    ],
    why: 'Head, shaft and technique each have a share; without a better head priced there is only the question.',
  },
  {
    name: 'improving player with old blades',
    story: 'Twenty-two going to sixteen, tier 1 blades from a relative, carries fine.',
    bag: (() => {
      const file = shop(bagFile({}, { handicap: 22, targetHandicap: 16 }));
      return {
        ...file,
        clubs: file.clubs.map((club) =>
          club.kind === 'iron' ? { ...club, forgiveness: 1 as const, set: 'blades' } : club,
        ),
      };
    })(),
    status: ['nothing-needed', 'ok', 'partly', 'ask-first'],
    findings: [{ kind: 'improving', verdict: 'wait' }],
    buys: [],
    why: 'What only adds forgiveness waits for the new handicap.',
  },
  {
    name: 'go-to hybrid',
    story: 'Loves the 4-hybrid, crowded with the 5-iron or not.',
    bag: shop(each(bagFile(), { '4h': { goTo: true, carry: 150 } })),
    status: ['nothing-needed', 'ok', 'partly', 'ask-first'],
    findings: [{ kind: 'go-to', verdict: 'keep', clubs: ['4h'] }],
    why: 'A go-to club is never swapped.',
  },
  {
    name: 'strong irons with one sand wedge',
    story: '7-iron 28°, PW 41°, then a 55° sand wedge: nothing between 118 and 80 yards.',
    bag: shop(
      each(without(bagFile(), 'gw'), {
        '7i': { loftDeg: 28, carry: 148 },
        '8i': { loftDeg: 32, carry: 138 },
        '9i': { loftDeg: 37, carry: 128 },
        pw: { loftDeg: 41, carry: 118 },
        '6i': { loftDeg: 25, carry: 157 },
        '5i': { loftDeg: 22, carry: 166 },
        '4h': { carry: 175 },
        '5w': { carry: 186 },
      }),
    ),
    status: ['ok', 'partly'],
    findings: [
      { kind: 'strong-lofts', verdict: 'keep', clubs: ['7i'] },
      { kind: 'wedge-shortage', verdict: 'add', clubs: ['pw', 'sw'] },
    ],
    buys: ['wedge', 'wedge'],
    why: 'The hole is below the pitching wedge; the number on the sole says nothing.',
  },
  {
    name: 'irons only, small budget',
    story: 'Driver and irons from the attic, nothing between 201 and 148, eighty to spend.',
    bag: { ...shop(without(bagFile(), '5w', '4h')), budget: { amount: 80 } },
    status: ['ok', 'partly'],
    findings: [{ kind: 'wide-gap', verdict: 'add', clubs: ['driver', '5i'] }],
    why: 'One club in a 53-yard hole is the least that mends most of it.',
  },
  {
    name: 'long hitter with a hole under the hybrid',
    story: '108 mph, 22° hybrid 208, then the 6-iron at 172.',
    bag: (() => {
      const at = {
        driver: { carry: 256 },
        '5w': { carry: 226 },
        '4h': { carry: 208 },
        '6i': { carry: 172 },
        '7i': { carry: 160 },
        '8i': { carry: 148 },
        '9i': { carry: 136 },
        pw: { carry: 124 },
        gw: { carry: 111 },
        sw: { carry: 98 },
      };
      const file = each(without(bagFile({}, { driverSpeed: 108, handicap: 6 }), '5i'), at);
      return {
        ...file,
        prices: priced(['hybrid-24-t2', 60], ['iron-26-t3', 35]),
        budget: BUDGET,
      };
    })(),
    status: ['ok', 'partly'],
    findings: [{ kind: 'wide-gap', verdict: 'add', clubs: ['4h', '6i'] }],
    why: 'A 36-yard hole in the approach range is worth one club.',
  },
  {
    name: 'slow senior with a 3-wood',
    story: '72 mph, handicap 24, a 15° fairway wood that never leaves the ground.',
    bag: shop(
      each(bagFile({}, { driverSpeed: 72, handicap: 24 }), {
        driver: { carry: 133 },
        '5w': { loftDeg: 15, carry: 116 },
        '4h': { carry: 107 },
        '5i': { carry: 95 },
        '6i': { carry: 91 },
        '7i': { carry: 86 },
        '8i': { carry: 80 },
        '9i': { carry: 73 },
        pw: { carry: 67 },
        gw: { carry: 61 },
        sw: { carry: 55 },
      }),
    ),
    status: ['ok', 'partly', 'ask-first', 'over-budget'],
    findings: [{ kind: 'hard-from-the-deck', verdict: 'replace', clubs: ['5w'] }],
    why: 'Below 75 mph a 5-wood or 7-wood carries as far and gets up.',
  },
  {
    name: 'pain',
    story: 'Sore elbow since spring, wants new irons.',
    bag: shop(without(bagFile({}, { pain: true }), '4h', '5i')),
    status: ['stopped'],
    findings: [{ kind: 'pain', verdict: 'stop' }],
    buys: [],
    leaves: [],
    why: 'A medical professional first; no buying advice.',
  },
  {
    name: 'the perfect bag',
    story: 'Even gaps from driver to sand wedge, tiers that fit.',
    bag: shop(bagFile()),
    status: ['nothing-needed'],
    findings: [{ kind: 'nothing-needed', verdict: 'keep' }],
    without: ['wide-gap', 'crowded-pair', 'forgiveness', 'unsure-gap'],
    buys: [],
    leaves: [],
    why: 'Nothing to buy is a full answer.',
  },
  {
    name: 'too small a budget',
    story: 'A 39-yard hole and ten pounds.',
    bag: { ...shop(without(bagFile(), '4h', '5i')), budget: { amount: 10 } },
    status: ['over-budget'],
    findings: [{ kind: 'wide-gap', verdict: 'add', clubs: ['5w', '6i'] }],
    buys: [],
    why: 'Say so, and show what would help and what it costs.',
  },
  {
    name: 'sixteen clubs',
    story: 'Two old wedges and a spare hybrid came with the bag.',
    bag: shop(
      add(
        bagFile(),
        { id: 'w62', kind: 'wedge', loftDeg: 62, carry: 66 },
        { id: 'w56', kind: 'wedge', loftDeg: 56, carry: 79 },
        { id: '5h', kind: 'hybrid', loftDeg: 25, carry: 150 },
        { id: '3i', kind: 'iron', loftDeg: 21, carry: 163 },
      ),
    ),
    status: ['ok', 'partly'],
    findings: [
      { kind: 'count', verdict: 'drop' },
      { kind: 'wedge-surplus', verdict: 'drop', clubs: ['w62'] },
    ],
    buys: [],
    why: 'Two must go; the surplus wedges are the first to be missed least.',
  },
  {
    name: 'next to no data',
    story: 'A name, a handicap and a list of clubs without a single number.',
    bag: (() => {
      const { driverSpeed: _speed, ...player } = bagFile().player;
      return { ...shop(bagFile()), player, clubs: bagFile().clubs.map(({ id, kind }) => ({ id, kind })) };
    })(),
    status: ['ask-first'],
    findings: [{ kind: 'too-little-data', verdict: 'ask' }],
    buys: [],
    leaves: [],
    why: 'Measure first: one speed or one carry already tells most.',
  },
  {
    name: 'driver far behind the irons, launch in the window',
    story: '7-iron 129, driver 172 with 15° and 2,700 rpm at 128 mph.',
    bag: shop(
      each(bagFile(), {
        driver: { carry: 172, ballSpeed: 128, launchDeg: 15, spinRpm: 2700 },
        '5w': { carry: 170 },
      }),
    ),
    status: ['coach-first'],
    findings: [{ kind: 'driver-behind-irons', verdict: 'coach-first' }],
    buys: [],
    why: 'The delivery that reaches the ball is fine for its speed: the speed is the question.',
  },
];
