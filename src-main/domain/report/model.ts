/**
 * The hand-over document as plain data. It is made once; Markdown, CSV and the print page only set it differently,
 * so they cannot say different things.
 */

export type SectionId =
  | 'verdict'
  | 'buy'
  | 'leave'
  | 'keep'
  | 'practise'
  | 'no-buy'
  | 'stages'
  | 'ladder'
  | 'retest'
  | 'sources'
  | 'cautions'
  | 'sign-off';

/** Stable names of what a spreadsheet may want in a column of its own, in the order of the CSV's columns. */
export const COLUMNS = [
  'no',
  'item',
  'text',
  'amount',
  'stage',
  'state',
  'hand',
  'loftDeg',
  'loftLowDeg',
  'loftHighDeg',
  'measuredLoftDeg',
  'lengthIn',
  'flex',
  'forgiveness',
  'spin',
  'replaces',
  'carry',
  'carryLow',
  'carryHigh',
  'source',
  'gapBefore',
  'gapBeforeBelow',
  'gapAfter',
  'gapAfterBelow',
  'priceLow',
  'priceLikely',
  'priceHigh',
  'delivery',
  'regrip',
  'runningTotal',
  'walkAway',
  'paid',
] as const;
export type Column = (typeof COLUMNS)[number];

/** Distances in the reader's unit to 0.1, money in major units, lofts in degrees, lengths in inches. */
export type Data = Readonly<Partial<Record<Column, number | string>>>;

/** A labelled figure or word; `data` holds its parts as plain values. */
export type Fact = { label: string; text: string; data?: Data };

/** A remark, on clubs or on the whole. `lang` where it is not in the document's language. */
export type Line = { subject?: string; text: string; lang?: string; data?: Data };

/** `prose`: whole sentences, which wrap; other columns hold a word or a figure. */
export type TableColumn = { label: string; align: 'left' | 'right'; prose?: boolean };
/** `mark` sets a row apart by more than its words: a club that leaves or comes. */
export type TableRow = { cells: string[]; data: Data; mark?: 'out' | 'new'; lang?: string };
export type Table = { kind: 'table'; caption: string; columns: TableColumn[]; rows: TableRow[] };

/** One purchase: what to look for, what it does, what it may cost, and boxes to fill in beside it. */
export type Entry = {
  no: number;
  title: string;
  price?: string;
  why: Line;
  groups: { title: string; facts: Fact[] }[];
  blanks: string[];
};

export type Block =
  | { kind: 'paragraph'; text: string; lang?: string }
  | { kind: 'lines'; title?: string; lines: Line[] }
  | { kind: 'facts'; facts: Fact[] }
  | { kind: 'entries'; entries: Entry[] }
  | { kind: 'blanks'; labels: string[] }
  | { kind: 'chart'; chart: LadderChart }
  | Table;

export type Section = { id: SectionId; title: string; blocks: Block[] };

/** One rung of the small chart, in the reader's unit. */
export type ChartRung = {
  name: string;
  carry: number;
  /** The carry as a reader sees it, whole. */
  text: string;
  low: number;
  high: number;
  mark?: 'out' | 'new';
  /** A word on it: that it leaves, comes, or crowds the club above. */
  note?: string;
};
/** Two ladders beside each other, or one where nothing changes; wide gaps as words between two carries. */
export type LadderChart = {
  title: string;
  description: string;
  sides: {
    title: string;
    rungs: ChartRung[];
    gaps: { upper: number; lower: number; text: string }[];
  }[];
};

/** Either may be empty. The picture is the page's alone: see `HtmlOptions`. */
export type Letterhead = { name: string; contact: string };

export type HandOver = {
  /** BCP 47 tags: of the texts, and of the figures. */
  language: string;
  locale: string;
  title: string;
  player: string;
  madeOn: string;
  letterhead?: Letterhead;
  /** The coach's own words, by paragraph. */
  coverNote: string[];
  /** The first section is the verdict in one sentence. */
  sections: Section[];
  columns: { key: Column; label: string }[];
  sectionLabel: string;
  pageOf: { page: string; of: string };
};
