import type { NewNote, Note } from '../../contract/calls/money/prices.ts';
import { isCurrency, minorDigits, toMinor } from '../../contract/money.ts';
import { RefusedInput, shownValue, type Refusal } from '../../contract/refusal.ts';
import { isStale } from '../../domain/prices/band.ts';
import type { PriceAssumptions } from '../../domain/prices/condition.ts';
import type { PriceNote, PriceNoteFields } from '../../../db/repositories/prices/price-notes.ts';
import { fromBand, toBand } from '../bags/bag-rows.ts';
import { dayOfNote } from './price-bands.ts';

/** A note as it is asked for ⇄ its row: major units of its own currency ⇄ minor units. */
export function noteFields(note: NewNote): PriceNoteFields {
  const { archetype, bagId, low, likely, high, currency, seen, condition, place, remark } = note;
  return {
    archetypeId: archetype,
    ...(bagId === undefined ? {} : { bagId }),
    band: toBand({ low, likely, high }, currency),
    ...(seen === undefined ? {} : { seenOn: seen }),
    ...(condition === undefined ? {} : { condition }),
    ...(place === undefined ? {} : { place }),
    ...(remark === undefined ? {} : { remark }),
  };
}

export function noteOf(note: PriceNote, today: string, assumptions: PriceAssumptions): Note {
  const { id, archetypeId, bagId, band, seenOn, condition, place, remark, createdAt } = note;
  return {
    id,
    archetype: archetypeId,
    ...(bagId === undefined ? {} : { bagId }),
    ...fromBand(band),
    currency: band.currency,
    ...(seenOn === undefined ? {} : { seen: seenOn }),
    ...(condition === undefined ? {} : { condition }),
    ...(place === undefined ? {} : { place }),
    ...(remark === undefined ? {} : { remark }),
    written: createdAt.slice(0, 10),
    stale: isStale(dayOfNote(note), today, assumptions),
  };
}

/** What the shape alone cannot tell of a note's money: the currency, its digits, low ≤ likely ≤ high. */
export function moneyRefusals(
  { low, likely, high, currency }: Pick<NewNote, 'low' | 'likely' | 'high' | 'currency'>,
  at: (field: string) => string,
): Refusal[] {
  if (!isCurrency(currency)) {
    return [
      {
        path: at('currency'),
        value: shownValue(currency),
        message: 'this is no ISO 4217 currency that is known here',
        remedy: 'Write a code such as GBP, EUR or USD.',
      },
    ];
  }
  const refusals: Refusal[] = [];
  for (const [field, amount] of Object.entries({ low, likely, high })) {
    if (toMinor(amount, currency) === null) {
      refusals.push({
        path: at(field),
        value: shownValue(amount),
        message: `${currency} has ${String(minorDigits(currency))} digits after the point`,
        remedy: 'Round the amount.',
      });
    }
  }
  const remedy = 'Give low ≤ likely ≤ high.';
  if (low > likely) {
    const message = `low is above likely (${String(likely)})`;
    refusals.push({ path: at('low'), value: shownValue(low), message, remedy });
  } else if (likely > high) {
    const message = `likely is above high (${String(high)})`;
    refusals.push({ path: at('likely'), value: shownValue(likely), message, remedy });
  }
  return refusals;
}

/** @throws RefusedInput */
export function refuseWrongMoney(
  note: Pick<NewNote, 'low' | 'likely' | 'high' | 'currency'>,
  place: string,
): void {
  const refusals = moneyRefusals(note, (field) => `${place}.${field}`);
  if (refusals.length > 0) throw new RefusedInput('This price cannot be used:', refusals);
}
