import type { Rung } from '../../../player/ladder/ladder.ts';
import { pairsOf, type BagView } from '../../bag-view/view.ts';
import type { Rule } from '../rule.ts';

const HIGHEST_DEG = 60; // common practice, no source
const LEAST_STEP_DEG = 3; // common practice, no source

/** Wedges that can go, by club id: above 60°, or one of two within 3° whose going leaves no wide gap. */
export function surplusWedges(
  view: Pick<BagView, 'bag' | 'ladder' | 'limits'>,
): { id: string; because: 'high' | 'step'; other?: string }[] {
  const { bag, ladder } = view;
  const kept = new Set(bag.clubs.filter((club) => club.goTo === true).map((club) => club.id));
  const wedges = ladder.filter((rung) => rung.kind === 'wedge' && rung.loftDeg !== undefined);
  const out: { id: string; because: 'high' | 'step'; other?: string }[] = [];
  for (const rung of wedges) {
    if ((rung.loftDeg ?? 0) > HIGHEST_DEG && !kept.has(rung.clubId))
      out.push({ id: rung.clubId, because: 'high' });
  }
  const left = wedges.filter((rung) => !out.some(({ id }) => id === rung.clubId));
  const byLoft = [...left].sort((a, b) => (a.loftDeg ?? 0) - (b.loftDeg ?? 0));
  for (let i = 1; i < byLoft.length; i++) {
    const [stronger, weaker] = [byLoft[i - 1], byLoft[i]];
    if (!stronger || !weaker || (weaker.loftDeg ?? 0) - (stronger.loftDeg ?? 0) >= LEAST_STEP_DEG) continue;
    if (out.some(({ id }) => id === stronger.clubId)) continue;
    // The weaker one first: the stronger is nearer to the irons that must not open a gap.
    const goes = [weaker, stronger].find(
      (rung) => !kept.has(rung.clubId) && leavesNoWideGap(rung, view, ladder),
    );
    if (!goes) continue;
    out.push({ id: goes.clubId, because: 'step', other: goes === weaker ? stronger.clubId : weaker.clubId });
  }
  return out;
}

/** No pair is wide, surely or not, that was not wide before. */
function leavesNoWideGap(rung: Rung, { limits }: Pick<BagView, 'limits'>, ladder: readonly Rung[]): boolean {
  const wide = (rungs: readonly Rung[]) =>
    pairsOf(rungs, limits).filter((pair) => pair.state.endsWith('wide')).length;
  return wide(ladder.filter((one) => one !== rung)) <= wide(ladder);
}

/** One wedge too many: drop it and work on part swings with the others. */
export const wedgeSurplus: Rule = (view) => {
  const { ladder, name, words } = view;
  const loft = (id: string) => ladder.find((rung) => rung.clubId === id)?.loftDeg ?? 0;
  return surplusWedges(view).map(({ id, because, other }) => ({
    kind: 'wedge-surplus',
    clubs: other === undefined ? [id] : [id, other],
    severity: 2,
    verdict: 'drop',
    text:
      because === 'high' || other === undefined
        ? words.wedgeTooHigh({ club: name(id) })
        : words.wedgeStep({ club: name(id), other: name(other) }),
    evidence: [id, ...(other === undefined ? [] : [other])].map((club) => ({
      figure: `${words.figures.loft}, ${name(club)}`,
      value: loft(club),
      source: words.figures.playerSource,
    })),
  }));
};
