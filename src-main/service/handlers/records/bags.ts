import type { BagFile } from '../../../contract/formats/bag-file.ts';
import { RefusedInput, shownValue } from '../../../contract/refusal.ts';
import { toMph, toYards } from '../../../contract/units.ts';
import { updateBag } from '../../../../db/repositories/bags/bags.ts';
import {
  addClub,
  deleteClub,
  listClubs,
  orderClubs,
  readClub,
  updateClub,
  type Club,
} from '../../../../db/repositories/bags/clubs.ts';
import {
  addCostLine,
  costLinesOf,
  deleteCostLine,
  updateCostLine,
  type CostKind,
} from '../../../../db/repositories/prices/cost-lines.ts';
import { listLots, setLotSell } from '../../../../db/repositories/bags/lots.ts';
import {
  addPriceNote,
  deletePriceNote,
  notesOfBag,
  updatePriceNote,
} from '../../../../db/repositories/prices/price-notes.ts';
import { StorageError } from '../../../../db/errors.ts';
import type { Db } from '../../../../db/sqlite.ts';
import { clubRow, toBand, toMoney } from '../../bags/bag-rows.ts';
import { checkedEdit, clubRowId, loadBag, loadOwnBag } from '../../bags/bag-store.ts';
import { buy } from '../../prices/bought.ts';
import { recordTyped } from '../../bags/club-carry.ts';
import type { Handlers, Subject } from '../../handler.ts';
import { amountsOf, setUnits } from '../../bags/set-units.ts';
import { amountStep, bagStep, clubNamed, clubStep } from '../../records/steps.ts';
import { refuseUnknownArchetypes } from '../../../worker/answer.ts';

export const bagHandlers: Handlers<Subject<'bags'>> = {
  'bags.read': ({ db }, { bagId }) => {
    const { playerId, file } = loadOwnBag(db, bagId);
    return { playerId, bag: file };
  },
  'bags.export': ({ db }, { bagId }) => {
    const { file } = loadBag(db, bagId);
    return {
      name: `${fileName(file.player.name)}.loftledger-bag.json`,
      text: `${JSON.stringify(file, null, 1)}\n`,
    };
  },
  'bags.addClub': {
    step: ({ bagId, club }, { db }) => ({ ...bagStep(db, bagId), club: clubNamed(club) }),
    run: ({ db, today, now }, { bagId, club, before }) => {
      const { units } = checkedEdit(db, bagId, (file) => ({ ...file, clubs: [...file.clubs, club] }));
      refuseElsewhere(db, bagId, club.id);
      const id = addClub(db, bagId, clubRow(club, units));
      recordTyped(db, id, readClub(db, id), today(), now());
      if (before !== undefined) placeBefore(db, bagId, id, clubRowId(db, bagId, before));
      return null;
    },
  },
  'bags.updateClub': {
    step: ({ bagId, clubId, patch }, { db }) => ({
      ...clubStep(db, bagId, clubId),
      fields: Object.keys(patch),
    }),
    run: ({ db, today, now }, { bagId, clubId, patch }) => {
      const id = clubRowId(db, bagId, clubId);
      const given = Object.fromEntries(Object.entries(patch).filter(([, value]) => value !== undefined));
      const { units } = checkedEdit(db, bagId, (file) => ({
        ...file,
        // A set whose last club leaves it is no longer a set of this bag.
        sets: setsAfter(file, clubId, patch.set),
        clubs: file.clubs.map((club) => (club.id === clubId ? withoutNulls({ ...club, ...given }) : club)),
      }));
      const row = clubPatchRow(patch, units);
      if (CARRY_FIELDS.some((field) => patch[field] !== undefined)) {
        recordTyped(db, id, patched(readClub(db, id), row), today(), now());
      }
      updateClub(db, id, row);
      return null;
    },
  },
  'bags.removeClub': {
    step: ({ bagId, clubId }, { db }) => clubStep(db, bagId, clubId),
    run: ({ db }, { bagId, clubId }) => {
      deleteClub(db, clubRowId(db, bagId, clubId));
      return null;
    },
  },
  'bags.sellSet': {
    step: ({ bagId, setId }, { db }) => ({ ...bagStep(db, bagId), named: setId }),
    run: ({ db }, { bagId, setId, sell }) => {
      const { units } = checkedEdit(db, bagId, (file) => ({
        ...file,
        sets: [
          ...(file.sets ?? []).filter((set) => set.id !== setId),
          { id: setId, ...(sell === null ? {} : { sell }) },
        ],
      }));
      const lot = listLots(db, bagId).find((one) => one.key === setId);
      if (!lot) throw missing(db, `set "${setId}"`);
      setLotSell(db, lot.id, sell === null ? null : toBand(sell, units.currency));
      return null;
    },
  },
  'bags.setPrice': {
    step: ({ bagId, archetype }, { db }) => ({ ...bagStep(db, bagId), archetype }),
    run: ({ db, now, catalogue }, { bagId, archetype, band, seen }) => {
      const file = checkedEdit(db, bagId, (before) => ({
        ...before,
        prices: [
          ...before.prices.filter((price) => price.archetype !== archetype),
          ...(band === null ? [] : [{ archetype, ...band, ...(seen === undefined ? {} : { seen }) }]),
        ],
      }));
      refuseUnknownArchetypes(file, catalogue());
      const notes = notesOfBag(db, bagId);
      const { currency } = file.units;
      const [note, ...more] = notes.filter(
        (one) => one.archetypeId === archetype && one.band.currency === currency,
      );
      // The band that was typed stands for all that the bag itself knew of it.
      for (const other of more) deletePriceNote(db, other.id);
      if (band === null) {
        if (note) deletePriceNote(db, note.id);
      } else if (note) {
        updatePriceNote(db, note.id, { band: toBand(band, currency), seenOn: seen ?? null, condition: null });
      } else {
        const fields = { archetypeId: archetype, bagId, band: toBand(band, currency) };
        addPriceNote(db, seen === undefined ? fields : { ...fields, seenOn: seen }, now(), notes.length);
      }
      return null;
    },
  },
  'bags.setBudget': {
    step: ({ bagId }, { db }) => bagStep(db, bagId),
    run: ({ db }, { bagId, budget }) => {
      const { units } = checkedEdit(db, bagId, ({ budget: _before, ...file }) =>
        budget === null ? file : { ...file, budget },
      );
      updateBag(db, bagId, {
        budget: budget === null ? null : toMoney(budget.amount, units.currency),
        cashBeforeSales: budget?.cashBeforeSales ?? null,
      });
      return null;
    },
  },
  'bags.setCosts': {
    step: ({ bagId }, { db }) => bagStep(db, bagId),
    run: ({ db }, { bagId, costs }) => {
      const { units } = checkedEdit(db, bagId, (file) => ({ ...file, costs }));
      const amounts: [CostKind, number | undefined][] = [
        ['delivery', costs.delivery],
        ['regrip', costs.regrip],
        ['sell-postage', costs.sellPostage],
      ];
      const lines = costLinesOf(db, bagId);
      const put = (
        kind: CostKind,
        value: { amount: ReturnType<typeof toMoney> } | { percent: number } | null,
      ) => {
        const line = lines.find((one) => one.kind === kind);
        if (value === null) {
          if (line) deleteCostLine(db, line.id);
        } else if (line) updateCostLine(db, line.id, { ...value, enabled: true });
        else addCostLine(db, bagId, { kind, ...value, enabled: true });
      };
      for (const [kind, amount] of amounts) {
        put(kind, amount === undefined ? null : { amount: toMoney(amount, units.currency) });
      }
      put('sell-fee', costs.sellFeePercent === undefined ? null : { percent: costs.sellFeePercent });
      return null;
    },
  },
  'bags.setUnits': {
    step: ({ bagId, distance, speed, currency }, { db }) => ({
      ...bagStep(db, bagId),
      named: [distance, speed, currency].filter((unit) => unit !== undefined).join(', '),
    }),
    run: ({ db }, { bagId, ...change }) => {
      setUnits(db, bagId, change);
      return null;
    },
  },
  'bags.amounts': ({ db }, { bagId }) => amountsOf(db, bagId),
  'bags.bought': {
    step: ({ bagId, archetype, price }, { db }) => ({
      ...bagStep(db, bagId),
      archetype,
      ...amountStep(db, bagId, price),
    }),
    run: ({ db, catalogue, today }, { bagId, archetype: id, price, replaced, on, locale }) => {
      const archetype = catalogue().find((one) => one.id === id);
      if (!archetype) throw missing(db, `archetype "${id}"`, 'Choose one that the catalogue lists.');
      return buy(db, { bagId, archetype, price, replaced, on: on ?? today(), locale });
    },
  },
  'bags.setChoices': {
    step: ({ bagId }, { db }) => bagStep(db, bagId),
    run: ({ db }, { bagId, changePutter }) => {
      updateBag(db, bagId, { changePutter });
      return null;
    },
  },
};

function setsAfter(file: BagFile, clubId: string, set: string | null | undefined): BagFile['sets'] {
  if (set === undefined || !file.sets) return file.sets ?? [];
  const left = new Set(file.clubs.filter((club) => club.id !== clubId).map((club) => club.set));
  return file.sets.filter((one) => one.id === set || left.has(one.id));
}

type PatchOf = Parameters<(typeof bagHandlers)['bags.updateClub']['run']>[1]['patch'];

function clubPatchRow(patch: PatchOf, units: BagFile['units']): Parameters<typeof updateClub>[2] {
  const { carry, carrySd, total, ballSpeed, set, sell, ...same } = patch;
  const mapped = {
    carryYd: map(carry, (value) => toYards(value, units.distance)),
    carrySdYd: map(carrySd, (value) => toYards(value, units.distance)),
    totalYd: map(total, (value) => toYards(value, units.distance)),
    ballSpeedMph: map(ballSpeed, (value) => toMph(value, units.speed)),
    lotKey: set,
    sell: map(sell, (band) => toBand(band, units.currency)),
  };
  return Object.fromEntries(
    Object.entries({ ...same, ...mapped }).filter(([, value]) => value !== undefined),
  ) as Parameters<typeof updateClub>[2];
}

function map<T extends object | number, R>(
  value: T | null | undefined,
  to: (value: T) => R,
): R | null | undefined {
  if (value === undefined) return undefined;
  return value === null ? null : to(value);
}

function withoutNulls(record: object): object {
  return Object.fromEntries(Object.entries(record).filter(([, value]) => value !== null));
}

function placeBefore(db: Db, bagId: number, id: number, before: number): void {
  const ids = listClubs(db, bagId)
    .map((club) => club.id)
    .filter((one) => one !== id);
  ids.splice(ids.indexOf(before), 0, id);
  orderClubs(db, bagId, ids);
}

/** A name that every file system takes. */
function fileName(name: string): string {
  return (
    name
      .normalize('NFKD')
      .replace(/[^A-Za-z0-9]+/g, '-')
      .replace(/^-+|-+$/g, '')
      .slice(0, 60) || 'bag'
  );
}

function missing(db: Db, what: string, remedy = 'Look at the bag again.'): StorageError {
  return new StorageError('missing', `There is no ${what} here.`, remedy, db.name);
}

const CARRY_FIELDS = ['carry', 'carrySd', 'shots', 'total'] as const;

/** A club as it is once a patch is written. */
function patched(club: Club, row: Parameters<typeof updateClub>[2]): Club {
  return withoutNulls({ ...club, ...row }) as Club;
}

/** Ids are for ever: a club on the shelf, or sold, keeps its own. @throws RefusedInput */
function refuseElsewhere(db: Db, bagId: number, clubId: string): void {
  for (const place of ['shelf', 'sold'] as const) {
    if (!listClubs(db, bagId, place).some((club) => club.key === clubId)) continue;
    throw new RefusedInput('This club cannot be added:', [
      {
        path: '$.club.id',
        value: shownValue(clubId),
        message: place === 'shelf' ? 'a club on the shelf has this id' : 'a club that was sold has this id',
        remedy: 'Take another id, or put that club back into the bag.',
      },
    ]);
  }
}
