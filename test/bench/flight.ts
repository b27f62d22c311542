import { PLAYER_AIR } from '../../src-main/domain/flight/air.ts';
import type { LadderClub } from '../../src-main/domain/flight/ladder/input.ts';
import type { LadderKind } from '../../src-main/domain/flight/kind.ts';
import { modelCarry } from '../../src-main/domain/flight/ladder/model.ts';

/** Times of one bench: milliseconds over `n` rounds after warm-up, and a checksum of the answers, taken outside the timing. */
export type FlightBench = {
  name: 'flight-14' | 'ladder-164';
  n: number;
  medianMs: number;
  p95Ms: number;
  maxMs: number;
  checksum: string;
};

const BAG: [LadderKind, number][] = [
  ['driver', 10.5],
  ['fairway', 15],
  ['fairway', 18],
  ['hybrid', 22],
  ['iron', 23],
  ['iron', 26],
  ['iron', 29],
  ['iron', 33],
  ['iron', 37],
  ['iron', 41],
  ['wedge', 45],
  ['wedge', 50],
  ['wedge', 55],
  ['wedge', 60],
];

/** 150 archetypes over the lofts that are made, every third with a spin tier of its own. */
function candidates(): [LadderKind, number, LadderClub['spinTier']][] {
  const spans: [LadderKind, number, number, number][] = [
    ['driver', 9, 14, 24],
    ['fairway', 13.5, 25, 32],
    ['hybrid', 17, 31, 30],
    ['iron', 18, 44, 40],
    ['wedge', 44, 62, 24],
  ];
  return spans.flatMap(([kind, from, to, count]) =>
    Array.from({ length: count }, (_, i): [LadderKind, number, LadderClub['spinTier']] => [
      kind,
      from + ((to - from) * i) / (count - 1),
      (['mid', 'low', 'high'] as const)[i % 3],
    ]),
  );
}

/** Sum of the carries for one driver speed: what is timed, and what the checksum is made of. */
function ladder(clubs: readonly LadderClub[], driverSpeedMph: number): number {
  let sum = 0;
  for (const club of clubs) {
    const got = modelCarry({ ...club, driverSpeedMph, air: PLAYER_AIR });
    if (!got.ok) throw new Error(got.message);
    sum += got.carryYd;
  }
  return sum;
}

function bench(name: FlightBench['name'], clubs: readonly LadderClub[], n: number): FlightBench {
  // A different speed each round, so that no answer can be remembered.
  const speedOf = (round: number) => 70 + (round % 41);
  for (let round = 0; round < 41; round += 1) ladder(clubs, speedOf(round));
  const times: number[] = [];
  for (let round = 0; round < n; round += 1) {
    const start = performance.now();
    ladder(clubs, speedOf(round));
    times.push(performance.now() - start);
  }
  times.sort((a, b) => a - b);
  const at = (share: number) => times[Math.min(n - 1, Math.floor(share * n))]!;
  return {
    name,
    n,
    medianMs: at(0.5),
    p95Ms: at(0.95),
    maxMs: times[n - 1]!,
    checksum: ladder(clubs, 93).toFixed(3),
  };
}

/** The goals: 14 clubs from speed to landing ≤ 1.5 ms; the same with 150 archetypes ≤ 20 ms. */
export function benchFlight(rounds = 400): FlightBench[] {
  const bag = BAG.map(([kind, loftDeg]): LadderClub => ({ driverSpeedMph: 93, kind, loftDeg }));
  const all = [
    ...bag,
    ...candidates().map(([kind, loftDeg, spinTier]): LadderClub => ({
      driverSpeedMph: 93,
      kind,
      loftDeg,
      spinTier,
    })),
  ];
  return [bench('flight-14', bag, rounds), bench('ladder-164', all, Math.ceil(rounds / 4))];
}
