import fc from 'fast-check';
import { loadCatalogue } from '../../db/catalogue/index.ts';
import type { BagFile } from '../../src-main/contract/formats/bag-file.ts';

type ClubFile = BagFile['clubs'][number];

const LOFTS: Record<ClubFile['kind'], [number, number]> = {
  driver: [9, 13],
  fairway: [13.5, 24],
  hybrid: [16, 28],
  iron: [18, 48],
  wedge: [44, 64],
  putter: [1, 5],
};

const maybe = <T>(arbitrary: fc.Arbitrary<T>, freq = 2) => fc.option(arbitrary, { nil: undefined, freq });
const half = (low: number, high: number) =>
  fc.integer({ min: Math.round(low * 2), max: Math.round(high * 2) }).map((n) => n / 2);

/** Drops undefined keys, as JSON would. */
const clean = <T>(value: T): T => JSON.parse(JSON.stringify(value)) as T;

/** A club whose carry, when there is one, is roughly right for its loft at this speed, or plainly odd now and then. */
function club(speed: number): fc.Arbitrary<Omit<ClubFile, 'id'>> {
  return fc
    .constantFrom<ClubFile['kind']>('driver', 'fairway', 'hybrid', 'iron', 'iron', 'iron', 'wedge', 'putter')
    .chain((kind) => {
      const [low, high] = LOFTS[kind];
      return half(low, high).chain((loftDeg) => {
        const rough = Math.max(20, speed * 2.35 - loftDeg * (speed / 31));
        return fc.record({
          kind: fc.constant(kind),
          loftDeg: maybe(fc.constant(loftDeg), 6),
          carry:
            kind === 'putter' ? fc.constant(undefined) : maybe(half(Math.max(10, rough - 12), rough + 12), 4),
          shots: maybe(fc.integer({ min: 1, max: 20 }), 2),
          carrySd: maybe(half(1, 9), 2),
          forgiveness: maybe(fc.constantFrom<1 | 2 | 3 | 4>(1, 2, 3, 4), 2),
          spinTier: maybe(fc.constantFrom<'low' | 'mid' | 'high'>('low', 'mid', 'high'), 2),
          goTo: maybe(fc.boolean(), 2),
          set: maybe(fc.constantFrom('irons', 'other'), 2),
          ballSpeed: maybe(half(speed * 0.9, speed * 1.5), 2),
          launchDeg: maybe(half(8, 30), 2),
          spinRpm: maybe(fc.integer({ min: 1500, max: 9000 }), 2),
          flex: maybe(fc.constantFrom<'A' | 'R' | 'S'>('A', 'R', 'S'), 2),
          yearMade: maybe(fc.integer({ min: 1990, max: 2026 }), 2),
          sell: maybe(
            fc.integer({ min: 5, max: 60 }).map((likely) => ({ low: likely - 4, likely, high: likely + 9 })),
            2,
          ),
        });
      });
    })
    .map(
      ({ carrySd, shots, ...rest }) =>
        clean(rest.carry === undefined ? rest : { ...rest, carrySd, shots }) as Omit<ClubFile, 'id'>,
    );
}

const ids = loadCatalogue().map((archetype) => archetype.id);

/** Bags as untidy as people make them; every one passes the reader's checks. */
export const anyBag: fc.Arbitrary<BagFile> = fc.integer({ min: 60, max: 120 }).chain((speed) =>
  fc
    .record({
      clubs: fc.array(club(speed), { minLength: 0, maxLength: 17 }),
      handicap: half(-4, 40),
      targetHandicap: maybe(half(-4, 36), 2),
      driverSpeed: maybe(fc.constant(speed), 4),
      handed: fc.constantFrom<'left' | 'right'>('left', 'right'),
      ground: fc.constantFrom<'soft' | 'firm'>('soft', 'firm'),
      miss: maybe(
        fc.uniqueArray(fc.constantFrom<'left' | 'right' | 'high' | 'low'>('left', 'right', 'high', 'low'), {
          maxLength: 2,
        }),
        2,
      ),
      pain: maybe(
        fc.integer({ min: 0, max: 15 }).map((n) => n === 0),
        2,
      ),
      prices: fc.uniqueArray(fc.constantFrom(...ids), { maxLength: 7 }),
      likely: fc.array(fc.integer({ min: 15, max: 160 }), { minLength: 7, maxLength: 7 }),
      budget: maybe(
        fc.record({ amount: fc.integer({ min: 0, max: 400 }), cashBeforeSales: maybe(fc.boolean(), 2) }),
        4,
      ),
      delivery: maybe(fc.integer({ min: 0, max: 12 }), 2),
      changePutter: maybe(fc.boolean(), 2),
    })
    .map(({ clubs, prices, likely, budget, delivery, changePutter, ...player }) => {
      let putterKept = false;
      const named = clubs.map((one, i): ClubFile => {
        // At most one go-to putter, or the bag cannot be planned (its own test).
        const goTo = one.kind === 'putter' && putterKept ? undefined : one.goTo;
        if (one.kind === 'putter' && goTo === true) putterKept = true;
        return clean({ ...one, goTo, id: `c${String(i)}` }) as ClubFile;
      });
      return clean({
        format: 'loftledger-bag' as const,
        version: 1 as const,
        player: { name: 'Anybody', ...player },
        units: { distance: 'yd' as const, speed: 'mph' as const, currency: 'GBP' },
        clubs: capGoTo(named),
        prices: prices.map((archetype, i) => {
          const at = likely[i] ?? 50;
          return { archetype, low: at - 10, likely: at, high: at + 25 };
        }),
        ...(budget === undefined ? {} : { budget }),
        ...(delivery === undefined ? {} : { costs: { delivery } }),
        ...(changePutter === undefined ? {} : { choices: { changePutter } }),
      }) as BagFile;
    }),
);

/** At most 12 go-to clubs. */
function capGoTo(clubs: ClubFile[]): ClubFile[] {
  let kept = 0;
  return clubs.map((one) => {
    if (one.goTo !== true) return one;
    kept++;
    const { goTo: _goTo, ...rest } = one;
    return kept > 12 ? rest : one;
  });
}
