import type { Answer } from '../contract/calls/answers/answers.ts';
import { fromYards, toYards, type DistanceUnit } from '../contract/units.ts';
import type { Advice } from '../domain/advice/advise.ts';
import { ENOUGH_CHANCE } from '../domain/advice/unknowns/chance.ts';
import { needIntervals } from '../domain/player/need/intervals.ts';
import type { Need } from '../domain/player/need/need.ts';
import { SHORT_GAME_YD } from '../domain/player/need/round.ts';

/** Width of an interval of need, in the reader's unit. */
const INTERVAL = 10;

/** Of ten of the reader's units each, from the shortest full shot to the longest carry. */
export function intervalsOf(
  need: Need,
  longestYd: number,
  unit: DistanceUnit,
): NonNullable<Answer['need']>['intervals'] {
  const shown = (yards: number) => fromYards(yards, unit) / INTERVAL;
  const first = Math.floor(shown(SHORT_GAME_YD));
  const last = Math.floor(shown(Math.max(SHORT_GAME_YD, longestYd)) + 1e-9) + 1;
  const edges = Array.from({ length: last - first + 1 }, (_, i) => (first + i) * INTERVAL);
  const counted = needIntervals(
    need,
    edges.map((edge) => toYards(edge, unit)),
  );
  return counted.map(({ shots, teeShots }, i) => ({
    low: edges[i] ?? 0,
    high: edges[i + 1] ?? 0,
    shots: toHundredth(shots),
    tee: toHundredth(teeShots),
  }));
}

/** What the plan's "now" stage may cost. */
export function costSpreadOf({ view, costSpread: spread }: Advice): Answer['costSpread'] {
  if (spread === null) return null;
  const { money } = view.reader;
  return {
    low: money(spread.lowMinor),
    high: money(spread.highMinor),
    enough: { share: ENOUGH_CHANCE, cost: money(spread.enoughMinor) },
    points: spread.points.map(({ minor, atMost }) => ({ cost: money(minor), atMost })),
  };
}

const toHundredth = (value: number) => Math.round(value * 100) / 100;
