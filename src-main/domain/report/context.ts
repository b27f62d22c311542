import type { Advice } from '../advice/advise.ts';
import type { Rung } from '../player/ladder/ladder.ts';
import { buyId, buyMemberId } from '../solve/build/instance.ts';
import type { Candidate } from '../solve/build/candidates.ts';
import type { Figures } from './figures.ts';
import type { ReportWords } from './words/words.ts';

/** The record of a pick: its name, the reason given (may be empty), its ISO day. */
export type Picked = { name: string; why: string; day: string };

/** What every section is written from. */
export type Context = {
  advice: Advice;
  words: ReportWords;
  figures: Figures;
  /** ISO day. */
  today: string;
  /** Language of what advice says, where it is not the document's. */
  adviceLang?: string;
  /** ISO day. */
  retestOn?: string;
  picked?: Picked;
};

/** Marks a text as advice's own words. */
export function given<T extends object>(context: Context, part: T): T & { lang?: string } {
  return context.adviceLang === undefined ? part : { ...part, lang: context.adviceLang };
}

/** The item ids of the ladder clubs that a purchase brings. */
export function idsOf({ archetype, clubs }: Candidate): string[] {
  if (archetype.kind !== 'irons') return [buyId(archetype.id)];
  return clubs.map(({ number, loftDeg }) => buyMemberId(archetype.id, number ?? String(loftDeg)));
}

export type NamedRung = Rung & { name: string; bought: boolean };

/** Short names for ladders: an owned club's own, "25° hybrid" for a new one, its number for a new set's. */
export function namedLadder(context: Context, ladder: readonly Rung[]): NamedRung[] {
  const { advice, figures, words } = context;
  const names = new Map<string, string>();
  for (const candidate of advice.built.candidates.values()) {
    const ids = idsOf(candidate);
    candidate.clubs.forEach(({ number, kind, loftDeg }, i) => {
      const name = number ?? words.shortName({ loft: figures.degrees(loftDeg), kind: words.kinds[kind] });
      names.set(ids[i] ?? '', /^\d+$/.test(name) ? words.numberName({ number: name }) : name);
    });
  }
  return ladder.map((rung) => {
    const bought = names.get(rung.clubId);
    return { ...rung, name: bought ?? advice.view.name(rung.clubId), bought: bought !== undefined };
  });
}

/** Owned clubs that leave now. */
export function leftOut({ advice }: Context): Set<string> {
  const now = advice.view.words.stageNow;
  return new Set(
    advice.swaps.flatMap(({ action, stage, clubId }) =>
      action !== 'buy' && stage === now && clubId !== undefined ? [clubId] : [],
    ),
  );
}

/** What a purchase costs in all at its likely price: the club, delivery, grips. */
export function costMinor({ advice }: Context, candidate: Candidate): number {
  const lot = advice.built.instance.lots.find(({ id }) => id === buyId(candidate.archetype.id));
  const item = advice.built.instance.items.find(({ id }) => id === buyId(candidate.archetype.id));
  return lot?.price ?? item?.price ?? 0;
}
