import type { BesideBag } from '../contract/calls/answers/beside.ts';
import type { Units } from '../contract/primitives.ts';
import { RefusedInput, type Refusal } from '../contract/refusal.ts';
import { clubShortName, loftOf } from '../domain/player/typical-loft.ts';
import { answerBag } from './answer.ts';
import { markOf } from './answer-view.ts';
import type { BagTask } from './bag-task.ts';

/** What a bag's records do not tell of it. */
export type BesideView = Pick<BesideBag, 'clubs' | 'ladder' | 'marks' | 'findings' | 'speed' | 'air'>;

export type BesideTask = BagTask & {
  /** To print distances and speeds in, whatever the bag's own are. */
  shownIn: Pick<Units, 'distance' | 'speed'>;
};

/** Refusals as data, as every outcome of a worker. */
export type BesideOutcome =
  { ok: true; view: BesideView } | { ok: false; message: string; refusals: Refusal[] };

/** One bag as it is set beside another: no plan is told, though findings are settled by one, as on the bag's own pages. */
export function beside(task: BesideTask): BesideOutcome {
  try {
    return { ok: true, view: besideView(task) };
  } catch (error) {
    if (!(error instanceof RefusedInput)) throw error;
    const message = `${task.file.player.name}: ${error.message}`;
    return { ok: false, message, refusals: [...error.refusals] };
  }
}

/** @throws RefusedInput for a bag that cannot be planned. */
export function besideView({ file, catalogue, shownIn, ...options }: BesideTask): BesideView {
  const { advice, plan } = answerBag(file, catalogue, {
    ...options,
    shownIn,
    withInstance: false,
    isBrief: true,
  });
  const { view } = advice;
  const { driverSpeedMph, speedFrom, air } = view.model;
  return {
    clubs: view.bag.clubs.map((club) => {
      const loft = loftOf(club, view.bag.clubs);
      return {
        id: club.id,
        name: view.name(club.id),
        kind: club.kind,
        short: clubShortName(club),
        loftDeg: loft?.loftDeg ?? null,
        loftAssumed: loft?.assumed ?? false,
      };
    }),
    ladder: plan.ladder,
    marks: view.pairs.flatMap((pair) => markOf(view, pair)),
    findings: plan.findings,
    speed: {
      value: driverSpeedMph === null ? null : view.reader.speed(driverSpeedMph),
      from: speedFrom,
    },
    air: { temperatureC: air.temperatureC, altitudeM: air.altitudeM },
  };
}
