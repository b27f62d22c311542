import type { program as english } from '../en/program.ts';

const SCREENS: (typeof english)['screens'] = {
  players: 'Spieler',
  bag: 'Bag',
  ladder: 'Leiter',
  prices: 'Preise',
  spend: 'Ausgaben',
  side: 'Nebeneinander',
  handover: 'Übergabe',
  files: 'Dateien',
};

export const program: typeof english = {
  language: 'de',

  name: 'Loftledger',

  skip: 'Zur Seite springen',

  nav: 'Seiten des Buchs',

  screens: SCREENS,

  title: (screen, player) =>
    player === undefined ? `${screen} · Loftledger` : `${screen} · ${player} · Loftledger`,

  withKeys: (what, keys) => `${what} (${keys})`,

  reading: 'Wird gelesen …',

  reckoning: 'Der Plan wird gerechnet',
  stop: 'Anhalten',
  reckonAgain: 'Neu rechnen',

  theme: {
    label: 'Licht der Seite',
    system: 'System',
    light: 'Hell',
    'lamp-lit': 'Lampenlicht',
  },

  history: {
    undo: 'Rückgängig',
    redo: 'Wiederholen',
    undoStep: (step) => `Rückgängig: ${step}`,
    redoStep: (step) => `Wiederholen: ${step}`,
    undone: (step) => `Zurückgenommen: ${step}.`,
    redone: (step) => `Wiederholt: ${step}.`,
    nothingToUndo: 'Es gibt nichts zurückzunehmen.',
    nothingToRedo: 'Es gibt nichts zu wiederholen.',
  },

  toast: { close: 'Diese Meldung schließen', region: 'Was getan wurde' },

  errors: {
    unreachable:
      'Loftledger antwortet nicht. Die letzte Änderung ist vielleicht nicht gespeichert. Im Terminal nachsehen, aus dem es gestartet wurde, oder neu starten.',
    unreadable: (status) =>
      `Die Antwort von Loftledger ist nicht lesbar (Status ${String(status)}). Nichts davon wurde gezeigt; bitte noch einmal versuchen.`,
    notNumber: (text) => `„${text}“ ist keine Zahl. Bitte Ziffern schreiben, etwa 18 oder 10,5.`,
    lost: 'Niemand antwortet',
    needed: 'Das wird gebraucht. Bitte etwas eintragen; mit Esc kommt zurück, was hier stand.',
    bandNeedsThree: 'Bitte alle drei angeben: niedrig, erwartet und hoch. Oder alle drei leer lassen.',
    heading: 'Das lässt sich nicht zeigen',
    toPlayers: 'Zurück zu den Spielern',
    toBag: 'Zum Bag',
  },

  print: {
    page: 'Diese Seite drucken',
    /** At the head of a printed page. */
    head: (day) => `Loftledger · ${day}`,
  },

  keys: {
    heading: 'Tasten',
    find: 'Etwas suchen oder tun lassen',
    pages: 'Eine Seite aufschlagen',
    undo: 'Rückgängig, wiederholen',
    search: 'Suchen, bei Spielern und Preisen',
    print: 'Die Seite drucken, bei „Übergabe“ das Dokument',
    down: 'Im Bag eine Spalte hinab oder hinauf',
    downKeys: 'Eingabe, Umschalt+Eingabe',
    back: 'Eine Eingabe verwerfen',
    backKeys: 'Esc',
  },

  noBag: {
    heading: 'Kein Spieler ist aufgeschlagen',
    text: 'Auf der Seite „Spieler“ einen aufschlagen, oder das Beispiel ansehen.',
  },
};
