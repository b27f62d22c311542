import { readFileSync } from 'node:fs';
import constants from '../../data/flight-constants.json' with { type: 'json' };
import launchRows from '../../data/launch-rows.json' with { type: 'json' };
import tour from '../../data/tour-averages.json' with { type: 'json' };

export { constants };

/**
 * The 23 rows of the published tour averages, older editions: men [S] (height and landing mostly [M]), women [M].
 * Carry, height and landing are the monitor's own calculation.
 */
export const tourRows = tour.tables.flatMap((table) =>
  table.rows.map((row) => ({ ...row, tour: table.id === 'men_old' ? ('men' as const) : ('women' as const) })),
);

/** Governing bodies' launch conditions with the carry that an earlier implementation of the same model gave. */
export const governingRows = launchRows.rows.flatMap((row) =>
  row.model_carry !== undefined && row.ball_speed !== undefined
    ? [
        {
          id: row.id,
          ballSpeedMph: row.ball_speed,
          launchDeg: row.launch,
          spinRpm: row.spin,
          carryYd: row.model_carry,
        },
      ]
    : [],
);

export type Shot = {
  club: string;
  ballSpeedMph: number;
  launchDeg: number;
  spinRpm: number;
  apexYd: number;
  carryYd: number;
};

/** 62 real shots of one player with one monitor [S, MIT licence beside the file]; weather unknown. */
export function realShots(): Shot[] {
  const text = readFileSync(new URL('../../../../db/demo/shots-one-bag.csv', import.meta.url), 'utf8');
  return text
    .trim()
    .split('\n')
    .slice(1)
    .map((line) => {
      const cells = line.split(',');
      const number = (column: number) => Number(cells[column]);
      return {
        club: cells[0]!,
        ballSpeedMph: number(2),
        launchDeg: number(3),
        spinRpm: number(4),
        apexYd: number(5),
        carryYd: number(6),
      };
    });
}
