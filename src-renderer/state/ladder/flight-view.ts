import type { FlightAnswer } from '../../../src-main/contract/calls/answers/answers.ts';

export type Flight = FlightAnswer;

/** Few enough to be told apart at a glance. */
const SHOWN = 3;

/** The longest, the shortest and one in the middle of a ladder, by the order they are given in. */
export function shownAtFirst(ids: readonly string[]): string[] {
  if (ids.length <= SHOWN) return [...ids];
  return Array.from({ length: SHOWN }, (_, i) => Math.round((i * (ids.length - 1)) / (SHOWN - 1))).flatMap(
    (at) => ids[at] ?? [],
  );
}

/** The flights that are drawn, in the ladder's order. */
export function shownFlights(flights: readonly Flight[], ids: readonly string[]): Flight[] {
  return flights.filter(({ clubId }) => ids.includes(clubId));
}
