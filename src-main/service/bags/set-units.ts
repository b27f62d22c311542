import { isCurrency, minorDigits, toMajor, toMinor } from '../../contract/money.ts';
import type { Units } from '../../contract/primitives.ts';
import { RefusedInput, shownValue, type Refusal } from '../../contract/refusal.ts';
import { findBag, updateBag } from '../../../db/repositories/bags/bags.ts';
import { listClubs, updateClub } from '../../../db/repositories/bags/clubs.ts';
import { costLinesOf, updateCostLine } from '../../../db/repositories/prices/cost-lines.ts';
import { listLots, setLotSell } from '../../../db/repositories/bags/lots.ts';
import { notesOfBag, updatePriceNote } from '../../../db/repositories/prices/price-notes.ts';
import type { Band, Money } from '../../../db/row.ts';
import type { Db } from '../../../db/sqlite.ts';

/** One amount or band of a bag: its numbers in minor units, and how it is written again in another currency. */
type Amount = {
  kind: AmountKind;
  what: string;
  minors: readonly number[];
  write: (turn: Turn, currency: string) => void;
};
export type AmountKind = 'budget' | 'costs' | 'sales' | 'prices';
type Turn = (minor: number) => number;

/**
 * Changes the units that a bag is read in. Distances and speeds are stored in one unit, so theirs change at any time.
 * Amounts are never converted: another currency is taken only where the bag holds none, or with `keepNumbers`, which
 * says that the numbers were meant in the new one. What was paid and got for clubs stays as it was.
 * @throws RefusedInput
 */
export function setUnits(
  db: Db,
  bagId: number,
  change: { [K in keyof Units]?: Units[K] | undefined } & { keepNumbers?: boolean | undefined },
): void {
  const bag = findBag(db, bagId);
  const { distance = bag.distanceUnit, speed = bag.speedUnit, currency = bag.currency } = change;
  if (currency !== bag.currency)
    changeCurrency(db, bagId, bag.currency, currency, change.keepNumbers === true);
  updateBag(db, bagId, { distanceUnit: distance, speedUnit: speed, currency });
}

/** What of a bag is in its currency. @throws StorageError 'missing' */
export function amountsOf(db: Db, bagId: number): { currency: string; count: number; kinds: AmountKind[] } {
  const { currency } = findBag(db, bagId);
  const amounts = amountsIn(db, bagId, currency);
  return { currency, count: amounts.length, kinds: [...new Set(amounts.map(({ kind }) => kind))] };
}

function changeCurrency(db: Db, bagId: number, from: string, to: string, keepNumbers: boolean): void {
  const refuse = (refusals: Refusal[]) => new RefusedInput('The currency cannot be changed:', refusals);
  const at = { path: '$.currency', value: shownValue(to) };
  if (!isCurrency(to)) {
    const message = 'this is no ISO 4217 currency that is known here';
    throw refuse([{ ...at, message, remedy: 'Write a code such as GBP, EUR or USD.' }]);
  }
  const amounts = amountsIn(db, bagId, from);
  if (amounts.length === 0) return;
  if (!keepNumbers) {
    const what = [...new Set(amounts.map((amount) => amount.what))].join(', ');
    const message = `${String(amounts.length)} amounts of this bag are in ${from} (${what}), and nothing is converted`;
    const remedy = `Take them out first, or keep the numbers: then 45 ${from} becomes 45 ${to}.`;
    throw refuse([{ ...at, message, remedy }]);
  }
  const lost = amounts.flatMap(({ what, minors }) =>
    minors.filter((minor) => toMinor(toMajor(minor, from), to) === null).map((minor) => ({ what, minor })),
  );
  if (lost.length > 0) {
    const digits = `${to} has ${String(minorDigits(to))} digits after the point`;
    throw refuse(
      lost.slice(0, 10).map(({ what, minor }) => ({
        path: what,
        value: String(toMajor(minor, from)),
        message: `this number cannot be kept: ${digits}`,
        remedy: 'Round it first.',
      })),
    );
  }
  const turn = (minor: number) => toMinor(toMajor(minor, from), to) ?? 0;
  for (const { write } of amounts) write(turn, to);
}

/** All of a bag that is in a currency, what was paid and got for clubs left out. */
function amountsIn(db: Db, bagId: number, currency: string): Amount[] {
  const { budget } = findBag(db, bagId);
  const places = (['bag', 'shelf', 'sold'] as const).flatMap((place) => listClubs(db, bagId, place));
  const all: (Amount | null)[] = [
    ofMoney('budget', 'budget', budget, currency, (money) => updateBag(db, bagId, { budget: money })),
    ...costLinesOf(db, bagId).map(({ id, amount }) =>
      ofMoney('costs', 'costs', amount, currency, (money) => updateCostLine(db, id, { amount: money })),
    ),
    ...places.map(({ id, key, sell }) =>
      ofBand('sales', `sale of ${key}`, sell, currency, (band) => updateClub(db, id, { sell: band })),
    ),
    ...listLots(db, bagId).map(({ id, key, sell }) =>
      ofBand('sales', `sale of ${key}`, sell, currency, (band) => setLotSell(db, id, band)),
    ),
    ...notesOfBag(db, bagId).map(({ id, archetypeId, band: noted }) =>
      ofBand('prices', `price of ${archetypeId}`, noted, currency, (band) =>
        updatePriceNote(db, id, { band }),
      ),
    ),
  ];
  return all.filter((amount) => amount !== null);
}

function ofMoney(
  kind: AmountKind,
  what: string,
  money: Money | undefined,
  currency: string,
  put: (money: Money) => void,
): Amount | null {
  if (money?.currency !== currency) return null;
  return {
    kind,
    what,
    minors: [money.minor],
    write: (turn, to) => {
      put({ minor: turn(money.minor), currency: to });
    },
  };
}

function ofBand(
  kind: AmountKind,
  what: string,
  band: Band | undefined,
  currency: string,
  put: (band: Band) => void,
): Amount | null {
  if (band?.currency !== currency) return null;
  const { lowMinor, likelyMinor, highMinor } = band;
  return {
    kind,
    what,
    minors: [lowMinor, likelyMinor, highMinor],
    write: (turn, to) => {
      put({
        lowMinor: turn(lowMinor),
        likelyMinor: turn(likelyMinor),
        highMinor: turn(highMinor),
        currency: to,
      });
    },
  };
}
