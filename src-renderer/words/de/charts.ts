import type { charts as english } from '../en/charts.ts';
import { count } from './plural.ts';

export const charts: typeof english = {
  charts: {
    read: (chart) => `Werte ablesen: ${chart}`,
    unread: 'noch nichts abgelesen',
    readHint: 'Auf die Zeichnung zeigen oder hier die Pfeiltasten drücken, um ihre Werte abzulesen.',
    table: 'Dasselbe als Tabelle',

    ladder: { title: 'Carry-Leiter' },
    overlay: {
      title: 'Zwei Leitern',
      on: { left: 'auf der linken Seite', right: 'auf der rechten Seite', both: 'auf beiden Seiten' },
    },
    spend: {
      title: 'Ausgabenkurve',
      reading: (cost, mended, buys, where) => `${cost} beheben ${mended}: ${buys}${where}.`,
      isPlan: ', der Plan',
      within: ', innerhalb des Budgets',
      beyond: ', jenseits des Budgets',
    },
    gapBelow: (gap, said) => `Abstand zum nächsten ${gap}, ${said}`,

    band: {
      title: (club) => `Preisspanne: ${club}`,
      units: (currency, condition) => `${currency}, für einen Schläger im Zustand „${condition}“`,
      chartName: (club, low, likely, high, notes) =>
        `Preisspanne von ${club}: niedrig ${low}, erwartet ${likely}, hoch ${high}, aus ${count(notes, 'Notiz', 'Notizen')}. Die Tabelle darunter hat dieselben Zahlen.`,
      band: 'Spanne',
      parts: 'niedrig, erwartet, hoch',
      note: (n) => `Notiz ${n}`,
      stale: 'veraltet',
      outlier: 'zu weit von den anderen, nicht gezählt',
      outlierShort: 'nicht gezählt',
      shareShort: (share) => `zählt ${share}`,
      share: (share) => `${share} der Spanne`,
      seen: (day) => `gesehen am ${day}`,
      written: (day) => `notiert am ${day}, Tag nicht angegeben`,
      readBand: (club, low, likely, high) => `${club}: erwartet ${likely}, von ${low} bis ${high}.`,
      readNote: (note) =>
        `Notiz ${note.number}, ${note.isSeen ? 'gesehen' : 'notiert'} am ${note.day}: erwartet ${note.likely}, von ${note.low} bis ${note.high}; ${note.said}.`,
      columns: { which: 'Welche', day: 'Tag', counts: 'Zählt' },
    },

    chance: {
      heading: 'Was er kosten kann',
      title: 'Wahrscheinlichkeit, dass eine Summe für den Plan reicht',
      units: (currency) => `${currency} nach rechts, Wahrscheinlichkeit nach oben`,
      chartName: (enough, likely, budget) =>
        `Wahrscheinlichkeit der Kosten. ${[enough, likely, budget].filter((part) => part !== '').join('. ')}. Die Tabelle darunter hat dieselben Zahlen.`,
      axisCost: 'Summe',
      enough: (sum, share) => `${sum} reichen, zu ${share} sicher`,
      likely: (sum) => `der Plan zu erwarteten Preisen: ${sum}`,
      budget: (sum, share) => `Budget ${sum}: ${share}`,
      reading: (sum, share) => `${sum} reichen mit einer Wahrscheinlichkeit von ${share}.`,
      noteNet:
        'Jeder Preis gilt als Spanne von niedrig bis hoch, am ehesten beim erwarteten, unabhängig von den anderen. Erlöse aus Verkäufen sind abgezogen.',
      noteCash:
        'Jeder Preis gilt als Spanne von niedrig bis hoch, am ehesten beim erwarteten, unabhängig von den anderen. Erlöse aus Verkäufen zählen nicht.',
      sure: (sum) => `${sum}, ohne Zweifel: Jeder Preis des Plans ist eine Zahl, keine Spanne.`,
      columns: { cost: 'Summe', chance: 'Wahrscheinlichkeit, dass sie reicht', which: 'Welche' },
      which: {
        enough: 'reicht in vier von fünf Fällen',
        likely: 'zu erwarteten Preisen',
        budget: 'das Budget',
      },
    },

    need: {
      heading: 'Was eine Runde verlangt',
      title: 'Volle Schläge je Runde, nach dem Carry, den sie verlangen',
      units: (unit) => `Carry in ${unit}, der längste oben; schraffiert: vom Tee`,
      chartName: (total, clubs) =>
        `Bedarf je Runde: etwa ${total} volle Schläge nach dem Carry, den sie verlangen, daneben ${count(clubs, 'Schläger', 'Schläger')} des Bags. Die Tabelle darunter hat dieselben Zahlen.`,
      axisClubs: 'Schläger',
      axisShots: 'Schläge je Runde',
      allTee: (shots) => `${shots}, vom Tee`,
      ofTee: (shots, tee) => `${shots}, davon ${tee} vom Tee`,
      interval: (low, high, unit) => `${low} bis ${high} ${unit}`,
      hardly: (little) => `unter ${little}`,
      reading: ({ range, shots, tee, clubs }) =>
        `${range}: ${shots} Schläge je Runde${tee === null ? '' : `, davon ${tee} vom Tee`}. ${clubs === null ? 'Kein Schläger des Bags trägt so weit.' : `So weit: ${clubs}.`}`,
      note: (source) =>
        `Gerechnet mit: ${source}. Seiten, Hindernisse, Wind, gewolltes Vorlegen und das kurze Spiel bleiben außer Acht. Ein Balken mit Riss ist länger als gezeichnet.`,
      columns: {
        carry: (unit) => `Carry in ${unit}`,
        shots: 'Schläge je Runde',
        tee: 'Davon vom Tee',
        clubs: 'Schläger des Bags',
      },
      noClub: 'keiner',
      total: 'Alle',
    },

    flight: {
      heading: 'Wie sie fliegen',
      title: 'Höhe über Weite',
      units: (unit, times) =>
        times === 1
          ? `${unit}, Höhe und Weite im selben Maßstab`
          : `${unit}, Höhen ${String(times)}-mal so groß gezeichnet wie Weiten`,
      chartName: (clubs) =>
        `Flug von ${clubs}: Höhe über Weite, und die Spanne jedes Carrys. Die Tabelle darunter hat dieselben Zahlen.`,
      axis: (unit) => `Weite, ${unit}`,
      height: (unit) => `Höhe, ${unit}`,
      apex: 'Scheitel',
      lands: 'landet mit',
      reading: (flight) =>
        `${flight.club}: Carry ${flight.carry} (${flight.range}), Scheitel etwa ${flight.apex} (${flight.apexRange}), landet mit etwa ${flight.land}° (${flight.landRange}); ${flight.from}.`,
      from: {
        launch: 'aus dem gemessenen Abflug',
        loft: 'aus Loft und Carry berechnet',
        'usual loft': 'aus dem üblichen Loft seines Namens und dem Carry berechnet',
      },
      note: (temperature, altitude) =>
        `Ruhige Luft von ${temperature} °C, ${altitude} m über dem Meer. Der Flug des üblichen Schlags nach dem Modell: durchgezogen aus einem gemessenen Abflug, gestrichelt aus dem Loft allein. Die Spannen gelten in etwa neun von zehn Fällen.`,
      choose: 'Gezeichnete Schläger',
      noneChosen: 'Kein Schläger ist zum Zeichnen gewählt.',
      without: (clubs) =>
        `Nicht gezeichnet, da kein Loft bekannt ist oder der Carry jenseits des Modells liegt: ${clubs}.`,
      columns: {
        club: 'Schläger',
        carry: (unit) => `Carry in ${unit}`,
        apex: (unit) => `Scheitel, ${unit}`,
        land: 'Landewinkel, °',
        from: 'Bekannt aus',
      },
    },
  },
};
