import type { handover as english } from '../../en/screens/handover.ts';
import { count } from '../plural.ts';

export const handover: typeof english = {
  handover: {
    heading: 'Übergabe',
    print: 'Drucken',
    pdf: 'PDF',
    formats: { md: 'Markdown', csv: 'CSV', json: 'Plandatei' },
    save: 'Speichern als',
    making: 'Das PDF wird gesetzt …',
    saved: (name) => `Als ${name} bei den Downloads gespeichert.`,
    savedPdf: (name, file) => `Als ${name} bei den Downloads gespeichert, und aufbewahrt als ${file}.`,
    setting: 'Das Dokument wird gesetzt',
    again: 'Neu setzen',

    preview: 'Das Dokument',
    previewNote: 'Das ist das Dokument selbst, wie es gedruckt wird. Umbrochen wird es erst dabei.',
    frame: (title) => `Das Dokument: ${title}`,
    held: {
      stopped:
        'Der Spieler gibt Schmerzen an, also enthält das Dokument keine Kaufempfehlung. Ärztlicher Rat geht vor.',
      'ask-first': 'Der Plan hält sich zurück, bis gemessen ist, was offen ist; das Dokument sagt, was.',
      'coach-first': 'Der Plan hält sich zurück: Das Dokument schickt den Spieler zuerst zum Trainer.',
    },
    noPrices: 'Keine Gebrauchtpreise sind notiert, also kann das Dokument keinen Kauf planen.',
    toPrices: 'Preise notieren',

    form: 'Was Sie hinzufügen',
    source: 'Welcher Plan',
    now: 'Der Plan von jetzt',
    record: (day, name) => `Gewählt ${day}: ${name}`,
    language: 'Sprache des Dokuments',
    asWindow: (language) => `Wie das Fenster (${language})`,
    languages: { en: 'Englisch', de: 'Deutsch' },
    paper: 'Papier',
    papers: { a4: 'A4', letter: 'Letter' },
    usualPaper: (paper) => `Wie hier üblich (${paper})`,
    retest: 'Wieder messen am',
    retestHint: (month) => `leer gelassen: ${month}`,
    notDay: 'Das ist kein Tag des Kalenders. Bitte einen wählen oder das Feld leer lassen.',
    coverNote: 'Begleitwort',
    coverNoteHint: 'ein eigenes Wort an den Spieler, über dem Urteil',

    letterhead: 'Briefkopf',
    letterheadNote: 'Für die Dokumente aller Spieler.',
    name: 'Name',
    contact: 'Kontakt',
    contactHint: 'eine Zeile oder mehrere',
    picture: 'Bild',
    noPicture: 'keines',
    hasPicture: (kb) => `gewählt, ${kb} kB`,
    choosePicture: 'Wählen …',
    choosePictureLong: 'Ein Bild für den Briefkopf wählen',
    otherPicture: 'Anderes …',
    removePicture: 'Herausnehmen',
    removePictureLong: 'Das Bild aus dem Briefkopf nehmen',
    notPicture: (file) => `${file} lässt sich nicht als Bild lesen. Bitte ein PNG oder JPEG wählen.`,

    batch: {
      heading: 'Für mehrere Spieler',
      note: 'Für jeden angekreuzten Spieler ein PDF des Plans von jetzt, jedes in seiner Sprache.',
      find: 'Einen Spieler suchen',
      all: 'Alle, die zu sehen sind',
      tick: (name) => `Dokument für ${name}`,
      start: (n) => (n === 0 ? 'PDFs machen' : count(n, 'PDF machen', 'PDFs machen')),
      noneTicked: 'Bitte mindestens einen Spieler ankreuzen.',
      making: (done, of) => `Dokument ${done} von ${of} ist fertig`,
      begun: 'Die ersten Dokumente werden gesetzt',
      done: (n) => count(n, 'PDF ist fertig.', 'PDFs sind fertig.'),
      cancelled: (n) =>
        n === 0
          ? 'Vor dem ersten PDF angehalten.'
          : `Angehalten. ${count(n, 'PDF ist fertig und bleibt', 'PDFs sind fertig und bleiben')}.`,
      folder: 'Sie liegen in diesem Ordner:',
      failed: (n) => `${count(n, 'Dokument ließ', 'Dokumente ließen')} sich nicht machen:`,
      empty: 'Niemand steht in der Spielerliste.',
      noneFound: (typed) => `Kein Spielername enthält „${typed}“.`,
      moreHidden: (n) =>
        `${String(n)} weitere sind nicht zu sehen. Mit einem Teil des Namens lassen sie sich finden.`,
    },
  },
};
