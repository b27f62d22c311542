import type { BagFile } from '../contract/formats/bag-file.ts';
import { toMinor } from '../contract/money.ts';
import { UsageError } from './exit.ts';

/** The bag with the budget of `--budget N` instead of its own; as it is without. @throws UsageError */
export function withBudget(file: BagFile, text: string | undefined): BagFile {
  if (text === undefined) return file;
  const amount = /^\d+(?:\.\d+)?$/.test(text) ? Number(text) : Number.NaN;
  if (!(amount <= 10_000_000) || toMinor(amount, file.units.currency) === null) {
    throw new UsageError(
      `--budget ${text} is no amount in ${file.units.currency}. Give a number such as 150, without sign or currency.`,
    );
  }
  return { ...file, budget: { ...file.budget, amount } };
}
