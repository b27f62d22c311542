import type { keeping as english } from '../en/keeping.ts';
import { count } from './plural.ts';

export const keeping: typeof english = {
  records: {
    folder: 'Datenordner',
    folderNote: 'Alles liegt in diesem Ordner auf diesem Rechner, und nichts verlässt ihn.',
    openFolder: 'Den Ordner öffnen',
    cannotOpen: 'Er ließ sich von hier aus nicht öffnen. Bitte stattdessen den Pfad kopieren.',
    copy: 'Den Pfad kopieren',
    copied: 'Der Pfad ist kopiert.',
    cannotCopy: 'Er ließ sich nicht kopieren. Bitte markieren und Strg+C drücken.',
    backups: 'Sicherungen',
    backupsNote: 'Die neuesten fünf bleiben. Vor jedem Einlesen, Zurückgehen und neuen Stand entsteht eine.',
    make: 'Jetzt sichern',
    made: 'Eine Sicherung ist angelegt.',
    none: 'Es gibt noch keine Sicherung.',
    columns: { when: 'Wann', why: 'Warum', size: 'Größe', more: 'Mehr' },
    reasons: {
      'by-hand': 'von Hand',
      'before-import': 'vor dem Einlesen',
      'before-restore': 'vor dem Zurückgehen',
      'before-upgrade': 'vor einem neuen Stand',
    },
    size: (megabytes) => `${megabytes} MB`,
    restore: (when) => `Zur Sicherung vom ${when} zurückgehen`,
    restoreShort: 'Zurückgehen',
    remove: (when) => `Die Sicherung vom ${when} löschen`,
    removeShort: 'Löschen',
    removed: 'Die Sicherung ist gelöscht.',
    confirmRestore: {
      heading: (when) => `Zurück zum ${when}?`,
      text: 'Alles seither Eingetragene wird beiseitegelegt: Zuerst entsteht eine Sicherung von heute, zu der Sie ebenso zurückgehen können.',
      restart: 'Das Fenster beginnt dann neu, bei den Spielern.',
      confirm: 'Zurückgehen',
    },
    confirmRemove: {
      heading: (when) => `Die Sicherung vom ${when} löschen?`,
      text: 'Sie ist dann endgültig weg. Die Aufzeichnungen von heute bleiben, wie sie sind.',
      confirm: 'Löschen',
    },
    cancel: 'Abbrechen',
    restored: (when) => `Die Aufzeichnungen sind wieder die vom ${when}.`,
    exportAll: 'Alle Aufzeichnungen als eine Datei speichern',
    exportNote:
      'Eine .loftledger-Datei im Ordner „exports“, ohne die Schritte zum Zurücknehmen. Ein anderer Rechner kann sie einlesen.',
    exported: (file) => `Gespeichert als ${file}.`,
    inMemory: 'Diese Aufzeichnungen liegen nur im Speicher: Sie haben keinen Ordner und keine Sicherungen.',
  },

  erase: {
    note: 'Ablegen behält alles. Löschen nimmt Bags, Schläge, Pläne und Notizen eines Spielers weg, und die Schritte zum Zurücknehmen für alle.',
    player: 'Wer',
    none: 'Niemand steht auf der Liste.',
    choose: 'einen Spieler wählen',
    archived: (name) => `${name} (abgelegt)`,
    start: 'Löschen …',
    confirm: {
      heading: (name) => `${name} endgültig löschen?`,
      text: 'Das lässt sich nicht zurücknehmen. Schmerzen und Notizen sind Gesundheitsdaten, darum bleibt in den Aufzeichnungen keine Spur.',
      backups: (n) =>
        n === 0
          ? 'Es gibt keine Sicherung, die diesen Spieler noch enthält.'
          : `${count(n, 'frühere Sicherung', 'frühere Sicherungen')} ${n === 1 ? 'kann' : 'können'} diesen Spieler noch enthalten:`,
      exports: 'Gespeicherte oder übergebene Dateien bleiben unberührt.',
      withBackups: 'Diese Sicherungen auch löschen',
      confirm: (name) => `${name} löschen`,
      cancel: 'Behalten',
    },
    done: (name) => `${name} ist gelöscht.`,
    left: (n) =>
      `${count(n, 'Sicherung bleibt', 'Sicherungen bleiben')}; siehe „Aufzeichnungen und Sicherungen“.`,
    logKept: 'Ein anderes Programm liest die Aufzeichnungen; die letzten Spuren gehen, wenn es endet.',
  },
};
