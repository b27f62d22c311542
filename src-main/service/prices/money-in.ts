import { minorDigits, toMinor } from '../../contract/money.ts';
import { RefusedInput, shownValue } from '../../contract/refusal.ts';
import type { Money } from '../../../db/row.ts';

/** An amount in major units as money of a currency. @throws RefusedInput at `path` for too many digits */
export function moneyIn(amount: number, currency: string, path: string): Money {
  const minor = toMinor(amount, currency);
  if (minor !== null) return { minor, currency };
  throw new RefusedInput('This amount cannot be used:', [
    {
      path,
      value: shownValue(amount),
      message: `${currency} has ${String(minorDigits(currency))} digits after the point`,
      remedy: 'Round the amount.',
    },
  ]);
}
