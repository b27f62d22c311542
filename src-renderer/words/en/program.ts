import type { Settings } from '../../../src-main/contract/calls/program/program.ts';
import type { Page } from '../../state/window/places.ts';

const SCREENS: Record<Page, string> = {
  players: 'Players',
  bag: 'Bag',
  ladder: 'Ladder',
  prices: 'Prices',
  spend: 'Spend',
  side: 'Side by side',
  handover: 'Hand-over',
  files: 'Files',
};

/** The frame of the window: what stands on every page, and what is said of the program itself. */
export const program = {
  /** For lists and plurals; figures go by the reader's locale. */
  language: 'en' as Exclude<Settings['language'], 'system'>,

  name: 'Loftledger',

  skip: 'Skip to the page',

  nav: 'Pages of the book',

  screens: SCREENS,

  title: (screen: string, player: string | undefined) =>
    player === undefined ? `${screen} · Loftledger` : `${screen} · ${player} · Loftledger`,

  withKeys: (what: string, keys: string) => `${what} (${keys})`,

  reading: 'Reading …',

  reckoning: 'Reckoning the plan',
  stop: 'Stop',
  reckonAgain: 'Reckon again',

  theme: {
    label: 'Light of the page',
    system: 'System',
    light: 'Light',
    'lamp-lit': 'Lamp-lit',
  },

  history: {
    undo: 'Undo',
    redo: 'Redo',
    undoStep: (step: string) => `Undo: ${step}`,
    redoStep: (step: string) => `Redo: ${step}`,
    undone: (step: string) => `Taken back: ${step}.`,
    redone: (step: string) => `Done again: ${step}.`,
    nothingToUndo: 'There is nothing to take back.',
    nothingToRedo: 'There is nothing to do again.',
  },

  toast: { close: 'Close this note', region: 'What was done' },

  errors: {
    unreachable:
      'Loftledger does not answer. Your last edit may not be kept. Look at the terminal it was started from, or start it again.',
    unreadable: (status: number) =>
      `Loftledger gave an answer that cannot be read (status ${String(status)}). Nothing was shown of it; try again.`,
    notNumber: (text: string) => `“${text}” is not a number. Write digits, such as 18 or 10.5.`,
    lost: 'Nobody answers',
    needed: 'This is needed. Write something, or press Escape for what stood here.',
    bandNeedsThree: 'Give all three: low, likely and high. Or leave all three blank.',
    heading: 'This cannot be shown',
    toPlayers: 'Back to Players',
    toBag: 'To the bag',
  },

  print: {
    page: 'Print this page',
    /** At the head of a printed page. */
    head: (day: string) => `Loftledger · ${day}`,
  },

  keys: {
    heading: 'Keys',
    find: 'Find anything, or have something done',
    pages: 'Turn to a page',
    undo: 'Undo, redo',
    search: 'Search, on Players and Prices',
    print: 'Print the page, or the document on Hand-over',
    down: 'Down or up a column of the bag',
    downKeys: 'Enter, Shift+Enter',
    back: 'Give up an edit',
    backKeys: 'Esc',
  },

  noBag: {
    heading: 'No player is open',
    text: 'Open one on the Players page, or look at the demo.',
  },
};
