import { loadCatalogue } from '../../../../db/catalogue/index.ts';
import { demoBag } from '../../../../db/demo/index.ts';
import type { BagFile } from '../../../../src-main/contract/formats/bag-file.ts';
import type { PlanFile } from '../../../../src-main/contract/formats/plan-file.ts';
import { readBagFile } from '../../../../src-main/contract/formats/read-bag.ts';
import type { Advice } from '../../../../src-main/domain/advice/advise.ts';
import { handOver, type HandOverOptions } from '../../../../src-main/domain/report/document.ts';
import type { HandOver } from '../../../../src-main/domain/report/model.ts';
import { answerBag } from '../../../../src-main/worker/answer.ts';
import { bagFile, withClub, without } from '../../../support/bags.ts';

/** Invented bags, one for each look that a hand-over can have. */
const catalogue = loadCatalogue();
export const TODAY = '2026-11-20';

const priced = (...list: [string, number][]): BagFile['prices'] =>
  list.map(([archetype, likely]) => ({
    archetype,
    low: Math.round(likely * 0.7),
    likely,
    high: Math.round(likely * 1.4),
    seen: '2026-11-02',
  }));
const MARKET = priced(
  ['hybrid-22-t3', 50],
  ['hybrid-25-t3', 45],
  ['fairway-21-t3', 60],
  ['fairway-18-t3', 55],
  ['wedge-48-t3', 30],
  ['wedge-50-t3', 30],
  ['wedge-52-t3', 30],
  ['wedge-54-t3', 30],
  ['irons-5-pw-30-t3', 180],
);
const COSTS = { delivery: 8, regrip: 9, sellFeePercent: 12.5, sellPostage: 6 };
const shop = (file: BagFile, amount = 200): BagFile => ({
  ...file,
  prices: MARKET,
  costs: COSTS,
  budget: { amount },
});
const each = (file: BagFile, changes: Record<string, Partial<BagFile['clubs'][number]>>): BagFile =>
  Object.entries(changes).reduce((bag, [id, change]) => withClub(bag, id, change), file);

const demo = (name: 'invented-bag' | 'range-bag') => readBagFile(JSON.stringify(demoBag(name)));

/** One to one in money; distances and speeds as a reader of metres would type them. */
export function metric(file: BagFile): BagFile {
  const m = (yd: number) => Math.round(yd * 0.9144 * 10) / 10;
  const { driverSpeed, ...player } = file.player;
  return {
    ...file,
    units: { distance: 'm', speed: 'km/h', currency: 'EUR' },
    player: {
      ...player,
      ...(driverSpeed === undefined ? {} : { driverSpeed: Math.round(driverSpeed * 1.609344) }),
    },
    clubs: file.clubs.map((club) => (club.carry === undefined ? club : { ...club, carry: m(club.carry) })),
  };
}

/** What a hostile file would put into names. */
export const HOSTILE = '<script>alert(1)</script>|`=1+1`"\'&amp;[x](javascript:y)';

/** Next to nothing owned, and a shop full: many purchases. */
const few = (): BagFile => ({
  ...each(
    without(
      bagFile({}, { name: 'Invented Starter', driverSpeed: 113 }),
      ...['5w', '4h', '5i', '6i', 'gw', 'pw'],
    ),
    {
      driver: { carry: 278 },
      '7i': { carry: 166 },
      '8i': { carry: 153 },
      '9i': { carry: 141 },
      sw: { loftDeg: 60, carry: 62 },
    },
  ),
  costs: COSTS,
  prices: priced(
    ...catalogue
      .filter(
        ({ kind, forgiveness }) => forgiveness === 3 && ['hybrid', 'wedge', 'fairway', 'iron'].includes(kind),
      )
      .map(({ id }, i): [string, number] => [id, 25 + (i % 7) * 5]),
  ),
});

const longNames = (): BagFile => {
  const file = demo('invented-bag');
  const long =
    'an unusually long name of a club that somebody typed in full with all that is known of its shaft and grip';
  return {
    ...file,
    player: { ...file.player, name: `Invented ${'Wolfeschlegelsteinhausenbergerdorff '.repeat(4).trim()}` },
    clubs: file.clubs.map((club, i) => ({
      ...club,
      label: i === 1 ? 'x'.repeat(110) : i === 2 ? '𝒞'.repeat(40) : `${club.id}, ${long}`,
    })),
  };
};

export const VARIANTS = {
  usual: () => demo('invented-bag'),
  'nothing to buy': () => shop(bagFile({}, { name: 'Invented Even' })),
  'coach first': () =>
    shop(
      each(bagFile({}, { name: 'Invented Steep' }), {
        '5w': { carry: 156, ballSpeed: 121 },
        '4h': { carry: 153, ballSpeed: 120.5 },
        '5i': { carry: 149, ballSpeed: 120 },
      }),
    ),
  'ask first': () => demo('range-bag'),
  stopped: () => shop(without(bagFile({}, { name: 'Invented Sore', pain: true }), '4h', '5i')),
  'over budget': () => shop(without(bagFile({}, { name: 'Invented Thrifty' }), '4h', '5i'), 20),
  partly: () => ({ ...few(), budget: { amount: 140 } }),
  staged: () => {
    const file = shop(bagFile({}, { name: 'Invented Improving', handicap: 22, targetHandicap: 16 }));
    return {
      ...file,
      clubs: file.clubs.map((club) =>
        club.kind === 'iron' ? { ...club, forgiveness: 1 as const, set: 'blades' } : club,
      ),
      sets: [{ id: 'blades', sell: { low: 60, likely: 80, high: 110 } }],
    };
  },
  'six purchases': few,
  'long names': longNames,
  'nothing known': () => {
    const { player, ...file } = bagFile({ clubs: [], prices: [] });
    return {
      ...file,
      player: { name: 'Invented Empty', handicap: player.handicap, handed: 'left', ground: 'soft' },
    };
  },
  hostile: () => {
    const file = demo('invented-bag');
    return {
      ...file,
      player: { ...file.player, name: `=${HOSTILE}` },
      clubs: file.clubs.map((club) => ({ ...club, label: `@${club.id} ${HOSTILE}` })),
    };
  },
  metric: () => metric(demo('invented-bag')),
  german: () => metric(demo('invented-bag')),
} satisfies Record<string, () => BagFile>;
export type Variant = keyof typeof VARIANTS;
export const NAMES = Object.keys(VARIANTS) as Variant[];

export type Made = { file: BagFile; advice: Advice; plan: PlanFile; document: HandOver };

const made = new Map<Variant, Made>();

/** Answered once a variant: the solver is not what these tests are about. */
export function make(name: Variant, options: Partial<HandOverOptions> = {}): Made {
  const locale = name === 'german' ? 'de-DE' : 'en-GB';
  const known = made.get(name);
  const file = known?.file ?? readBagFile(JSON.stringify(VARIANTS[name]()));
  const { advice, plan } = known ?? answerBag(file, catalogue, { today: TODAY, withInstance: false, locale });
  const document = handOver(advice, {
    today: TODAY,
    locale,
    currency: file.units.currency,
    ...options,
  });
  const result = { file, advice, plan, document };
  if (!known) made.set(name, result);
  return result;
}
