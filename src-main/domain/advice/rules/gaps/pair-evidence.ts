import { gapNeed } from '../../../player/need/need.ts';
import type { Evidence } from '../../finding.ts';
import type { BagView, Pair } from '../../bag-view/view.ts';

/** 90 % of a normal lies within this many standard deviations. */
const Z90 = 1.6448536269514722;

/** What a finding on a neighbour pair stands on: both carries, the gap with its range, and the limit. */
export function pairEvidence(view: BagView, pair: Pair, limitYd: number): Evidence[] {
  const { reader, words, name } = view;
  const carry = (rung: Pair['longer']): Evidence => ({
    figure: `${words.figures.carry}, ${name(rung.clubId)}`,
    value: reader.distance(rung.carryYd),
    range: [reader.distance(rung.lowYd), reader.distance(rung.highYd)],
    source: words.source(rung.source),
  });
  return [
    carry(pair.longer),
    carry(pair.shorter),
    {
      figure: words.figures.gap,
      value: reader.distance(pair.gapYd),
      range: [reader.distance(pair.gapYd - Z90 * pair.sdYd), reader.distance(pair.gapYd + Z90 * pair.sdYd)],
      source: `${words.source(pair.longer.source)} / ${words.source(pair.shorter.source)}`,
    },
    { figure: words.figures.limit, value: reader.distance(limitYd), source: view.limitSource },
    {
      figure: words.figures.chance,
      value: Math.round(pair.chance * 100) / 100,
      source: `${words.source(pair.longer.source)} / ${words.source(pair.shorter.source)}`,
    },
  ];
}

/** How often a round the course asks for what lies between the two. */
export function needEvidence({ need, words }: BagView, { longer, shorter }: Pair): Evidence[] {
  if (need === null) return [];
  const shots = gapNeed(need, longer.carryYd, shorter.carryYd);
  return [
    {
      figure: words.figures.need,
      value: Math.round(shots * 10) / 10,
      source: words.needSource(need.assumption),
    },
  ];
}
