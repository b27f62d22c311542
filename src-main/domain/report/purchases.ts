import type { Swap } from '../advice/plan/swaps.ts';
import { familyOf } from '../player/families.ts';
import { buyId } from '../solve/build/instance.ts';
import type { Candidate } from '../solve/build/candidates.ts';
import type { PriceBand } from '../bag/types.ts';
import { idsOf, namedLadder, type Context, type NamedRung } from './context.ts';

/** Gaps in yards around a club or a run of clubs: down from the next longer, and down to the next shorter. */
export type GapsAround = { aboveYd: number | null; belowYd: number | null };

/** A buy line of the plan with what the document says of it. Money in minor units. */
export type Purchase = {
  swap: Swap;
  candidate: Candidate;
  band: PriceBand | null;
  deliveryMinor: number;
  regripMinor: number;
  /** Likely price with delivery and grips. */
  totalMinor: number;
  replaces: string[];
  /** Its ladder clubs that go into the bag, longest first; none for a putter. */
  rungs: NamedRung[];
  /** One gap that it goes into, or the gaps around what it replaces. */
  before: GapsAround | { gapYd: number } | null;
  after: GapsAround | null;
};

/** The purchases of one stage in the order in which they matter: what the gravest finding asks for first. */
export function purchasesOf(context: Context, stage: string): Purchase[] {
  return context.advice.swaps
    .filter((swap) => swap.action === 'buy' && swap.stage === stage)
    .flatMap((swap) => {
      const candidate = context.advice.built.candidates.get(buyId(swap.archetype ?? ''));
      return candidate ? [purchaseOf(context, swap, candidate)] : [];
    })
    .map((purchase, at) => ({ purchase, rank: rankOf(context, purchase), at }))
    .sort((a, b) => a.rank - b.rank || a.at - b.at)
    .map(({ purchase }) => purchase);
}

function purchaseOf(context: Context, swap: Swap, candidate: Candidate): Purchase {
  const { view } = context.advice;
  const { archetype } = candidate;
  const band = view.bag.prices.find((price) => price.archetype === archetype.id)?.band ?? null;
  const deliveryMinor = view.bag.costs.deliveryMinor;
  const regripMinor = view.bag.costs.regripMinor * (archetype.members?.length ?? 1);
  const replaces = swap.inPlaceOf ?? [];
  const { rungs, ladder } = placed(context, swap, candidate, replaces);
  return {
    swap,
    candidate,
    band,
    deliveryMinor,
    regripMinor,
    totalMinor: (band?.likelyMinor ?? 0) + deliveryMinor + regripMinor,
    replaces,
    rungs,
    before: gapsBefore(context, replaces, rungs),
    after: gapsAround(
      ladder,
      rungs.map((rung) => rung.clubId),
    ),
  };
}

/** Where the purchase stands: in the ladder after the plan, or, for a later stage, put into it. */
function placed(
  context: Context,
  swap: Swap,
  candidate: Candidate,
  replaces: readonly string[],
): { rungs: NamedRung[]; ladder: NamedRung[] } {
  const { advice } = context;
  const after = namedLadder(context, advice.afterLadder);
  const ids = idsOf(candidate);
  if (swap.stage === advice.view.words.stageNow) {
    return { rungs: after.filter((rung) => ids.includes(rung.clubId)), ladder: after };
  }
  const rungs = namedLadder(
    context,
    candidate.clubs.map((club, i) => ({ ...club, clubId: ids[i] ?? '', family: familyOf(club.kind) })),
  );
  const others = after.filter((rung) => !replaces.includes(rung.clubId) && !ids.includes(rung.clubId));
  return { rungs, ladder: [...others, ...rungs].sort((a, b) => b.carryYd - a.carryYd) };
}

function gapsAround(
  ladder: readonly { clubId: string; carryYd: number }[],
  ids: readonly string[],
): GapsAround | null {
  const at = ladder.flatMap((rung, i) => (ids.includes(rung.clubId) ? [i] : []));
  const [first] = at;
  const last = at.at(-1);
  if (first === undefined || last === undefined) return null;
  const gap = (upper: number) => {
    const [longer, shorter] = [ladder[upper], ladder[upper + 1]];
    return longer && shorter ? longer.carryYd - shorter.carryYd : null;
  };
  return { aboveYd: gap(first - 1), belowYd: gap(last) };
}

function gapsBefore(
  { advice }: Context,
  replaces: readonly string[],
  rungs: readonly NamedRung[],
): Purchase['before'] {
  const { ladder, pairs } = advice.view;
  const around = gapsAround(ladder, replaces);
  if (around) return around;
  const inside = pairs.find(({ longer, shorter }) =>
    rungs.some(({ carryYd }) => carryYd < longer.carryYd && carryYd > shorter.carryYd),
  );
  return inside ? { gapYd: inside.gapYd } : null;
}

/** The graver the finding that a purchase answers, and the earlier it is told, the earlier it is bought. */
function rankOf({ advice }: Context, { rungs, replaces }: Purchase): number {
  const { findings, view } = advice;
  const carry = new Map(view.ladder.map((rung) => [rung.clubId, rung.carryYd]));
  const ranks = findings.map((finding, at) => {
    if (finding.verdict !== 'add' && finding.verdict !== 'replace') return Infinity;
    const [longer, shorter] = finding.clubs;
    const high = carry.get(longer ?? '');
    const low = carry.get(shorter ?? '');
    const isPair = finding.kind === 'wide-gap' || finding.kind === 'wedge-shortage';
    const fills =
      isPair &&
      high !== undefined &&
      low !== undefined &&
      rungs.some((rung) => rung.carryYd < high && rung.carryYd > low);
    const answers = fills || (!isPair && finding.clubs.some((id) => replaces.includes(id)));
    return answers ? (3 - finding.severity) * findings.length + at : Infinity;
  });
  return Math.min(Number.MAX_SAFE_INTEGER, ...ranks);
}

export type UsedKind = 'wood' | 'iron' | 'wedge' | 'putter';

/** What sort of used club it is, for the checks. */
export function usedKinds({ candidate }: Purchase): UsedKind[] {
  const { kind } = candidate.archetype;
  if (kind === 'putter' || kind === 'wedge') return [kind];
  return [kind === 'iron' || kind === 'irons' ? 'iron' : 'wood'];
}
