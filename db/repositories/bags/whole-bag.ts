import { StorageError } from '../../errors.ts';
import type { Band, Money } from '../../row.ts';
import type { Db } from '../../sqlite.ts';
import { all, run } from '../../statement.ts';
import { findArchetype } from '../prices/archetypes.ts';
import { createBag, findBag, updateBag, type BagFields, type BagState } from './bags.ts';
import { addClub, deleteClub, listClubs, overwriteClub, type ClubFields } from './clubs.ts';
import { addCostLine, costLinesOf, type CostKind } from '../prices/cost-lines.ts';
import { addCourse, dropUnusedCourse, readCourse, type Hole } from '../courses.ts';
import { addLot, listLots, lotIdFor, markLot, type LotFields } from './lots.ts';
import { addPriceNote, notesOfBag } from '../prices/price-notes.ts';

/** A price as the bag file has it. `seenOn` is YYYY-MM-DD. */
export type BagPrice = { archetypeId: string; band: Band; seenOn?: string };

export type BagCosts = { delivery?: Money; regrip?: Money; sellFeePercent?: number; sellPostage?: Money };

/**
 * A bag with all that its file says, in yards, mph and minor units. What is left out stays out: a flag that is
 * not given is not false. Lists keep their order. An empty `lots`, `costs` or `choices` says nothing and reads
 * back as left out.
 */
export type WholeBag = {
  name?: string;
  /** 'now' when left out of what is written. */
  state?: BagState;
  units: { distance: 'yd' | 'm'; speed: 'mph' | 'km/h' | 'm/s'; currency: string };
  clubs: readonly ClubFields[];
  /** The file's `sets`. A club may name a set that is not among them. */
  lots?: readonly LotFields[];
  prices: readonly BagPrice[];
  costs?: BagCosts;
  budget?: { amount: Money; cashBeforeSales?: boolean };
  choices?: { changePutter?: boolean };
  course?: { holes: readonly Hole[] };
};

/** Stores a new bag of a player, whole or not at all. @returns its id. */
export function writeBag(db: Db, playerId: number, bag: WholeBag, at: string): number {
  return db.transaction(() => {
    const courseId = bag.course === undefined ? undefined : addCourse(db, { playerId, ...bag.course }, at);
    const fields: BagFields = { ...fieldsOf(bag, courseId), state: bag.state ?? 'now' };
    const bagId = createBag(db, playerId, fields, at);
    writeContents(db, bagId, bag, at);
    return bagId;
  })();
}

/**
 * Gives an existing bag the contents of a file. Clubs and sets are known again by their keys, so their history
 * and shots stay; clubs of the bag that the file lacks are deleted, those on the shelf or sold are not. Name
 * and state change only where given.
 */
export function rewriteBag(db: Db, bagId: number, bag: WholeBag, at: string): void {
  db.transaction(() => {
    const old = findBag(db, bagId);
    const playerId = old.playerId;
    const courseId = bag.course === undefined ? undefined : addCourse(db, { playerId, ...bag.course }, at);
    const { name, ...fields } = fieldsOf(bag, courseId);
    const cleared = { budget: null, cashBeforeSales: null, changePutter: null, courseId: null };
    updateBag(db, bagId, { ...cleared, ...fields, ...(name === undefined ? {} : { name }) });
    if (old.courseId !== undefined) dropUnusedCourse(db, old.courseId);
    run(db, 'DELETE FROM price_note WHERE bag_id = @bagId', { bagId });
    const kinds = `'delivery', 'regrip', 'sell-fee', 'sell-postage'`;
    run(db, `DELETE FROM cost_line WHERE bag_id = @bagId AND kind IN (${kinds})`, { bagId });
    run(db, 'UPDATE lot SET listed = 0 WHERE bag_id = @bagId', { bagId });
    writeContents(db, bagId, bag, at);
    const keys = new Set(bag.clubs.map((club) => club.key));
    for (const club of listClubs(db, bagId)) if (!keys.has(club.key)) deleteClub(db, club.id);
    const unused = 'NOT EXISTS (SELECT 1 FROM club WHERE club.bag_id = lot.bag_id AND club.lot_id = lot.id)';
    run(db, `DELETE FROM lot WHERE bag_id = @bagId AND listed = 0 AND ${unused}`, { bagId });
  })();
}

type Header = Omit<BagFields, 'state'>;

function fieldsOf(bag: WholeBag, courseId: number | undefined): Header {
  const { units, budget } = bag;
  return {
    ...(bag.name === undefined ? {} : { name: bag.name }),
    distanceUnit: units.distance,
    speedUnit: units.speed,
    currency: units.currency,
    ...(budget === undefined ? {} : { budget: budget.amount }),
    ...(budget?.cashBeforeSales === undefined ? {} : { cashBeforeSales: budget.cashBeforeSales }),
    ...(bag.choices?.changePutter === undefined ? {} : { changePutter: bag.choices.changePutter }),
    ...(courseId === undefined ? {} : { courseId }),
  };
}

function writeContents(db: Db, bagId: number, bag: WholeBag, at: string): void {
  const lots = bag.lots ?? [];
  refuseTwice(db, 'lots', lots);
  refuseTwice(db, 'clubs', bag.clubs);
  const knownLots = new Map(listLots(db, bagId).map((lot) => [lot.key, lot.id]));
  lots.forEach((lot, position) => {
    const known = knownLots.get(lot.key);
    if (known === undefined) addLot(db, bagId, lot, { position });
    else markLot(db, known, lot, position);
  });
  const sql = 'SELECT key, id FROM club WHERE bag_id = @bagId';
  const known = new Map(all<{ key: string; id: number }>(db, sql, { bagId }).map(({ key, id }) => [key, id]));
  bag.clubs.forEach((club, position) => {
    const id = known.get(club.key);
    if (id === undefined) addClub(db, bagId, club, { position });
    else
      overwriteClub(
        db,
        id,
        club,
        position,
        club.lotKey === undefined ? null : lotIdFor(db, bagId, club.lotKey),
      );
  });
  bag.prices.forEach((price, position) => {
    if (findArchetype(db, price.archetypeId) === undefined)
      throw unknownArchetype(db, price.archetypeId, position);
    addPriceNote(db, { ...price, bagId }, at, position);
  });
  writeCosts(db, bagId, bag.costs ?? {});
}

function writeCosts(db: Db, bagId: number, costs: BagCosts): void {
  const amounts: readonly [CostKind, Money | undefined][] = [
    ['delivery', costs.delivery],
    ['regrip', costs.regrip],
    ['sell-postage', costs.sellPostage],
  ];
  for (const [kind, amount] of amounts) {
    if (amount !== undefined) addCostLine(db, bagId, { kind, amount, enabled: true });
  }
  if (costs.sellFeePercent !== undefined) {
    addCostLine(db, bagId, { kind: 'sell-fee', percent: costs.sellFeePercent, enabled: true });
  }
}

/** Reads a bag whole; of its clubs those that are in the bag. @throws StorageError 'missing'. */
export function readBag(db: Db, bagId: number): WholeBag {
  const bag = findBag(db, bagId);
  const lots = listLots(db, bagId).filter((lot) => lot.listed);
  const costs = readCosts(db, bagId);
  const { budget, cashBeforeSales, changePutter, courseId } = bag;
  return {
    ...(bag.name === undefined ? {} : { name: bag.name }),
    state: bag.state,
    units: { distance: bag.distanceUnit, speed: bag.speedUnit, currency: bag.currency },
    clubs: listClubs(db, bagId).map(({ id: _id, bagId: _bagId, place: _place, ...club }) => club),
    ...(lots.length === 0 ? {} : { lots: lots.map(({ id: _id, listed: _listed, ...lot }) => lot) }),
    prices: notesOfBag(db, bagId).map(({ archetypeId, band, seenOn }) => ({
      archetypeId,
      band,
      ...(seenOn === undefined ? {} : { seenOn }),
    })),
    ...(Object.keys(costs).length === 0 ? {} : { costs }),
    ...(budget === undefined
      ? {}
      : { budget: { amount: budget, ...(cashBeforeSales === undefined ? {} : { cashBeforeSales }) } }),
    ...(changePutter === undefined ? {} : { choices: { changePutter } }),
    ...(courseId === undefined ? {} : { course: { holes: readCourse(db, courseId).holes } }),
  };
}

function readCosts(db: Db, bagId: number): BagCosts {
  const costs: BagCosts = {};
  for (const { kind, amount, percent, enabled } of costLinesOf(db, bagId)) {
    if (!enabled) continue;
    if (kind === 'delivery' && amount !== undefined) costs.delivery = amount;
    if (kind === 'regrip' && amount !== undefined) costs.regrip = amount;
    if (kind === 'sell-postage' && amount !== undefined) costs.sellPostage = amount;
    if (kind === 'sell-fee' && percent !== undefined) costs.sellFeePercent = percent;
  }
  return costs;
}

/** A copy of a bag with what is in it, as a planned one, without shelf, history, shots and plans. @returns its id. */
export function duplicateBag(db: Db, bagId: number, name: string, at: string): number {
  return db.transaction(() => {
    const { playerId } = findBag(db, bagId);
    return writeBag(db, playerId, { ...readBag(db, bagId), name, state: 'planned' }, at);
  })();
}

function refuseTwice(db: Db, list: string, entries: readonly { key: string }[]): void {
  const seen = new Map<string, number>();
  entries.forEach(({ key }, index) => {
    const first = seen.get(key);
    if (first !== undefined) {
      const message = `${list}[${index}] has the id ${JSON.stringify(key)}, as ${list}[${first}] has`;
      throw new StorageError('constraint', message, 'Give each an id of its own.', db.name);
    }
    seen.set(key, index);
  });
}

function unknownArchetype(db: Db, id: string, position: number): StorageError {
  const message = `prices[${position}] is of ${JSON.stringify(id)}, which the catalogue does not have`;
  const remedy = 'Use an id that the catalogue lists, or add an archetype of your own under it.';
  return new StorageError('constraint', message, remedy, db.name);
}
