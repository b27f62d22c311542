import type { spend as english } from '../../en/screens/spend.ts';
import { count } from '../plural.ts';

const purchases = (n: number) => count(n, 'Kauf', 'Käufe');

export const spend: typeof english = {
  spend: {
    heading: 'Ausgaben',
    status: {
      'nothing-needed': () => 'Nichts zu kaufen. Das Bag behalten, wie es ist.',
      ok: ({ buys, cost }) =>
        buys === 0
          ? 'Das Bag lässt sich ganz ohne Kauf in Ordnung bringen.'
          : `Für ${cost} kommt das Bag in Ordnung: ${purchases(buys)}.`,
      partly: ({ buys, swaps, cost }) =>
        buys === 0
          ? swaps === 0
            ? 'Mit den notierten Preisen macht kein Kauf dieses Bag besser.'
            : 'Schläger herauszunehmen behebt einen Teil der Mängel und kostet nichts. Der Rest bleibt.'
          : `Für ${cost} wird ein Teil der Mängel behoben, nicht alle: ${purchases(buys)}.`,
      'over-budget': () => 'Nichts im Budget macht dieses Bag besser.',
      'ask-first': () => 'Erst messen: Die offene Frage entscheidet, was sich zu kaufen lohnt.',
      'coach-first': () => 'Erst zum Trainer: An den Schlägern fehlt es nicht.',
      stopped: () => 'Keine Kaufempfehlung: Bitte zuerst ärztlichen Rat holen.',
    },
    left: (money) => `${money} des Budgets bleiben übrig.`,
    over: (money) => `${money} über dem Budget.`,
    noBudget: 'Kein Budget ist gesetzt; gezeigt ist die günstigste Abhilfe.',
    completeMend: (money) => `Vollständige Abhilfe kostet ${money}.`,
    fromToday: (share) => `${share} der heutigen Mängel sind behoben.`,
    allMended: 'Alle heutigen Mängel sind behoben.',
    chance: (share) => `Wahrscheinlichkeit, dass das Budget reicht: ${share}.`,

    budget: 'Budget',
    slider: 'Ein anderes Budget ausprobieren',
    trying: (tried, kept) => `Ausprobiert: ${tried}. Das Budget des Bags ist weiterhin: ${kept}.`,
    noneKept: 'keines',
    slideHint:
      'Schieben oder tippen zeigt, was eine andere Summe bewirkt. Gespeichert wird erst auf Ihr Wort.',
    keep: (money) => `${money} als Budget speichern`,
    keepNone: 'Ohne Budget speichern',
    back: (money) => `Zurück zu ${money}`,

    curve: 'Was jede Summe behebt',
    chartName: (points) =>
      `Ausgabenkurve mit ${count(points, 'Punkt', 'Punkten')}: Kosten gegen das, was noch fehlt. Die Tabelle darunter hat dieselben Zahlen.`,
    axisCost: 'Kosten',
    axisWrong: 'noch offen, vom heutigen Bag',
    today: 'heute',
    thePlan: 'der Plan',
    budgetLine: (money) => `Budget ${money}`,
    wrongNote:
      'Noch offen: Weiten jenseits der Abstandsgrenzen und fehlende Fehlerverzeihung, zusammen gewogen; das heutige Bag ist 100 %.',
    curveColumns: {
      cost: 'Kosten',
      mended: 'Behoben',
      changes: 'Änderungen',
      buys: 'Was gekauft wird',
      leaves: 'Was herauskommt',
      which: 'Welcher',
    },
    nothing: '—',
    within: 'im Budget',
    beyond: 'über dem Budget',
    nothingPlaced: 'Noch hat kein Schläger einen Platz, also gibt es nichts zu zeichnen.',
    noCurve: 'Nichts zu zeichnen: Kein Kauf mit notiertem Preis macht dieses Bag besser.',
    nothingWrong: 'An der heutigen Leiter fehlt nichts, also gibt es nichts zu zeichnen.',
    noPrices: 'Kein Gebrauchtpreis ist notiert, also lässt sich kein Kauf planen.',
    toPrices: 'Preise auf der Seite „Bag“ notieren',

    plan: 'Der Plan',
    planColumns: {
      action: 'Tun',
      club: 'Schläger',
      inPlaceOf: 'Anstelle von',
      pay: 'Zu zahlen',
      get: 'Erlös',
      walkAway: 'Verzichten über',
      why: 'Warum',
    },
    actions: { buy: 'kaufen', drop: 'herausnehmen', sell: 'verkaufen' },
    stage: (stage) => stage,
    noCeiling: 'keine Grenze außer dem Budget',
    withSet: 'mit seinem Satz',
    noSwaps: 'Kein Tausch. Das Bag bleibt, wie es ist.',
    totals: {
      clubs: 'Schläger',
      delivery: 'Versand und neue Griffe',
      cash: 'Zu zahlen',
      sales: 'Aus Verkäufen',
      saleCosts: 'Verkaufsgebühren und Porto',
      net: 'Kosten nach Verkäufen',
      budget: 'Budget',
      remaining: 'Rest des Budgets',
      over: 'Über dem Budget',
    },
    pricesNote: 'Die Preise sind die erwarteten aus Ihren eigenen Notizen.',
    walkAwayNote:
      'Verzichten über: Jenseits dieses Preises, nur für den Schläger, ist ein anderer Plan besser für diesen Spieler.',
    questions: 'Zuerst herauszufinden',
    worth: { much: 'entschiede viel', some: 'entschiede manches', little: 'entschiede wenig' },
    cautions: 'Zu beachten',

    removes: (share) => `Ohne ihn kommen ${share} der heutigen Mängel zurück.`,
    removesNothing: 'Ohne ihn kommt nichts zurück: Er spart Geld an anderer Stelle.',
    without: (cost, buys, share) => `Das Beste ohne ihn: ${cost}, ${buys}, ${share} behoben.`,
    buysNothing: 'ohne Kauf',
    buys: (clubs) => `mit Kauf von ${clubs}`,
    next: 'Die nächste Stufe',
    nextStep: (more, buys, share) => `${more} mehr, ${buys}: ${share} der heutigen Mängel behoben.`,
    cheapest: 'Die günstigste Hilfe',
    cheapestHelp: (cost, buys, share) => `${cost}, ${buys}: ${share} der heutigen Mängel behoben.`,
    toSide: 'Zwei Wege nebeneinander stellen',
  },
};
