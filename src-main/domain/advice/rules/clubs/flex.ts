import { flexFit, flexSpeeds, type FlexFit } from '../../../bag/flex.ts';
import type { Miss, Player } from '../../../bag/types.ts';
import type { Rule } from '../rule.ts';

/** Misses that go with a flex that is off, for a right-handed player. Common practice, no source. */
const MISSES: Record<Exclude<FlexFit, 'fits'>, readonly Miss[]> = {
  'too-soft': ['left', 'high'],
  'too-stiff': ['right', 'low'],
};

/** The miss as a right-handed player would tell it. */
export function asRightHanded(miss: Miss, { handed }: Pick<Player, 'handed'>): Miss {
  if (handed === 'right') return miss;
  return miss === 'left' ? 'right' : miss === 'right' ? 'left' : miss;
}

/** The driver's flex lies outside its speeds, more so with a miss that fits: a fitter's question. */
export const flex: Rule = ({ bag, model, name, words, reader }) => {
  const driver = bag.clubs.find((club) => club.kind === 'driver' && club.flex !== undefined);
  const speed = model.driverSpeedMph;
  // A speed reckoned back from carries already holds what the shaft does: only a given one tells.
  if (!driver?.flex || speed === null || model.speedFrom !== 'given') return [];
  const fit = flexFit(driver.flex, speed);
  if (fit === 'fits') return [];
  const miss = (bag.player.miss ?? []).some((one) => MISSES[fit].includes(asRightHanded(one, bag.player)));
  const [low, high] = flexSpeeds(driver.flex);
  return [
    {
      kind: 'flex',
      clubs: [driver.id],
      severity: miss ? 2 : 1,
      verdict: 'ask',
      text: words.flex({
        club: name(driver.id),
        flex: driver.flex,
        fit,
        speed: reader.speedText(speed),
        miss,
      }),
      evidence: [
        {
          figure: words.figures.speed,
          value: reader.speed(speed),
          ...(Number.isFinite(high)
            ? { range: [reader.speed(low), reader.speed(high)] as [number, number] }
            : {}),
          source: words.figures.practice,
        },
        { figure: words.figures.flex, value: driver.flex, source: words.figures.playerSource },
      ],
    },
  ];
};
