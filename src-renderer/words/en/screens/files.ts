import type { ShotMapping } from '../../../../src-main/contract/calls/records/shots.ts';
import type { IncomingKind } from '../../../../src-main/contract/formats/incoming-kinds.ts';
import { count } from '../plural.ts';

type TableKind = Exclude<IncomingKind, 'bag' | 'database'>;
type ShotColumn = keyof ShotMapping['columns'];

const KINDS: Record<IncomingKind, string> = {
  bag: 'Bag file',
  prices: 'Price list',
  roster: 'Roster',
  shots: 'Shots',
  database: 'Whole records',
};

const TABLES: Record<TableKind, string> = { shots: 'Shots', prices: 'Price list', roster: 'Roster' };

const SHOT_COLUMNS: Record<ShotColumn, string> = {
  club: 'Club',
  carry: 'Carry',
  total: 'Total',
  ballSpeed: 'Ball speed',
  launch: 'Launch, °',
  spin: 'Spin, rpm',
};

/** Files on their way in, each seen before anything of it is kept, and out. */
export const files = {
  files: {
    heading: 'Files',
    open: 'Files',
    choose: 'Choose files …',
    chooseFolder: 'Choose a folder of bag files …',
    import: 'Import files …',
    drop: 'Let go to see what it would bring',
    dropHint: 'Or drop files anywhere on this window.',
    first: 'You see what a file would bring before anything of it is kept.',
    folderHint:
      'Of a folder its bag files are taken, 500 at most. If you are asked whether to upload them: they stay on this machine.',
    folder: {
      aside: (folder: string, names: string) => `Left aside in ${folder}: ${names}.`,
      more: (n: number) => `${String(n)} more`,
      none: (folder: string) => `There is no bag file in ${folder}.`,
      empty: 'There is no file in this folder.',
    },
    sending: (file: string) => `Reading ${file} …`,
    looking: 'Looking into the file …',
    fromBag: 'Take in shots from a file …',
    fromPrices: 'Price lists: take in or save …',
    takeIn: 'Take files in',
    kinds: KINDS,
    tables: TABLES,
    columns: { kind: 'What', endings: 'File', holds: 'What it holds' },
    accepted: 'Files that are taken in',
    holds: {
      bag: 'One player with a bag: what “Export bag file” saves.',
      prices: 'Used prices you have seen, a row each, under the headings archetype and price.',
      roster: 'Players, a row each, under the headings name and handicap.',
      shots: 'Shots, a row each, under any headings: you say which column holds what.',
      database: 'Everything at once. It takes the place of all that is here.',
    } satisfies Record<IncomingKind, string>,
    tooLarge: (megabytes: string, most: string) =>
      `It has ${megabytes} MB, and a file of its kind at most ${most} MB. Check that it is the right file, or split it.`,
    unreadable:
      'It cannot be read: a folder, perhaps, or a file that was moved. Choose the files themselves, or the folder by its own button.',
    refused: (file: string) => `${file} was not taken in. Nothing was changed.`,
    dismiss: 'Put this away',
    putAway: 'Leave it out',
    putAllAway: 'Leave them out',
    waiting: (n: number) => (n === 1 ? 'Then 1 more file' : `Then ${String(n)} more files`),
    readAs: 'Read it as',
    taken: 'Taken in',
    rows: 'Rows',
    decimal: 'Decimals are written with a',
    decimals: { '.': 'point', ',': 'comma' },
    row: (n: string) => `row ${n}`,

    bad: {
      heading: (n: number) => count(n, 'row cannot be used', 'rows cannot be used'),
      shown: (n: number) => `The first ${String(n)} are shown.`,
      row: 'Row',
      column: 'Column',
      value: 'What stands there',
      why: 'What is wrong',
      wholeRow: 'the row',
      skip: (n: number) => (n === 1 ? 'Skip this row' : `Skip these ${String(n)} rows`),
      consent: (n: number) =>
        `Mend the file and choose it again, or agree to skip ${n === 1 ? 'this row' : 'these rows'}.`,
    },
    unknownColumns: (columns: string) => `Not read, since their headings mean nothing here: ${columns}.`,
    none: 'There is nothing in it that could come in.',

    bags: {
      heading: (n: number) => (n === 1 ? 'A bag file' : `${String(n)} bag files`),
      table: 'Bag files',
      columns: {
        file: 'File',
        player: 'Player',
        handicap: 'Handicap',
        clubs: 'Clubs',
        prices: 'Prices',
        wanted: 'Take in',
      },
      want: (player: string, file: string) => `Take in ${player} from ${file}`,
      known: (n: number) => (n === 1 ? 'already on the roster' : `on the roster ${String(n)} times already`),
      knownNote: 'Who is on the roster already comes in beside, as another player.',
      run: (n: number) => (n === 1 ? 'Take the player in' : `Take ${String(n)} players in`),
      choose: 'Tick a player to take in.',
      done: (player: string) => `${player} has come in.`,
      one: (player: string) => `New on the roster: ${player}.`,
    },

    prices: {
      heading: 'A price list',
      ready: (n: number, clubs: number) =>
        n === 0
          ? 'No new price note.'
          : `${count(n, 'new price note', 'new price notes')} on ${count(clubs, 'club', 'clubs')}.`,
      same: (n: number) => `${count(n, 'note is', 'notes are')} there already and stay as they are.`,
      currency: 'Rows that name no money are in',
      sample: 'The first of them',
      columns: {
        club: 'Club',
        low: 'Low',
        likely: 'Likely',
        high: 'High',
        seen: 'Seen',
        condition: 'Condition',
      },
      note: 'The notes speak for every bag. Other currencies are kept as they are, never converted.',
      run: (n: number) => `Take in ${count(n, 'price note', 'price notes')}`,
      done: (n: number) => `${count(n, 'price note', 'price notes')} came in.`,
      skipped: (n: number) => `${count(n, 'row was', 'rows were')} skipped.`,
      toPrices: 'To the prices',
    },

    roster: {
      heading: 'A roster',
      ready: (n: number) =>
        n === 0
          ? 'No player in it.'
          : `${count(n, 'player', 'players')} in it, each with a usual bag to fill in.`,
      known: (n: number) => `${count(n, 'is', 'are')} on the roster already, by name.`,
      skipKnown: 'Leave out who is on the roster already',
      units: 'Rows that name none are in',
      sample: 'The first of them',
      columns: { name: 'Name', handicap: 'Handicap', known: 'On the roster' },
      isKnown: 'already there',
      isNew: 'new',
      run: (n: number) => `Take in ${count(n, 'player', 'players')}`,
      done: (n: number) => `${count(n, 'player', 'players')} came in.`,
      toPlayers: 'To the players',
    },

    shots: {
      heading: 'Shots',
      whose: 'Whose shots',
      forBag: (player: string) => `Into the bag of ${player}`,
      other: 'Another player',
      search: 'Search by name',
      noPlayers: 'There is no player yet. Start one on the Players page, then choose the file again.',
      noneFound: (typed: string) => `No player’s name holds “${typed}”.`,
      mapping: 'Which column holds what',
      mappingNote:
        'Proposed from the headings. Check it: carry is where the ball lands, total where it stops.',
      remembered: 'As you had it for the last file with these headings.',
      columns: SHOT_COLUMNS,
      noColumn: 'not in the file',
      choose: 'choose a column',
      column: (n: string) => `column ${n}`,
      headerRow: 'The headings are in row',
      distance: 'Distances are in',
      speed: 'Speeds are in',
      sample: (shown: number, n: number) => `The first ${String(shown)} of ${count(n, 'row', 'rows')}`,
      isUsed: (what: string) => `read as ${(what.split(',')[0] ?? '').toLowerCase()}`,
      needPlayer: 'Choose whose shots they are.',
      needColumns: 'Choose the columns of club and carry.',
      words: 'Which club is which',
      wordsNote: 'The file’s words for clubs, and the clubs of this bag.',
      wordColumns: { word: 'In the file', shots: 'Shots', club: 'In the bag' },
      clubFor: (word: string) => `Club of the bag for “${word}”`,
      leaveWord: 'leave these shots out',
      proposed: 'proposed',
      result: 'What it comes to',
      resultNote:
        'Mean of the shots with its 90% range; shots far from the others (over 3.5 by median and MAD) are marked and count, unless you leave them out.',
      resultColumns: {
        club: 'Club',
        now: (unit: string) => `Now, ${unit}`,
        shots: 'Shots',
        mean: (unit: string) => `Mean carry, ${unit}`,
        sd: 'SD',
        range: '90% range',
        marked: 'Far from the others',
      },
      noNow: 'none yet',
      fromWords: (list: string) => `from ${list}`,
      mark: (row: string, carry: string) => `Leave out row ${row}: ${carry}`,
      markShort: (row: string, carry: string) => `row ${row}: ${carry}`,
      leftOut: 'left out',
      moreMarks: (n: number) => `and ${String(n)} more that are marked`,
      noMarks: 'none',
      tooFew: 'one shot has no range',
      session: 'Day of the session',
      notDay: 'Write a day that was.',
      before: (day: string) =>
        `A file of this name and length came in before, as the session of ${day}. Taking it in again counts it twice.`,
      newest: 'The newest day counts: an older session goes into the history and changes no carry.',
      run: (shots: number, clubs: number) =>
        `Take in ${count(shots, 'shot', 'shots')} of ${count(clubs, 'club', 'clubs')}`,
      needClubs: 'Say of at least one word which club it is.',
      done: (shots: number, clubs: number, player: string) =>
        `${count(shots, 'shot', 'shots')} of ${count(clubs, 'club', 'clubs')} came in for ${player}.`,
      toLadder: 'To the ladder',
    },

    database: {
      heading: 'Whole records',
      note: 'They take the place of everything that is here. What is here is backed up first, and the backup can be restored.',
      table: 'What is here and what would be',
      columns: { what: 'Kept', here: 'Here now', then: 'In the file' },
      rows: {
        player: 'Players',
        bag: 'Bags',
        club: 'Clubs',
        price_note: 'Price notes',
        shot_import: 'Shot sessions',
        diary_entry: 'Notes in diaries',
      },
      older: 'It was written by an older Loftledger, and is brought up to date on its way in.',
      agree: 'Replace all that is here by what is in this file',
      run: 'Replace the records',
      needAgree: 'Tick that all that is here is replaced.',
      done: (file: string) => `The records are now those of ${file}. A backup of those before is kept.`,
    },

    save: {
      heading: 'Save to a file',
      table: 'What can be saved',
      columns: { what: 'What', file: 'File', save: 'Save' },
      save: 'Save',
      saveWhat: (what: string) => `Save: ${what}`,
      prices: 'Price notes that speak for every bag',
      roster: 'Players in use',
      rosterNote: 'Pain and notes stay here: they are health data.',
      bag: (player: string) => `Bag of ${player}`,
      noBag: 'The bag of a player who is open',
      database: 'Everything, as whole records',
      databaseNote: 'Written into the folder of your records.',
      saved: (file: string) => `Saved as ${file} among your downloads.`,
      written: 'Written to',
    },

    carries: {
      heading: 'Carries so far',
      table: (club: string) => `Dated carries of ${club}`,
      none: 'None is dated yet. A carry typed above is kept under its day.',
      columns: {
        on: 'Day',
        carry: (unit: string) => `Carry, ${unit}`,
        sd: 'SD',
        shots: 'Shots',
        source: 'From',
        more: 'More',
      },
      session: 'a session’s file',
      typed: 'typed in',
      counts: 'counts',
      strike: (day: string, club: string) => `Strike out the carry of ${club} on ${day}`,
      strikeShort: 'Strike out',
      struck: (club: string) => `Struck out: a carry of ${club}.`,
      trend: (perYear: string, low: string, high: string) =>
        `Over these days ${perYear} a year, 90% range ${low} to ${high}.`,
      noTrend: 'A trend takes three carries over a month or more.',
      add: 'Note a carry of another day',
      day: 'Day',
      keep: 'Keep the carry',
      carry: (unit: string) => `Carry, ${unit}`,
      shots: 'Shots behind it',
    },
  },
};
