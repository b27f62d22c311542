import { centredCarryYd } from '../../../player/carry-model.ts';
import { clubShortName } from '../../../player/typical-loft.ts';
import type { BagView } from '../../bag-view/view.ts';
import { driverMisfit, driverSides } from './driver-launch-spin.ts';
import type { Rule } from '../rule.ts';

/** Driver carry over the carry of a 33° 7-iron: common practice, no source (the reference ladder has 1.53–1.56). */
const USUAL_RATIO = 1.55;
const TOLERANCE = 0.1;
const STANDARD_SEVEN_DEG = 33;

/** Driver and loft-corrected 7-iron carry in yards, where the player gave both; else null: cannot tell. */
export function driverAgainstSeven({ bag, model }: Pick<BagView, 'bag' | 'model'>): {
  driver: string;
  seven: string;
  driverYd: number;
  sevenYd: number;
  ratio: number;
} | null {
  const driver = bag.clubs.find((club) => club.kind === 'driver' && club.carryYd !== undefined);
  const seven = bag.clubs.find(
    (club) => club.kind === 'iron' && clubShortName(club) === '7i' && club.carryYd !== undefined,
  );
  const speed = model.driverSpeedMph;
  if (
    driver?.carryYd === undefined ||
    seven?.carryYd === undefined ||
    seven.loftDeg === undefined ||
    speed === null
  ) {
    return null;
  }
  const centred = (loftDeg: number) => centredCarryYd({ kind: 'iron', loftDeg }, speed, model.air);
  const sevenYd = (seven.carryYd * centred(STANDARD_SEVEN_DEG)) / centred(seven.loftDeg);
  return {
    driver: driver.id,
    seven: seven.id,
    driverYd: driver.carryYd,
    sevenYd,
    ratio: driver.carryYd / sevenYd,
  };
}

/** The driver carries more than 10 % less, or more, than the 7-iron lets expect: delivery, fit or both. */
export const driverBehindIrons: Rule = (view) => {
  const found = driverAgainstSeven(view);
  if (!found || Math.abs(found.ratio / USUAL_RATIO - 1) <= TOLERANCE) return [];
  const { name, reader, words } = view;
  const sides = driverSides(view);
  const measured =
    sides !== null && sides.club.launchDeg !== undefined && sides.club.spinRpm !== undefined ? sides : null;
  const fitIsFine = measured !== null && driverMisfit(measured) === 0;
  const expectedYd = USUAL_RATIO * found.sevenYd;
  return [
    {
      kind: 'driver-behind-irons',
      clubs: [found.driver, found.seven],
      severity: 2,
      verdict: fitIsFine ? 'coach-first' : 'ask',
      text: words.driverBehindIrons({
        club: name(found.driver),
        by: reader.distanceText(Math.abs(found.driverYd - expectedYd)),
        behind: found.ratio < USUAL_RATIO,
        fitIsFine,
      }),
      evidence: [
        {
          figure: `${words.figures.carry}, ${name(found.driver)}`,
          value: reader.distance(found.driverYd),
          source: words.figures.playerSource,
        },
        {
          figure: words.figures.expected,
          value: reader.distance(expectedYd),
          range: [
            reader.distance(expectedYd * (1 - TOLERANCE)),
            reader.distance(expectedYd * (1 + TOLERANCE)),
          ],
          source: words.figures.practice,
        },
      ],
    },
  ];
};
