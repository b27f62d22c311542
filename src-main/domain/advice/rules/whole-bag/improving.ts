import { handicapFigure, handicapText } from '../../../bag/handicap.ts';
import type { Player } from '../../../bag/types.ts';
import type { Rule } from '../rule.ts';

const FALLING_BY = 4; // common practice, no source

/** Whether the player is on the way to a handicap at least four better than now. */
export function isImproving({
  handicap,
  targetHandicap,
}: Pick<Player, 'handicap' | 'targetHandicap'>): boolean {
  return targetHandicap !== undefined && handicap - targetHandicap >= FALLING_BY;
}

/** A falling handicap: replacements for forgiveness alone wait until it is there; buying now is the other path. */
export const improving: Rule = ({ bag, reader, words }) => {
  const { handicap, targetHandicap } = bag.player;
  if (targetHandicap === undefined || !isImproving(bag.player)) return [];
  return [
    {
      kind: 'improving',
      clubs: [],
      severity: 1,
      verdict: 'wait',
      text: words.improving({
        now: handicapText(handicap, reader.numberText),
        target: handicapText(targetHandicap, reader.numberText),
      }),
      evidence: [
        {
          figure: words.figures.handicap,
          value: handicapFigure(handicap, reader.numberText),
          source: words.figures.playerSource,
        },
        {
          figure: words.figures.target,
          value: handicapFigure(targetHandicap, reader.numberText),
          source: words.figures.playerSource,
        },
      ],
    },
  ];
};
