import { scaleLinear } from 'd3-scale';
import { curveMonotoneX, line } from 'd3-shape';
import type { Flight } from '../../state/ladder/flight-view.ts';
import { LETTER_PX, shortened } from '../frame/text-fit.ts';

/** Height of a club's line below the ground. */
export const FLIGHT_ROW_PX = 42;
export const FLIGHT_AXIS_PX = 26;
const TOP_PX = 44;
/** A name over an apex: its room and its height, and the mark between the two. */
const NAME_PX = 130;
const NAME_HEIGHT_PX = 16;
const APEX_PX = 12;
const MARK_PX = 10;
const SIDE_PX = 18;
/** Left of the curves, for the figures of height. */
const HEIGHTS_PX = 34;
/** Curves are flat: their heights are drawn so many times as large as their distances, for about this height. */
const WANTED_PX = 170;
const MOST_TIMES = 4;

export type FlightGeometry = {
  width: number;
  height: number;
  /** Where the ground is, and how many times heights are enlarged. */
  groundY: number;
  times: number;
  distanceTicks: { value: number; x: number }[];
  heightTicks: { value: number; y: number }[];
  flights: {
    id: string;
    path: string;
    apex: { x: number; y: number };
    /** The club's name over its apex; null where another's stands. */
    name: { text: string; x: number } | null;
    /** The club's own line below the ground: its carry with the 90 % range. */
    y: number;
    x1: number;
    x: number;
    x2: number;
    isModelled: boolean;
  }[];
};

/**
 * Where everything of the flight profiles stands, in px: distance across, height upwards, and below the ground a line
 * a club with the range of its carry.
 * @param widthPx of the drawing; narrower ones than 160 px are drawn at 160.
 */
export function flightGeometry(flights: readonly Flight[], widthPx: number): FlightGeometry {
  const width = Math.max(160, widthPx);
  const farthest = Math.max(
    1,
    ...flights.map((flight) => Math.max(flight.high, flight.points.at(-1)?.along ?? 0)),
  );
  const highest = Math.max(1, ...flights.map((flight) => flight.apex));
  const x = scaleLinear()
    .domain([0, farthest])
    .range([HEIGHTS_PX, width - SIDE_PX]);
  const pxPerUnit = (width - SIDE_PX - HEIGHTS_PX) / farthest;
  const times = Math.min(MOST_TIMES, Math.max(1, Math.round(WANTED_PX / (highest * pxPerUnit))));
  const groundY = TOP_PX + highest * pxPerUnit * times;
  const y = scaleLinear().domain([0, highest]).range([groundY, TOP_PX]);
  const curve = line<{ along: number; height: number }>()
    .x((point) => x(point.along))
    .y((point) => y(point.height))
    .curve(curveMonotoneX)
    .digits(1);
  const apexes = flights.map((flight) => apexOf(flight, x, y));
  const names = namesOver(flights, apexes, width);
  return {
    width,
    height: groundY + FLIGHT_AXIS_PX + flights.length * FLIGHT_ROW_PX,
    groundY,
    times,
    distanceTicks: x.ticks(Math.max(2, Math.floor(width / 90))).map((value) => ({ value, x: x(value) })),
    heightTicks: y.ticks(4).map((value) => ({ value, y: y(value) })),
    flights: flights.map((flight, i) => ({
      id: flight.clubId,
      path: curve(flight.points) ?? '',
      apex: apexes[i] ?? { x: 0, y: 0 },
      name: names[i] ?? null,
      y: groundY + FLIGHT_AXIS_PX + (i + 0.5) * FLIGHT_ROW_PX,
      x1: x(flight.low),
      x: x(flight.carry),
      x2: x(flight.high),
      isModelled: flight.from !== 'launch',
    })),
  };
}

type Box = { left: number; right: number; top: number; bottom: number };

const touch = (a: Box, b: Box) =>
  a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;

/** Each where it touches neither another's mark nor a name before it. */
function namesOver(
  flights: readonly Flight[],
  apexes: readonly { x: number; y: number }[],
  width: number,
): ({ text: string; x: number } | null)[] {
  const marks = apexes.map(({ x, y }) => ({
    left: x - MARK_PX / 2,
    right: x + MARK_PX / 2,
    top: y - APEX_PX,
    bottom: y,
  }));
  const taken: Box[] = [];
  return apexes.map((apex, i) => {
    const text = shortened(flights[i]?.name ?? '', NAME_PX);
    const half = (text.length * LETTER_PX) / 2;
    const x = Math.min(Math.max(apex.x, HEIGHTS_PX + half), width - half);
    const bottom = apex.y - APEX_PX;
    const box = { left: x - half, right: x + half, top: bottom - NAME_HEIGHT_PX, bottom };
    if (taken.some((one) => touch(one, box)) || marks.some((one, j) => j !== i && touch(one, box)))
      return null;
    taken.push(box);
    return { text, x };
  });
}

/** Above the highest of the points, which is at most a tenth of a second from the apex itself. */
function apexOf(
  { points, apex }: Flight,
  x: (value: number) => number,
  y: (value: number) => number,
): { x: number; y: number } {
  const top = points.reduce(
    (best, point) => (point.height > best.height ? point : best),
    points[0] ?? { along: 0, height: 0 },
  );
  return { x: x(top.along), y: y(apex) };
}
