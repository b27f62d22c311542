import type { diary as english } from '../../en/screens/diary.ts';
import { count } from '../plural.ts';

export const diary: typeof english = {
  diary: {
    heading: 'Tagebuch',
    none: 'noch nichts notiert',
    summary: (notes, newest) => `${count(notes, 'Notiz', 'Notizen')}, die neueste vom ${newest}`,
    stays:
      'Notizen bleiben in diesen Aufzeichnungen: Keine Bag-Datei, keine Kopie, kein Ausdruck und keine Übergabe enthält sie. Was der Spieler lesen soll, gehört ins Begleitwort.',
    day: 'Tag',
    text: 'Neue Notiz',
    textHint: 'Gespeichert, sobald Sie das Feld verlassen.',
    keep: 'Notiz behalten',
    kept: (day) => `Notiert für den ${day}.`,
    notDay: 'Einen Tag angeben, heute oder früher.',
    noText: 'Eine Notiz hat einen Text. Wer sie nicht mehr will, streicht sie.',
    list: 'Notizen, die neueste zuerst',
    dayOf: (n) => `Tag der Notiz ${String(n)}`,
    textOf: (n, day) => `Notiz ${String(n)}, vom ${day}`,
    strike: (n, day) => `Notiz ${String(n)} vom ${day} streichen`,
    strikeShort: 'Streichen',
    struck: (day) => `Gestrichen: die Notiz vom ${day}.`,
    older: (notes) => `${count(notes, 'ältere Notiz', 'ältere Notizen')} zeigen`,
    inRoster: (day) => `Notiz vom ${day}`,
    found: (typed) => `Notizen mit „${typed}“`,
  },
};
