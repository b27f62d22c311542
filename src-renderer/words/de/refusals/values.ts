import type { Sentence } from './terms.ts';

const NUMBER = String.raw`(-?[\d.e+]+)`;
const JSON_VALUE = String.raw`(?:"[^"]*"|-?[\d.]+|true|false|null)`;
const KIND = '(driver|fairway|hybrid|iron|wedge|putter)';
const pattern = (text: string) => new RegExp(`^${text}$`);

/** What is wrong with a value of a file or a call: shapes, ranges, and the bag file's own rules. */
export const VALUES: readonly Sentence[] = [
  // Heads
  [/^This (bag file|price list|roster|file of shots|file) cannot be read:$/, 'diese @1 ist nicht lesbar:'],
  [/^This (bag file) cannot be used:$/, 'diese @1 ist nicht brauchbar:'],
  [/^This cannot be used:$/, 'das lässt sich nicht verwenden:'],
  [/^This bag cannot be planned:$/, 'für dieses Bag lässt sich kein Plan rechnen:'],
  [
    /^One of these bag files cannot be used, so none was taken in:$/,
    'eine dieser Bag-Dateien ist nicht brauchbar, darum wurde keine aufgenommen:',
  ],

  // Shapes
  [/^"(.*)" is not a key that is known here$/s, 'der Schlüssel „$1“ ist hier nicht bekannt'],
  [/^Check its spelling or take it out$/, 'bitte die Schreibweise prüfen oder ihn weglassen'],
  [/^(?:this|it) is needed and is missing$/, 'das wird gebraucht und fehlt'],
  [/^Add it \((.+)\)$/, 'bitte ergänzen (@1)'],
  [/^must be (an? (?:object|list|text|number|finite|whole).*|true or false)$/, 'muss @1 sein'],
  [
    /^Correct the value, or leave the field out where it is not required$/,
    'bitte den Wert berichtigen, oder das Feld weglassen, wo es nicht nötig ist',
  ],
  [/^this value is not one of those allowed$/, 'dieser Wert gehört nicht zu den erlaubten'],
  [pattern(`Give (${JSON_VALUE}(?: or ${JSON_VALUE})*)`), 'möglich: @1'],
  [pattern(`must be (at least|at most) ${NUMBER}`), 'muss @1 #2 sein'],
  [pattern(`must be (above|below) ${NUMBER}`), 'muss @1 #2 liegen'],
  [
    pattern(`must be (at least|at most|above|below) ${NUMBER} characters long`),
    'muss @1 #2 Zeichen lang sein',
  ],
  [pattern(`must be (at least|at most|above|below) ${NUMBER} entries long`), 'muss @1 #2 Einträge haben'],
  [/^Correct the value$/, 'bitte den Wert berichtigen'],
  [/^Invalid ISO date$/, 'ist kein Tag in der Form JJJJ-MM-TT'],
  [/^Invalid UUID$/, 'ist keine gültige Kennung'],
  [/^Invalid input$/, 'passt hier nicht'],
  [/^Invalid key in record$/, 'ein Schlüssel darin passt nicht'],
  [/^must not hold control characters$/, 'darf keine Steuerzeichen enthalten'],
  [/^must not hold half a surrogate pair$/, 'darf kein halbes Zeichen enthalten'],
  [/^must be a language tag such as (\S+)$/, 'muss ein Sprachkürzel sein, etwa $1'],
  [/^must be three capital letters \(ISO 4217\)$/, 'muss aus drei Großbuchstaben bestehen (ISO 4217)'],
  [/^must be a PNG or JPEG as a data: address$/, 'muss ein PNG oder JPEG als data:-Adresse sein'],

  // JSON
  [/^the file is too large \(at most ([\d.]+) MB\)$/, 'die Datei ist zu groß (höchstens #1 MB)'],
  [/^Check that it is a (.+)$/, 'bitte prüfen, ob es eine @1 ist'],
  [/^the file is not UTF-8 text$/, 'die Datei ist kein Text in UTF-8'],
  [/^Give a (.+) in JSON, saved as UTF-8$/, 'bitte eine @1 in JSON wählen, gespeichert als UTF-8'],
  [/^Give a (.+) in JSON$/, 'bitte eine @1 in JSON wählen'],
  [/^the file holds zero bytes and is no text$/, 'die Datei enthält Nullbytes und ist kein Text'],
  [/^the file is empty$/, 'die Datei ist leer'],
  [/^brackets are nested deeper than (\d+)$/, 'Klammern sind tiefer als $1 verschachtelt'],
  // The engine's own words are English; the place tells where.
  [/^this is not JSON \(.*\)$/s, 'das ist kein JSON'],
  [
    /^Mend it there; NaN and Infinity are no JSON numbers$/,
    'bitte dort berichtigen; NaN und Infinity sind in JSON keine Zahlen',
  ],

  // The bag file
  [/^this file was written for a newer program$/, 'diese Datei ist für ein neueres Programm geschrieben'],
  [/^there is no such version$/, 'diese Version gibt es nicht'],
  [
    /^Use a newer Loftledger, or export the bag again as version 1$/,
    'bitte ein neueres Loftledger verwenden, oder das Bag noch einmal als Version 1 speichern',
  ],
  [/^Write version 1$/, 'bitte Version 1 schreiben'],
  [
    /^this is no ISO 4217 currency that is known here$/,
    'das ist keine Währung nach ISO 4217, die hier bekannt ist',
  ],
  [/^Write a code such as GBP, EUR or USD$/, 'bitte ein Kürzel wie GBP, EUR oder USD schreiben'],
  [/^([A-Z]{3}) has (\d) digits after the point$/, '$1 hat $2 Stellen nach dem Komma'],
  [/^Round the amount$/, 'bitte den Betrag runden'],
  [/^(low|likely) is above (likely|high) \((.+)\)$/, '„@1“ liegt über „@2“ (#3)'],
  [/^Give low ≤ likely ≤ high$/, 'es gilt: niedrig ≤ erwartet ≤ hoch'],
  [
    pattern(`a distance here lies between ${NUMBER} and ${NUMBER} yd`),
    'eine Weite liegt hier zwischen #1 und #2 yd',
  ],
  [
    pattern(`a speed here lies between ${NUMBER} and ${NUMBER} mph`),
    'eine Geschwindigkeit liegt hier zwischen #1 und #2 mph',
  ],
  [/^Check the number and the unit \((.+)\)$/, 'bitte Zahl und Einheit ($1) prüfen'],
  [/^this id stands already at (\w+\[\d+\])$/, 'diese Kennung ist schon vergeben (in der Datei: $1)'],
  [/^Give each its own id$/, 'bitte jedem seine eigene Kennung geben'],
  [
    pattern(`the loft of a ${KIND} lies between ${NUMBER} and ${NUMBER} degrees`),
    'der Loft liegt bei der Art „@1“ zwischen #2 und #3 Grad',
  ],
  [/^Check the loft and the kind$/, 'bitte Loft und Art prüfen'],
  [/^the spread is above the carry \((.+)\)$/, 'die Streuung ist größer als das Carry (#1)'],
  [/^Give the standard deviation of the carries$/, 'gemeint ist die Standardabweichung der Carrys'],
  [/^this tells of a carry that is not given$/, 'das gehört zu einem Carry, und das Carry fehlt'],
  [/^Add carry, or take it out$/, 'bitte das Carry ergänzen, oder das hier weglassen'],
  [/^the total is below the carry \((.+)\)$/, 'die Gesamtweite ist kleiner als das Carry (#1)'],
  [/^Check which is which$/, 'bitte prüfen, was davon was ist'],
  [/^no club belongs to this set$/, 'kein Schläger gehört zu diesem Satz'],
  [
    /^Give its clubs this set, or take the set out$/,
    'bitte den Satz bei seinen Schlägern eintragen, oder ihn weglassen',
  ],

  // What a plan needs
  [/^the catalogue has no such archetype$/, 'im Katalog ist kein solcher Schläger'],
  [
    /^Give the id of one that the catalogue lists$/,
    'bitte die Kennung eines Schlägers aus dem Katalog angeben',
  ],
  [
    /^Give the id of one that the catalogue lists; near it: (.+)$/,
    'bitte die Kennung eines Schlägers aus dem Katalog angeben; ähnlich: $1',
  ],
  [/^Near it: (.+)$/, 'ähnlich: $1'],
  [/^Choose one that the catalogue lists$/, 'bitte einen Schläger aus dem Katalog wählen'],
  [
    /^(\d+) clubs are marked go-to and (\d+) fit in a bag$/,
    '$1 Schläger sind als Lieblinge markiert, und $2 passen in ein Bag',
  ],
  [/^Unmark those that may go$/, 'bitte die Markierung bei denen wegnehmen, die gehen dürfen'],
  [
    /^two putters are marked go-to and one fits in a bag$/,
    'zwei Putter sind als Lieblinge markiert, und einer passt in ein Bag',
  ],
  [/^Unmark the one that may go$/, 'bitte die Markierung bei dem wegnehmen, der gehen darf'],
];
