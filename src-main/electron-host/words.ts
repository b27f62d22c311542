/** The few words that the host itself shows: menu and boxes, in the system's language. The window has its own. */
export type HostWords = {
  file: string;
  edit: string;
  view: string;
  recent: string;
  undo: string;
  redo: string;
  find: string;
  print: string;
  unresponsive: string;
  unresponsiveDetail: string;
  wait: string;
  reload: string;
  crashed: string;
};

const ENGLISH: HostWords = {
  file: '&File',
  edit: '&Edit',
  view: '&View',
  recent: 'Opened lately',
  undo: 'Undo',
  redo: 'Redo',
  find: 'Find or do …',
  print: 'Print …',
  unresponsive: 'The window does not answer.',
  unresponsiveDetail:
    'It may be busy with a long answer. Everything you entered is kept; loading the window anew loses nothing.',
  wait: 'Wait',
  reload: 'Load anew',
  crashed:
    'The window has crashed again and again, so the program ends. Everything you entered is kept. The data folder’s "logs" say when it happened.',
};

const GERMAN: HostWords = {
  file: '&Datei',
  edit: '&Bearbeiten',
  view: '&Ansicht',
  recent: 'Zuletzt geöffnet',
  undo: 'Rückgängig',
  redo: 'Wiederholen',
  find: 'Suchen oder tun …',
  print: 'Drucken …',
  unresponsive: 'Das Fenster antwortet nicht.',
  unresponsiveDetail:
    'Vielleicht rechnet es noch. Alles Eingegebene ist gespeichert; beim Neuladen des Fensters geht nichts verloren.',
  wait: 'Warten',
  reload: 'Neu laden',
  crashed:
    'Das Fenster ist mehrmals abgestürzt, darum endet das Programm. Alles Eingegebene ist gespeichert. Wann es geschah, steht im Datenordner unter „logs“.',
};

/** @param locale as the system has it, such as `de-AT`. */
export function hostWords(locale: string): HostWords {
  return /^de\b/i.test(locale) ? GERMAN : ENGLISH;
}
