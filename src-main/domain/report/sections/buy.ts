import type { Context } from '../context.ts';
import type { Entry, Section } from '../model.ts';
import { purchasesOf, usedKinds, type Purchase, type UsedKind } from '../purchases.ts';
import { entryOf } from './entry.ts';

const ORDER: readonly UsedKind[] = ['wood', 'iron', 'wedge', 'putter'];

/** What to buy now, the most telling first, and how to look at a used club. */
export function buySection(context: Context): Section {
  const { advice, words } = context;
  const purchases = purchasesOf(context, advice.view.words.stageNow);
  const title = words.sections.buy;
  if (purchases.length === 0) {
    return { id: 'buy', title, blocks: [{ kind: 'paragraph', text: words.buy.nothing() }] };
  }
  return {
    id: 'buy',
    title,
    blocks: [
      { kind: 'entries', entries: entriesOf(context, purchases) },
      {
        kind: 'lines',
        title: words.buy.checksTitle,
        lines: checksFor(context, purchases).map((text) => ({ text })),
      },
    ],
  };
}

/** Numbered, with the running total of likely prices, delivery and grips. */
export function entriesOf(context: Context, purchases: readonly Purchase[]): Entry[] {
  let runningMinor = 0;
  return purchases.map((purchase, i) => {
    runningMinor += purchase.totalMinor;
    return entryOf(context, purchase, i + 1, runningMinor);
  });
}

function checksFor({ words }: Context, purchases: readonly Purchase[]): string[] {
  const { checks } = words.buy;
  const kinds = new Set(purchases.flatMap(usedKinds));
  return [
    checks.loft,
    checks.all,
    ...ORDER.filter((kind) => kinds.has(kind)).map((kind) => checks[kind]),
    checks.year,
  ];
}
