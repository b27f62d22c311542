import type { BesideBag, BesideClub } from '../../../src-main/contract/calls/answers/beside.ts';
import type { PairState, Source } from '../ladder/ladder-view.ts';
import { overlayView, PAGES, type OverlayView, type Page } from '../side/overlay-view.ts';
import { slotsOf, type SlotGroup } from './slots.ts';

export type BesidePair = Record<Page, BesideBag>;

/** A club in its slot, with its place on the ladder; null figures for one that is not on it. */
export type SlotClub = Pick<BesideClub, 'name' | 'loftDeg' | 'loftAssumed'> & {
  carry: { value: number; low: number; high: number; source: Source } | null;
};
export type SlotRow = { group: SlotGroup } & Record<Page, SlotClub | null> & {
    /** Right less left, of whole figures as they are printed; null where not both carries are known. */
    difference: number | null;
  };

/** A pair of neighbours beyond a limit, by the clubs' names. */
export type BesideMark = {
  longer: string;
  shorter: string;
  state: Exclude<PairState, 'fine'>;
  gap: number;
  limit: number;
};

/** The same id in two bags is two clubs. */
const idOn = (page: Page, id: string) => `${page} ${id}`;

/** Both ladders on one scale; no club is on both pages. */
export function besideOverlay(bags: BesidePair): OverlayView {
  const names: Record<string, string> = {};
  const sides = Object.fromEntries(
    PAGES.map((page) => {
      const { clubs, ladder, marks } = bags[page];
      for (const { id, name } of clubs) names[idOn(page, id)] = name;
      return [
        page,
        {
          ladder: ladder.map((rung) => ({ ...rung, clubId: idOn(page, rung.clubId) })),
          marks: marks.map((mark) => ({
            ...mark,
            longer: idOn(page, mark.longer),
            shorter: idOn(page, mark.shorter),
          })),
        },
      ];
    }),
  ) as Parameters<typeof overlayView>[0];
  return overlayView(sides, names);
}

export function slotRows(bags: BesidePair): SlotRow[] {
  return slotsOf(bags.left.clubs, bags.right.clubs).map(({ group, left, right }) => {
    const [one, other] = [clubOf(bags.left, left), clubOf(bags.right, right)];
    const difference =
      one?.carry && other?.carry ? Math.round(other.carry.value) - Math.round(one.carry.value) : null;
    return { group, left: one, right: other, difference };
  });
}

function clubOf({ ladder }: BesideBag, club: BesideClub | null): SlotClub | null {
  if (club === null) return null;
  const { name, loftDeg, loftAssumed } = club;
  const rung = ladder.find(({ clubId }) => clubId === club.id);
  const carry = rung ? { value: rung.carry, low: rung.low, high: rung.high, source: rung.source } : null;
  return { name, loftDeg, loftAssumed, carry };
}

export function marksOf({ clubs, marks }: BesideBag): BesideMark[] {
  const nameOf = (id: string) => clubs.find((club) => club.id === id)?.name ?? id;
  return marks.map(({ longer, shorter, ...mark }) => ({
    ...mark,
    longer: nameOf(longer),
    shorter: nameOf(shorter),
  }));
}

/** Carries are spoken of in different air, so that they are not quite alike. */
export function hasOtherAir({ left, right }: BesidePair): boolean {
  return left.air.temperatureC !== right.air.temperatureC || left.air.altitudeM !== right.air.altitudeM;
}
