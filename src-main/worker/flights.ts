import type { BagFile } from '../contract/formats/bag-file.ts';
import type { CallResult } from '../contract/calls/index.ts';
import { bagFromFile } from '../contract/formats/read-bag.ts';
import { readerFor } from '../contract/reader.ts';
import { adviceWords } from '../domain/advice/words/index.ts';
import { clubFlight } from '../domain/player/ladder/club-flight.ts';
import { ownedLadder } from '../domain/player/ladder/ladder.ts';
import { playerModel } from '../domain/player/model.ts';
import type { BagTask } from './bag-task.ts';

/** The flight of each club of today's ladder, the longest first; those that cannot be flown are named apart. */
export function flightsOf(
  file: BagFile,
  { locale, reckoning }: Pick<BagTask, 'locale' | 'reckoning'> = {},
): CallResult<'answers.flight'> {
  const bag = bagFromFile(file);
  const model = playerModel(bag, reckoning?.air);
  const reader = readerFor(file.units);
  const words = adviceWords(locale);
  const clubs = new Map(bag.clubs.map((club) => [club.id, club]));
  const { temperatureC, altitudeM } = model.air;
  const answer: CallResult<'answers.flight'> = { air: { temperatureC, altitudeM }, flights: [], without: [] };
  for (const rung of ownedLadder(bag, model)) {
    const club = clubs.get(rung.clubId);
    if (!club) continue;
    const name = words.clubName(club);
    const flown = clubFlight(club, rung, model);
    if (flown === null) {
      answer.without.push({ clubId: club.id, name });
      continue;
    }
    const { from, apexRangeYd, landDeg, landRangeDeg } = flown;
    answer.flights.push({
      clubId: club.id,
      name,
      from,
      carry: reader.distance(rung.carryYd),
      low: reader.distance(rung.lowYd),
      high: reader.distance(rung.highYd),
      apex: reader.distance(flown.apexYd),
      apexRange: [reader.distance(apexRangeYd[0]), reader.distance(apexRangeYd[1])],
      landDeg: toTenth(landDeg),
      landRangeDeg: [toTenth(landRangeDeg[0]), toTenth(landRangeDeg[1])],
      points: flown.points.map(({ alongYd, heightYd }) => ({
        along: reader.distance(alongYd),
        height: reader.distance(heightYd),
      })),
    });
  }
  return answer;
}

const toTenth = (value: number) => Math.round(value * 10) / 10;
