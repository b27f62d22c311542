// Writes db/demo/range-bag.json from the measured shots in db/demo/shots-one-bag.csv (licence beside it).
// Means, standard deviations and counts are the file's own; everything else is typical or invented, and says so.
import { readFileSync, writeFileSync } from 'node:fs';

const folder = new URL('../db/demo/', import.meta.url);
const [head, ...lines] = readFileSync(new URL('shots-one-bag.csv', folder), 'utf8').trim().split('\n');
const columns = head.trim().split(',');
const rows = lines.map((line) =>
  Object.fromEntries(
    line
      .trim()
      .split(',')
      .map((cell, i) => [columns[i], cell]),
  ),
);

const round = (value, digits) => Number(value.toFixed(digits));
const mean = (values) => values.reduce((sum, value) => sum + value, 0) / values.length;
function sd(values) {
  const middle = mean(values);
  return Math.sqrt(values.reduce((sum, value) => sum + (value - middle) ** 2, 0) / (values.length - 1));
}

function measured(name) {
  const shots = rows.filter((row) => row.club === name);
  const of = (column) => shots.map((row) => Number(row[column]));
  return {
    carry: round(mean(of('carry_yd')), 1),
    carrySd: round(sd(of('carry_yd')), 1),
    shots: shots.length,
    ballSpeed: round(mean(of('ball_speed_mph')), 1),
    launchDeg: round(mean(of('launch_deg')), 1),
    spinRpm: Math.round(mean(of('spin_rpm'))),
  };
}

// [id, kind, label, typical loft, name in the shots file or null, set]
const clubs = [
  ['driver', 'driver', 'driver', 10.5, 'Driver'],
  ['3w', 'fairway', '3-wood', 15, '3 Wood'],
  ['5w', 'fairway', '5-wood', 18, '5 Wood'],
  ['3i', 'iron', '3-iron', 20.5, '3 Iron', 'irons'],
  ['4i', 'iron', '4-iron', 23.5, null, 'irons'],
  ['5i', 'iron', '5-iron', 26.5, '5 Iron', 'irons'],
  ['6i', 'iron', '6-iron', 30, null, 'irons'],
  ['7i', 'iron', '7-iron', 33, '7 Iron', 'irons'],
  ['8i', 'iron', '8-iron', 37, null, 'irons'],
  ['9i', 'iron', '9-iron', 41, '9 Iron', 'irons'],
  ['pw', 'iron', 'PW', 46, null, 'irons'],
  ['gw', 'wedge', 'GW', 50, 'G-Wedge'],
  ['sw', 'wedge', 'SW', 55, null],
  ['lw', 'wedge', 'LW', 59, 'L-Wedge'],
  ['putter', 'putter', 'putter', 3, null],
];

const bag = {
  format: 'loftledger-bag',
  version: 1,
  player: {
    name: 'Range bag (carries from real shots; person, lofts and prices invented)',
    handicap: 8,
    handed: 'right',
    ground: 'soft',
    missNote:
      'Carries of the hit clubs are means of measured shots (shots-one-bag.csv, MIT). Clubs without carry were not hit. Lofts are typical, handicap and prices invented.',
  },
  units: { distance: 'yd', speed: 'mph', currency: 'USD' },
  clubs: clubs.map(([id, kind, label, loftDeg, name, set]) => ({
    id,
    kind,
    label,
    loftDeg,
    ...(name ? measured(name) : {}),
    ...(set ? { set } : {}),
  })),
  sets: [{ id: 'irons' }],
  prices: [
    ['hybrid-19-t2', 55, 75, 95],
    ['hybrid-22-t2', 50, 70, 90],
    ['fairway-21-t2', 60, 80, 110],
    ['iron-18-t2-low', 50, 70, 95],
    ['wedge-46-t2', 25, 40, 55],
    ['wedge-48-t2', 30, 45, 60],
    ['wedge-54-t2', 30, 45, 65],
    ['wedge-56-t2', 30, 45, 65],
    ['irons-4-pw-33-t2', 240, 300, 380],
  ].map(([archetype, low, likely, high]) => ({ archetype, low, likely, high, seen: '2026-11-01' })),
  costs: { delivery: 12, regrip: 10, sellFeePercent: 10, sellPostage: 12 },
  budget: { amount: 200 },
};

writeFileSync(new URL('range-bag.json', folder), `${JSON.stringify(bag, null, 1)}\n`);
