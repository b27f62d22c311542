import type { Advice } from '../../domain/advice/advise.ts';
import type { Swap } from '../../domain/advice/plan/swaps.ts';
import type { Rung } from '../../domain/player/ladder/ladder.ts';
import { textTable, wrapped } from './table.ts';

const STATUS: Record<Advice['status'], string> = {
  'nothing-needed': 'Nothing to buy: the bag is not the problem.',
  ok: 'The plan below mends the bag.',
  partly: 'The plan below mends part of it.',
  'over-budget': 'Nothing within the budget makes this bag better; what would stands in the curve.',
  'ask-first': 'Measure first: what is open decides whether anything is worth buying.',
  'coach-first': 'See a coach first: the clubs do not look like the cause.',
  stopped: 'Stopped: no buying advice.',
};

function statusText({ status, swaps }: Advice): string {
  if (status === 'partly' && swaps.length === 0)
    return 'Nothing priced makes this bag better; see the findings.';
  return STATUS[status];
}

/** The whole answer as text tables for a terminal, in the reader's units. */
export function planText(advice: Advice): string {
  const { view } = advice;
  const sections = [
    `${view.bag.player.name}\n${statusText(advice)}`,
    section('Ladder today', ladderTable(advice, view.ladder)),
    section('Findings', findingsText(advice)),
    section('Plan', planTable(advice)),
    ...(advice.swaps.length > 0 ? [section('Ladder after', ladderTable(advice, advice.afterLadder))] : []),
    section('What spending mends', curveTable(advice)),
    section('Questions', list(advice.questions.map((question) => question.ask))),
    section('Bear in mind', list(advice.cautions)),
  ];
  return `${sections.filter((text) => text !== '').join('\n\n')}\n`;
}

function section(title: string, body: string): string {
  return body === '' ? '' : `${title}\n${body}`;
}

function list(lines: readonly string[]): string {
  return lines.map((line) => wrapped(line, 94, '    ').replace(/^ {4}/, '  - ')).join('\n');
}

function ladderTable({ view, built }: Advice, ladder: readonly Rung[]): string {
  const { reader, words } = view;
  const name = (rung: Rung) => {
    const bought = [...built.candidates].find(
      ([id]) => rung.clubId === id || rung.clubId.startsWith(`${id}:`),
    );
    return bought ? `+ ${rung.clubId.slice('buy:'.length)}` : view.name(rung.clubId);
  };
  const whole = (yards: number) => String(Math.round(reader.distance(yards)));
  return textTable(
    [
      { head: 'club' },
      { head: `carry ${reader.distanceUnit}`, align: 'right' },
      { head: '90 % range', align: 'right' },
      { head: 'gap', align: 'right' },
      { head: 'source' },
    ],
    ladder.map((rung, i) => {
      const above = ladder[i - 1];
      return [
        name(rung),
        whole(rung.carryYd),
        `${whole(rung.lowYd)}–${whole(rung.highYd)}`,
        above ? whole(above.carryYd - rung.carryYd) : '',
        words.source(rung.source),
      ];
    }),
  );
}

function findingsText({ findings }: Advice): string {
  return findings
    .map((finding) => wrapped(`[${finding.verdict}] ${finding.text}`, 94, '    ').replace(/^ {4}/, '  - '))
    .join('\n');
}

function planTable(advice: Advice): string {
  const { reader } = advice.view;
  const money = [
    `cash out ${reader.moneyText(advice.cashMinor)}`,
    `net of sales ${reader.moneyText(advice.netMinor)}`,
    ...(advice.remainingMinor === null
      ? []
      : [`left of the budget ${reader.moneyText(advice.remainingMinor)}`]),
  ].join(', ');
  if (advice.swaps.length === 0) return `  Change nothing; ${money}.`;
  const walkAway = (swap: Swap) => {
    if (swap.action !== 'buy' || swap.walkAwayMinor === undefined) return '';
    return swap.walkAwayMinor === null ? 'the budget' : reader.moneyText(swap.walkAwayMinor);
  };
  const table = textTable(
    [
      { head: 'do' },
      { head: 'club' },
      { head: 'price', align: 'right' },
      { head: 'walk away above', align: 'right' },
      { head: 'in place of' },
    ],
    advice.swaps.map((swap) => [
      swap.action,
      swap.archetype ?? advice.view.name(swap.clubId ?? ''),
      swap.priceMinor === undefined ? '' : reader.moneyText(swap.priceMinor),
      walkAway(swap),
      (swap.inPlaceOf ?? []).map(advice.view.name).join(', '),
    ]),
  );
  const reasons = list(advice.swaps.map((swap) => swap.why));
  return `${table}\n${reasons}\n  In all: ${money}, delivery and grips included.`;
}

/** The curve from today's penalty downwards. */
function curveTable({ solution, view }: Advice): string {
  const todayPenalty = (solution.today ?? solution.frontier[0])?.penalty ?? 0;
  const points = solution.frontier.filter((point) => point.penalty <= todayPenalty);
  if (points.length === 0) return '';
  return textTable(
    [
      { head: 'cost', align: 'right' },
      { head: 'still wrong', align: 'right' },
      { head: 'changes', align: 'right' },
      { head: 'buys' },
    ],
    points.map((point) => [
      view.reader.moneyText(point.cost),
      String(point.penalty),
      String(point.changes),
      bought(point.items),
    ]),
  );
}

/** Archetype ids of what is bought, a set once. */
function bought(items: readonly string[]): string {
  const ids = items.flatMap((id) => (id.startsWith('buy:') ? [id.split(':')[1] ?? ''] : []));
  return [...new Set(ids)].join(', ');
}
