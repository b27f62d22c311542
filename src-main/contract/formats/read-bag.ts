import type { ArchetypePrice, Bag, Club, OwnedSet, PriceBand } from '../../domain/bag/types.ts';
import { DRIVER_SPEED_MPH, LOFT_DEG } from '../../domain/flight/ladder/input.ts';
import { bagFileSchema, type BagFile, type ClubFile } from './bag-file.ts';
import { MOST_BYTES } from './incoming-kinds.ts';
import { withNames } from './refused-places.ts';
import { parseJson } from '../json.ts';
import { isCurrency, minorDigits, toMinor } from '../money.ts';
import type { Units } from '../primitives.ts';
import { jsonPath, RefusedInput, refusalsOf, shownValue, type Refusal } from '../refusal.ts';
import { toMph, toYards } from '../units.ts';

export const MAX_BAG_BYTES = MOST_BYTES.bag;

/** Ranges that a golfer's numbers stay inside, in yards and mph; beyond them it is a slip of the pen. */
const CARRY_YD = [1, 450] as const;
const BALL_SPEED_MPH = [20, 250] as const;
/** Putter loft limits: Equipment Rules, Part 2 (test/reference/data/rules.json). */
const PUTTER_LOFT_DEG = { min: -15, max: 10 };
/** How long a hole may be, yards. */
export const HOLE_YD = [30, 1000] as const;

/** @throws RefusedInput naming every place, value and remedy (at most ten). */
export function readBagFile(bytes: Uint8Array | string): BagFile {
  return checkBagFile(parseJson(bytes, { what: 'bag file', maxBytes: MAX_BAG_BYTES }));
}

/** The checks of a bag file on its parsed JSON; an edit in the window passes the same ones. @throws RefusedInput */
export function checkBagFile(json: unknown): BagFile {
  const early = versionRefusal(json);
  if (early) throw new RefusedInput('This bag file cannot be used:', [early]);
  const parsed = bagFileSchema.safeParse(json);
  if (!parsed.success)
    throw new RefusedInput('This bag file cannot be used:', withNames(refusalsOf(parsed.error, json), json));
  const refusals = withNames(checkBag(parsed.data).slice(0, 10), json);
  if (refusals.length > 0) throw new RefusedInput('This bag file cannot be used:', refusals);
  return parsed.data;
}

function versionRefusal(json: unknown): Refusal | null {
  if (json === null || typeof json !== 'object' || Array.isArray(json)) return null;
  const { format, version } = json as { format?: unknown; version?: unknown };
  if (format === 'loftledger-bag' && typeof version === 'number' && version !== 1) {
    const newer = version > 1;
    return {
      path: '$.version',
      value: shownValue(version),
      message: newer ? 'this file was written for a newer program' : 'there is no such version',
      remedy: newer ? 'Use a newer Loftledger, or export the bag again as version 1.' : 'Write version 1.',
    };
  }
  return null;
}

/** What the shape alone cannot tell: units and ranges, one id once, low ≤ likely ≤ high, currency digits. */
function checkBag(file: BagFile): Refusal[] {
  const refusals: Refusal[] = [];
  const refuse = (path: PropertyKey[], value: unknown, message: string, remedy: string) => {
    refusals.push({ path: jsonPath(path), value: shownValue(value), message, remedy });
  };
  const { units } = file;

  if (!isCurrency(units.currency)) {
    refuse(
      ['units', 'currency'],
      units.currency,
      'this is no ISO 4217 currency that is known here',
      'Write a code such as GBP, EUR or USD.',
    );
    return refusals;
  }
  const digits = minorDigits(units.currency);
  const money = (path: PropertyKey[], amount: number | undefined) => {
    if (amount !== undefined && toMinor(amount, units.currency) === null) {
      refuse(
        path,
        amount,
        `${units.currency} has ${String(digits)} digits after the point`,
        'Round the amount.',
      );
    }
  };
  const band = (path: PropertyKey[], value: { low: number; likely: number; high: number } | undefined) => {
    if (!value) return;
    for (const key of ['low', 'likely', 'high'] as const) money([...path, key], value[key]);
    if (value.low > value.likely) {
      refuse(
        [...path, 'low'],
        value.low,
        `low is above likely (${String(value.likely)})`,
        'Give low ≤ likely ≤ high.',
      );
    } else if (value.likely > value.high) {
      refuse(
        [...path, 'likely'],
        value.likely,
        `likely is above high (${String(value.high)})`,
        'Give low ≤ likely ≤ high.',
      );
    }
  };
  const distance = (
    path: PropertyKey[],
    value: number | undefined,
    [low, high]: readonly [number, number],
  ) => {
    if (value === undefined) return;
    const yd = toYards(value, units.distance);
    if (yd < low || yd > high) {
      refuse(
        path,
        value,
        `a distance here lies between ${String(low)} and ${String(high)} yd`,
        `Check the number and the unit (${units.distance}).`,
      );
    }
  };
  const speed = (path: PropertyKey[], value: number | undefined, [low, high]: readonly [number, number]) => {
    if (value === undefined) return;
    const mph = toMph(value, units.speed);
    if (mph < low || mph > high) {
      refuse(
        path,
        value,
        `a speed here lies between ${String(low)} and ${String(high)} mph`,
        `Check the number and the unit (${units.speed}).`,
      );
    }
  };
  const once = (seen: Map<string, number>, path: PropertyKey[], id: string, what: string, index: number) => {
    const before = seen.get(id);
    if (before === undefined) seen.set(id, index);
    else refuse(path, id, `this id stands already at ${what}[${String(before)}]`, 'Give each its own id.');
  };

  speed(['player', 'driverSpeed'], file.player.driverSpeed, [DRIVER_SPEED_MPH.min, DRIVER_SPEED_MPH.max]);
  file.course?.holes.forEach((hole, i) => {
    distance(['course', 'holes', i, 'length'], hole.length, HOLE_YD);
  });

  const clubIds = new Map<string, number>();
  const usedSets = new Set<string>();
  file.clubs.forEach((club, i) => {
    const at = (key: string): PropertyKey[] => ['clubs', i, key];
    once(clubIds, at('id'), club.id, 'clubs', i);
    distance(at('carry'), club.carry, CARRY_YD);
    distance(at('total'), club.total, CARRY_YD);
    speed(at('ballSpeed'), club.ballSpeed, BALL_SPEED_MPH);
    const lofts = club.kind === 'putter' ? PUTTER_LOFT_DEG : LOFT_DEG[club.kind];
    if (club.loftDeg !== undefined && (club.loftDeg < lofts.min || club.loftDeg > lofts.max)) {
      refuse(
        at('loftDeg'),
        club.loftDeg,
        `the loft of a ${club.kind} lies between ${String(lofts.min)} and ${String(lofts.max)} degrees`,
        'Check the loft and the kind.',
      );
    }
    band(at('sell'), club.sell);
    if (club.set !== undefined) usedSets.add(club.set);
    if (club.carrySd !== undefined && club.carry !== undefined && club.carrySd > club.carry) {
      refuse(
        at('carrySd'),
        club.carrySd,
        `the spread is above the carry (${String(club.carry)})`,
        'Give the standard deviation of the carries.',
      );
    }
    for (const key of ['shots', 'carrySd'] as const) {
      if (club[key] !== undefined && club.carry === undefined) {
        refuse(at(key), club[key], 'this tells of a carry that is not given', 'Add carry, or take it out.');
      }
    }
    if (club.total !== undefined && club.carry !== undefined && club.total < club.carry) {
      refuse(
        at('total'),
        club.total,
        `the total is below the carry (${String(club.carry)})`,
        'Check which is which.',
      );
    }
  });

  const setIds = new Map<string, number>();
  file.sets?.forEach((set, i) => {
    once(setIds, ['sets', i, 'id'], set.id, 'sets', i);
    band(['sets', i, 'sell'], set.sell);
    if (!usedSets.has(set.id)) {
      refuse(
        ['sets', i, 'id'],
        set.id,
        'no club belongs to this set',
        'Give its clubs this set, or take the set out.',
      );
    }
  });

  const priced = new Map<string, number>();
  file.prices.forEach((price, i) => {
    once(priced, ['prices', i, 'archetype'], price.archetype, 'prices', i);
    band(['prices', i], price);
  });

  for (const key of ['delivery', 'regrip', 'sellPostage'] as const) money(['costs', key], file.costs?.[key]);
  money(['budget', 'amount'], file.budget?.amount);
  return refusals;
}

/** The checked file in the domain's units. */
export function bagFromFile(file: BagFile): Bag {
  const { units } = file;
  const minor = (amount: number): number => toMinor(amount, units.currency) ?? 0;
  const bandOf = (band: { low: number; likely: number; high: number }): PriceBand => ({
    lowMinor: minor(band.low),
    likelyMinor: minor(band.likely),
    highMinor: minor(band.high),
  });
  const { driverSpeed, ...player } = file.player;
  return {
    player: defined({
      ...player,
      driverSpeedMph: driverSpeed === undefined ? undefined : toMph(driverSpeed, units.speed),
    }),
    ...(file.course
      ? {
          holes: file.course.holes.map((hole) => ({
            par: hole.par,
            lengthYd: toYards(hole.length, units.distance),
          })),
        }
      : {}),
    clubs: file.clubs.map((club) => clubFromFile(club, units, bandOf)),
    sets: (file.sets ?? []).map((set): OwnedSet =>
      set.sell ? { id: set.id, sell: bandOf(set.sell) } : { id: set.id },
    ),
    prices: file.prices.map((price): ArchetypePrice => ({
      archetype: price.archetype,
      band: bandOf(price),
      ...(price.seen === undefined ? {} : { seen: price.seen }),
    })),
    costs: {
      deliveryMinor: minor(file.costs?.delivery ?? 0),
      regripMinor: minor(file.costs?.regrip ?? 0),
      sellFeePercent: file.costs?.sellFeePercent ?? 0,
      sellPostageMinor: minor(file.costs?.sellPostage ?? 0),
    },
    ...(file.budget
      ? {
          budget: {
            amountMinor: minor(file.budget.amount),
            cashBeforeSales: file.budget.cashBeforeSales ?? false,
          },
        }
      : {}),
    changePutter: file.choices?.changePutter ?? false,
  };
}

function clubFromFile(
  club: ClubFile,
  units: Units,
  bandOf: (band: { low: number; likely: number; high: number }) => PriceBand,
): Club {
  const { carry, carrySd, total, ballSpeed, sell, ...same } = club;
  const yd = (value: number | undefined) =>
    value === undefined ? undefined : toYards(value, units.distance);
  return defined({
    ...same,
    carryYd: yd(carry),
    carrySdYd: yd(carrySd),
    totalYd: yd(total),
    ballSpeedMph: ballSpeed === undefined ? undefined : toMph(ballSpeed, units.speed),
    sell: sell ? bandOf(sell) : undefined,
  });
}

type Defined<T> = { [K in keyof T as undefined extends T[K] ? never : K]: T[K] } & {
  [K in keyof T as undefined extends T[K] ? K : never]?: Exclude<T[K], undefined>;
};

/** Leaves out the keys whose value is undefined. */
function defined<T extends object>(record: T): Defined<T> {
  return Object.fromEntries(Object.entries(record).filter(([, value]) => value !== undefined)) as Defined<T>;
}
