import type { BagFile, ClubFile } from '../../contract/formats/bag-file.ts';
import type { Archetype } from '../../contract/formats/catalogue.ts';
import { toMajor } from '../../contract/money.ts';
import { bagFromFile } from '../../contract/formats/read-bag.ts';
import { RefusedInput, shownValue } from '../../contract/refusal.ts';
import { adviceWords } from '../../domain/advice/words/index.ts';
import { extrasMinor, resaleMinor } from '../../domain/prices/cost.ts';
import { updateBag } from '../../../db/repositories/bags/bags.ts';
import { addClub, listClubs, updateClub } from '../../../db/repositories/bags/clubs.ts';
import { listLots } from '../../../db/repositories/bags/lots.ts';
import { deletePriceNote, notesOfBag } from '../../../db/repositories/prices/price-notes.ts';
import type { Money } from '../../../db/row.ts';
import type { Db } from '../../../db/sqlite.ts';
import { clubRow } from '../bags/bag-rows.ts';
import { checkedEdit, clubRowId } from '../bags/bag-store.ts';
import { clubNaming } from '../bags/club-naming.ts';
import { moneyIn } from './money-in.ts';

export type Bought = {
  bagId: number;
  archetype: Archetype;
  /** Major units of the bag's currency, for the club or the whole set alone. */
  price: number;
  replaced: readonly { clubId: string; to: 'shelf' | 'sold'; price?: number | undefined }[];
  /** ISO date. */
  on: string;
  /** Of the new clubs' names; English when left out. */
  locale?: string | undefined;
};

export type BoughtAnswer = {
  /** Ids of the new clubs. */
  clubs: string[];
  /** Taken out of the budget: price, delivery and grips, less what was sold where the budget counts that. */
  spent: number;
  /** What is left of it; null without one. */
  budget: number | null;
};

/**
 * "Bought at X": the archetype becomes a club of the bag, a set becomes its members; the clubs it replaces go to the
 * shelf or are sold; the money leaves the budget; the bag's own price on it goes. All or nothing.
 * @throws RefusedInput, StorageError 'missing'
 */
export function buy(db: Db, { bagId, archetype, price, replaced, on, locale }: Bought): BoughtAnswer {
  const leaving = replacedRows(db, bagId, replaced);
  const taken = new Set((['bag', 'shelf', 'sold'] as const).flatMap((place) => keysOf(db, bagId, place)));
  const set = archetype.members
    ? freeKey(archetype.id, new Set(listLots(db, bagId).map(({ key }) => key)))
    : null;
  const clubs = clubsOf(archetype, { set, taken, locale });
  const out = new Set(replaced.map(({ clubId }) => clubId));
  const file = checkedEdit(db, bagId, ({ sets, ...before }) => {
    const stay = before.clubs.filter((club) => !out.has(club.id));
    return {
      ...before,
      ...(sets ? { sets: sets.filter((one) => stay.some((club) => club.set === one.id)) } : {}),
      clubs: [...stay, ...clubs],
      prices: before.prices.filter((one) => one.archetype !== archetype.id),
    };
  });
  const { currency } = file.units;
  const paid = moneyIn(price, currency, '$.price');
  const sales = replaced.map((one, i) =>
    one.to === 'sold' && one.price !== undefined
      ? moneyIn(one.price, currency, `$.replaced[${String(i)}].price`)
      : null,
  );
  leaving.forEach((id, i) => {
    const to = replaced[i]?.to ?? 'shelf';
    updateClub(db, id, { place: to, ...(to === 'sold' ? { sold: sales[i] ?? null, soldOn: on } : {}) });
  });
  shares(paid, clubs.length).forEach((bought, i) => {
    const club = clubs[i];
    if (club)
      addClub(db, bagId, { ...clubRow(club, file.units), archetypeId: archetype.id, bought, boughtOn: on });
  });
  for (const note of notesOfBag(db, bagId)) {
    if (note.archetypeId === archetype.id) deletePriceNote(db, note.id);
  }
  const spentMinor = spent(file, archetype, paid, sales);
  const budget = takeFromBudget(db, bagId, file, spentMinor);
  return { clubs: clubs.map(({ id }) => id), spent: toMajor(spentMinor, currency), budget };
}

function replacedRows(db: Db, bagId: number, replaced: Bought['replaced']): number[] {
  const seen = new Set<string>();
  return replaced.map(({ clubId }, i) => {
    if (seen.has(clubId)) {
      throw new RefusedInput('This purchase cannot be noted:', [
        {
          path: `$.replaced[${String(i)}].clubId`,
          value: shownValue(clubId),
          message: 'this club is listed twice',
          remedy: 'List each club that goes once.',
        },
      ]);
    }
    seen.add(clubId);
    return clubRowId(db, bagId, clubId);
  });
}

function keysOf(db: Db, bagId: number, place: 'bag' | 'shelf' | 'sold'): string[] {
  return listClubs(db, bagId, place).map(({ key }) => key);
}

/** The key itself, or the first of key-2, key-3 … that is free. */
function freeKey(key: string, taken: ReadonlySet<string>): string {
  if (!taken.has(key)) return key;
  for (let n = 2; ; n++) {
    const next = `${key}-${String(n)}`;
    if (!taken.has(next)) return next;
  }
}

function clubsOf(
  archetype: Archetype,
  { set, taken, locale }: { set: string | null; taken: ReadonlySet<string>; locale: string | undefined },
): ClubFile[] {
  const { id, kind, loftDeg, forgiveness, spinTier, lengthIn, members = [] } = archetype;
  const common = { forgiveness, spinTier };
  if (kind !== 'irons') {
    // Without the tier in brackets: what one would say of the club.
    const label = adviceWords(locale)
      .archetypeName(archetype)
      .replace(/ \(.*$/, '');
    return [{ id: freeKey(id, taken), kind, label, loftDeg, lengthIn, ...common }];
  }
  return members.map((member) => ({
    id: freeKey(`${id} ${member.number}`, taken),
    kind: member.kind,
    label: clubNaming(locale).label(/^\d+$/.test(member.number) ? `${member.number}i` : member.number),
    loftDeg: member.loftDeg,
    // A set's length is its 7-iron's; the others' are not known.
    ...(member.number === '7' ? { lengthIn } : {}),
    ...common,
    ...(set === null ? {} : { set }),
  }));
}

/** The price of a set in whole parts, the first clubs bearing what does not divide. */
function shares({ minor, currency }: Money, count: number): Money[] {
  const each = Math.floor(minor / count);
  const rest = minor - each * count;
  return Array.from({ length: count }, (_, i) => ({ minor: each + (i < rest ? 1 : 0), currency }));
}

function spent(file: BagFile, archetype: Archetype, paid: Money, sales: readonly (Money | null)[]): number {
  const { costs, budget } = bagFromFile(file);
  const out = paid.minor + extrasMinor(archetype, costs);
  if (budget?.cashBeforeSales === true) return out;
  const brought = sales.map((sale) =>
    sale === null
      ? 0
      : resaleMinor({ lowMinor: sale.minor, likelyMinor: sale.minor, highMinor: sale.minor }, costs),
  );
  return out - brought.reduce((sum, minor) => sum + minor, 0);
}

function takeFromBudget(db: Db, bagId: number, file: BagFile, spentMinor: number): number | null {
  if (!file.budget) return null;
  const { currency } = file.units;
  const before = moneyIn(file.budget.amount, currency, '$.budget');
  const minor = Math.max(0, before.minor - spentMinor);
  updateBag(db, bagId, { budget: { minor, currency } });
  return toMajor(minor, currency);
}
