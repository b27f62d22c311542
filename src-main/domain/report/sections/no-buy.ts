import { considered } from '../considered.ts';
import { given, type Context } from '../context.ts';
import type { Line, Section } from '../model.ts';
import { openGaps, staysOpen } from '../open.ts';

/** A list that is read in a shop ends somewhere. */
const MOST_LINES = 8;
const MOST_NAMES = 3;

/** What was considered and is not bought, each with its reason; first what stays open. */
export function noBuySection(context: Context): Section {
  return {
    id: 'no-buy',
    title: context.words.sections['no-buy'],
    blocks: [{ kind: 'lines', lines: [...openLines(context), ...consideredLines(context)] }],
  };
}

function openLines(context: Context): Line[] {
  const { advice, words } = context;
  const { reader } = advice.view;
  const findings = advice.findings.filter(
    (finding) => finding.kind === 'pain' || staysOpen(context, finding),
  );
  return [
    ...findings.map(({ kind, text }) =>
      given(context, kind === 'pain' ? { text } : { subject: words.noBuy.open, text }),
    ),
    ...(advice.status === 'stopped' ? [] : openGaps(context)).map(({ longer, shorter, gapYd, limitYd }) => ({
      subject: words.noBuy.open,
      text: words.noBuy.gapStays({
        longer,
        shorter,
        gap: reader.distanceText(gapYd),
        limit: reader.distanceText(limitYd),
      }),
    })),
  ];
}

function consideredLines(context: Context): Line[] {
  const { advice, words } = context;
  const { prices } = advice.view.bag;
  if (advice.status === 'stopped') return [];
  const waits = advice.status === 'ask-first' || advice.status === 'coach-first';
  if (waits && !context.picked) return [{ text: words.noBuy.waits({ count: prices.length }) }];
  if (prices.length === 0) return [{ text: words.noBuy.noPrices() }];
  const all = considered(context);
  const hidden = all.slice(MOST_LINES).reduce((count, { names }) => count + names.length, 0);
  return [
    ...all.slice(0, MOST_LINES).map(({ names, text }) => {
      const clubs = names.slice(0, MOST_NAMES).join('; ');
      const more = names.length - MOST_NAMES;
      return { subject: more > 0 ? words.noBuy.clubsMore({ clubs, more }) : clubs, text };
    }),
    ...(hidden > 0 ? [{ text: words.noBuy.more({ count: hidden }) }] : []),
  ];
}
