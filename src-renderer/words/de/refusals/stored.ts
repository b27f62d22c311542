import type { Sentence } from './terms.ts';

/** What storage was about when it failed; the file follows. */
const DOING =
  '(?:Using|Keeping|Saving to|Undoing in|Redoing in|Erasing a player in|Rebuilding|Replacing|Closing|Restoring|Locking|Opening the folder|Opening|Backing up to|Reading the backups in|Deleting|Exporting to|Looking at|Importing into|Importing|Checking|Upgrading|Copying the rows of \\S+ from)';

/** A failure whose cause is known; what the system itself said of it stays as it was. */
const failed = (english: string, german: string): Sentence => [
  new RegExp(`^${DOING} (.+?): ${english} \\((.+)\\)$`, 's'),
  `@1: ${german} ($2)`,
];

/** The records and the disk they are on, and faults of the program itself. */
export const STORED: readonly Sentence[] = [
  // What is not there
  [/^There is no such call$/, 'diesen Aufruf gibt es nicht'],
  [/^There is no such page$/, 'diese Seite gibt es nicht'],
  [/^There is no entry (\d+) in this diary$/, 'Eintrag $1 ist nicht in diesem Tagebuch'],
  [/^There is no club "(.*)" in this bag$/s, 'in diesem Bag ist kein Schläger „$1“'],
  [/^There is no carry (\d+) of (.+)$/s, 'im Verlauf von $2 ist kein Carry $1'],
  [/^There is no ([a-z][a-z_ ]*?) ("[^"]*"|[\w.-]+)(?: here)?$/, 'nicht gefunden: @1 $2'],
  [/^Look at the list again$/, 'bitte die Liste noch einmal ansehen'],
  [/^Look at the diary again$/, 'bitte das Tagebuch noch einmal ansehen'],
  [/^Look at the bag again$/, 'bitte das Bag noch einmal ansehen'],
  [/^Look at the history again$/, 'bitte den Verlauf noch einmal ansehen'],
  [/^Send the file again$/, 'bitte die Datei noch einmal wählen'],
  [
    /^It may have been deleted; look at the list again$/,
    'vielleicht ist das inzwischen gelöscht; bitte die Liste noch einmal ansehen',
  ],

  // The disk and the system
  failed('the disk is full', 'der Datenträger ist voll'),
  failed('the disk quota is used up', 'der zugeteilte Platz auf dem Datenträger ist verbraucht'),
  failed('another program is writing to it', 'ein anderes Programm schreibt gerade darin'),
  failed('it is locked', 'ist gesperrt'),
  failed('it cannot be written', 'lässt sich nicht schreiben'),
  failed('it cannot be opened', 'lässt sich nicht öffnen'),
  failed('access is denied', 'der Zugriff ist verwehrt'),
  failed('the disk is read-only', 'der Datenträger lässt sich nur lesen'),
  failed('a part of its path is a file, not a folder', 'ein Teil des Pfads ist eine Datei, kein Ordner'),
  failed('a file stands where a folder is wanted', 'wo ein Ordner sein soll, ist eine Datei'),
  failed('it does not exist', 'ist nicht da'),
  failed('it is a folder', 'ist ein Ordner'),
  failed('the file is damaged', 'die Datei ist beschädigt'),
  failed('it is not a database', 'ist keine Datenbank'),
  failed('a rule of the table refuses it', 'eine Regel der Tabelle lässt es nicht zu'),
  failed('the disk reported an error', 'der Datenträger meldet einen Fehler'),
  failed('a value is too long to store', 'ein Wert ist zu lang zum Speichern'),
  failed('memory has run out', 'der Arbeitsspeicher ist voll'),
  [new RegExp(`^${DOING} (the records): (.+)$`, 's'), '@1: $2'],
  [
    /^Free some space and try again; nothing was changed$/,
    'bitte Platz schaffen und noch einmal versuchen; nichts hat sich geändert',
  ],
  [
    /^Close the other program, or wait a moment, and try again$/,
    'bitte das andere Programm schließen oder einen Augenblick warten, und noch einmal versuchen',
  ],
  [
    /^Allow access to the file and its folder, or choose another data folder$/,
    'bitte den Zugriff auf Datei und Ordner erlauben, oder einen anderen Datenordner wählen',
  ],
  [/^Choose another data folder$/, 'bitte einen anderen Datenordner wählen'],
  [/^Check the path$/, 'bitte den Pfad prüfen'],
  [
    /^Choose another file, or move this one away$/,
    'bitte eine andere Datei wählen, oder diese beiseitelegen',
  ],
  [
    /^Restore a backup; the damaged file is kept beside it$/,
    'bitte zu einer Sicherung zurückgehen; die beschädigte Datei bleibt daneben liegen',
  ],
  [
    /^Restore a backup; keep the damaged file until you have looked at the result$/,
    'bitte zu einer Sicherung zurückgehen und die beschädigte Datei behalten, bis das Ergebnis geprüft ist',
  ],
  [/^Restore a backup$/, 'bitte zu einer Sicherung zurückgehen'],
  [
    /^Check the disk and the connection to it, then try again$/,
    'bitte den Datenträger und seine Verbindung prüfen, dann noch einmal versuchen',
  ],

  // Rules of the records
  [/^(.+ constraint failed(?:: .+)?)$/s, 'eine Regel der Aufzeichnungen lässt das nicht zu ($1)'],
  [/^Correct the value; nothing was changed$/, 'bitte den Wert berichtigen; nichts hat sich geändert'],
  [
    /^It refers to something that does not exist; look at the list again$/,
    'es verweist auf etwas, das es nicht gibt; bitte die Liste noch einmal ansehen',
  ],
  [/^(\w+) is (.+), where (a finite number|a whole number) is wanted$/s, '$1 ist $2, verlangt ist @3'],
  [
    /^(\w+\[\d+\]) has the id (".*"), as (\w+\[\d+\]) has$/s,
    'die Kennung $2 kommt zweimal vor (in der Datei: $1, $3)',
  ],
  [/^The catalogue has the id (.+) twice$/, 'im Katalog kommt die Kennung $1 zweimal vor'],
  [/^Give (?:each|every archetype) an id of its own$/, 'bitte jedem eine eigene Kennung geben'],
  [
    /^(prices\[\d+\]) is of (".*"), which the catalogue does not have$/s,
    'im Katalog ist kein Schläger $2 (in der Datei: $1)',
  ],
  [
    /^Use an id that the catalogue lists, or add an archetype of your own under it$/,
    'bitte eine Kennung aus dem Katalog nehmen, oder einen eigenen Schläger unter ihr anlegen',
  ],
  [
    /^This step cannot be taken back or done again:$/,
    'dieser Schritt lässt sich weder zurücknehmen noch wiederholen:',
  ],
  [
    /^a row is in the way or its owner is gone \((.+)\)$/s,
    'eine Zeile ist im Weg, oder das, wozu sie gehört, ist weg ($1)',
  ],
  [/^there is no table (.+)$/, 'die Tabelle $1 gibt es nicht'],
  [/^the (\w+) with (.+) is gone$/s, 'nicht mehr da: @1 ($2)'],
  [/^(\w+) was called within a step$/, 'innerhalb eines Schritts aufgerufen ($1)'],
  [
    /^Clear the history; the data stays as it is$/,
    'bitte die Liste der Schritte leeren; die Daten bleiben, wie sie sind',
  ],
  [
    /^these records are in memory and have no file$/,
    'diese Aufzeichnungen liegen nur im Speicher und haben keine Datei',
  ],
  [/^Start the program with a data folder$/, 'bitte das Programm mit einem Datenordner starten'],

  // Faults of ours
  [/^This is a fault of the program$/, 'das ist ein Fehler des Programms'],
  [
    /^What you did last may not have been kept; try again$/,
    'das Letzte ist vielleicht nicht gespeichert; bitte noch einmal versuchen',
  ],
  [
    /^This is an error of the program; please report it$/,
    'das ist ein Fehler des Programms; bitte ihn melden',
  ],
  [/^A fault in Loftledger$/, 'ein Fehler in Loftledger'],
  [/^A fault in Loftledger, not in what you did$/, 'ein Fehler in Loftledger, nicht bei der Eingabe'],
  [/^Nothing was (?:changed|kept)$/, 'nichts hat sich geändert'],
  [/^The terminal has the details$/, 'Einzelheiten stehen im Terminal'],
  [/^Only the own window may ask this$/, 'das darf nur das eigene Fenster fragen'],
  [
    /^Other files are being read\. Try again when they are done$/,
    'andere Dateien werden gerade gelesen. Bitte danach noch einmal versuchen',
  ],
  [/^At most (\d+) bytes are taken here$/, 'höchstens $1 Bytes werden hier angenommen'],
  [/^The body did not come$/, 'der Inhalt kam nicht an'],
];
