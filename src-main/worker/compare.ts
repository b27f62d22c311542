import type { BagFile } from '../contract/formats/bag-file.ts';
import type { SideAnswer } from '../contract/calls/answers/answers.ts';
import type { Archetype } from '../contract/formats/catalogue.ts';
import { bagFromFile } from '../contract/formats/read-bag.ts';
import { readerFor } from '../contract/reader.ts';
import { jsonPath, RefusedInput, shownValue } from '../contract/refusal.ts';
import { prepare } from '../domain/advice/question/prepare.ts';
import { sideOf } from '../domain/advice/plan/side.ts';
import { adviceWords } from '../domain/advice/words/index.ts';
import { rungRow, swapRow } from '../domain/report/plan-file.ts';
import type { BagTask } from './bag-task.ts';
import { markOf, namesOf } from './answer-view.ts';

/** Bags by item ids, each reckoned on the same question. @throws RefusedInput for an id that the question has not. */
export function compareBags(
  file: BagFile,
  catalogue: readonly Archetype[],
  bags: readonly (readonly string[])[],
  { today, locale, reckoning }: Pick<BagTask, 'today' | 'locale' | 'reckoning'>,
): { sides: SideAnswer[]; names: Record<string, string> } {
  const reader = readerFor(file.units, locale);
  const { view, built } = prepare({
    bag: bagFromFile(file),
    catalogue,
    reader,
    words: adviceWords(locale),
    today,
    reckoning,
  });
  const known = new Set(built.instance.items.map((item) => item.id));
  bags.forEach((items, i) => {
    items.forEach((id, j) => {
      if (known.has(id)) return;
      throw new RefusedInput('These cannot be set side by side:', [
        {
          path: jsonPath(['bags', i, j]),
          value: shownValue(id),
          message: 'the bag and its prices have no such club',
          remedy: 'Look at the plan again; a price or a club has changed.',
        },
      ]);
    });
  });
  const sides = bags.map((items): SideAnswer => {
    const side = sideOf(view, built, items);
    return {
      items: side.items,
      swaps: side.swaps.map((swap) => swapRow(reader, swap)),
      cash: reader.money(side.cashMinor),
      net: reader.money(side.netMinor),
      penalty: side.penalty,
      chanceInBudget: side.chanceInBudget,
      ladder: side.after.map((rung) => rungRow(reader, rung)),
      marks: side.stillWrong.flatMap((pair) => markOf(view, pair)),
    };
  });
  return { sides, names: namesOf({ view, built }, new Set(bags.flat())) };
}
