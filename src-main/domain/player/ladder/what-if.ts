import type { Air } from '../../flight/air.ts';
import { airShift } from '../../flight/ladder/what-if.ts';
import type { Rung } from './ladder.ts';
import type { PlayerModel } from '../model.ts';

/**
 * The ladder as it would play in other air, yards: each carry and range times the model's own ratio for that club.
 * Nothing that is stored changes. Without a speed the ratio cannot be reckoned, and the ladder comes back as it is.
 */
export function ladderInAir(ladder: readonly Rung[], model: PlayerModel, air: Air): Rung[] {
  const speed = model.driverSpeedMph;
  if (speed === null) return [...ladder];
  return ladder.map((rung) => {
    if (rung.loftDeg === undefined) return rung;
    const club = { driverSpeedMph: speed, kind: rung.kind, loftDeg: rung.loftDeg };
    const shift = airShift(club, model.air, air);
    if (!shift.ok) return rung;
    const { factor } = shift;
    return {
      ...rung,
      carryYd: rung.carryYd * factor,
      lowYd: rung.lowYd * factor,
      highYd: rung.highYd * factor,
    };
  });
}
