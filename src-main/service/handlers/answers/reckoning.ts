import type { ConventionsFile } from '../../../contract/calls/answers/reckoning.ts';
import { jsonPath, RefusedInput, type Refusal } from '../../../contract/refusal.ts';
import { USUAL_CONVENTIONS } from '../../../domain/bag/conventions.ts';
import { updatePlayer } from '../../../../db/repositories/bags/players.ts';
import { deleteSetting, setSetting } from '../../../../db/repositories/settings.ts';
import type { Handlers, Subject } from '../../handler.ts';
import {
  AIR_KEY,
  CONVENTIONS_KEY,
  conventionsFile,
  readAir,
  readConventions,
} from '../../answers/reckoning.ts';
import { playerStep } from '../../records/steps.ts';

export const reckoningHandlers: Handlers<Subject<'limits'> | Subject<'air'>> = {
  'limits.read': ({ db }) => ({
    now: conventionsFile(readConventions(db)),
    usual: conventionsFile(USUAL_CONVENTIONS),
  }),
  'limits.set': {
    step: () => ({}),
    run: ({ db }, changes) => {
      const before = conventionsFile(readConventions(db));
      const { limits, longShare, tierUpTo, weights } = changes;
      const next = {
        limits: limits ?? before.limits,
        longShare: longShare ?? before.longShare,
        tierUpTo: tierUpTo ?? before.tierUpTo,
        weights: weights ?? before.weights,
      };
      refuseContradictions(next);
      if (isUsual(next)) deleteSetting(db, CONVENTIONS_KEY);
      else setSetting(db, CONVENTIONS_KEY, next);
      return null;
    },
  },
  'limits.reset': {
    step: () => ({}),
    run: ({ db }) => {
      deleteSetting(db, CONVENTIONS_KEY);
      return null;
    },
  },
  'air.read': ({ db }, { playerId }) => {
    const { air, from } = readAir(db, playerId);
    return { air: { temperatureC: air.temperatureC, altitudeM: air.altitudeM }, from };
  },
  'air.set': {
    step: ({ playerId }, { db }) => (playerId === null ? {} : playerStep(db, playerId)),
    run: ({ db }, { playerId, air }) => {
      if (playerId !== null) {
        updatePlayer(db, playerId, {
          airTemperatureC: air?.temperatureC ?? null,
          airAltitudeM: air?.altitudeM ?? null,
          // Back to the program's air in every part; a humidity of its own is left as it is.
          ...(air === null ? { airHumidity: null } : {}),
        });
      } else if (air === null) deleteSetting(db, AIR_KEY);
      else setSetting(db, AIR_KEY, air);
      return null;
    },
  },
};

function isUsual(conventions: ConventionsFile): boolean {
  const usual = conventionsFile(USUAL_CONVENTIONS);
  return (
    JSON.stringify(inOrder(conventions)) === JSON.stringify(inOrder(usual)) &&
    conventions.longShare === usual.longShare
  );
}

/** Keys come in the order that the caller wrote them. */
function inOrder({ limits, tierUpTo, weights }: ConventionsFile): number[] {
  return [
    ...limits.flatMap((row) => [row.fromMph, row.crowdedYd, row.wideYd, row.wideLongYd, row.firstPairYd]),
    ...tierUpTo,
    weights.wide,
    weights.crowd,
    weights.tier,
  ];
}

/** A pair cannot be crowded and wide at once, and the speeds of the rows are not the user's to move. */
function refuseContradictions({ limits, tierUpTo }: ConventionsFile): void {
  const refusals: Refusal[] = [];
  const refuse = (path: (string | number)[], value: number, message: string, remedy: string) =>
    refusals.push({ path: jsonPath(path), value: String(value), message, remedy });
  limits.forEach((row, i) => {
    const usual = USUAL_CONVENTIONS.limits[i];
    if (usual && row.fromMph !== usual.fromMph) {
      refuse(
        ['limits', i, 'fromMph'],
        row.fromMph,
        'the speed of a row stays as it is',
        `Write ${String(usual.fromMph)}.`,
      );
    }
    for (const key of ['wideYd', 'wideLongYd', 'firstPairYd'] as const) {
      if (row[key] > row.crowdedYd) continue;
      const message = `a gap cannot be wide from ${String(row[key])} yd and crowded under ${String(row.crowdedYd)} yd`;
      refuse(
        ['limits', i, key],
        row[key],
        message,
        'Make the wide limit larger, or the crowded one smaller first.',
      );
    }
  });
  tierUpTo.forEach((handicap, i) => {
    const before = tierUpTo[i - 1];
    if (before === undefined || handicap > before) return;
    refuse(
      ['tierUpTo', i],
      handicap,
      'the handicaps must rise from tier to tier',
      `Write more than ${String(before)}.`,
    );
  });
  if (refusals.length > 0) throw new RefusedInput('These limits cannot be kept:', refusals);
}
