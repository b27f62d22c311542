import type { Rung } from '../../../player/ladder/ladder.ts';
import { pairsOf, type BagView } from '../../bag-view/view.ts';
import type { Rule } from '../rule.ts';

const HIGHEST_DEG = 60; // common practice, no source
const LEAST_STEP_DEG = 3; // common practice, no source

type Wedge = { id: string; loftDeg: number };

/** Wedges that can go: above 60°, or one of two within 3° (`other` stays) whose going leaves no wide gap. */
export function surplusWedges(
  view: Pick<BagView, 'bag' | 'ladder' | 'limits'>,
): (Wedge & { other?: Wedge })[] {
  const { bag, ladder } = view;
  const kept = new Set(bag.clubs.filter((club) => club.goTo === true).map((club) => club.id));
  const wedges = ladder.flatMap(({ kind, clubId: id, loftDeg }) =>
    kind === 'wedge' && loftDeg !== undefined ? [{ id, loftDeg }] : [],
  );
  const isHigh = ({ id, loftDeg }: Wedge) => loftDeg > HIGHEST_DEG && !kept.has(id);
  const out: (Wedge & { other?: Wedge })[] = wedges.filter(isHigh);
  const byLoft = wedges.filter((wedge) => !isHigh(wedge)).sort((a, b) => a.loftDeg - b.loftDeg);
  let stronger: Wedge | undefined;
  for (const weaker of byLoft) {
    const before = stronger;
    stronger = weaker;
    if (before === undefined || weaker.loftDeg - before.loftDeg >= LEAST_STEP_DEG) continue;
    if (out.some(({ id }) => id === before.id)) continue;
    // The weaker one first: the stronger is nearer to the irons that must not open a gap.
    const goes = [weaker, before].find(({ id }) => !kept.has(id) && leavesNoWideGap(id, view));
    if (goes) out.push({ ...goes, other: goes === weaker ? before : weaker });
  }
  return out;
}

/** No pair is wide, surely or not, that was not wide before. */
function leavesNoWideGap(id: string, { limits, ladder }: Pick<BagView, 'limits' | 'ladder'>): boolean {
  const wide = (rungs: readonly Rung[]) =>
    pairsOf(rungs, limits).filter((pair) => pair.state.endsWith('wide')).length;
  return wide(ladder.filter(({ clubId }) => clubId !== id)) <= wide(ladder);
}

/** One wedge too many: drop it and work on part swings with the others. */
export const wedgeSurplus: Rule = (view) => {
  const { name, words } = view;
  return surplusWedges(view).map(({ other, ...goes }) => {
    const wedges = other === undefined ? [goes] : [goes, other];
    return {
      kind: 'wedge-surplus',
      clubs: wedges.map(({ id }) => id),
      severity: 2,
      verdict: 'drop',
      text:
        other === undefined
          ? words.wedgeTooHigh({ club: name(goes.id) })
          : words.wedgeStep({ club: name(goes.id), other: name(other.id) }),
      evidence: wedges.map(({ id, loftDeg }) => ({
        figure: `${words.figures.loft}, ${name(id)}`,
        value: loftDeg,
        source: words.figures.playerSource,
      })),
    };
  });
};
