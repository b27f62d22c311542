import { pairsOf, type Pair } from '../advice/bag-view/view.ts';
import type { Candidate } from '../solve/build/candidates.ts';
import { buyId } from '../solve/build/instance.ts';
import { costMinor, idsOf, namedLadder, type Context, type NamedRung } from './context.ts';

/** Priced archetypes that are not bought for one and the same reason, the cheapest first. */
export type Considered = { names: string[]; text: string };

/** A club this near to another in carry does its job; common practice, no source. */
const NEAR_YD = 10;

type Priced = { name: string; costMinor: number; awayYd: number };
/** Reasons with the same key share a line; those with a lower rank come first. */
type Reason = { key: string; rank: number; awayYd?: number; text(members: readonly Priced[]): string };
type Ladder = { after: readonly NamedRung[]; pairs: readonly Pair[] };

/** Everything that was priced and is not bought: what would still help first, then the needless, then the unusable. */
export function considered(context: Context): Considered[] {
  const { advice } = context;
  const bought = new Set(advice.swaps.map((swap) => swap.archetype));
  const after = namedLadder(context, advice.afterLadder);
  const ladder: Ladder = { after, pairs: pairsOf(after, advice.view.limits) };
  const groups = new Map<string, { reason: Reason; members: Priced[] }>();
  for (const { archetype: id } of advice.view.bag.prices) {
    const archetype = advice.view.catalogue.find((one) => one.id === id);
    if (!archetype || bought.has(id)) continue;
    const candidate = advice.built.candidates.get(buyId(id));
    const reason = reasonOf(context, candidate, ladder);
    const group = groups.get(reason.key) ?? { reason, members: [] };
    group.members.push({
      name: advice.view.words.archetypeName(archetype),
      costMinor: candidate ? costMinor(context, candidate) : 0,
      awayYd: reason.awayYd ?? 0,
    });
    groups.set(reason.key, group);
  }
  return [...groups.values()]
    .sort((a, b) => a.reason.rank - b.reason.rank)
    .map(({ reason, members }) => {
      members.sort((a, b) => a.costMinor - b.costMinor);
      return { names: members.map(({ name }) => name), text: reason.text(members) };
    });
}

function reasonOf(context: Context, candidate: Candidate | undefined, ladder: Ladder): Reason {
  const { words } = context;
  if (!candidate) return { key: 'unusable', rank: 4, text: () => words.noBuy.unusable() };
  const [club] = candidate.clubs;
  if (!club) return { key: 'putter', rank: 3, text: () => words.noBuy.putter() };
  if (candidate.archetype.kind === 'irons') return setReason(context, candidate);
  const inside = ladder.pairs.find(
    ({ longer, shorter }) => club.carryYd < longer.carryYd && club.carryYd > shorter.carryYd,
  );
  if (inside?.state.endsWith('wide') === true) return helpsReason(context);
  const nearest = nearestTo(club.carryYd, ladder.after, idsOf(candidate));
  if (!nearest) return helpsReason(context);
  const awayYd = Math.abs(nearest.carryYd - club.carryYd);
  return inside && awayYd > NEAR_YD
    ? betweenReason(context, ladder, inside)
    : nearReason(context, nearest, awayYd);
}

/** It lies in a gap that stays open: too dear for what is left, or too small a gain for its money. */
function helpsReason({ advice, words }: Context): Reason {
  const { reader } = advice.view;
  return {
    key: 'helps',
    rank: 0,
    text: (members) => {
      const least = Math.min(...members.map((member) => member.costMinor));
      const left = advice.remainingMinor;
      return words.noBuy.helps({
        clubs: members.length,
        cost: reader.moneyText(least),
        over: left !== null && least > left ? reader.moneyText(least - left) : null,
      });
    },
  };
}

function setReason(context: Context, candidate: Candidate): Reason {
  const { advice, words } = context;
  const { reader } = advice.view;
  const cost = costMinor(context, candidate);
  // Where the plan mends the bag, money is not what keeps a set out of it.
  const short = advice.status === 'partly' || advice.status === 'over-budget';
  const left = advice.remainingMinor;
  const bought = advice.swaps.some(({ action }) => action === 'buy') && cost > advice.cashMinor;
  return {
    key: `set ${String(cost)}`,
    rank: 2,
    text: () =>
      words.noBuy.set({
        cost: reader.moneyText(cost),
        over: short && left !== null && cost > left ? reader.moneyText(cost - left) : null,
        bought,
      }),
  };
}

function betweenReason({ words }: Context, { after }: Ladder, { longer, shorter }: Pair): Reason {
  const name = (id: string) => after.find(({ clubId }) => clubId === id)?.name ?? '';
  const ends = { longer: name(longer.clubId), shorter: name(shorter.clubId) };
  return {
    key: `between ${longer.clubId} ${shorter.clubId}`,
    rank: 1,
    text: () => words.noBuy.between(ends),
  };
}

function nearReason({ advice, words }: Context, { clubId, name, bought }: NamedRung, awayYd: number): Reason {
  const { reader } = advice.view;
  return {
    key: `near ${clubId}`,
    rank: 1,
    awayYd,
    text: (members) => {
      const mostYd = Math.max(1, ...members.map((member) => Math.ceil(member.awayYd)));
      return words.noBuy.near({
        clubs: members.length,
        most: reader.distanceText(mostYd),
        other: name,
        bought,
      });
    },
  };
}

function nearestTo(
  carryYd: number,
  ladder: readonly NamedRung[],
  own: readonly string[],
): NamedRung | undefined {
  const away = (rung: NamedRung) => Math.abs(rung.carryYd - carryYd);
  return ladder.filter((rung) => !own.includes(rung.clubId)).sort((a, b) => away(a) - away(b))[0];
}
