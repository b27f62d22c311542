import {
  airSchema,
  conventionsSchema,
  type ConventionsFile,
} from '../../contract/calls/answers/reckoning.ts';
import type { Reckoning } from '../../domain/advice/bag-view/reckoning.ts';
import { USUAL_CONVENTIONS, type Conventions } from '../../domain/bag/conventions.ts';
import { PLAYER_AIR, type Air } from '../../domain/flight/air.ts';
import { readPlayer } from '../../../db/repositories/bags/players.ts';
import { getSetting } from '../../../db/repositories/settings.ts';
import type { Db } from '../../../db/sqlite.ts';

export const CONVENTIONS_KEY = 'reckoning.conventions';
export const AIR_KEY = 'reckoning.air';

/** The user's limits and weights; what was never set, or cannot be read, is common practice. */
export function readConventions(db: Db): Conventions {
  const stored = conventionsSchema.partial().safeParse(getSetting(db, CONVENTIONS_KEY) ?? {});
  if (!stored.success) return USUAL_CONVENTIONS;
  const { limits, longShare, tierUpTo, weights } = stored.data;
  return {
    limits: limits ?? USUAL_CONVENTIONS.limits,
    longShare: longShare ?? USUAL_CONVENTIONS.longShare,
    tierUpTo: tierUpTo ?? USUAL_CONVENTIONS.tierUpTo,
    weights: weights ?? USUAL_CONVENTIONS.weights,
  };
}

export function conventionsFile({ limits, tierUpTo, ...rest }: Conventions): ConventionsFile {
  return { ...rest, limits: limits.map((row) => ({ ...row })), tierUpTo: [...tierUpTo] };
}

export type AirFrom = { air: Air; from: 'player' | 'program' | 'usual' };

/** The player's own air, else the program's, else the usual; each part by itself. @throws StorageError 'missing' */
export function readAir(db: Db, playerId: number | null): AirFrom {
  const set = airOfProgram(db);
  const general = { ...PLAYER_AIR, ...set };
  const from = set === null ? 'usual' : 'program';
  if (playerId === null) return { air: general, from };
  const { airTemperatureC, airHumidity, airAltitudeM } = readPlayer(db, playerId);
  const own = airTemperatureC !== undefined || airHumidity !== undefined || airAltitudeM !== undefined;
  return {
    air: {
      temperatureC: airTemperatureC ?? general.temperatureC,
      humidity: airHumidity ?? general.humidity,
      altitudeM: airAltitudeM ?? general.altitudeM,
    },
    from: own ? 'player' : from,
  };
}

function airOfProgram(db: Db): { temperatureC: number; altitudeM: number } | null {
  const stored = airSchema.safeParse(getSetting(db, AIR_KEY));
  return stored.success ? stored.data : null;
}

export function readReckoning(db: Db, playerId: number): Reckoning {
  return { conventions: readConventions(db), air: readAir(db, playerId).air };
}
