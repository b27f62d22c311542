import type { reckoning as english } from '../en/reckoning.ts';
import { count } from './plural.ts';

const AMOUNTS: (typeof english)['ownUnits']['kinds'] = {
  budget: 'Budget',
  costs: 'Kosten',
  sales: 'Verkaufspreise',
  prices: 'Preisnotizen dieses Bags',
};

const COSTS: (typeof english)['costs']['kinds'] = {
  delivery: 'Versand eines Kaufs',
  regrip: 'Neuer Griff, je Schläger',
  'sell-fee': 'Verkaufsgebühr',
  'sell-postage': 'Porto eines Verkaufs',
  bend: 'Biegen eines Schlägers',
  shaft: 'Arbeit am Schaft',
  other: 'Etwas anderes',
};

export const reckoning: typeof english = {
  ownUnits: {
    of: (player) => `Im Bag von ${player}`,
    distance: 'Längen in',
    speed: 'Tempo in',
    currency: 'Geld in',
    note: 'Längen und Tempo werden nur anders gezeigt; gespeichert bleibt dasselbe. Geld wird nie umgerechnet.',
    confirm: {
      heading: (from, to) => `Von ${from} zu ${to}: Die Zahlen bleiben`,
      what: (n, kinds, from) =>
        n === 1
          ? `Ein Betrag dieses Bags ist in ${from} (${kinds}).`
          : `${String(n)} Beträge dieses Bags sind in ${from} (${kinds}).`,
      meaning: (from, to) =>
        `Nichts wird umgerechnet: Aus 45 ${from} werden 45 ${to}. Nur fortfahren, wenn die Zahlen von Anfang an ${to} meinten.`,
      others: (from) => `Preisnotizen, die für jedes Bag gelten, bleiben in ${from} und zählen hier nicht.`,
      keep: (to) => `Zahlen behalten, in ${to}`,
      cancel: (from) => `Bei ${from} bleiben`,
    },
    kinds: AMOUNTS,
    changed: (currency) => `Geld in diesem Bag ist jetzt in ${currency}.`,
  },

  air: {
    program: 'Für alle Spieler',
    own: (player) => `Nur für ${player}`,
    temperature: 'Temperatur, °C',
    altitude: 'Höhe, m',
    fromProgram: 'Wie für alle Spieler.',
    fromUsual: 'Ein milder Tag auf Meereshöhe: 15 °C, 0 m. Übliche Praxis, ohne Quelle.',
    ownOn: 'Dieser Spieler hat andere Luft',
    reset: 'Zurück zu 15 °C auf Meereshöhe',
    note: 'Angegebene Carrys bleiben, wie sie sind. Daraus gerechnete Tempi und Schläger ohne Carry folgen der Luft.',
  },

  limits: {
    source: 'Übliche Praxis, ohne Quelle.',
    note: 'Was Sie hier ändern, gilt für alle Spieler. Pläne und Dokumente sagen, dass es Ihre eigenen Werte sind.',
    gaps: (unit) => `Abstandsgrenzen nach Drivertempo, ${unit}`,
    speed: 'Drivertempo',
    from: (speed) => `ab ${speed}`,
    columns: {
      crowdedYd: 'eng unter',
      wideYd: 'weit über',
      wideLongYd: 'lange Schläger: weit über',
      firstPairYd: 'Driver zum nächsten: weit über',
    },
    cell: (column, row) => `${column}, ${row}`,
    usual: (value) => `üblich ${value}`,
    longShare: 'Lang ist ein Schläger ab diesem Anteil am Carry des Drivers, %',
    tiers: 'Fehlerverzeihung nach Handicap',
    tierUpTo: (tier) => `${tier}: bis Handicap`,
    tierLast: 'Über dem letzten gilt Stufe 4. Eisen dürfen eine Stufe darunter liegen, Hölzer zwei.',
    weights: 'Gewichte',
    weightNames: {
      wide: 'Weiter Abstand, je Zehntel Yard (im Mittel)',
      crowd: 'Enges Paar, je Zehntel Yard',
      tier: 'Jede Stufe unter der kleinsten',
    },
    weightsNote: 'Ganze Zahlen. 0 lässt es außer Betracht.',
    own: (n) => (n === 1 ? 'Ein Wert ist Ihr eigener.' : `${String(n)} Werte sind Ihre eigenen.`),
    allUsual: 'Alle Werte sind die üblichen.',
    reset: 'Zurück zu den üblichen Werten',
    wasReset: 'Grenzen und Gewichte sind wieder die üblichen.',
  },

  costs: {
    ofBag: (player) => `Im Bag von ${player}`,
    ofNew: 'Für neue Bags',
    newNote: 'Neue Spieler mit derselben Währung beginnen damit.',
    note: 'Alle sind Ihre eigenen Annahmen. Versand, Griff, Gebühr und Porto gehen in den Plan ein; die übrigen stehen daneben. Ein Posten ohne Haken bleibt notiert und zählt nicht.',
    kinds: COSTS,
    none: 'Nichts ist notiert.',
    counts: (cost) => `${cost} zählt`,
    amount: (cost, currency) => `${cost}, ${currency}`,
    percent: (cost) => `${cost}, %`,
    label: (cost) => `Wofür: ${cost}`,
    strike: (cost) => `Streichen: ${cost}`,
    strikeShort: 'Streichen',
    add: 'Kosten hinzufügen',
    kind: 'Art',
    currency: 'Währung',
    sum: 'Betrag',
    share: 'Prozent',
    keep: 'Hinzufügen',
  },

  courses: {
    note: 'Wie oft ein Abstand vorkommt, hängt vom Platz ab.',
    pick: (player) => `Platz von ${player}`,
    usual: 'Der übliche nach dem Drive',
    fromFile: 'Der aus der Bag-Datei',
    holes: (n, par, length) => `${count(n, 'Loch', 'Löcher')}, Par ${String(par)}, ${length}`,
    noDrive: 'noch kein Drive bekannt',
    bags: (n) => `gewählt für ${count(n, 'Bag', 'Bags')}`,
    named: 'Benannte Plätze',
    none: 'Noch hat keiner einen Namen.',
    edit: (course) => `${course} ändern`,
    editShort: 'Ändern',
    done: 'Fertig',
    strike: (course) => `${course} streichen`,
    strikeShort: 'Streichen',
    struck: (course) => `Gestrichen: der Platz ${course}.`,
    name: 'Name',
    hole: 'Loch',
    par: 'Par',
    length: (unit) => `Länge, ${unit}`,
    cell: (column, hole) => `${column}, Loch ${hole}`,
    addHole: 'Loch hinzufügen',
    dropHole: 'Letztes Loch streichen',
    add: 'Platz hinzufügen',
    layOut: 'Anlegen nach Abschlägen von',
    tees: (length) => `insgesamt ${length}`,
    create: 'Anlegen',
    layOutNote: 'Ein erfundener üblicher Platz mit 18 Löchern, zum Ändern in Ihren.',
    change: 'Eine Änderung gilt für jedes Bag, für das er gewählt ist.',
  },
};
