import type { bag as english } from '../../en/screens/bag.ts';
import { count } from '../plural.ts';

const KINDS: (typeof english)['kinds'] = {
  driver: 'Driver',
  fairway: 'Fairwayholz',
  hybrid: 'Hybrid',
  iron: 'Eisen',
  wedge: 'Wedge',
  putter: 'Putter',
};

const NEW: Record<keyof typeof KINDS, string> = {
  driver: 'Neuer Driver',
  fairway: 'Neues Fairwayholz',
  hybrid: 'Neues Hybrid',
  iron: 'Neues Eisen',
  wedge: 'Neues Wedge',
  putter: 'Neuer Putter',
};

export const bag: typeof english = {
  bag: {
    player: 'Der Spieler',
    clubs: 'Die Schläger',
    clubsNote: (n) =>
      `${count(n, 'Schläger', 'Schläger')}, der Putter mitgezählt; 14 sind auf einer Runde erlaubt.`,
    ruled:
      'Eintragen, was bekannt ist, und streichen, was nicht im Bag ist. Jeder Eintrag ist sofort gespeichert.',
    first: 'Genug für eine erste Antwort',
    needs: {
      speed: 'Drivertempo oder Drive',
      iron: 'Carry eines Eisens',
      budget: 'ein Budget',
      prices: 'gesehene Gebrauchtpreise',
    },
    met: 'vorhanden',
    unmet: 'noch leer',
    toLadder: 'Zur Leiter',
    fields: {
      name: 'Name',
      handicap: 'Handicap',
      target: 'Zielhandicap',
      driverSpeed: (unit) => `Drivertempo, ${unit}`,
      handed: 'Hand',
      right: 'rechts',
      left: 'links',
      ground: 'Boden',
      soft: 'weich',
      firm: 'hart',
      flighted: 'Hält den Ball absichtlich flach',
      miss: 'Üblicher Fehlschlag',
      missNote: 'Zum Fehlschlag oder sonst etwas',
      pain: 'Spielt mit Schmerzen (dann gibt es keine Kaufempfehlung)',
    },
    misses: { left: 'links', right: 'rechts', high: 'hoch', low: 'flach', fat: 'fett', thin: 'dünn' },
    columns: {
      name: 'Schläger',
      kind: 'Art',
      loft: 'Loft °',
      carry: (unit) => `Carry, ${unit}`,
      range: '90-%-Spanne, Quelle',
      forgiveness: 'Verzeihung',
      goTo: 'Liebling',
      sell: 'Verkauf',
      more: 'Mehr',
    },
    cell: (column, club) => `${column}: ${club}`,
    reckoned: (carry) => `≈ ${carry}`,
    offLadder: 'auf keiner Leiter',
    unplaced: 'noch ohne Platz',
    forSale: (likely) => `etwa ${likely}`,
    inSet: (set) => `Satz ${set}`,
    more: (club) => `Mehr zu ${club}`,
    less: (club) => `Weniger zu ${club}`,
    moreShort: 'Mehr',
    lessShort: 'Weniger',
    strike: (club) => `${club} streichen`,
    strikeShort: 'Streichen',
    struck: (club) => `Gestrichen: ${club}.`,
    add: 'Schläger hinzufügen',
    addKind: 'Art des neuen Schlägers',
    newLabel: (kind) => NEW[kind],
    details: {
      shots: 'Schläge hinter dem Carry',
      carrySd: (unit) => `Streuung des Carrys (SD), ${unit}`,
      total: (unit) => `Gesamtweite mit Rollen (grob), ${unit}`,
      ballSpeed: (unit) => `Ballgeschwindigkeit, ${unit}`,
      launchDeg: 'Abflugwinkel, °',
      spinRpm: 'Spin, U/min',
      lieDeg: 'Lie, °',
      lengthIn: 'Länge, Zoll',
      yearMade: 'Baujahr',
      flex: 'Flex',
      spinTier: 'Spin',
      set: 'Gehört zum Satz',
      loftMeasured: 'Der Loft ist gemessen',
      sell: 'Was ein Verkauf bringen könnte',
    },
    sets: 'Sätze, falls ganz verkauft',
    setName: (set, clubs) => `Satz „${set}“: ${clubs}`,
    money: 'Budget und Kosten',
    budget: 'Budget',
    cashOnly: 'Geld aus Verkäufen erst zählen, wenn es da ist',
    delivery: 'Versand eines Kaufs',
    regrip: 'Neuer Griff, je Schläger',
    sellFee: 'Verkaufsgebühr, %',
    postage: 'Porto eines Verkaufs',
    changePutter: 'Der Putter darf wechseln',
    margin: 'Was die Leiter zu diesem Bag sagt',
    marginEmpty: 'Noch kein Befund. Carrys, Lofts und ein Drivertempo bringen sie.',
  },

  kinds: KINDS,

  tiers: {
    1: '1 Players’',
    2: '2 Players’ Distance',
    3: '3 Game Improvement',
    4: '4 Super Game Improvement',
  },

  tierShort: { 1: '1 Players’', 2: '2 Players’ Dist.', 3: '3 Game Impr.', 4: '4 Super G. I.' },

  unknown: 'nicht bekannt',

  spins: { low: 'niedrig', mid: 'mittel', high: 'hoch' },

  flexes: { L: 'L', A: 'A', R: 'R', S: 'S', X: 'X' },

  units: {
    yd: 'Yards',
    m: 'Meter',
    mph: 'mph',
    'km/h': 'km/h',
    'm/s': 'm/s',
  },
};
