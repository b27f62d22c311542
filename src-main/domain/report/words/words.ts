import type { Archetype, SpinTier, Source } from '../../bag/types.ts';
import type { PairState } from '../../advice/bag-view/pair-state.ts';
import type { Column, SectionId } from '../model.ts';

type Kind = Archetype['kind'];

/**
 * Every text of the hand-over that advice does not bring along, as functions of ready-made figures ("31 yd", "£120"),
 * so that a language is one object of this type.
 */
export type ReportWords = {
  /** BCP 47. */
  language: string;
  title(p: { player: string }): string;
  madeOn(p: { date: string }): string;
  sections: Record<SectionId, string>;
  sectionLabel: string;
  pageOf: { page: string; of: string };
  /** Heads of the CSV; units are added. */
  columns: Record<Column, string>;
  /** As short as a ladder wants them: "20° fairway". */
  kinds: Record<Kind, string>;
  /** A new club by loft ("25°") and kind. */
  shortName(p: { loft: string; kind: string }): string;
  /** A club of a set by its number. */
  numberName(p: { number: string }): string;
  spin: Record<SpinTier, string>;
  sources: Record<Source, string>;
  states: Record<Exclude<PairState, 'fine'>, string>;
  and(parts: readonly string[]): string;
  or(parts: readonly string[]): string;
  verdict: {
    nothingNeeded(): string;
    askFirst(): string;
    coachFirst(): string;
    stopped(): string;
    overBudget(p: { budget: string; least: string | null }): string;
    buys(p: { clubs: readonly string[]; cash: string; mended: boolean }): string;
    leavesOnly(p: { clubs: string; mended: boolean }): string;
    nothingHelps(): string;
    freeMeanwhile(p: { clubs: string }): string;
    /** Nothing now, but something when the condition (a stage's name) holds. */
    later(p: { stage: string }): string;
    staged(): string;
    /** A way that was picked by hand; the next three follow it. */
    picked(p: { name: string; day: string }): string;
    pickedWhy(p: { why: string }): string;
    pickedAgainst: Record<'ask-first' | 'coach-first', string>;
    pickedNothing(): string;
    cash: string;
    net: string;
    remaining: string;
    chance: string;
    completeMend: string;
  };
  buy: {
    nothing(): string;
    look: string;
    job: string;
    money: string;
    handLabel: string;
    hand: Record<'right' | 'left', string>;
    loft: string;
    setLoft(p: { loft: string }): string;
    length: string;
    setLength(p: { length: string }): string;
    flex: string;
    flexFor(p: { labels: string; speed: string }): string;
    flexUnknown(): string;
    forgiveness: string;
    tier(p: { name: string; tier: number }): string;
    spin: string;
    members: string;
    replaces: string;
    replacesNothing(): string;
    carry: string;
    carryOf(p: { carry: string; source: string }): string;
    carriesOf(p: { first: string; last: string; carries: string }): string;
    gap: string;
    gapChange(p: { before: string; after: string; unit: string }): string;
    noGap(): string;
    price: string;
    priceUnknown(): string;
    fees: string;
    feesParts(p: { delivery: string; regrip: string }): string;
    runningTotal: string;
    walkAway: string;
    walkAwayAt(p: { price: string }): string;
    noCeiling(): string;
    notReckoned(): string;
    /** Of a pick that another plan beats. */
    notCheapest(): string;
    ifNotFound: string;
    leaveIt(): string;
    measuredLoft: string;
    paid: string;
    checksTitle: string;
    checks: Record<'all' | 'wood' | 'iron' | 'wedge' | 'putter' | 'loft' | 'year', string>;
  };
  leave: {
    caption: string;
    club: string;
    action: string;
    asking: string;
    brings: string;
    why: string;
    sell: string;
    withItsSet: string;
    stayHome: string;
  };
  keep: {
    goTo(): string;
    fits(): string;
    putter(): string;
    unplaced(): string;
    openGap(p: { other: string; gap: string; state: Exclude<PairState, 'fine'> }): string;
    lonely(): string;
    none(): string;
  };
  practise: {
    nothing(): string;
    stopped(): string;
    measure: string;
    coach: string;
    coachMeasure: Record<'long-end' | 'driver' | 'part-swings', string>;
    maker: string;
  };
  noBuy: {
    near(p: { clubs: number; most: string; other: string; bought: boolean }): string;
    between(p: { longer: string; shorter: string }): string;
    /** `over`: how much the cheapest of them costs above what is left of the budget. */
    helps(p: { clubs: number; cost: string; over: string | null }): string;
    set(p: { cost: string; over: string | null; bought: boolean }): string;
    unusable(): string;
    putter(): string;
    more(p: { count: number }): string;
    clubsMore(p: { clubs: string; more: number }): string;
    waits(p: { count: number }): string;
    noPrices(): string;
    open: string;
    gapStays(p: { longer: string; shorter: string; gap: string; limit: string }): string;
  };
  stages: {
    one(): string;
    after(): string;
    totalLater(p: { money: string }): string;
  };
  ladder: {
    /** The section's title where nothing changes. */
    unchanged: string;
    caption: string;
    nothing(): string;
    club: string;
    carry(p: { unit: string }): string;
    range(p: { unit: string }): string;
    source: string;
    gapToday(p: { unit: string }): string;
    gapAfter(p: { unit: string }): string;
    change: string;
    out: string;
    new: string;
    stays: string;
    chartTitle: string;
    chartDescription(p: { unit: string }): string;
    today: string;
    after: string;
    note(): string;
  };
  retest: { on(p: { when: string }): string; bought(): string; afterPain(): string };
  assumptions: {
    handicap: string;
    target(p: { handicap: string }): string;
    speed: string;
    unknown: string;
    carries: string;
    carriesText(p: { counts: string }): string;
    air: string;
    airText(p: { temperature: string; altitude: string }): string;
    limits: string;
    limitsText(p: { crowded: string; wide: string; wideLong: string; first: string }): string;
    tiers: string;
    tiersText(p: { irons: number; woods: number }): string;
    prices: string;
    pricesText(p: { count: number; oldest: string | null; undated: number }): string;
    costs: string;
    costsText(p: { delivery: string; regrip: string; percent: string; postage: string }): string;
    practice: string;
    /** In its place where the user set a limit. */
    ownSource: string;
    weights: string;
    weightsText(p: { wide: number; crowd: number; tier: number }): string;
  };
  /** `plain` where nothing is bought. */
  signOff: { statement(): string; plain(): string; player: string; coach: string; date: string };
};
