import type { Rule } from '../rule.ts';

const SLOW_MPH = 90; // common practice, no source
const SAME_IN = 0.25;
const FEWEST = 3;

/** Irons of one length in slow hands: the long ones may not fly high enough. */
export const oneLength: Rule = ({ bag, model, words, reader }) => {
  const irons = bag.clubs.filter((club) => club.kind === 'iron' && club.lengthIn !== undefined);
  const lengths = irons.map((club) => club.lengthIn ?? 0);
  const speed = model.driverSpeedMph;
  if (irons.length < FEWEST || speed === null || speed >= SLOW_MPH) return [];
  if (Math.max(...lengths) - Math.min(...lengths) > SAME_IN) return [];
  return [
    {
      kind: 'one-length',
      clubs: irons.map((club) => club.id),
      severity: 1,
      verdict: 'keep',
      text: words.oneLength({ speed: reader.speedText(speed) }),
      evidence: [
        { figure: words.figures.length, value: lengths[0] ?? 0, source: words.figures.playerSource },
        {
          figure: words.figures.speed,
          value: reader.speed(speed),
          source: words.speedSource(model.speedFrom),
        },
      ],
    },
  ];
};
