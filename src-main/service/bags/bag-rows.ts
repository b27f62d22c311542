import type { BagFile, ClubFile } from '../../contract/formats/bag-file.ts';
import { toMajor, toMinor } from '../../contract/money.ts';
import type { Units } from '../../contract/primitives.ts';
import { fromMph, fromYards, toMph, toYards } from '../../contract/units.ts';
import type { ClubFields } from '../../../db/repositories/bags/clubs.ts';
import type { PlayerFields } from '../../../db/repositories/bags/players.ts';
import type { WholeBag } from '../../../db/repositories/bags/whole-bag.ts';
import type { Band, Money } from '../../../db/row.ts';

/**
 * The bag file's words ⇄ the rows' words. Files are in the reader's units and major money; rows in yards, mph and
 * minor units with their currency.
 */
type FileBand = { low: number; likely: number; high: number };

/** A number that went to yards and back reads as it was typed. */
const tidy = (value: number) => Number(value.toPrecision(12));

export function toMoney(amount: number, currency: string): Money {
  return { minor: toMinor(amount, currency) ?? 0, currency };
}

export function toBand(band: FileBand, currency: string): Band {
  const minor = (amount: number) => toMinor(amount, currency) ?? 0;
  return {
    lowMinor: minor(band.low),
    likelyMinor: minor(band.likely),
    highMinor: minor(band.high),
    currency,
  };
}

export function fromBand({ lowMinor, likelyMinor, highMinor, currency }: Band): FileBand {
  const major = (minor: number) => toMajor(minor, currency);
  return { low: major(lowMinor), likely: major(likelyMinor), high: major(highMinor) };
}

export function clubRow(club: ClubFile, units: Units): ClubFields {
  const { id, carry, carrySd, total, ballSpeed, set, sell, ...same } = club;
  const yd = (value: number) => toYards(value, units.distance);
  return {
    ...same,
    key: id,
    ...(carry === undefined ? {} : { carryYd: yd(carry) }),
    ...(carrySd === undefined ? {} : { carrySdYd: yd(carrySd) }),
    ...(total === undefined ? {} : { totalYd: yd(total) }),
    ...(ballSpeed === undefined ? {} : { ballSpeedMph: toMph(ballSpeed, units.speed) }),
    ...(set === undefined ? {} : { lotKey: set }),
    ...(sell === undefined ? {} : { sell: toBand(sell, units.currency) }),
  };
}

export function clubFile(row: ClubFields, units: Units): ClubFile {
  const yd = (value: number) => tidy(fromYards(value, units.distance));
  const club: ClubFile = { id: row.key, kind: row.kind };
  const same = ['label', 'loftDeg', 'loftMeasured', 'lieDeg', 'lengthIn'] as const;
  const after = ['launchDeg', 'spinRpm', 'forgiveness', 'spinTier', 'flex', 'yearMade', 'goTo'] as const;
  const copy = (keys: readonly (keyof ClubFields & keyof ClubFile)[]) => {
    for (const key of keys) if (row[key] !== undefined) Object.assign(club, { [key]: row[key] });
  };
  copy(same);
  if (row.carryYd !== undefined) club.carry = yd(row.carryYd);
  if (row.carrySdYd !== undefined) club.carrySd = yd(row.carrySdYd);
  if (row.shots !== undefined) club.shots = row.shots;
  if (row.totalYd !== undefined) club.total = yd(row.totalYd);
  if (row.ballSpeedMph !== undefined) club.ballSpeed = tidy(fromMph(row.ballSpeedMph, units.speed));
  copy(after);
  if (row.lotKey !== undefined) club.set = row.lotKey;
  if (row.sell !== undefined) club.sell = fromBand(row.sell);
  return club;
}

export function playerRow(player: BagFile['player'], units: Units): PlayerFields {
  const { driverSpeed, ...same } = player;
  return {
    ...same,
    ...(driverSpeed === undefined ? {} : { driverSpeedMph: toMph(driverSpeed, units.speed) }),
  };
}

export function playerFile(row: PlayerFields, units: Units): BagFile['player'] {
  const { name, handicap, handed, ground } = row;
  return {
    name,
    handicap,
    ...(row.targetHandicap === undefined ? {} : { targetHandicap: row.targetHandicap }),
    ...(row.driverSpeedMph === undefined
      ? {}
      : { driverSpeed: tidy(fromMph(row.driverSpeedMph, units.speed)) }),
    handed,
    ground,
    ...(row.flighted === undefined ? {} : { flighted: row.flighted }),
    ...(row.miss === undefined ? {} : { miss: [...row.miss] }),
    ...(row.missNote === undefined ? {} : { missNote: row.missNote }),
    ...(row.pain === undefined ? {} : { pain: row.pain }),
  };
}

export function wholeBag(file: BagFile): WholeBag {
  const { units, costs, budget, choices, course } = file;
  const money = (amount: number) => toMoney(amount, units.currency);
  return {
    units,
    clubs: file.clubs.map((club) => clubRow(club, units)),
    ...(file.sets
      ? {
          lots: file.sets.map(({ id, sell }) => ({
            key: id,
            ...(sell ? { sell: toBand(sell, units.currency) } : {}),
          })),
        }
      : {}),
    prices: file.prices.map(({ archetype, seen, ...band }) => ({
      archetypeId: archetype,
      band: toBand(band, units.currency),
      ...(seen === undefined ? {} : { seenOn: seen }),
    })),
    ...(costs
      ? {
          costs: {
            ...(costs.delivery === undefined ? {} : { delivery: money(costs.delivery) }),
            ...(costs.regrip === undefined ? {} : { regrip: money(costs.regrip) }),
            ...(costs.sellFeePercent === undefined ? {} : { sellFeePercent: costs.sellFeePercent }),
            ...(costs.sellPostage === undefined ? {} : { sellPostage: money(costs.sellPostage) }),
          },
        }
      : {}),
    ...(budget
      ? {
          budget: {
            amount: money(budget.amount),
            ...(budget.cashBeforeSales === undefined ? {} : { cashBeforeSales: budget.cashBeforeSales }),
          },
        }
      : {}),
    ...(choices
      ? { choices: { ...(choices.changePutter === undefined ? {} : { changePutter: choices.changePutter }) } }
      : {}),
    ...(course
      ? {
          course: {
            holes: course.holes.map(({ par, length }) => ({
              par,
              lengthYd: toYards(length, units.distance),
            })),
          },
        }
      : {}),
  };
}

export function bagFileOf(player: PlayerFields, bag: WholeBag): BagFile {
  const { units, costs, budget, choices, course } = bag;
  const major = (money: Money) => toMajor(money.minor, money.currency);
  return {
    format: 'loftledger-bag',
    version: 1,
    player: playerFile(player, units),
    ...(course
      ? {
          course: {
            holes: course.holes.map(({ par, lengthYd }) => ({
              par,
              length: tidy(fromYards(lengthYd, units.distance)),
            })),
          },
        }
      : {}),
    units,
    clubs: bag.clubs.map((club) => clubFile(club, units)),
    ...(bag.lots
      ? { sets: bag.lots.map(({ key, sell }) => ({ id: key, ...(sell ? { sell: fromBand(sell) } : {}) })) }
      : {}),
    prices: bag.prices.map(({ archetypeId, band, seenOn }) => ({
      archetype: archetypeId,
      ...fromBand(band),
      ...(seenOn === undefined ? {} : { seen: seenOn }),
    })),
    ...(costs
      ? {
          costs: {
            ...(costs.delivery ? { delivery: major(costs.delivery) } : {}),
            ...(costs.regrip ? { regrip: major(costs.regrip) } : {}),
            ...(costs.sellFeePercent === undefined ? {} : { sellFeePercent: costs.sellFeePercent }),
            ...(costs.sellPostage ? { sellPostage: major(costs.sellPostage) } : {}),
          },
        }
      : {}),
    ...(budget
      ? {
          budget: {
            amount: major(budget.amount),
            ...(budget.cashBeforeSales === undefined ? {} : { cashBeforeSales: budget.cashBeforeSales }),
          },
        }
      : {}),
    ...(choices?.changePutter === undefined ? {} : { choices: { changePutter: choices.changePutter } }),
  };
}
