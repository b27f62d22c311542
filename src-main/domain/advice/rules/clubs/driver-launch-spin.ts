import type { Archetype, Club } from '../../../bag/types.ts';
import { driverWindow, sideOf } from '../../../bag/driver-window.ts';
import type { BagView } from '../../bag-view/view.ts';
import type { Evidence } from '../../finding.ts';
import { asRightHanded } from './flex.ts';
import type { Rule } from '../rule.ts';

/** Where measured launch and spin lie against the window for the ball speed; 0 also where a figure is missing. */
export type DriverSides = { club: Club; launch: -1 | 0 | 1; spin: -1 | 0 | 1; ballSpeedMph: number };

/** The driver's measured delivery; null without a driver, its ball speed, or either figure: cannot tell. */
export function driverSides({ bag }: Pick<BagView, 'bag'>): DriverSides | null {
  const club = bag.clubs.find(
    (one) =>
      one.kind === 'driver' &&
      one.ballSpeedMph !== undefined &&
      (one.launchDeg !== undefined || one.spinRpm !== undefined),
  );
  if (club?.ballSpeedMph === undefined) return null;
  const window = driverWindow(club.ballSpeedMph);
  return {
    club,
    ballSpeedMph: club.ballSpeedMph,
    launch: club.launchDeg === undefined ? 0 : sideOf(club.launchDeg, window.launchDeg),
    spin: club.spinRpm === undefined ? 0 : sideOf(club.spinRpm, window.spinRpm),
  };
}

/** Penalty of a driver outside its window: both figures 120, one 60 (DESIGN §8). */
export function driverMisfit({ launch, spin }: Pick<DriverSides, 'launch' | 'spin'>): number {
  if (launch !== 0 && spin !== 0) return 120;
  return launch !== 0 || spin !== 0 ? 60 : 0;
}

/** Whether a head works against what is off: spin by its spin tier, launch by spin tier or a little more loft. */
export function headHelps({ launch, spin, club }: DriverSides, head: Archetype): boolean {
  if (spin > 0) return head.spinTier === 'low';
  if (spin < 0) return head.spinTier === 'high';
  if (launch > 0) return head.spinTier === 'low';
  if (launch < 0)
    return head.spinTier === 'high' || (club.loftDeg !== undefined && head.loftDeg > club.loftDeg);
  return true;
}

/** Measured launch or spin outside the window for the ball speed: head, shaft and technique all have a share. */
export const driverLaunchSpin: Rule = (view) => {
  const sides = driverSides(view);
  if (!sides || driverMisfit(sides) === 0) return [];
  const { bag, catalogue, name, words, reader } = view;
  const { club, launch, spin, ballSpeedMph } = sides;
  const window = driverWindow(ballSpeedMph);
  const priced = new Set(bag.prices.map((price) => price.archetype));
  const better = catalogue.some(
    (one) => one.kind === 'driver' && priced.has(one.id) && headHelps(sides, one),
  );
  const left = (bag.player.miss ?? []).some((miss) => asRightHanded(miss, bag.player) === 'left');
  const evidence: Evidence[] = [
    { figure: words.figures.ballSpeed, value: reader.speed(ballSpeedMph), source: words.source('measured') },
  ];
  if (club.launchDeg !== undefined) {
    evidence.push({
      figure: words.figures.launch,
      value: club.launchDeg,
      range: [...window.launchDeg],
      source: words.figures.practice,
    });
  }
  if (club.spinRpm !== undefined) {
    evidence.push({
      figure: words.figures.spin,
      value: club.spinRpm,
      range: [...window.spinRpm],
      source: words.figures.practice,
    });
  }
  return [
    {
      kind: 'driver-launch-spin',
      clubs: [club.id],
      severity: driverMisfit(sides) === 120 ? 3 : 2,
      verdict: better && club.goTo !== true ? 'replace' : 'ask',
      text: words.driverLaunchSpin({ club: name(club.id), launch, spin, left }),
      evidence,
    },
  ];
};
