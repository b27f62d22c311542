import { bag } from '../screens/bag.ts';

/**
 * A text of the service, without its full stop, and what it says in German. What the pattern captures stands in the
 * German as `$1` just as it was, as `#1` as a number, as `@1` as a word of `TERMS`.
 */
export type Sentence = readonly [english: RegExp, german: string];

/** Words inside of sentences, in the nominative. */
export const TERMS: Readonly<Record<string, string>> = {
  'an object {…}': 'ein Objekt {…}',
  'a list […]': 'eine Liste […]',
  'a text': 'ein Text',
  'a number': 'eine Zahl',
  'a finite number': 'eine endliche Zahl',
  'a whole number': 'eine ganze Zahl',
  'true or false': 'true oder false',
  'a list of fixed length': 'eine Liste fester Länge',

  'at least': 'mindestens',
  'at most': 'höchstens',
  above: 'über',
  below: 'unter',

  'bag file': 'Bag-Datei',
  'price list': 'Preisliste',
  roster: 'Spielerliste',
  'file of shots': 'Datei mit Schlägen',
  file: 'Datei',

  ...bag.kinds,

  low: 'niedrig',
  likely: 'erwartet',
  high: 'hoch',
  point: 'Punkt',
  comma: 'Komma',

  carry: 'Carry',
  total: 'Gesamtweite',
  ballSpeed: 'Ballgeschwindigkeit',
  launch: 'Abflugwinkel',
  spin: 'Spin',

  delivery: 'Versand',
  regrip: 'Neuer Griff',
  'sell-postage': 'Porto',
  budget: 'Budget',
  costs: 'Kosten',

  player: 'Spieler',
  bag: 'Bag',
  club: 'Schläger',
  lot: 'Satz',
  set: 'Satz',
  course: 'Platz',
  plan: 'Plan',
  archetype: 'Schläger des Katalogs',
  'own archetype': 'eigener Schläger des Katalogs',
  'seed archetype': 'Schläger des Katalogs',
  price_note: 'Preisnotiz',
  'price note': 'Preisnotiz',
  cost_line: 'Kostenzeile',
  'cost line': 'Kostenzeile',
  diary_entry: 'Eintrag im Tagebuch',
  shot_import: 'eingelesene Schläge',
  'shot import': 'eingelesene Schläge',
  club_carry: 'Carry im Verlauf',
  path_stage: 'Stufe eines Weges',
  shot: 'Schlag',
  'record of a pick': 'Aufzeichnung einer Wahl',
  backup: 'Sicherung',
  upload: 'gesandte Datei',

  'the records': 'die Aufzeichnungen',
};
