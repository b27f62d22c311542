import type { ladder as english } from '../../en/screens/ladder.ts';
import { count } from '../plural.ts';

const SOURCES: (typeof english)['ladder']['sources'] = {
  measured: 'gemessen',
  stated: 'angegeben',
  interpolated: 'interpoliert',
  modelled: 'berechnet',
};

const STATES: (typeof english)['ladder']['states'] = {
  wide: 'weiter Abstand',
  crowded: 'enges Paar',
  'unsure-wide': 'unsicher: vielleicht weit',
  'unsure-crowded': 'unsicher: vielleicht eng',
};

export const ladder: typeof english = {
  ladder: {
    heading: 'Leiter',
    side: 'Welches Bag',
    today: 'Heute',
    after: 'Nach dem Plan',
    chart: (unit) => `Carrys in ${unit} mit ihren 90-%-Spannen, der längste Schläger oben`,
    chartName: (clubs, marks) =>
      `Leiter von ${count(clubs, 'Schläger', 'Schlägern')} nach Carry. ${marks === '' ? 'Kein Abstand liegt jenseits seiner Grenze.' : marks} Die Tabelle darunter hat dieselben Zahlen.`,
    axis: (unit) => `Carry, ${unit}`,
    row: (carry, range, source) => `${carry}, ${range}, ${source}`,
    states: STATES,
    step: (state, gap, limit) =>
      state === 'wide' || state === 'unsure-wide'
        ? `${STATES[state]}: ${gap}, üblich bis ${limit}`
        : `${STATES[state]}: ${gap}, üblich ab ${limit}`,
    stepShort: (state, gap) => `${STATES[state]}: ${gap}`,
    note: (n) => `Notiz ${n}`,
    bought: 'neu',
    leaving: 'kommt heraus',
    legend: 'Wie sie zu lesen ist',
    legendKnown: 'Carry mit 90-%-Spanne, gemessen oder angegeben',
    legendReckoned: 'gerechnet: interpoliert oder aus dem Modell',
    legendBought: 'vom Plan gekauft',
    legendUnsure: 'unsicher: beide messen',
    table: 'Dasselbe als Tabelle',
    columns: {
      club: 'Schläger',
      carry: (unit) => `Carry, ${unit}`,
      range: '90-%-Spanne',
      source: 'Quelle',
      gap: (unit) => `Abstand zum nächsten, ${unit}`,
      said: 'Was zum Abstand zu sagen ist',
    },
    inside: 'innerhalb der Grenzen',
    last: 'letzter der Leiter',
    sources: SOURCES,
    ranges:
      'Der Carry ist das Mittel aller Schläge; die Spanne enthält ihn in neun von zehn Fällen. Gesamtweiten sind grob und zählen nicht. Der Putter steht auf keiner Leiter.',
    notes: 'Befunde',
    notesOfToday: 'Befunde zum heutigen Bag',
    noNotes: 'Kein Befund: Hier ist nichts zu tun.',
    empty: 'Noch hat kein Schläger einen Platz',
    emptyText:
      'Auf der Seite „Bag“ ein Drivertempo oder den Carry eines Eisens angeben. Die Lofts ordnen die übrigen Schläger ein.',
    unchanged: 'Der Plan ändert an der Leiter nichts.',
    speed: (speed, from) => `Drivertempo ${speed}, ${from}.`,
    speedFrom: {
      given: 'wie angegeben',
      'driver carry': 'aus dem Carry des Drivers gerechnet',
      'driver total': 'aus der Gesamtweite des Drivers gerechnet, grob',
      '7-iron carry': 'aus dem Carry des Eisens 7 gerechnet',
      'another carry': 'aus einem Carry gerechnet, grob',
      nothing: 'nicht bekannt',
    },
    toSpend: 'Was die Abhilfe kostet',
  },

  findings: {
    kinds: {
      pain: 'Schmerzen',
      'too-little-data': 'Zu wenig bekannt',
      'wide-gap': 'Weiter Abstand',
      'unsure-gap': 'Unsicherer Abstand',
      'crowded-pair': 'Enges Paar',
      'long-end-falls-off': 'Lange Schläger fallen ab',
      'driver-behind-irons': 'Driver passt nicht zu den Eisen',
      'driver-launch-spin': 'Abflug und Spin des Drivers',
      flex: 'Schaftflex',
      'wedge-surplus': 'Überzähliges Wedge',
      'wedge-shortage': 'Fehlendes Wedge',
      forgiveness: 'Fehlerverzeihung',
      improving: 'Im Aufstieg',
      'go-to': 'Lieblingsschläger',
      'why-this-club': 'Selten gebraucht',
      'hard-from-the-deck': 'Schwer vom Boden',
      'firm-ground': 'Harter Boden',
      'strong-lofts': 'Starke Lofts',
      'one-length': 'Eine Länge',
      'check-conformity': 'Regelkonformität prüfen',
      count: 'Zu viele Schläger',
      bend: 'Biegen könnte genügen',
      'nothing-needed': 'Nichts nötig',
    },
    verdicts: {
      keep: 'behalten',
      drop: 'herausnehmen',
      replace: 'ersetzen',
      add: 'ergänzen',
      ask: 'erst messen',
      'coach-first': 'erst zum Trainer',
      wait: 'warten',
      stop: 'halt',
    },
    severities: { 1: 'Hinweis', 2: 'lohnt sich anzugehen', 3: 'zuerst angehen' },
    evidence: 'Belege',
    figure: (figure, value, range) =>
      range === null ? `${figure}: ${value}` : `${figure}: ${value} (${range})`,
  },
};
