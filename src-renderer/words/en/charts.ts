import { count } from './plural.ts';

/** What stands in and around the charts. */
export const charts = {
  charts: {
    read: (chart: string) => `Read figures: ${chart}`,
    unread: 'nothing read yet',
    readHint: 'Point at the drawing, or press the arrow keys here, to read its figures.',
    table: 'The same as a table',

    ladder: { title: 'Carry ladder' },
    overlay: {
      title: 'Two ladders',
      on: { left: 'on the left page', right: 'on the right page', both: 'on both pages' },
    },
    spend: {
      title: 'Spend curve',
      reading: (cost: string, mended: string, buys: string, where: string) =>
        `${cost} mends ${mended}: ${buys}${where}.`,
      isPlan: ', the plan',
      within: ', within the budget',
      beyond: ', beyond the budget',
    },
    gapBelow: (gap: string, said: string) => `gap to the next ${gap}, ${said}`,

    band: {
      title: (club: string) => `Price band: ${club}`,
      units: (currency: string, condition: string) => `${currency}, for a club that is ${condition}`,
      chartName: (club: string, low: string, likely: string, high: string, notes: number) =>
        `Price band of ${club}: low ${low}, likely ${likely}, high ${high}, from ${count(notes, 'note', 'notes')}. The table below has the same figures.`,
      band: 'Band',
      parts: 'low, likely, high',
      note: (n: string) => `Note ${n}`,
      stale: 'stale',
      outlier: 'too far from the others, not counted',
      outlierShort: 'not counted',
      shareShort: (share: string) => `counts ${share}`,
      share: (share: string) => `${share} of the band`,
      seen: (day: string) => `seen ${day}`,
      written: (day: string) => `noted ${day}, day not given`,
      readBand: (club: string, low: string, likely: string, high: string) =>
        `${club}: likely ${likely}, from ${low} to ${high}.`,
      readNote: (note: {
        number: string;
        day: string;
        isSeen: boolean;
        low: string;
        likely: string;
        high: string;
        said: string;
      }) =>
        `Note ${note.number}, ${note.isSeen ? 'seen' : 'noted'} ${note.day}: likely ${note.likely}, from ${note.low} to ${note.high}; ${note.said}.`,
      columns: { which: 'Which', day: 'Day', counts: 'Counts' },
    },

    chance: {
      heading: 'What it may cost',
      title: 'Chance that a sum is enough for the plan',
      units: (currency: string) => `${currency} across, chance upwards`,
      chartName: (enough: string, likely: string, budget: string) =>
        `Chance of cost. ${[enough, likely, budget].filter((part) => part !== '').join('. ')}. The table below has the same figures.`,
      axisCost: 'sum',
      enough: (sum: string, share: string) => `${sum} is enough, ${share} sure`,
      likely: (sum: string) => `the plan at likely prices: ${sum}`,
      budget: (sum: string, share: string) => `budget ${sum}: ${share}`,
      reading: (sum: string, share: string) => `${sum} is enough with a chance of ${share}.`,
      noteNet:
        'Each price is taken as a band from low to high that is likeliest at likely, apart from the others. Money from sales is taken off.',
      noteCash:
        'Each price is taken as a band from low to high that is likeliest at likely, apart from the others. Money from sales is not counted.',
      sure: (sum: string) =>
        `${sum}, with no doubt about it: every price in the plan is one figure, not a band.`,
      columns: { cost: 'Sum', chance: 'Chance that it is enough', which: 'Which' },
      which: {
        enough: 'surely enough, four times in five',
        likely: 'at likely prices',
        budget: 'the budget',
      },
    },

    need: {
      heading: 'What a round asks for',
      title: 'Full shots a round, by the carry they want',
      units: (unit: string) => `carry in ${unit}, longest on top; hatched: from the tee`,
      chartName: (total: string, clubs: number) =>
        `Need per round: about ${total} full shots by the carry they want, with ${count(clubs, 'club', 'clubs')} of the bag beside it. The table below has the same figures.`,
      axisClubs: 'clubs',
      axisShots: 'shots a round',
      allTee: (shots: string) => `${shots}, from the tee`,
      ofTee: (shots: string, tee: string) => `${shots}, ${tee} from the tee`,
      interval: (low: string, high: string, unit: string) => `${low} to ${high} ${unit}`,
      hardly: (little: string) => `under ${little}`,
      reading: ({
        range,
        shots,
        tee,
        clubs,
      }: {
        range: string;
        shots: string;
        tee: string | null;
        clubs: string | null;
      }) =>
        `${range}: ${shots} shots a round${tee === null ? '' : `, ${tee} of them from the tee`}. ${clubs === null ? 'No club of the bag carries that.' : `Carried by ${clubs}.`}`,
      note: (source: string) =>
        `Reckoned from: ${source}. Sides, hazards, wind, lay-ups by choice and the short game are left out. A bar with a tear is longer than it is drawn.`,
      columns: {
        carry: (unit: string) => `Carry, ${unit}`,
        shots: 'Shots a round',
        tee: 'From the tee',
        clubs: 'Clubs of the bag',
      },
      noClub: 'none',
      total: 'All',
    },

    flight: {
      heading: 'How they fly',
      title: 'Height over distance',
      units: (unit: string, times: number) =>
        times === 1
          ? `${unit}, height and distance to one scale`
          : `${unit}, heights drawn ${String(times)} times as large as distances`,
      chartName: (clubs: string) =>
        `Flight of ${clubs}: height over distance, and the range of each carry. The table below has the same figures.`,
      axis: (unit: string) => `distance, ${unit}`,
      height: (unit: string) => `height, ${unit}`,
      apex: 'apex',
      lands: 'lands at',
      reading: (flight: {
        club: string;
        carry: string;
        range: string;
        apex: string;
        apexRange: string;
        land: string;
        landRange: string;
        from: string;
      }) =>
        `${flight.club}: carry ${flight.carry} (${flight.range}), apex about ${flight.apex} (${flight.apexRange}), lands at about ${flight.land}° (${flight.landRange}); ${flight.from}.`,
      from: {
        launch: 'from its measured launch',
        loft: 'modelled from loft and carry',
        'usual loft': 'modelled from the usual loft of its name, and carry',
      },
      note: (temperature: string, altitude: string) =>
        `Calm air of ${temperature} °C, ${altitude} m above the sea. The model’s flight of the usual shot: a full line from a measured launch, a dashed one from loft alone. Ranges hold about nine times in ten.`,
      choose: 'Clubs drawn',
      noneChosen: 'No club is chosen to be drawn.',
      without: (clubs: string) =>
        `Not drawn, since no loft is known or the carry is beyond the model: ${clubs}.`,
      columns: {
        club: 'Club',
        carry: (unit: string) => `Carry, ${unit}`,
        apex: (unit: string) => `Apex, ${unit}`,
        land: 'Landing angle, °',
        from: 'Known from',
      },
    },
  },
};
