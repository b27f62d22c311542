import type { Rung } from '../../player/ladder/ladder.ts';
import { ladderOrder } from '../../player/ladder/ladder.ts';
import { familyOf } from '../../player/families.ts';
import type { Candidate } from '../../solve/build/candidates.ts';
import { buyId, buyMemberId, ownId, type Built } from '../../solve/build/instance.ts';
import type { BagView } from '../bag-view/view.ts';

/** One purchase of a plan: the archetype, the clubs that go into the bag, the owned clubs whose job it takes. */
export type Purchase = { id: string; candidate: Candidate; rungs: Rung[]; inPlaceOf: string[] };

/** What a plan changes. Ladders stand in ladder order; `leftOut` holds owned club ids. */
export type Changes = { purchases: Purchase[]; leftOut: string[]; after: Rung[] };

/** From the ids of a whole bag to what is bought, what stays out, and the ladder after. */
export function changesOf(view: BagView, built: Built, items: readonly string[]): Changes {
  const inBag = new Set(items);
  const leftOut = view.bag.clubs
    .filter((club) => isItem(club.id, built) && !inBag.has(ownId(club.id)))
    .map((club) => club.id);
  const purchases: Purchase[] = [];
  for (const [id, candidate] of built.candidates) {
    const rungs = boughtRungs(candidate, inBag);
    // A putter is on no ladder, and has its candidate's own id.
    if (rungs.length > 0 || inBag.has(id)) purchases.push({ id, candidate, rungs, inPlaceOf: [] });
  }
  purchases.sort(
    (a, b) => (b.rungs[0]?.carryYd ?? -1) - (a.rungs[0]?.carryYd ?? -1) || (a.id < b.id ? -1 : 1),
  );
  for (const clubId of leftOut) replacementOf(view, clubId, purchases)?.inPlaceOf.push(clubId);
  const kept = view.ladder.filter((rung) => !leftOut.includes(rung.clubId));
  const after = [...kept, ...purchases.flatMap((purchase) => purchase.rungs)].sort(ladderOrder);
  return { purchases, leftOut, after };
}

function isItem(clubId: string, built: Built): boolean {
  return built.instance.items.some((item) => item.id === ownId(clubId));
}

function boughtRungs(candidate: Candidate, inBag: ReadonlySet<string>): Rung[] {
  const { archetype, clubs } = candidate;
  return clubs.flatMap((club) => {
    const id =
      archetype.kind === 'irons'
        ? buyMemberId(archetype.id, club.number ?? String(club.loftDeg))
        : buyId(archetype.id);
    if (!inBag.has(id)) return [];
    const { kind, loftDeg, carryYd, lowYd, highYd, source } = club;
    return [{ clubId: id, kind, family: familyOf(kind), loftDeg, carryYd, lowYd, highYd, source }];
  });
}

/** The purchase nearest in carry to a club left out, if near enough to do its job; putters go by kind. */
function replacementOf(view: BagView, clubId: string, purchases: readonly Purchase[]): Purchase | undefined {
  const club = view.club(clubId);
  if (club.kind === 'putter') return purchases.find(({ candidate }) => candidate.archetype.kind === 'putter');
  const rung = view.ladder.find((one) => one.clubId === clubId);
  if (!rung) return undefined;
  let best: Purchase | undefined;
  let least = rung.kind === 'driver' ? Infinity : view.limits.wideYd;
  for (const purchase of purchases) {
    for (const bought of purchase.rungs) {
      if ((rung.kind === 'driver') !== (bought.kind === 'driver')) continue;
      const distance = Math.abs(bought.carryYd - rung.carryYd);
      if (distance < least) {
        least = distance;
        best = purchase;
      }
    }
  }
  return best;
}

/** What a later stage changes beyond an earlier one, both told from today's bag. */
export function laterChanges(now: Changes, later: Changes): Changes {
  const bought = new Set(now.purchases.map((purchase) => purchase.id));
  const gone = new Set(now.leftOut);
  return {
    purchases: later.purchases
      .filter((purchase) => !bought.has(purchase.id))
      .map((purchase) => ({ ...purchase, inPlaceOf: purchase.inPlaceOf.filter((id) => !gone.has(id)) })),
    leftOut: later.leftOut.filter((id) => !gone.has(id)),
    after: later.after,
  };
}
