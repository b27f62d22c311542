import type { Arcs } from '../program/arcs.ts';
import type { Ladder } from '../model/ladder.ts';
import type { StatefulLot } from '../model/lots.ts';
import type { Decisions } from './scenario.ts';

/** The open lots that are better decided than remembered by labels: some of their clubs can still be kept. */
export const decidable = (ladder: Ladder, { open }: Decisions, arcs: Arcs): number[] => {
  const used = arcs.start.slice();
  for (const i of arcs.to) used[i] = 1;
  return open.filter((l) => {
    const { candidate, gain, at } = ladder.lots[l] as StatefulLot;
    // An owned lot worth less whole than apart must be remembered: see README, "Lots".
    return (candidate || gain > 0) && at.some((i) => i < 0 || used[i] === 1);
  });
};

/**
 * Ways to decide about some open lots, which together leave out no bag worth having: an owned lot kept in
 * part, or left out whole; of candidate lots none, or each in turn as the first of those that are bought,
 * alone or with more of the later ones.
 */
export const childrenOf = (ladder: Ladder, decisions: Decisions, lots: readonly number[]): Decisions[] => {
  const { open, paid, barred } = decisions;
  const owned = lots.find((l) => ladder.lots[l]?.candidate === false);
  if (owned !== undefined) {
    const others = open.filter((l) => l !== owned);
    return [
      { ...decisions, open: others },
      { ...decisions, open: others, barred: [...barred, owned] },
    ];
  }
  const rest = open.filter((l) => !lots.includes(l));
  const children: Decisions[] = decisions.more
    ? []
    : [{ open: rest, paid, barred: [...barred, ...lots], more: false }];
  lots.forEach((l, i) => {
    const [sooner, later] = [lots.slice(0, i), lots.slice(i + 1)];
    const bought = [...paid, l];
    children.push({ open: rest, paid: bought, barred: [...barred, ...sooner, ...later], more: false });
    if (later.length === 0) return;
    children.push({ open: [...rest, ...later], paid: bought, barred: [...barred, ...sooner], more: true });
  });
  return children;
};
