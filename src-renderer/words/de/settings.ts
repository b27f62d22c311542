import type { settings as english } from '../en/settings.ts';

export const settings: typeof english = {
  settings: {
    heading: 'Einstellungen',
    open: 'Einstellungen',
    close: 'Die Einstellungen schließen',
    closeShort: 'Schließen',
    appearanceNote: '„System“ folgt dem Rechner. Die Wahl gilt auch beim nächsten Start.',
    language: 'Sprache',
    languageSystem: (name) => `System (${name})`,
    languageNote: 'Gilt sofort. Meldungen über Fehler im Einzelnen sind noch englisch.',
    prices: 'Preise',
    condition: 'Spannen und Verzichtpreise gelten für einen Schläger im Zustand',
    conditionNote: 'Notizen zu anderen Zuständen werden darauf umgerechnet.',
    stale: 'Ein Preis ist veraltet nach Tagen',
    staleNote: 'Veraltete Preise zählen weiter, neuere aber mehr.',
    records: 'Ihre Aufzeichnungen',
    folder: 'Datenordner',
    folderNote: 'Alles liegt in diesem Ordner auf diesem Rechner, und nichts verlässt ihn.',
    about: 'Über das Programm',
    version: (version) => `Loftledger, Version ${version}`,
    aboutText:
      'Zeigt, welche Abstände im Golfbag zählen, und mit wie wenig Geld für gebrauchte Schläger sie sich beheben lassen.',
    locale: (locale) => `Zahlen und Tage stehen da wie in ${locale} üblich.`,
  },
};
