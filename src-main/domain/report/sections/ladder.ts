import { pairsOf, type Pair } from '../../advice/bag-view/view.ts';
import { ladderOrder } from '../../player/ladder/ladder.ts';
import { leftOut, namedLadder, type Context, type NamedRung } from '../context.ts';
import type { ChartRung, LadderChart, Section, Table, TableRow } from '../model.ts';

/** The ladder now and after, as a drawing and as a table with the same figures. */
export function ladderSection(context: Context): Section {
  const { advice, words } = context;
  const title = words.sections.ladder;
  const today = namedLadder(context, advice.view.ladder);
  if (today.length === 0 && advice.afterLadder.length === 0) {
    const text = words.ladder.nothing();
    return { id: 'ladder', title: words.ladder.unchanged, blocks: [{ kind: 'paragraph', text }] };
  }
  const after = namedLadder(context, advice.afterLadder);
  return {
    id: 'ladder',
    title: changes(today, after) ? title : words.ladder.unchanged,
    blocks: [
      { kind: 'chart', chart: chartOf(context, today, after) },
      tableOf(context, today, after),
      { kind: 'paragraph', text: words.ladder.note() },
    ],
  };
}

const changes = (today: readonly NamedRung[], after: readonly NamedRung[]) =>
  today.length !== after.length || today.some((rung, i) => rung.clubId !== after[i]?.clubId);

function tableOf(context: Context, today: readonly NamedRung[], after: readonly NamedRung[]): Table {
  const { advice, words } = context;
  const unit = advice.view.reader.distanceUnit;
  const changed = changes(today, after);
  const out = leftOut(context);
  const all = [...today, ...after.filter((rung) => rung.bought)].sort(ladderOrder);
  const gapsToday = gapsOf(context, today);
  const gapsAfter = gapsOf(context, after);
  return {
    kind: 'table',
    caption: words.ladder.caption,
    columns: [
      { label: words.ladder.club, align: 'left' },
      { label: words.ladder.carry({ unit }), align: 'right' },
      { label: words.ladder.range({ unit }), align: 'right' },
      { label: words.ladder.source, align: 'left' },
      { label: words.ladder.gapToday({ unit }), align: 'right' },
      ...(changed
        ? [
            { label: words.ladder.gapAfter({ unit }), align: 'right' as const },
            { label: words.ladder.change, align: 'left' as const },
          ]
        : []),
    ],
    rows: all.map((rung) =>
      rowOf(context, rung, {
        changed,
        out: out.has(rung.clubId),
        now: gapsToday.get(rung.clubId),
        after: gapsAfter.get(rung.clubId),
      }),
    ),
  };
}

type Gap = { yd: number; text: string };

/** Down from each club to the next shorter, with the word for a gap beyond its limits. */
function gapsOf({ advice, words, figures }: Context, ladder: readonly NamedRung[]): Map<string, Gap> {
  return new Map(
    pairsOf(ladder, advice.view.limits).map(({ longer, gapYd, state }) => [
      longer.clubId,
      {
        yd: gapYd,
        text: state === 'fine' ? figures.tenths(gapYd) : `${words.states[state]} ${figures.tenths(gapYd)}`,
      },
    ]),
  );
}

function rowOf(
  { advice, words, figures }: Context,
  rung: NamedRung,
  gaps: { changed: boolean; out: boolean; now: Gap | undefined; after: Gap | undefined },
): TableRow {
  const { reader } = advice.view;
  const change = rung.bought ? words.ladder.new : gaps.out ? words.ladder.out : words.ladder.stays;
  const source = words.sources[rung.source];
  return {
    cells: [
      rung.name,
      figures.tenths(rung.carryYd),
      `${figures.tenths(rung.lowYd)}–${figures.tenths(rung.highYd)}`,
      source,
      gaps.now?.text ?? '',
      ...(gaps.changed ? [gaps.after?.text ?? '', change] : []),
    ],
    data: {
      item: rung.name,
      state: change,
      carry: reader.distance(rung.carryYd),
      carryLow: reader.distance(rung.lowYd),
      carryHigh: reader.distance(rung.highYd),
      source,
      ...(gaps.now ? { gapBefore: reader.distance(gaps.now.yd) } : {}),
      ...(gaps.after ? { gapAfter: reader.distance(gaps.after.yd) } : {}),
    },
    ...(rung.bought ? { mark: 'new' as const } : gaps.out ? { mark: 'out' as const } : {}),
  };
}

function chartOf(context: Context, today: readonly NamedRung[], after: readonly NamedRung[]): LadderChart {
  const { advice, words } = context;
  const unit = advice.view.reader.distanceUnit;
  const out = leftOut(context);
  const side = (
    title: string,
    ladder: readonly NamedRung[],
    mark: (rung: NamedRung) => ChartRung['mark'],
  ) => {
    const pairs = pairsOf(ladder, advice.view.limits);
    const crowds = new Set(
      pairs.filter(({ state }) => state === 'crowded').map(({ shorter }) => shorter.clubId),
    );
    return {
      title,
      rungs: ladder.map((rung) => chartRung(context, rung, mark(rung), crowds.has(rung.clubId))),
      gaps: pairs.filter(({ state }) => state === 'wide').map((pair) => chartGap(context, pair)),
    };
  };
  return {
    title: words.ladder.chartTitle,
    description: words.ladder.chartDescription({ unit }),
    sides: [
      side(words.ladder.today, today, ({ clubId }) => (out.has(clubId) ? 'out' : undefined)),
      ...(changes(today, after)
        ? [side(words.ladder.after, after, ({ bought }) => (bought ? 'new' : undefined))]
        : []),
    ],
  };
}

function chartRung(
  { advice, words, figures }: Context,
  rung: NamedRung,
  mark: ChartRung['mark'],
  crowds: boolean,
): ChartRung {
  const { reader } = advice.view;
  const note = mark === undefined ? (crowds ? words.states.crowded : undefined) : words.ladder[mark];
  return {
    name: rung.name,
    carry: reader.distance(rung.carryYd),
    text: figures.whole(rung.carryYd),
    low: reader.distance(rung.lowYd),
    high: reader.distance(rung.highYd),
    ...(mark === undefined ? {} : { mark }),
    ...(note === undefined ? {} : { note }),
  };
}

function chartGap({ advice, words }: Context, { longer, shorter, gapYd }: Pair) {
  const { reader } = advice.view;
  return {
    upper: reader.distance(longer.carryYd),
    lower: reader.distance(shorter.carryYd),
    text: `${reader.distanceText(gapYd)} ${words.states.wide}`,
  };
}
