import type { Finding, FindingKind } from '../../advice/finding.ts';
import { given, leftOut, type Context } from '../context.ts';
import type { Block, Line, Section } from '../model.ts';

const ASKS_MAKER = new Set<FindingKind>(['flex', 'bend', 'check-conformity']);
const ASKS_FIGURES = new Set<FindingKind>(['too-little-data', 'unsure-gap']);

/** What to measure, what to practise (always as a suggestion to see a coach), what to ask a fitter or club maker. */
export function practiseSection(context: Context): Section {
  const { words } = context;
  const lists: [string, Line[]][] = [
    [words.practise.measure, toMeasure(context)],
    [words.practise.coach, toPractise(context)],
    [words.practise.maker, toAsk(context)],
  ];
  const blocks: Block[] = lists
    .filter(([, lines]) => lines.length > 0)
    .map(([title, lines]) => ({ kind: 'lines', title, lines }));
  const nothing = context.advice.status === 'stopped' ? words.practise.stopped() : words.practise.nothing();
  return {
    id: 'practise',
    title: words.sections.practise,
    blocks: blocks.length > 0 ? blocks : [{ kind: 'paragraph', text: nothing }],
  };
}

/** Questions in the order of their worth; a finding that asks for figures is told where no question asks the same. */
function toMeasure(context: Context): Line[] {
  const { advice } = context;
  const asked = (finding: Finding) =>
    advice.questions.some(({ about }) =>
      finding.clubs.length === 0
        ? about.length === 0
        : finding.clubs.every((id) => about.includes(id)) && about.length > 0,
    );
  const untold = advice.findings.filter(
    (finding) => ASKS_FIGURES.has(finding.kind) && finding.verdict === 'ask' && !asked(finding),
  );
  return [
    ...advice.questions.map(({ ask }) => given(context, { text: ask })),
    ...untold.map(({ text }) => given(context, { text })),
  ];
}

function toPractise(context: Context): Line[] {
  const { advice, words } = context;
  const out = leftOut(context);
  const measure = words.practise.coachMeasure;
  return advice.findings.flatMap((finding) => {
    switch (finding.kind) {
      case 'long-end-falls-off':
        return [told(context, finding, measure['long-end'])];
      case 'driver-behind-irons':
      case 'driver-launch-spin':
        return [told(context, finding, measure.driver)];
      case 'wedge-surplus':
        return finding.clubs.some((id) => out.has(id))
          ? [told(context, finding, measure['part-swings'])]
          : [];
      default:
        return [];
    }
  });
}

function told(context: Context, finding: Finding, measure: string): Line {
  return given(context, { text: `${finding.text} ${measure}` });
}

function toAsk(context: Context): Line[] {
  return context.advice.findings
    .filter((finding) => ASKS_MAKER.has(finding.kind))
    .map(({ text }) => given(context, { text }));
}
