import { handicapText } from '../../bag/handicap.ts';
import type { Source } from '../../bag/types.ts';
import { monthsLater } from '../../advice/rules/whole-bag/nothing-needed.ts';
import { given, type Context } from '../context.ts';
import type { Fact, Section } from '../model.ts';

/** Common practice, no source; the finding `nothing-needed` says the same month. */
export const RETEST_MONTHS = 6;
const SOURCES: readonly Source[] = ['measured', 'stated', 'interpolated', 'modelled'];

export function retestSection({ advice, words, figures, today, retestOn }: Context): Section {
  const when =
    retestOn === undefined ? figures.month(monthsLater(today, RETEST_MONTHS)) : figures.day(retestOn);
  const bought = advice.swaps.some(({ action }) => action === 'buy');
  return {
    id: 'retest',
    title: words.sections.retest,
    blocks: [
      {
        kind: 'paragraph',
        text:
          advice.status === 'stopped'
            ? words.retest.afterPain()
            : [words.retest.on({ when }), ...(bought ? [words.retest.bought()] : [])].join(' '),
      },
    ],
  };
}

/** What the answer rests on, with where it comes from. */
export function sourcesSection(context: Context): Section {
  const { words } = context;
  return {
    id: 'sources',
    title: words.sections.sources,
    blocks: [
      { kind: 'facts', facts: [...playerFacts(context), ...limitFacts(context), ...priceFacts(context)] },
    ],
  };
}

function playerFacts({ advice, words, figures }: Context): Fact[] {
  const { view, afterLadder } = advice;
  const { reader, model } = view;
  const { handicap, targetHandicap } = view.bag.player;
  const target =
    targetHandicap === undefined
      ? ''
      : `, ${words.assumptions.target({ handicap: handicapText(targetHandicap, figures.plain) })}`;
  const counts = SOURCES.flatMap((source) => {
    const count = afterLadder.filter((rung) => rung.source === source).length;
    return count > 0 ? [`${String(count)} ${words.sources[source]}`] : [];
  });
  return [
    { label: words.assumptions.handicap, text: `${handicapText(handicap, figures.plain)}${target}` },
    {
      label: words.assumptions.speed,
      text:
        model.driverSpeedMph === null
          ? words.assumptions.unknown
          : `${reader.speedText(model.driverSpeedMph)} (${view.words.speedSource(model.speedFrom)})`,
    },
    ...(counts.length > 0
      ? [
          {
            label: words.assumptions.carries,
            text: words.assumptions.carriesText({ counts: counts.join(', ') }),
          },
        ]
      : []),
    {
      label: words.assumptions.air,
      text: words.assumptions.airText({
        temperature: `${figures.plain(model.air.temperatureC)}\u00a0°C`,
        altitude: `${figures.plain(model.air.altitudeM)}\u00a0m`,
      }),
    },
  ];
}

function limitFacts({ advice, words }: Context): Fact[] {
  const { reader, limits, least, own, conventions } = advice.view;
  const { practice, ownSource } = words.assumptions;
  return [
    {
      label: words.assumptions.limits,
      text: `${words.assumptions.limitsText({
        crowded: reader.distanceText(limits.crowdedYd),
        wide: reader.distanceText(limits.wideYd),
        wideLong: reader.distanceText(limits.wideLongYd),
        first: reader.distanceText(limits.firstPairYd),
      })} (${own.limits ? ownSource : practice})`,
    },
    {
      label: words.assumptions.tiers,
      text: `${words.assumptions.tiersText({ irons: least.iron, woods: least.driver })} (${own.tiers ? ownSource : practice})`,
    },
    ...(own.weights
      ? [
          {
            label: words.assumptions.weights,
            text: `${words.assumptions.weightsText(conventions.weights)} (${ownSource})`,
          },
        ]
      : []),
  ];
}

function priceFacts({ advice, words, figures }: Context): Fact[] {
  const { view, status } = advice;
  const { prices, costs } = view.bag;
  if (prices.length === 0 || status === 'stopped') return [];
  const dates = prices.flatMap(({ seen }) => (seen === undefined ? [] : [seen])).sort();
  const [oldest] = dates;
  return [
    {
      label: words.assumptions.prices,
      text: words.assumptions.pricesText({
        count: prices.length,
        oldest: oldest === undefined ? null : figures.day(oldest),
        undated: prices.length - dates.length,
      }),
    },
    {
      label: words.assumptions.costs,
      text: words.assumptions.costsText({
        delivery: view.reader.moneyText(costs.deliveryMinor),
        regrip: view.reader.moneyText(costs.regripMinor),
        percent: figures.percentExactly(costs.sellFeePercent / 100),
        postage: view.reader.moneyText(costs.sellPostageMinor),
      }),
    },
  ];
}

export function cautionsSection(context: Context): Section {
  return {
    id: 'cautions',
    title: context.words.sections.cautions,
    blocks: [{ kind: 'lines', lines: context.advice.cautions.map((text) => given(context, { text })) }],
  };
}

export function signOffSection({ advice, words }: Context): Section {
  const buys = advice.swaps.some(({ action }) => action === 'buy');
  return {
    id: 'sign-off',
    title: words.sections['sign-off'],
    blocks: [
      { kind: 'paragraph', text: buys ? words.signOff.statement() : words.signOff.plain() },
      { kind: 'blanks', labels: [words.signOff.player, words.signOff.coach, words.signOff.date] },
    ],
  };
}
