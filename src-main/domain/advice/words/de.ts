import type { Archetype, Club } from '../../bag/types.ts';
import { atHead } from './at-head.ts';
import type { Words } from './words.ts';

const KIND: Record<Club['kind'], string> = {
  driver: 'Driver',
  fairway: 'Fairwayholz',
  hybrid: 'Hybrid',
  iron: 'Eisen',
  wedge: 'Wedge',
  putter: 'Putter',
};

// The trade's own names, which German shops and coaches use too.
const capital = (name: string) => atHead(name, 'de');

const TIER = ['Players’', 'Players’ Distance', 'Game Improvement', 'Super Game Improvement'];

const SPIN = { low: ', niedriger Spin', mid: '', high: ', hoher Spin' };

const number = new Intl.NumberFormat('de', { maximumFractionDigits: 2 });
const monthOf = new Intl.DateTimeFormat('de', { month: 'long', year: 'numeric', timeZone: 'UTC' });
const month = (iso: string) => monthOf.format(new Date(`${iso}-01T00:00:00Z`));

function tierName(tier: number): string {
  return TIER[tier - 1] ?? `Stufe ${String(tier)}`;
}

function archetypeName({ kind, loftDeg, forgiveness, spinTier, members }: Archetype): string {
  const tier = tierName(forgiveness);
  const loft = `${number.format(loftDeg)}°`;
  if (kind === 'irons') {
    const first = members?.[0]?.number ?? '';
    const last = members?.at(-1)?.number ?? '';
    return `Eisen ${first}–${last} (Eisen 7: ${loft}, ${tier}${SPIN[spinTier]})`;
  }
  if (kind === 'putter') return `Putter (${loft}, Fehlerverzeihung ${String(forgiveness)} von 4)`;
  return `${KIND[kind]} ${loft} (${tier}${SPIN[spinTier]})`;
}

/**
 * German, of at most 30 words a sentence, impersonal or polite. Names of clubs may be of any gender and number, so no
 * article and no verb hangs on them.
 */
export const german: Words = {
  language: 'de',
  clubName: ({ id, label, kind }) => label ?? (kind === 'driver' || kind === 'putter' ? KIND[kind] : id),
  archetypeName,
  memberName: (member, { loftDeg }) => {
    const set = `(Satz mit Eisen 7: ${number.format(loftDeg)}°)`;
    return /^\d+$/.test(member) ? `Eisen ${member} ${set}` : `${member} ${set}`;
  },
  tierName,
  source: (source) =>
    ({ measured: 'gemessen', stated: 'angegeben', interpolated: 'interpoliert', modelled: 'berechnet' })[
      source
    ],
  stageNow: 'jetzt',
  stageHandicap: (handicap) => `wenn Handicap ≤ ${handicap}`,
  stageSale: 'nach dem Verkauf',
  stageSeason: 'nächste Saison',
  figures: {
    gap: 'Abstand',
    limit: 'Grenze',
    chance: 'Wahrscheinlichkeit, dass der Abstand jenseits der Grenze liegt',
    tier: 'Stufe der Fehlerverzeihung',
    leastTier: 'kleinste Stufe für das Handicap',
    clubs: 'Schläger im Bag',
    carry: 'Carry',
    handicap: 'Handicap',
    limitSource: 'übliche Praxis, nach Drivertempo',
    tierSource: 'übliche Praxis, nach Handicap',
    ownSource: 'vom Nutzer gesetzt',
    ruleSource: 'Golfregeln, Regel 4.1b',
    playerSource: 'vom Spieler angegeben',
    ladderSource: 'die eigene Leiter des Spielers',
    practice: 'übliche Praxis',
    typical: 'typisch für seinen Namen',
    loft: 'Loft, Grad',
    length: 'Länge, Zoll',
    speed: 'Drivertempo',
    ballSpeed: 'Ballgeschwindigkeit',
    launch: 'Abflugwinkel, Grad',
    spin: 'Spin, U/min',
    flex: 'Flex',
    yearMade: 'Baujahr',
    target: 'Zielhandicap',
    expected: 'Carry, den das Eisen 7 erwarten lässt',
    usualGap: 'üblicher Abstand am kurzen Ende',
    bend: 'Biegung des Lofts, Grad',
    need: 'Schläge je Runde, die danach verlangen',
  },
  needSource: ({ holes, parTotal, totalYd, source }) =>
    `${source === 'given' ? 'angegebener Platz' : 'üblicher Platz'}: ${String(holes)} Löcher, Par ${String(parTotal)}, ${String(Math.round(totalYd))} yd; eigenes Modell`,
  speedSource: (from) =>
    ({
      given: 'vom Spieler angegeben',
      'driver carry': 'aus dem Carry des Drivers gerechnet',
      'driver total': 'aus der Gesamtweite des Drivers gerechnet',
      '7-iron carry': 'aus dem Carry des Eisens 7 gerechnet',
      'another carry': 'aus einem anderen Carry gerechnet',
      nothing: 'nicht bekannt',
    })[from],
  pain: () =>
    'Schmerzen sind angegeben, also gibt es hier keine Kaufempfehlung. Bitte zuerst ärztlichen Rat holen, dann neu messen.',
  noClubs: () => 'Außer einem Putter ist noch kein Schläger eingetragen, also gibt es keine Leiter.',
  nothingKnown: () =>
    'Noch ist kein Carry und kein Tempo bekannt, also lässt sich zu Abständen nichts sagen. Bitte zuerst einen oder zwei Schläger messen.',
  clubUnplaced: ({ club }) =>
    `${capital(club)}: weder Carry noch Loft bekannt, der Platz auf der Leiter ist also noch offen.`,
  allModelled: () =>
    'Kein Carry ist bekannt: Die ganze Leiter ist aus dem Drivertempo gerechnet. Ein paar gemessene Carrys machten sie zur eigenen.',
  wideGap: ({ longer, shorter, gap, limit }) =>
    `Zwischen ${longer} und ${shorter} liegen etwa ${gap}; üblich sind bei diesem Tempo bis ${limit}. Schläge dazwischen verlangen wohl einen Teilschwung.`,
  unsureGap: ({ longer, shorter, gap, limit, state }) =>
    state === 'unsure-wide'
      ? `Zwischen ${longer} und ${shorter} liegen anscheinend ${gap}, mehr als die üblichen ${limit}; die Zahlen sind aber zu ungenau. Vor einem Kauf beide messen.`
      : `Zwischen ${longer} und ${shorter} liegen anscheinend nur ${gap}, weniger als die üblichen ${limit}; die Zahlen sind aber zu ungenau. Erst beide messen.`,
  crowdedDrop: ({ longer, shorter, gap, limit, dropped }) =>
    `Zwischen ${longer} und ${shorter} liegt weniger als ${limit} Carry (${gap}). ${capital(dropped)} kann heraus; der andere Schläger genügt.`,
  crowdedKeep: ({ longer, shorter, gap, limit }) =>
    `Zwischen ${longer} und ${shorter} liegt weniger als ${limit} Carry (${gap}). Einen herauszunehmen machte das Bag nicht besser, also beide behalten.`,
  crowdedGoTo: ({ longer, shorter, gap }) =>
    `Zwischen ${longer} und ${shorter} liegen nur ${gap} Carry, doch beide bleiben: Sie sind zum Behalten markiert.`,
  forgiveness: ({ clubs, tier, least, handicap }) =>
    `${capital(clubs)}: Köpfe der Stufe ${tier}. Bei Handicap ${handicap} kosten Köpfe ab ${least} außerhalb der Mitte meist weniger Schläge.`,
  goTo: ({ club }) => `${capital(club)}: Lieblingsschläger. Er bleibt, und nichts wird gegen ihn geplant.`,
  count: ({ count, most, dropped }) =>
    `${String(count)} Schläger sind im Bag; ${String(most)} sind auf einer Runde erlaubt.${dropped === '' ? '' : ` Der Plan nimmt heraus: ${dropped}.`}`,
  nothingNeeded: ({ retest }) =>
    `Nichts hier verlangt Geld: das Bag behalten, wie es ist. Etwa im ${month(retest)} wieder ansehen, oder wenn sich der Schwung ändert.`,
  nothingToBuy: () => 'Nichts hier verlangt Geld: Was der Plan ändert, kostet nichts.',
  longEnd: ({ clubs, cause, usual }) => {
    const seen = `Die Abstände von ${clubs} rücken zusammen, während die kurzen um etwa ${usual} steigen.`;
    switch (cause) {
      case 'flat-ball-speed':
        return `${seen} Die Ballgeschwindigkeit steigt kaum, also liegt es eher am Schwung: vor einem Kauf zum Trainer.`;
      case 'wide-spread':
        return `${seen} Einzelne Schläge streuen um mehr als einen halben üblichen Abstand, also vor einem Kauf zum Trainer.`;
      case 'make-up':
        return `${seen} Die Ballgeschwindigkeit steigt, also liegt es eher an der Zusammenstellung: Loft oder Länge geben bei diesem Tempo zu wenig.`;
      case 'odd-pair':
        return `Ein Paar (${clubs}) fällt im Satz auf, wo ${usual} üblich sind. Zuerst Loft, Lie und Länge beider messen lassen.`;
      default:
        return `${seen} Bag und Schwung lassen sich ohne Ballgeschwindigkeiten nicht trennen: etwa 10 Schläge je Schläger notieren.`;
    }
  },
  driverBehindIrons: ({ club, by, behind, fitIsFine }) => {
    const seen = `${capital(club)}: etwa ${by} ${behind ? 'weniger' : 'mehr'} Carry, als das Eisen 7 erwarten lässt.`;
    return fitIsFine
      ? `${seen} Abflug und Spin liegen im Fenster, also hilft ein Kopf kaum: zuerst zum Trainer.`
      : `${seen} Schwung, Anpassung oder beides kann dahinterstehen. Vor jedem Kauf Abflug und Spin messen; kein Kopf verspricht alles zurück.`;
  },
  driverLaunchSpin: ({ club, launch, spin, left }) => {
    const off = [
      ...(launch === 0 ? [] : [`ein ${launch > 0 ? 'hoher' : 'flacher'} Abflug`]),
      ...(spin === 0 ? [] : [`${spin > 0 ? 'viel' : 'wenig'} Spin`]),
    ].join(' und ');
    const head =
      spin > 0 ? 'Ein Kopf mit weniger Spin' : spin < 0 ? 'Ein Kopf mit mehr Spin' : 'Ein anderer Kopf';
    return `${capital(club)}: ${off} für seine Ballgeschwindigkeit. ${head} kann einen Teil nehmen, der Schaft einen anderen${
      left ? ' (der Fehlschlag nach links deutet auch dahin)' : ''
    }. Treffpunkt und Eintreffwinkel haben ihren Anteil: Ausrüstung allein kann nicht alles beheben.`;
  },
  flex: ({ club, flex, fit, speed, miss }) =>
    `${capital(club)}: Flex ${flex} wirkt ${fit === 'too-soft' ? 'weich' : 'hart'} für ${speed}${
      miss ? ', und der Fehlschlag passt dazu' : ''
    }. Die Angaben sind je Hersteller verschieden, also den Fitter fragen, nicht die Aufschrift.`,
  wedgeTooHigh: ({ club }) =>
    `${capital(club)}: mehr als 60° Loft, wonach wenige Schläge verlangen. Das Wedge kann heraus; Teilschwünge mit den anderen genügen.`,
  wedgeStep: ({ club, other }) =>
    `${capital(club)} und ${other} liegen höchstens 3° Loft auseinander. ${capital(club)} kann heraus: stattdessen Teilschwünge mit den anderen üben.`,
  wedgeShortage: ({ longer, shorter, gap, limit }) =>
    `Zwischen ${longer} und ${shorter} liegen etwa ${gap}, wo ${limit} üblich sind. Viele Annäherungen fallen in diesen Bereich.`,
  improving: ({ now, target }) =>
    `Von ${now} auf dem Weg zu ${target}: Was nur Fehlerverzeihung bringt, kann auf das neue Handicap warten. Jetzt zu kaufen ist der andere Weg.`,
  forgivenessWaits: ({ clubs, target }) =>
    `${capital(clubs)}: für heute wenig verzeihend, bei Handicap ${target} aber gut genug. Das ist nah genug, um zu warten.`,
  whyThisClub: ({ club, need }) =>
    `${capital(club)}: auf diesem Platz ${/^0[.,]0$/.test(need) ? 'so gut wie nie' : `etwa ${need}-mal je Runde`} verlangt. Wozu ist der Schläger da? Wenig dringend, außer Sie wissen es.`,
  hardFromTheDeck: ({ club }) =>
    `${capital(club)}: wenig Loft für Schläge vom Boden bei diesem Tempo. Ein Holz mit mehr Loft oder ein Hybrid trägt meist ebenso weit.`,
  firmGround: ({ longer, shorter, gap }) =>
    `Zwischen ${longer} und ${shorter} liegen höchstens ${gap} Carry. Auf hartem Boden oder bei flachem Flug ist das normal: nichts ändern.`,
  strongLofts: ({ club, measured }) =>
    `${capital(club)}: starker Loft${measured ? '' : ' (bitte messen lassen)'}, also sind Flyer wahrscheinlicher. Wedges nach dem Loft des PW wählen, nie nach der Zahl auf der Sohle.`,
  oneLength: ({ speed }) =>
    `Alle Eisen haben eine Länge. Bei ${speed} fliegen die langen vielleicht nicht hoch genug, um auf dem Grün zu bleiben.`,
  checkConformity: ({ club }) =>
    `${capital(club)}: vor neueren Grenzwerten gebaut. Vor einem Turnier in den aktuellen Listen des Regelgebers nachsehen.`,
  bend: ({ club, by, weaker, longer, shorter }) =>
    `${capital(club)} um ${by} ${weaker ? 'schwächer' : 'stärker'} zu biegen, könnte ${longer} und ${shorter} richten. Einen Schlägerbauer fragen: Es kostet wenig, wenn der Kopf es zulässt.`,
  swap: {
    fillsGap: ({ archetype, longer, shorter, before, above, below }) =>
      `Mit ${archetype} zwischen ${longer} und ${shorter} werden aus ${before} etwa ${above} und ${below}.`,
    moreForgiving: ({ archetype, clubs }) =>
      `Mit ${archetype} kosten Treffer außerhalb der Mitte meist weniger als mit ${clubs}.`,
    takesPlaceOf: ({ archetype, clubs }) =>
      `Mit ${archetype} anstelle von ${clubs} werden die Abstände ringsum gleichmäßiger.`,
    evensSet: ({ archetype }) => `Mit ${archetype} werden die Abstände ringsum gleichmäßiger.`,
    topEnd: ({ archetype, carry }) =>
      `Mit ${archetype} hat das Bag wieder einen längsten Schläger, etwa ${carry} Carry.`,
    bottomEnd: ({ archetype, carry }) =>
      `Mit ${archetype} hat das Bag wieder einen kürzesten vollen Schlag, etwa ${carry} Carry.`,
    replaced: ({ by }) => `Die Aufgabe übernimmt: ${by}.`,
    crowded: ({ neighbour, gap }) =>
      `Höchstens ${gap} Carry neben ${neighbour}: Die Aufgabe ist schon erfüllt.`,
    overCount: ({ most }) => `Nur ${String(most)} Schläger sind erlaubt; dieser fehlt am wenigsten.`,
    spare: () => 'Zu Hause gelassen fehlt er auf dieser Leiter nicht.',
    soldToPay: ({ money }) => `Der Verkauf bringt etwa ${money}.`,
  },
  questions: {
    putter: () => 'Kein Putter ist eingetragen. Gibt es einen? Ein Platz im Bag bleibt bis zur Antwort frei.',
    twoPutters: () => 'Mehr als ein Putter ist eingetragen, und einer kann im Bag sein. Welcher bleibt?',
    noClubs: () => 'Welche Schläger sind im Bag? Lofts helfen, und der Carry eines Eisens sagt am meisten.',
    nothingKnown: () =>
      'Ein Drivertempo angeben, oder den Carry eines Eisens: etwa 10 Schläge, Carry statt Gesamtweite, ohne klare Fehlschläge.',
    unplaced: ({ club }) => `Wie ist der Loft von ${club}, oder der Carry aus etwa 10 Schlägen?`,
    allModelled: () =>
      'Etwa 10 Schläge mit einem mittleren Eisen und mit dem Driver machen, und den Carry notieren, nicht die Gesamtweite.',
    unsure: ({ longer, shorter }) =>
      `Je etwa 10 Schläge mit ${longer} und ${shorter} machen und den Carry notieren, nicht die Gesamtweite: Ist der Abstand echt?`,
    fromTotal: ({ club }) =>
      `Zu ${club} ist nur eine Gesamtweite bekannt. Wie weit ist der Carry? Das Rollen ist grob geschätzt.`,
    loftAssumed: ({ club }) => `Der Loft von ${club} ist als typisch angenommen. Was ergibt die Messung?`,
    longEnd: ({ clubs, cause }) =>
      cause === 'odd-pair'
        ? `Was messen Loft, Lie und Länge von ${clubs}? Das entscheidet, ob einer verbogen oder abgenutzt ist.`
        : `Wie sind Ballgeschwindigkeit und Carry von ${clubs}, je etwa 10 Schläge? Das trennt Bag und Schwung.`,
    driver: ({ club }) =>
      `Wie sind Ballgeschwindigkeit, Abflug und Spin von ${club} aus etwa 10 Schlägen? Das trennt Anpassung und Schwung.`,
    flex: ({ club }) =>
      `Was sagt ein Fitter zum Schaft von ${club}? Die Aufschrift allein entscheidet nichts.`,
    carryRises: ({ stronger, weaker, by }) =>
      `${capital(weaker)} soll ${by} weiter tragen als ${stronger}, trotz mehr Loft. Ist eine der beiden Angaben vertippt?`,
    maybeTotal: ({ club, carry }) =>
      `Sind die ${carry} von ${club} eine Gesamtweite mit Rollen? Bitte nur den Carry angeben.`,
    impossible: ({ club, carry, most }) =>
      `${capital(club)} soll ${carry} tragen; beim angegebenen Tempo wären etwa ${most} das Höchste. Welche der beiden Angaben stimmt?`,
    prices: () =>
      'Kein Gebrauchtpreis ist notiert, also lässt sich kein Kauf planen. Bitte eintragen, was Sie zu möglichen Schlägern gesehen haben.',
  },
  cautions: {
    ranges: () =>
      'Carrys sind Mittel aller Schläge mit ihrer 90-%-Spanne; Gesamtweiten sind grob und zählen nicht.',
    prices: () => 'Gebrauchtpreise sind die von Ihnen eingetragenen Zahlen, keine Marktübersicht.',
    usedClub: () =>
      'Vor dem Bezahlen eines gebrauchten Schlägers nach lockerer Ferrule, rissiger Fläche, abgenutzten Rillen und krummem Schaft sehen, und den wahren Loft messen lassen.',
    rules: () =>
      'Bei Turnieren entscheiden die aktuellen Regeln und Listen der Regelgeber und die Spielleitung vor Ort.',
    work: () =>
      'Schäfte, Biegen, Hitze und Lösungsmittel gehören in die Hände eines gelernten Schlägerbauers.',
    unproven: ({ least }) =>
      `Diese Frage hat zu viele Sätze, um den Plan als den besten zu beweisen: Er ist der beste gefundene. Kein Bag im Budget lässt weniger als ${least} offen.`,
    leftOut: () =>
      'So viele Sätze haben einen Preis, dass nicht jeder Grund, jede Frage und jeder andere Weg gerechnet wurde. Den Plan selbst berührt das nicht.',
    ownConventions: ({ limits, tiers, weights }) =>
      `Dieser Plan ist mit eigenen Werten des Nutzers gerechnet, nicht mit üblicher Praxis: ${[
        ...(limits ? ['Abstandsgrenzen'] : []),
        ...(tiers ? ['Fehlerverzeihung nach Handicap'] : []),
        ...(weights ? ['Gewichte'] : []),
      ].join(', ')}.`,
    pain: () => 'Schmerzen gehen vor: ärztlicher Rat, nicht Ausrüstung.',
  },
};
