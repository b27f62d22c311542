import type { PlanFile } from '../../../../src-main/contract/formats/plan-file.ts';
import { count } from '../plural.ts';

/** What is said above the document where the plan is none to buy by. */
const HELD: Partial<Record<PlanFile['plan']['status'], string>> = {
  stopped:
    'The player reports pain, so the document holds no buying advice. A medical professional comes first.',
  'ask-first': 'The plan holds back until what is open is measured; the document says what.',
  'coach-first': 'The plan holds back: the document sends the player to a coach first.',
};

export const handover = {
  handover: {
    heading: 'Hand-over',
    print: 'Print',
    pdf: 'PDF',
    formats: { md: 'Markdown', csv: 'CSV', json: 'Plan file' },
    save: 'Save as',
    making: 'Setting the PDF …',
    saved: (name: string) => `Saved as ${name} among your downloads.`,
    savedPdf: (name: string, file: string) => `Saved as ${name} among your downloads, and kept as ${file}.`,
    setting: 'Setting the document',
    again: 'Set it again',

    preview: 'The document',
    previewNote: 'This is the document itself, as it will be printed. Pages are broken when it is.',
    frame: (title: string) => `The document: ${title}`,
    held: HELD,
    noPrices: 'No used prices are noted, so the document can plan nothing to buy.',
    toPrices: 'Note prices',

    form: 'What you add',
    source: 'Which plan',
    now: 'The plan as it is now',
    record: (day: string, name: string) => `Picked ${day}: ${name}`,
    language: 'Language of the document',
    asWindow: (language: string) => `As this window (${language})`,
    languages: { en: 'English', de: 'German' },
    paper: 'Paper',
    papers: { a4: 'A4', letter: 'Letter' },
    usualPaper: (paper: string) => `As usual here (${paper})`,
    retest: 'Measure again on',
    retestHint: (month: string) => `left blank: ${month}`,
    notDay: 'This is no day of the calendar. Choose one, or leave it blank.',
    coverNote: 'Cover note',
    coverNoteHint: 'a word of your own to the player, above the verdict',

    letterhead: 'Letterhead',
    letterheadNote: 'For every player’s document.',
    name: 'Name',
    contact: 'Contact',
    contactHint: 'one line or a few',
    picture: 'Picture',
    noPicture: 'none',
    hasPicture: (kb: string) => `chosen, ${kb} kB`,
    choosePicture: 'Choose …',
    choosePictureLong: 'Choose a picture for the letterhead',
    otherPicture: 'Another …',
    removePicture: 'Take out',
    removePictureLong: 'Take the picture out of the letterhead',
    notPicture: (file: string) => `${file} cannot be read as a picture. Choose a PNG or JPEG.`,

    batch: {
      heading: 'For several players',
      note: 'A PDF of the plan as it is now for each player that you tick, each in its own language.',
      find: 'Find a player',
      all: 'All that are shown',
      tick: (name: string) => `Document for ${name}`,
      start: (n: number) => (n === 0 ? 'Make PDFs' : `Make ${count(n, 'PDF', 'PDFs')}`),
      noneTicked: 'Tick at least one player.',
      making: (done: string, of: string) => `Document ${done} of ${of} is made`,
      begun: 'Setting the first documents',
      done: (n: number) => `${count(n, 'PDF is', 'PDFs are')} made.`,
      cancelled: (n: number) =>
        n === 0
          ? 'Stopped before the first PDF was made.'
          : `Stopped. ${count(n, 'PDF is', 'PDFs are')} made and stay.`,
      folder: 'They are in this folder:',
      failed: (n: number) => `${count(n, 'document', 'documents')} could not be made:`,
      empty: 'Nobody is on the roster.',
      noneFound: (typed: string) => `No player’s name holds “${typed}”.`,
      moreHidden: (n: number) => `${String(n)} more are not shown. Type part of a name to find them.`,
    },
  },
};
