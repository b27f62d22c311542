import type { Verdict } from '../../finding.ts';
import type { LongEndCause } from './long-end-cause.ts';
import { longEnd } from './long-end.ts';
import type { Rule } from '../rule.ts';

const VERDICT: Record<LongEndCause, Verdict> = {
  'flat-ball-speed': 'coach-first',
  'wide-spread': 'coach-first',
  'make-up': 'drop',
  unknown: 'ask',
  'odd-pair': 'ask',
};

/** Long gaps narrow while the short end is normal: delivery, set make-up, or not to be told yet. */
export const longEndFallsOff: Rule = (view) => {
  const found = longEnd(view);
  if (!found) return [];
  const { club, name, reader, words } = view;
  const ids = [...new Set(found.pairs.flatMap(({ longer, shorter }) => [longer.clubId, shorter.clubId]))];
  return [
    {
      kind: 'long-end-falls-off',
      clubs: ids,
      severity: found.cause === 'odd-pair' ? 1 : found.cause === 'unknown' ? 2 : 3,
      verdict: VERDICT[found.cause],
      text: words.longEnd({
        clubs: ids.map(name).join(', '),
        cause: found.cause,
        usual: reader.distanceText(found.usualYd),
      }),
      evidence: [
        ...found.pairs.map(({ longer, shorter, gapYd }) => ({
          figure: `${words.figures.gap}, ${name(longer.clubId)} – ${name(shorter.clubId)}`,
          value: reader.distance(gapYd),
          source: `${words.source(longer.source)} / ${words.source(shorter.source)}`,
        })),
        {
          figure: words.figures.usualGap,
          value: reader.distance(found.usualYd),
          source: words.figures.ladderSource,
        },
        ...ids.flatMap((id) => {
          const { ballSpeedMph } = club(id);
          return ballSpeedMph === undefined
            ? []
            : [
                {
                  figure: `${words.figures.ballSpeed}, ${name(id)}`,
                  value: reader.speed(ballSpeedMph),
                  source: words.source('measured'),
                },
              ];
        }),
      ],
    },
  ];
};
