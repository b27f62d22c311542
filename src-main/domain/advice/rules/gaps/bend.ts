import { playingKind } from '../../../player/families.ts';
import { predictCarry } from '../../../player/predict.ts';
import type { BagView, Pair } from '../../bag-view/view.ts';
import type { Rule } from '../rule.ts';

/** The most that is bent (degrees): within what forged heads take (market-defaults.json: 3). Common practice, no source. */
const MOST_DEG = 2;
const STEP_DEG = 0.5;
/** Share of a loft's modelled carry change that bending alone brings: the club's length and speed stay. Own reckoning. */
const BEND_SHARE = 0.8;

export type Bend = { clubId: string; byDeg: number; pair: Pair };

/** The smallest loft bend of one wedge (or players' iron) that puts the pair right and no other pair wrong; or null. */
export function mendingBend(view: Pick<BagView, 'model' | 'pairs' | 'club'>, pair: Pair): Bend | null {
  let best: Bend | null = null;
  for (const rung of [pair.longer, pair.shorter]) {
    const club = view.club(rung.clubId);
    const bendable = club.kind === 'wedge' || (playingKind(club) === 'iron' && club.forgiveness === 1);
    if (!bendable || rung.loftDeg === undefined) continue;
    for (let size = STEP_DEG; size <= MOST_DEG; size += STEP_DEG) {
      for (const byDeg of [size, -size]) {
        const changeYd = carryChange(view, rung.kind, rung.loftDeg, rung.carryYd, byDeg);
        if (changeYd === null || !staysRight(view, rung.clubId, changeYd)) continue;
        if (best === null || size < Math.abs(best.byDeg)) best = { clubId: rung.clubId, byDeg, pair };
      }
    }
  }
  return best;
}

/** The model's relative change, on the club's own carry. */
function carryChange(
  { model }: Pick<BagView, 'model'>,
  kind: Pair['longer']['kind'],
  loftDeg: number,
  carryYd: number,
  byDeg: number,
): number | null {
  if (model.driverSpeedMph === null) return null;
  const physics = { ...model, known: [] };
  const before = predictCarry(physics, { kind, loftDeg });
  const after = predictCarry(physics, { kind, loftDeg: loftDeg + byDeg });
  return before && after ? BEND_SHARE * carryYd * (after.carryYd / before.carryYd - 1) : null;
}

/** With the club's carry changed, both pairs it stands in lie inside their limits. */
function staysRight({ pairs }: Pick<BagView, 'pairs'>, clubId: string, changeYd: number): boolean {
  return pairs.every(({ longer, shorter, gapYd, wideYd, crowdedYd }) => {
    if (longer.clubId !== clubId && shorter.clubId !== clubId) return true;
    const after = gapYd + (longer.clubId === clubId ? changeYd : -changeYd);
    return after >= crowdedYd && after <= wideYd;
  });
}

/** A wide or crowded pair that a small bend of one wedge or forged iron would mend: often the cheapest mend of all. */
export const bend: Rule = (view) => {
  const { name, reader, words } = view;
  return view.pairs
    .filter((pair) => pair.state === 'wide' || pair.state === 'crowded')
    .map((pair) => mendingBend(view, pair))
    .filter((found) => found !== null)
    .map(({ clubId, byDeg, pair }) => ({
      kind: 'bend',
      clubs: [clubId],
      severity: 1,
      verdict: 'ask',
      text: words.bend({
        club: name(clubId),
        by: `${reader.numberText(Math.abs(byDeg))}°`,
        weaker: byDeg > 0,
        longer: name(pair.longer.clubId),
        shorter: name(pair.shorter.clubId),
      }),
      evidence: [
        {
          figure: words.figures.bend,
          value: byDeg,
          range: [-MOST_DEG, MOST_DEG],
          source: words.figures.practice,
        },
      ],
    }));
};
