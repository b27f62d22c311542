import type { Sentence } from './terms.ts';

/** Edits, prices, costs, courses, limits and documents that are not taken. */
export const KEPT: readonly Sentence[] = [
  // Heads
  [/^This cannot be kept:$/, 'das lässt sich nicht speichern:'],
  [/^This cannot be done:$/, 'das geht nicht:'],
  [/^These limits cannot be kept:$/, 'diese Grenzen lassen sich nicht speichern:'],
  [/^This course cannot be kept:$/, 'dieser Platz lässt sich nicht speichern:'],
  [/^This price cannot be used:$/, 'dieser Preis ist nicht brauchbar:'],
  [/^This amount cannot be used:$/, 'dieser Betrag ist nicht brauchbar:'],
  [/^This purchase cannot be noted:$/, 'dieser Kauf lässt sich nicht notieren:'],
  [/^The currency cannot be changed:$/, 'die Währung lässt sich nicht ändern:'],
  [/^This club cannot be added:$/, 'dieser Schläger lässt sich nicht hinzufügen:'],
  [/^These cannot be set side by side:$/, 'das lässt sich nicht nebeneinanderstellen:'],
  [/^This pick cannot be printed:$/, 'diese Wahl lässt sich nicht drucken:'],

  // Clubs and prices
  [/^a club on the shelf has this id$/, 'ein Schläger im Regal hat diese Kennung'],
  [/^a club that was sold has this id$/, 'ein verkaufter Schläger hat diese Kennung'],
  [
    /^Take another id, or put that club back into the bag$/,
    'bitte eine andere Kennung nehmen, oder jenen Schläger zurück ins Bag legen',
  ],
  [/^this club is listed twice$/, 'dieser Schläger steht zweimal da'],
  [/^List each club that goes once$/, 'bitte jeden Schläger, der geht, einmal angeben'],
  [/^nothing is converted: the price is in ([A-Z]{3})$/, 'nichts wird umgerechnet: der Preis ist in $1'],
  [/^Give low, likely and high in (.+) with it$/, 'bitte niedrig, erwartet und hoch in $1 dazu angeben'],
  [
    /^(\d+) amounts of this bag are in ([A-Z]{3}) \((.+)\), and nothing is converted$/,
    'Beträge dieses Bags in $2: $1 (@3); nichts wird umgerechnet',
  ],
  [
    /^Take them out first, or keep the numbers: then (\d+) (.+) becomes (\d+) (.+)$/,
    'bitte sie zuerst herausnehmen, oder die Zahlen behalten: dann wird aus $1 $2 $3 $4',
  ],
  [/^this number cannot be kept:$/, 'diese Zahl lässt sich nicht behalten:'],
  [/^Round it first$/, 'bitte sie zuerst runden'],
  [/^(sale of .+|price of .+)$/, '@1'],

  // Costs and the user's own archetypes
  [/^there is one of this kind already$/, 'davon gibt es schon eine Zeile'],
  [/^Change that one$/, 'bitte jene ändern'],
  [/^it must be either an amount or a percentage$/, 'es muss entweder ein Betrag oder ein Prozentsatz sein'],
  [/^Give one of the two$/, 'bitte eines von beiden angeben'],
  [/^(delivery|regrip|sell-postage) is an amount$/, '„@1“ ist ein Betrag'],
  [/^Give an amount$/, 'bitte einen Betrag angeben'],
  [/^a fee is a percentage$/, 'eine Gebühr ist ein Prozentsatz'],
  [/^Give a percentage$/, 'bitte einen Prozentsatz angeben'],
  [/^this currency does not fit here$/, 'diese Währung passt hier nicht'],
  [/^Give it in ([A-Z]{3})$/, 'bitte in $1 angeben'],
  [/^you have one of this id$/, 'ein eigener Schläger hat schon diese Kennung'],
  [/^the catalogue has one of this id$/, 'ein Schläger des Katalogs hat schon diese Kennung'],
  [
    /^Give it another, such as the same with your initials$/,
    'bitte eine andere geben, etwa dieselbe mit den eigenen Initialen',
  ],
  [
    /^must be one to three digits or capital letters, such as "(.+)" or "(.+)"$/,
    'muss aus einer bis drei Ziffern oder Großbuchstaben bestehen, etwa „$1“ oder „$2“',
  ],
  [
    /^must be small letters, digits and dots parted by hyphens, such as "(.+)"$/,
    'muss aus Kleinbuchstaben, Ziffern und Punkten bestehen, mit Bindestrichen dazwischen, etwa „$1“',
  ],
  [
    /^a single (\w+) has no members: leave them out, or make it a set of kind "irons"$/,
    'ein einzelner Schläger (@1) hat keine Mitglieder: bitte sie weglassen, oder einen Satz der Art „irons“ daraus machen',
  ],
  [
    /^a set needs at least two members: list them, or make it a single club of kind "iron"$/,
    'ein Satz braucht mindestens zwei Schläger: bitte sie angeben, oder einen einzelnen der Art „iron“ daraus machen',
  ],
  [
    /^(\S+) at (-?[\d.]+)° follows (\S+) at (-?[\d.]+)°: list members by rising loft$/,
    '$1 mit #2° folgt auf $3 mit #4°: bitte nach steigendem Loft ordnen',
  ],
  [/^(\S+) is listed twice: keep one$/, '$1 steht zweimal da: bitte eines behalten'],
  [
    /^there is no 7 among the members: a set is known by its 7-iron, so add it$/,
    'die 7 fehlt im Satz: ein Satz wird nach seinem Eisen 7 benannt, bitte ergänzen',
  ],
  [
    /^loftDeg (-?[\d.]+) is not the 7-iron's (-?[\d.]+): make them equal$/,
    'der Loft #1 ist nicht der des Eisens 7, #2: bitte angleichen',
  ],

  // Courses and limits
  [
    /^hole (\d+) must be between ([\d.]+) and ([\d.]+) (\S+) long$/,
    'Loch $1 muss zwischen #2 und #3 $4 lang sein',
  ],
  [/^there is a course of this name already$/, 'einen Platz dieses Namens gibt es schon'],
  [
    /^Give it another name, such as the same with its tees$/,
    'bitte einen anderen Namen geben, etwa denselben mit den Abschlägen',
  ],
  [/^the speed of a row stays as it is$/, 'das Tempo einer Zeile bleibt, wie es ist'],
  [/^Write (\d+)$/, 'bitte $1 schreiben'],
  [
    /^a gap cannot be wide from ([\d.]+) yd and crowded under ([\d.]+) yd$/,
    'ein Abstand kann nicht ab #1 yd weit und unter #2 yd eng sein',
  ],
  [
    /^Make the wide limit larger, or the crowded one smaller first$/,
    'bitte zuerst die weite Grenze größer oder die enge kleiner machen',
  ],
  [/^the handicaps must rise from tier to tier$/, 'die Handicaps müssen von Stufe zu Stufe steigen'],
  [/^Write more than (-?[\d.]+)$/, 'bitte mehr als #1 schreiben'],

  // Plans and documents
  [/^the bag and its prices have no such club$/, 'im Bag und bei seinen Preisen ist kein solcher Schläger'],
  [
    /^Look at the plan again; a price or a club has changed$/,
    'bitte den Plan noch einmal ansehen; ein Preis oder ein Schläger hat sich geändert',
  ],
  [
    /^the catalogue of today has no such club, or the player can no longer use it$/,
    'im Katalog von heute ist kein solcher Schläger, oder der Spieler kann ihn nicht mehr brauchen',
  ],
  [
    /^Print the plan of now, or pick again on the page Side by side$/,
    'bitte den Plan von jetzt drucken, oder auf der Seite „Nebeneinander“ neu wählen',
  ],
  [
    /^This was stopped before it was reckoned to its end$/,
    'das wurde angehalten, bevor es zu Ende gerechnet war',
  ],
  [
    /^Nothing was changed; ask again when you want it$/,
    'nichts hat sich geändert; es lässt sich jederzeit wieder rechnen',
  ],
  [
    /^The picture has (\d+) kB; a letterhead’s has at most (\d+)$/,
    'das Bild hat $1 kB; im Briefkopf hat es höchstens $2',
  ],
  [/^Make it smaller$/, 'bitte es verkleinern'],
  [/^The picture is no whole PNG or JPEG$/, 'das Bild ist kein vollständiges PNG oder JPEG'],
  [/^Save it as one of these$/, 'bitte es als eines von beiden speichern'],
  [
    /^The picture is (\d+) × (\d+) pixels; at most (\d+) either way are taken$/,
    'das Bild hat $1 × $2 Bildpunkte; höchstens $3 in jeder Richtung gehen',
  ],
  [/^The document could not be written \((.+)\)$/, 'das Dokument ließ sich nicht schreiben ($1)'],
  [
    /^Make room on the disk, or look at the rights of the folder for exports$/,
    'bitte Platz auf dem Datenträger schaffen, oder die Rechte des Ordners für Exporte prüfen',
  ],
  [/^PDF needs Chromium, and none was found$/, 'für PDF ist Chromium nötig, und keines wurde gefunden'],
  [
    /^Install it \(on Debian: (.+)\), or name its program in LOFTLEDGER_CHROMIUM$/,
    'bitte es installieren (unter Debian: $1), oder sein Programm in LOFTLEDGER_CHROMIUM nennen',
  ],
  [/^The PDF could not be made: It took longer than (\d+) s$/, 'das PDF dauerte länger als $1 s'],
  [/^The PDF could not be made: (.+)$/s, 'das PDF ließ sich nicht machen ($1)'],
  [
    /^Try again; if it stays so, save another format$/,
    'bitte noch einmal versuchen; bleibt es dabei, ein anderes Format speichern',
  ],
  [/^This start of the program cannot print$/, 'so gestartet kann das Programm nicht drucken'],
  [/^Save another format$/, 'bitte ein anderes Format speichern'],
  [/^The printer is closed$/, 'der Drucker ist geschlossen'],
  [/^Open another one$/, 'bitte einen anderen öffnen'],
];
