import { flexFit } from '../../bag/flex.ts';
import type { Flex } from '../../bag/types.ts';
import { given, type Context } from '../context.ts';
import type { Data, Entry, Fact } from '../model.ts';
import type { GapsAround, Purchase } from '../purchases.ts';

/** Usual build tolerance of loft: `common practice, no source` (club-specs.json, tag P). */
const LOFT_TOLERANCE_DEG = 1;
const CM_PER_INCH = 2.54; // exact, international inch
const FLEXES: readonly Flex[] = ['L', 'A', 'R', 'S', 'X'];

/** One purchase, ready to be read in a shop. `runningMinor` includes it. */
export function entryOf(context: Context, purchase: Purchase, no: number, runningMinor: number): Entry {
  const { advice, words } = context;
  const { archetype } = purchase.candidate;
  const { reader } = advice.view;
  return {
    no,
    title: advice.view.words.archetypeName(archetype),
    ...(purchase.band ? { price: reader.moneyText(purchase.band.likelyMinor) } : {}),
    why: given(context, { text: purchase.swap.why, data: { stage: purchase.swap.stage } }),
    groups: [
      { title: words.buy.look, facts: specFacts(context, purchase) },
      { title: words.buy.job, facts: jobFacts(context, purchase) },
      { title: words.buy.money, facts: moneyFacts(context, purchase, runningMinor) },
    ],
    blanks: [words.buy.measuredLoft, words.buy.paid],
  };
}

function specFacts({ advice, words, figures }: Context, { candidate }: Purchase): Fact[] {
  const { archetype } = candidate;
  const { view } = advice;
  const { loftDeg, lengthIn, forgiveness, spinTier, members } = archetype;
  const isSet = archetype.kind === 'irons';
  const isPutter = archetype.kind === 'putter';
  const hand = words.buy.hand[view.bag.player.handed];
  const loft = `${figures.degrees(loftDeg)} ± ${figures.degrees(LOFT_TOLERANCE_DEG)}`;
  const length = lengthText(lengthIn, figures.plain, view.reader.distanceUnit);
  const flex = flexText(advice.view.model.driverSpeedMph, words, view.reader.speedText);
  return [
    { label: words.buy.handLabel, text: hand, data: { hand } },
    {
      label: words.buy.loft,
      text: isSet ? words.buy.setLoft({ loft }) : loft,
      data: {
        loftDeg,
        loftLowDeg: loftDeg - LOFT_TOLERANCE_DEG,
        loftHighDeg: loftDeg + LOFT_TOLERANCE_DEG,
      },
    },
    {
      label: words.buy.length,
      text: isSet ? words.buy.setLength({ length }) : length,
      data: { lengthIn },
    },
    ...(isPutter ? [] : [{ label: words.buy.flex, text: flex.text, data: { flex: flex.labels } }]),
    {
      label: words.buy.forgiveness,
      text: words.buy.tier({ name: view.words.tierName(forgiveness), tier: forgiveness }),
      data: { forgiveness },
    },
    ...(isPutter
      ? []
      : [{ label: words.buy.spin, text: words.spin[spinTier], data: { spin: words.spin[spinTier] } }]),
    ...(members ? [{ label: words.buy.members, text: members.map(({ number }) => number).join(', ') }] : []),
  ];
}

function lengthText(inches: number, plain: (value: number) => string, distanceUnit: string): string {
  const text = `${plain(inches)} in`;
  return distanceUnit === 'm' ? `${text} (${plain(Math.round(inches * CM_PER_INCH))} cm)` : text;
}

function flexText(
  speedMph: number | null,
  words: Context['words'],
  speedText: (mph: number) => string,
): { text: string; labels: string } {
  if (speedMph === null) return { text: words.buy.flexUnknown(), labels: '' };
  const labels = words.or(FLEXES.filter((flex) => flexFit(flex, speedMph) === 'fits'));
  return { text: words.buy.flexFor({ labels, speed: speedText(speedMph) }), labels };
}

function jobFacts(context: Context, purchase: Purchase): Fact[] {
  const { advice, words } = context;
  const replaced = words.and(purchase.replaces.map(advice.view.name));
  return [
    {
      label: words.buy.replaces,
      text: replaced === '' ? words.buy.replacesNothing() : replaced,
      data: { replaces: replaced },
    },
    ...(purchase.rungs.length > 0 ? [carryFact(context, purchase), gapFact(context, purchase)] : []),
  ];
}

/** One club with its range; of a set each member's carry (their ranges stand in the ladder). */
function carryFact({ advice, words, figures }: Context, { rungs }: Purchase): Fact {
  const { reader } = advice.view;
  const [first] = rungs;
  if (!first || rungs.length > 1) {
    const carries = rungs.map((rung) => figures.whole(rung.carryYd)).join(', ');
    return {
      label: words.buy.carry,
      text: words.buy.carriesOf({
        first: first?.name ?? '',
        last: rungs.at(-1)?.name ?? '',
        carries: `${carries} ${reader.distanceUnit}`,
      }),
    };
  }
  const half = figures.whole((first.highYd - first.lowYd) / 2);
  const source = words.sources[first.source];
  return {
    label: words.buy.carry,
    text: words.buy.carryOf({
      carry: `${figures.whole(first.carryYd)} ± ${half} ${reader.distanceUnit}`,
      source,
    }),
    data: {
      carry: reader.distance(first.carryYd),
      carryLow: reader.distance(first.lowYd),
      carryHigh: reader.distance(first.highYd),
      source,
    },
  };
}

function gapFact({ advice, words, figures }: Context, { before, after }: Purchase): Fact {
  const { reader } = advice.view;
  const around = (gaps: GapsAround | null) =>
    words.and(
      [gaps?.aboveYd, gaps?.belowYd].flatMap((gap) =>
        gap === null || gap === undefined ? [] : [figures.whole(gap)],
      ),
    );
  const one = before !== null && 'gapYd' in before;
  const beforeText = one ? figures.whole(before.gapYd) : around(before);
  const orNone = (text: string) => (text === '' ? words.buy.noGap() : text);
  const gap = (column: keyof Data, yards: number | null | undefined): Data =>
    yards === null || yards === undefined ? {} : { [column]: reader.distance(yards) };
  return {
    label: words.buy.gap,
    text: words.buy.gapChange({
      before: orNone(beforeText),
      after: orNone(around(after)),
      unit: reader.distanceUnit,
    }),
    data: {
      ...gap('gapBefore', one ? before.gapYd : before?.aboveYd),
      ...gap('gapBeforeBelow', one ? null : before?.belowYd),
      ...gap('gapAfter', after?.aboveYd),
      ...gap('gapAfterBelow', after?.belowYd),
    },
  };
}

function moneyFacts(context: Context, purchase: Purchase, runningMinor: number): Fact[] {
  const { advice, words } = context;
  const { reader } = advice.view;
  const { band, deliveryMinor, regripMinor, swap } = purchase;
  return [
    band
      ? {
          label: words.buy.price,
          text: [band.lowMinor, band.likelyMinor, band.highMinor].map(reader.moneyText).join(' – '),
          data: {
            priceLow: reader.money(band.lowMinor),
            priceLikely: reader.money(band.likelyMinor),
            priceHigh: reader.money(band.highMinor),
          },
        }
      : { label: words.buy.price, text: words.buy.priceUnknown() },
    {
      label: words.buy.fees,
      text: words.buy.feesParts({
        delivery: reader.moneyText(deliveryMinor),
        regrip: reader.moneyText(regripMinor),
      }),
      data: { delivery: reader.money(deliveryMinor), regrip: reader.money(regripMinor) },
    },
    {
      label: words.buy.runningTotal,
      text: reader.moneyText(runningMinor),
      data: { runningTotal: reader.money(runningMinor) },
    },
    walkAwayFact(context, swap),
    { label: words.buy.ifNotFound, text: words.buy.leaveIt() },
  ];
}

function walkAwayFact({ advice, words, picked }: Context, { walkAwayMinor, stage }: Purchase['swap']): Fact {
  const { reader } = advice.view;
  const label = words.buy.walkAway;
  if (typeof walkAwayMinor === 'number') {
    return {
      label,
      text: words.buy.walkAwayAt({ price: reader.moneyText(walkAwayMinor) }),
      data: { walkAway: reader.money(walkAwayMinor) },
    };
  }
  const beaten = picked !== undefined && stage === advice.view.words.stageNow;
  const text =
    walkAwayMinor === null
      ? words.buy.noCeiling()
      : beaten
        ? words.buy.notCheapest()
        : words.buy.notReckoned();
  return { label, text, data: { walkAway: text } };
}
