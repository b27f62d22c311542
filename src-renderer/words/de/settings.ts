import type { settings as english } from '../en/settings.ts';

export const settings: typeof english = {
  settings: {
    heading: 'Einstellungen',
    open: 'Einstellungen',
    close: 'Die Einstellungen schließen',
    closeShort: 'Schließen',
    needsBag: 'Bitte zuerst einen Spieler öffnen: Dies gehört zu einem Bag.',
    groups: {
      look: 'Aussehen und Sprache',
      units: 'Einheiten und Währung',
      air: 'Luft',
      limits: 'Grenzen und Gewichte',
      costs: 'Kosten',
      courses: 'Plätze',
      prices: 'Wie Preise gerechnet werden',
      records: 'Aufzeichnungen und Sicherungen',
      erase: 'Einen Spieler endgültig löschen',
      about: 'Über das Programm',
    },
    appearanceNote: '„System“ folgt dem Rechner. Die Wahl gilt auch beim nächsten Start.',
    language: 'Sprache',
    languageSystem: (name) => `System (${name})`,
    languageNote: 'Gilt sofort.',
    condition: 'Spannen und Verzichtpreise gelten für einen Schläger im Zustand',
    conditionNote: 'Notizen zu anderen Zuständen werden darauf umgerechnet.',
    factors: 'Was ein Schläger je Zustand wert ist, in % von „ohne Spuren“',
    factorsNote: 'Übliche Praxis, ohne Quelle. Bitte eintragen, was Sie beim Kaufen sehen.',
    stale: 'Ein Preis ist veraltet nach Tagen',
    staleNote: 'Veraltete Preise zählen weiter, neuere aber mehr.',
    halfLife: 'Eine Notiz zählt halb so viel nach Tagen',
    version: (version) => `Loftledger, Version ${version}`,
    aboutText:
      'Zeigt, welche Abstände im Golfbag zählen, und mit wie wenig Geld für gebrauchte Schläger sie sich beheben lassen.',
    locale: (locale) => `Zahlen und Tage stehen da wie in ${locale} üblich.`,
    hosts: {
      electron: 'Es läuft in einem eigenen Fenster (Electron).',
      browser: 'Es läuft in einem Chromium-Fenster, da auf diesem Rechner kein Electron-Programm liegt.',
    },
    offline: 'Es sendet nichts und fragt kein Netz.',
  },
};
