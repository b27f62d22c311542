import type { Sentence } from './terms.ts';

/** What is wrong with a table, its rows, or a file that was sent. */
export const TABLES: readonly Sentence[] = [
  // Heads
  [/^This file is not taken in:$/, 'diese Datei wird nicht eingelesen:'],
  [/^This file cannot be opened:$/, 'diese Datei lässt sich nicht öffnen:'],
  [/^This mapping does not fit the file:$/, 'diese Zuordnung passt nicht zur Datei:'],
  [/^This mapping does not fit the bag:$/, 'diese Zuordnung passt nicht zum Bag:'],
  [/^1 rows cannot be used:$/, '1 Zeile ist nicht brauchbar:'],
  [/^(\d+) rows cannot be used:$/, '$1 Zeilen sind nicht brauchbar:'],
  [/^These shots make a bag that cannot be used:$/, 'mit diesen Schlägen wäre das Bag nicht brauchbar:'],

  // The whole table
  [/^it is not UTF-8 text$/, 'sie ist kein Text in UTF-8'],
  [/^Save it as CSV in UTF-8$/, 'bitte sie als CSV in UTF-8 speichern'],
  [/^it is larger than ([\d.]+) MB$/, 'sie ist größer als #1 MB'],
  [
    /^Check that it is the right file, or split it$/,
    'bitte prüfen, ob es die richtige Datei ist, oder sie teilen',
  ],
  [/^Check that it is the right file$/, 'bitte prüfen, ob es die richtige Datei ist'],
  // The reader's own words for odd quotes.
  [/^Quoted field unterminated$/, 'ein Anführungszeichen wird nicht geschlossen'],
  [
    /^Trailing quote on quoted field is malformed$/,
    'nach einem schließenden Anführungszeichen steht noch etwas',
  ],
  [/^Mend the quotes in that row$/, 'bitte die Anführungszeichen dieser Zeile berichtigen'],
  [/^there is no header$/, 'es gibt keine Überschriften'],
  [/^The first row must name the columns$/, 'die erste Zeile muss die Spalten benennen'],
  [/^A row must name the columns$/, 'eine Zeile muss die Spalten benennen'],
  [/^Choose another row$/, 'bitte eine andere Zeile wählen'],
  [/^there are more than ([\d,]+) rows$/, 'es sind mehr als #1 Zeilen'],
  [/^there are more than ([\d,]+) columns$/, 'es sind mehr als #1 Spalten'],
  [/^Split the file$/, 'bitte die Datei teilen'],
  [/^Give one session at a time$/, 'bitte die Schläge eines Tages auf einmal nehmen'],
  [/^Leave the others out$/, 'bitte die anderen weglassen'],
  [/^it holds zero bytes and is no text$/, 'sie enthält Nullbytes und ist kein Text'],
  [/^Export it as CSV$/, 'bitte sie als CSV speichern'],
  [/^it holds half a surrogate pair$/, 'sie enthält ein halbes Zeichen'],
  [/^Save the file again as UTF-8$/, 'bitte die Datei noch einmal als UTF-8 speichern'],
  [/^this column is there twice$/, 'diese Spalte gibt es zweimal'],
  [/^Take one out$/, 'bitte eine weglassen'],
  [/^there is no column (.+)$/, 'diese Spalte fehlt: $1'],
  [/^Head the columns: (.+)$/, 'die Überschriften sind: $1'],

  // Rows
  [/^the row has more cells than the header$/, 'die Zeile hat mehr Zellen als Überschriften da sind'],
  [/^the cell is too long$/, 'die Zelle ist zu lang'],
  [
    /^it begins like a formula of a spreadsheet: put an apostrophe before it$/,
    'das beginnt wie eine Formel einer Tabelle: bitte einen Apostroph davorsetzen',
  ],
  [/^it holds markup: write it without <$/, 'das enthält Auszeichnungen: bitte ohne < schreiben'],
  [/^the row cannot be used$/, 'die Zeile ist nicht brauchbar'],
  [/^it is not a plain number with a (point|comma)$/, 'das ist keine einfache Zahl mit einem @1'],
  [/^it must be yd or m$/, 'möglich sind yd und m'],
  [/^it must be mph, km\/h or m\/s$/, 'möglich sind mph, km/h und m/s'],
  [/^Mend the file, or skip these rows$/, 'bitte die Datei berichtigen, oder diese Zeilen überspringen'],

  // Shots
  [/^the club is missing$/, 'der Schläger fehlt'],
  [/^the carry is missing$/, 'das Carry fehlt'],
  [/^(carry|total|ballSpeed|launch|spin) is not a number$/, '@1 ist keine Zahl'],
  [
    /^(carry|total|ballSpeed|launch|spin) lies between (-?\d+) and (\d+) rpm$/,
    '@1 liegt zwischen $2 und $3 U/min',
  ],
  [
    /^(carry|total|ballSpeed|launch|spin) lies between (-?\d+) and (\d+) (\S+)$/,
    '@1 liegt zwischen $2 und $3 $4',
  ],
  [/^the file has (\d+) columns$/, 'die Zahl der Spalten in der Datei ist $1'],
  [/^Choose one of its columns$/, 'bitte eine ihrer Spalten wählen'],
  [
    /^the column chosen for the club has (\d+) different words$/,
    'die Spalte, die für den Schläger gewählt ist, enthält $1 verschiedene Wörter',
  ],
  [/^Choose the column with the names of the clubs$/, 'bitte die Spalte mit den Namen der Schläger wählen'],
  [/^the name of the club is too long$/, 'der Name des Schlägers ist zu lang'],
  [/^the name of the club holds control characters$/, 'der Name des Schlägers enthält Steuerzeichen'],
  [/^the putter is on no ladder$/, 'der Putter ist auf keiner Leiter'],
  [/^Leave its shots out$/, 'bitte seine Schläge weglassen'],
  [
    /^Check the columns and units, or leave out the shots that do not belong$/,
    'bitte Spalten und Einheiten prüfen, oder Schläge weglassen, die nicht dazugehören',
  ],

  // What a file is
  [/^Choose another, or save it again$/, 'bitte eine andere wählen, oder sie noch einmal speichern'],
  [
    /^it is a packed file, as spreadsheets keep their own$/,
    'sie ist gepackt, wie Tabellenprogramme ihre eigenen Dateien speichern',
  ],
  [/^Export the sheet as CSV$/, 'bitte die Tabelle als CSV speichern'],
  [/^it is text of another kind, UTF-16$/, 'sie ist Text anderer Art, UTF-16'],
  [/^Choose a bag file in JSON$/, 'bitte eine Bag-Datei in JSON wählen'],
  [
    /^it is none of the kinds of files that are known here$/,
    'sie ist keine der Arten von Dateien, die hier bekannt sind',
  ],
  [
    /^What is taken in: bag files \((.+?)\), price lists, rosters and shots \((.+?)\), and whole records \((.+?)\)$/,
    'eingelesen werden Bag-Dateien ($1), Preislisten, Spielerlisten und Schläge ($2) sowie alle Aufzeichnungen ($3)',
  ],
  [
    /^this is a plan, which is worked out and not taken in$/,
    'das ist ein Plan; er wird gerechnet und nicht eingelesen',
  ],
  [/^Choose the bag file$/, 'bitte die Bag-Datei wählen'],
  [
    /^no row names two columns, so it is no table$/,
    'keine Zeile benennt zwei Spalten, also ist es keine Tabelle',
  ],
  [/^Export it as CSV with a header$/, 'bitte sie als CSV mit Überschriften speichern'],

  // Files that the system opens
  [/^The file could not be read to its end$/, 'die Datei ließ sich nicht bis zum Ende lesen'],
  [/^Check the disk it is on, and open it again$/, 'bitte den Datenträger prüfen und sie noch einmal öffnen'],
  [/^there is no such file$/, 'es gibt keine solche Datei'],
  [/^it may not be read$/, 'sie darf nicht gelesen werden'],
  [/^it cannot be read$/, 'sie lässt sich nicht lesen'],
  [/^it cannot be read \((.+)\)$/, 'sie lässt sich nicht lesen ($1)'],
  [/^Allow reading it, or choose another$/, 'bitte das Lesen erlauben, oder eine andere wählen'],
  [
    /^Choose a file in it\. A data folder is given with --data$/,
    'bitte eine Datei darin wählen. Ein Datenordner wird mit --data angegeben',
  ],
  [/^it is a folder$/, 'sie ist ein Ordner'],
  [/^it is no regular file$/, 'sie ist keine gewöhnliche Datei'],
  [/^Choose a file$/, 'bitte eine Datei wählen'],
  [/^Choose another$/, 'bitte eine andere wählen'],

  // What stands in the place of a value
  [/^\(missing\)$/, '(fehlt)'],
  [/^\(binary\)$/, '(kein Text)'],
  [/^\(empty\)$/, '(leer)'],
  [/^\(nested\)$/, '(verschachtelt)'],
  [/^\(packed\)$/, '(gepackt)'],
  [/^\(half a letter\)$/, '(ein halbes Zeichen)'],
  [/^(\d+) bytes$/, '$1 Bytes'],
  [/^([\d.]+) MB$/, '#1 MB'],
  [/^more than (\d+) MB$/, 'mehr als $1 MB'],
  [/^(\d+) rows or more$/, '$1 Zeilen oder mehr'],
  [/^(\d+) columns$/, '$1 Spalten'],
];
