import type { Sentence } from './terms.ts';

/** Files of whole records: what is taken in, backups, exports. */
export const RECORD_FILES: readonly Sentence[] = [
  [/^(.+) does not exist$/s, '@1: die Datei ist nicht da'],
  [
    /^(.+) is empty \(0 bytes\), so it is no Loftledger database$/s,
    '@1: die Datei ist leer (0 Bytes), also keine Datenbank von Loftledger',
  ],
  [/^(.+) is no Loftledger database:$/s, '@1, keine Datenbank von Loftledger:'],
  [/^it has only (\d+) bytes$/, 'sie hat nur $1 Bytes'],
  [/^it does not begin like a SQLite database$/, 'sie beginnt nicht wie eine von SQLite'],
  [
    /^(.+) is a database of another program \(application id (\d+), version (\d+)\)$/s,
    '@1: eine Datenbank eines anderen Programms (Kennung $2, Version $3)',
  ],
  [
    /^(.+) was written by a newer version of the program \(schema (\d+); this one knows up to (\d+)\)$/s,
    '@1: geschrieben von einem neueren Stand des Programms (Schema $2; dieser kennt sie bis $3)',
  ],
  [
    /^(.+) is cut short: (\d+) bytes, (\d+) fewer than its header says$/s,
    '@1: die Datei ist abgeschnitten, $2 Bytes, $3 weniger als ihr Kopf sagt',
  ],
  [/^(.+) is not laid out like schema (\d+): (.+)$/s, '@1: nicht gebaut wie Schema $2 ($3)'],
  [/^(.+) says it has schema (\d+), but (.+)$/s, '@1: laut Datei Schema $2, aber ($3)'],
  [
    /^(.+) has schema (\d+), and reading it takes an upgrade to (\d+)$/s,
    '@1: Schema $2; zum Lesen ist Schema $3 nötig',
  ],
  [
    /^(.+) cannot keep a write-ahead log \(mode (.+)\)$/s,
    '@1: dort lässt sich kein Änderungsprotokoll führen ($2)',
  ],
  [
    /^(.+) is gone, but the log of its last edits, (.+), is still there$/s,
    '@1: die Datei ist weg, das Protokoll der letzten Änderungen ist noch da ($2)',
  ],
  [/^(.+) is the open database itself$/s, '@1: das ist die geöffnete Datenbank selbst'],
  [/^(.+) is open in another program$/s, '@1: in einem anderen Programm geöffnet'],
  [/^(.+) is open here$/s, '@1: hier geöffnet'],
  [
    /^(.+): another process has been opening or copying it for half a minute$/s,
    '@1: ein anderes Programm öffnet oder kopiert sie seit einer halben Minute',
  ],
  [
    /^Rows can be copied into a fresh database only; this one has some in (.+)$/s,
    'Zeilen lassen sich nur in eine neue Datenbank kopieren; hier gibt es schon welche ($1)',
  ],
  [/^Copy into a new database$/, 'bitte in eine neue Datenbank kopieren'],
  [
    /^Restore a backup, or delete the file to start afresh$/,
    'bitte zu einer Sicherung zurückgehen, oder die Datei löschen und neu beginnen',
  ],
  [
    /^Choose another file, or move this one away and start afresh$/,
    'bitte eine andere Datei wählen, oder diese beiseitelegen und neu beginnen',
  ],
  [
    /^Update the program; the file was not changed$/,
    'bitte das Programm auf den neuen Stand bringen; die Datei ist unverändert',
  ],
  [
    /^Restore a backup, or copy the file again$/,
    'bitte zu einer Sicherung zurückgehen, oder die Datei noch einmal kopieren',
  ],
  [/^Choose the file of an export or a backup$/, 'bitte die Datei eines Exports oder einer Sicherung wählen'],
  [
    /^The file was changed by another program; choose another backup or export$/,
    'ein anderes Programm hat die Datei verändert; bitte eine andere Sicherung oder einen anderen Export wählen',
  ],
  [
    /^Close every window and command that uses it, then try again; nothing was changed$/,
    'bitte jedes Fenster und jeden Befehl schließen, der sie benutzt, dann noch einmal versuchen; nichts hat sich geändert',
  ],
  [
    /^Close the other program and try again$/,
    'bitte das andere Programm schließen und noch einmal versuchen',
  ],
  [
    /^Choose a backup, or close the database first$/,
    'bitte eine Sicherung wählen, oder zuerst die Datenbank schließen',
  ],
  [/^Choose another name for the export$/, 'bitte einen anderen Namen für den Export wählen'],
  [
    /^Put the file back beside its log, or restore a backup$/,
    'bitte die Datei zurück neben ihr Protokoll legen, oder zu einer Sicherung zurückgehen',
  ],
  [
    /^Open it once for writing; a backup is made first$/,
    'bitte sie einmal zum Schreiben öffnen; zuerst entsteht eine Sicherung',
  ],
  [
    /^Choose a data folder on a local disk that can be written$/,
    'bitte einen Datenordner auf einem beschreibbaren Datenträger dieses Rechners wählen',
  ],
];
