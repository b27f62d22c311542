import type { CostLineFile } from '../../../contract/calls/money/costs.ts';
import type { Archetype } from '../../../contract/formats/catalogue.ts';
import { isCurrency, toMajor } from '../../../contract/money.ts';
import { RefusedInput, shownValue } from '../../../contract/refusal.ts';
import { StorageError } from '../../../../db/errors.ts';
import {
  addOwnArchetype,
  deleteOwnArchetype,
  findArchetype,
  listArchetypes,
  updateOwnArchetype,
} from '../../../../db/repositories/prices/archetypes.ts';
import { findBag } from '../../../../db/repositories/bags/bags.ts';
import {
  addCostLine,
  costLinesOf,
  deleteCostLine,
  updateCostLine,
  type CostLine,
  type CostLineFields,
} from '../../../../db/repositories/prices/cost-lines.ts';
import type { Db } from '../../../../db/sqlite.ts';
import { archetypeOf } from '../../records/catalogue.ts';
import type { Handlers, Subject } from '../../handler.ts';
import { moneyIn } from '../../prices/money-in.ts';
import { bagStep, type StepParts } from '../../records/steps.ts';

export const costHandlers: Handlers<Subject<'costs'> | Subject<'archetypes'>> = {
  'costs.list': ({ db }, { bagId }) => {
    if (bagId !== null) findBag(db, bagId);
    return costLinesOf(db, bagId).map(fileOf);
  },
  'costs.save': {
    step: ({ bagId, line }, { db }) => ({ ...costStep(db, bagId), named: line.label ?? line.kind }),
    run: ({ db }, { bagId, id, line }) => {
      const lines = costLinesOf(db, bagId);
      const fields = fieldsOf(line, bagId === null ? null : findBag(db, bagId).currency);
      if (id === undefined) {
        refuseSecond(lines, line);
        return { id: addCostLine(db, bagId, fields, lines.length) };
      }
      lineOf(db, lines, id);
      refuseSecond(
        lines.filter((one) => one.id !== id),
        line,
      );
      const { label = null, amount = null, percent = null, ...rest } = fields;
      updateCostLine(db, id, { ...rest, label, amount, percent });
      return { id };
    },
  },
  'costs.remove': {
    step: ({ bagId, id }, { db }) => {
      const line = costLinesOf(db, bagId).find((one) => one.id === id);
      return { ...costStep(db, bagId), ...(line === undefined ? {} : { named: line.label ?? line.kind }) };
    },
    run: ({ db }, { bagId, id }) => {
      deleteCostLine(db, lineOf(db, costLinesOf(db, bagId), id).id);
      return null;
    },
  },
  'archetypes.own': ({ db }) =>
    listArchetypes(db)
      .filter(({ source }) => source === 'own')
      .map(archetypeOf),
  'archetypes.add': {
    step: ({ archetype: { id } }) => ({ archetype: id }),
    run: ({ db }, { archetype }) => {
      refuseTaken(db, archetype);
      addOwnArchetype(db, rowOf(archetype));
      return null;
    },
  },
  'archetypes.update': {
    step: ({ archetype: { id } }) => ({ archetype: id }),
    run: ({ db }, { archetype }) => {
      updateOwnArchetype(db, rowOf(archetype));
      return null;
    },
  },
  'archetypes.remove': {
    step: ({ id }) => ({ archetype: id }),
    run: ({ db }, { id }) => {
      deleteOwnArchetype(db, id);
      return null;
    },
  },
};

function costStep(db: Db, bagId: number | null): StepParts {
  return bagId === null ? {} : bagStep(db, bagId);
}

const ONE_OF_A_KIND: readonly CostLineFile['kind'][] = ['delivery', 'regrip', 'sell-fee', 'sell-postage'];

function refuseSecond(others: readonly CostLine[], { kind }: CostLineFile): void {
  if (!ONE_OF_A_KIND.includes(kind) || !others.some((one) => one.kind === kind)) return;
  throw refusal('$.line.kind', kind, 'there is one of this kind already', 'Change that one.');
}

/** @param currency the bag's; null where each line has its own */
function fieldsOf(line: CostLineFile, currency: string | null): CostLineFields {
  const { kind, label, amount, percent, enabled } = line;
  if ((amount === undefined) === (percent === undefined)) {
    throw refusal('$.line', kind, 'it must be either an amount or a percentage', 'Give one of the two.');
  }
  if (percent !== undefined && kind !== 'sell-fee' && ONE_OF_A_KIND.includes(kind))
    throw refusal('$.line.percent', percent, `${kind} is an amount`, 'Give an amount.');
  if (amount !== undefined && kind === 'sell-fee')
    throw refusal('$.line.amount', amount, 'a fee is a percentage', 'Give a percentage.');
  const fields: CostLineFields = { kind, enabled, ...(label === undefined ? {} : { label }) };
  if (percent !== undefined) return { ...fields, percent };
  const own = line.currency ?? currency ?? '';
  if (!isCurrency(own) || (currency !== null && own !== currency)) {
    const remedy = currency === null ? 'Write a code such as GBP, EUR or USD.' : `Give it in ${currency}.`;
    throw refusal('$.line.currency', own, 'this currency does not fit here', remedy);
  }
  return { ...fields, amount: moneyIn(amount ?? 0, own, '$.line.amount') };
}

function fileOf({ id, kind, label, amount, percent, enabled }: CostLine): CostLineFile & { id: number } {
  return {
    id,
    kind,
    ...(label === undefined ? {} : { label }),
    ...(amount === undefined
      ? {}
      : { amount: toMajor(amount.minor, amount.currency), currency: amount.currency }),
    ...(percent === undefined ? {} : { percent }),
    enabled,
  };
}

function lineOf(db: Db, lines: readonly CostLine[], id: number): CostLine {
  const found = lines.find((line) => line.id === id);
  if (found !== undefined) return found;
  throw new StorageError(
    'missing',
    `There is no cost line ${String(id)}`,
    'Look at the list again.',
    db.name,
  );
}

function refuseTaken(db: Db, { id }: Archetype): void {
  const known = findArchetype(db, id);
  if (known === undefined) return;
  const message = known.source === 'own' ? 'you have one of this id' : 'the catalogue has one of this id';
  throw refusal('$.archetype.id', id, message, 'Give it another, such as the same with your initials.');
}

function rowOf({ members, ...archetype }: Archetype) {
  return { ...archetype, ...(members === undefined ? {} : { members: [...members] }) };
}

function refusal(path: string, value: unknown, message: string, remedy: string): RefusedInput {
  return new RefusedInput('This cannot be kept:', [{ path, value: shownValue(value), message, remedy }]);
}
