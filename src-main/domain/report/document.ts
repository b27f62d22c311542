import type { Advice } from '../advice/advise.ts';
import type { Context, Picked } from './context.ts';
import { figuresFor } from './figures.ts';
import { COLUMNS, type Column, type HandOver, type Letterhead, type Section } from './model.ts';
import { buySection } from './sections/buy.ts';
import { cautionsSection, retestSection, signOffSection, sourcesSection } from './sections/closing.ts';
import { keepSection } from './sections/keep.ts';
import { ladderSection } from './sections/ladder.ts';
import { leaveSection } from './sections/leave.ts';
import { noBuySection } from './sections/no-buy.ts';
import { practiseSection } from './sections/practise.ts';
import { stagesSection } from './sections/stages.ts';
import { verdictSection } from './sections/verdict.ts';
import { reportWords } from './words/index.ts';
import type { ReportWords } from './words/words.ts';

export type HandOverOptions = {
  /** ISO day. */
  today: string;
  /** BCP 47: language of the texts, formats of the figures. The advice's reader should have the same. */
  locale: string;
  /** ISO 4217, for the heads of the CSV's money columns. */
  currency?: string;
  letterhead?: Letterhead;
  coverNote?: string;
  /** ISO day that the coach and the player agreed on; left out: the usual half year. */
  retestOn?: string;
  /** Said where the advice is told of a bag that was picked by hand. */
  picked?: Picked;
  /** Other texts than those that the locale chooses. */
  words?: ReportWords;
};

/** The whole document as plain data, from which every format is set. Pure: the same input gives the same document. */
export function handOver(advice: Advice, options: HandOverOptions): HandOver {
  const words = options.words ?? reportWords(options.locale);
  const adviceLang = advice.view.words.language;
  const context: Context = {
    advice,
    words,
    figures: figuresFor(advice.view.reader, options.locale),
    today: options.today,
    ...(adviceLang === words.language ? {} : { adviceLang }),
    ...(options.retestOn === undefined ? {} : { retestOn: options.retestOn }),
    ...(options.picked ? { picked: options.picked } : {}),
  };
  const player = advice.view.bag.player.name;
  return {
    language: words.language,
    locale: options.locale,
    title: words.title({ player }),
    player,
    madeOn: words.madeOn({ date: context.figures.day(options.today) }),
    ...(options.letterhead ? { letterhead: options.letterhead } : {}),
    coverNote: paragraphs(options.coverNote ?? ''),
    sections: sectionsOf(context),
    columns: columnsOf(context, options.currency),
    sectionLabel: words.sectionLabel,
    pageOf: words.pageOf,
  };
}

function sectionsOf(context: Context): Section[] {
  return [
    verdictSection(context),
    buySection(context),
    leaveSection(context),
    keepSection(context),
    practiseSection(context),
    noBuySection(context),
    stagesSection(context),
    ladderSection(context),
    retestSection(context),
    sourcesSection(context),
    cautionsSection(context),
    signOffSection(context),
  ].filter((section) => section !== null);
}

function paragraphs(note: string): string[] {
  return note
    .split(/\n\s*\n/)
    .map((part) => part.replace(/\s+/g, ' ').trim())
    .filter((part) => part !== '');
}

const DISTANCES: ReadonlySet<Column> = new Set<Column>([
  'carry',
  'carryLow',
  'carryHigh',
  'gapBefore',
  'gapBeforeBelow',
  'gapAfter',
  'gapAfterBelow',
]);

const MONEY: ReadonlySet<Column> = new Set<Column>([
  'priceLow',
  'priceLikely',
  'priceHigh',
  'delivery',
  'regrip',
  'runningTotal',
  'walkAway',
  'paid',
]);

function columnsOf({ advice, words }: Context, currency: string | undefined): HandOver['columns'] {
  const unitOf = (key: Column) =>
    DISTANCES.has(key) ? advice.view.reader.distanceUnit : MONEY.has(key) ? currency : undefined;
  return COLUMNS.map((key) => {
    const unit = unitOf(key);
    return { key, label: unit === undefined ? words.columns[key] : `${words.columns[key]} (${unit})` };
  });
}
