import type { Finding } from '../../finding.ts';
import type { Rule } from '../rule.ts';

/** A needed carry, loft or speed is missing: nothing known at all, one club that cannot be placed, or only a speed. */
export const tooLittleData: Rule = ({ bag, ladder, model, name, words, reader }) => {
  const ask = (
    clubs: string[],
    severity: 1 | 2 | 3,
    text: string,
    evidence: Finding['evidence'] = [],
  ): Finding => ({
    kind: 'too-little-data',
    clubs,
    severity,
    verdict: 'ask',
    text,
    evidence,
  });
  const onLadder = bag.clubs.filter((club) => club.kind !== 'putter');
  // With prices a bag can be planned from nothing; without them there is nothing to go by.
  if (onLadder.length === 0 && bag.prices.length === 0) return [ask([], 3, words.noClubs())];
  if (model.driverSpeedMph === null && model.known.length === 0 && ladder.length === 0) {
    return [ask([], 3, words.nothingKnown())];
  }
  const placed = new Set(ladder.map((rung) => rung.clubId));
  const findings = bag.clubs
    .filter((club) => club.kind !== 'putter' && !placed.has(club.id))
    .map((club) => ask([club.id], 2, words.clubUnplaced({ club: name(club.id) })));
  const [longest] = ladder;
  if (longest && ladder.every((rung) => rung.source === 'modelled')) {
    findings.push(
      ask([], 1, words.allModelled(), [
        {
          figure: `${words.figures.carry}, ${name(longest.clubId)}`,
          value: reader.distance(longest.carryYd),
          range: [reader.distance(longest.lowYd), reader.distance(longest.highYd)],
          source: words.source(longest.source),
        },
      ]),
    );
  }
  return findings;
};
