import type { Source } from '../../bag/types.ts';
import type { Family } from '../../player/families.ts';
import type { Rung } from '../../player/ladder/ladder.ts';
import { toDy } from '../../bag/tenths.ts';
import { buyId, buyMemberId, ownId, type Built } from '../../solve/build/instance.ts';
import type { Instance } from '../../solve/instance.ts';
import { excusedByGround } from '../rules/gaps/firm-ground.ts';
import { excusedByLongEnd, longEnd } from '../rules/gaps/long-end.ts';
import { normalDraw } from './random.ts';
import type { BagView } from '../bag-view/view.ts';
import { familyOf } from '../../player/families.ts';

/** Standard deviation of one rung's own error, yards, so that a pair of them has DESIGN §7's gap SD. */
function ownSdYd(source: Source, carryYd: number, standardErrorYd?: number): number {
  switch (source) {
    case 'measured':
      return Math.max(1.5 / Math.SQRT2, standardErrorYd ?? 0);
    case 'stated':
      return Math.max(3, 0.02 * carryYd) / Math.SQRT2;
    case 'interpolated':
      return 2 / Math.SQRT2;
    case 'modelled':
      return 4 / Math.SQRT2;
  }
}

/** What unmeasured clubs of a family share: makes the gap across families 8 yd where within one it is 4. */
const FAMILY_SD_YD = Math.sqrt((8 * 8 - 4 * 4) / 2);

/** Which clubs are uncertain in a sample: all, or only those that a question is about. */
export type Varied = 'all' | ReadonlySet<string>;

/**
 * The instance as it would be if the sampled carries were the true ones: then nothing that was asked about is unsure, so
 * such pairs are no longer excused; other unsure ones, firm ground, a falling long end and pairs of kept clubs still are.
 */
export function sampledInstance(
  view: BagView,
  built: Built,
  varied: Varied,
  random: () => number,
  excused = lastingExcuses(view, varied),
): Instance {
  const carries = new Map<string, number>();
  const shift: Record<Family, number> = {
    woods: FAMILY_SD_YD * normalDraw(random),
    hybrids: FAMILY_SD_YD * normalDraw(random),
    irons: FAMILY_SD_YD * normalDraw(random),
  };
  const draw = (
    id: string,
    key: string,
    rung: Pick<Rung, 'carryYd' | 'source' | 'standardErrorYd'>,
    family: Family,
  ) => {
    const noise = normalDraw(random);
    const moves = varied === 'all' || varied.has(key);
    const unmeasured = rung.source === 'modelled' || rung.source === 'interpolated';
    const common = unmeasured && varied === 'all' ? shift[family] : 0;
    const own = moves ? noise * ownSdYd(rung.source, rung.carryYd, rung.standardErrorYd) : 0;
    carries.set(id, toDy(Math.max(1, rung.carryYd + own + common)));
  };
  for (const rung of view.ladder) draw(ownId(rung.clubId), rung.clubId, rung, rung.family);
  for (const [id, { archetype, clubs }] of built.candidates) {
    for (const club of clubs) {
      const itemId =
        archetype.kind === 'irons' ? buyMemberId(archetype.id, club.number ?? '') : buyId(archetype.id);
      draw(itemId, id, club, familyOf(club.kind));
    }
  }
  const items = built.instance.items.map((item) => ({
    ...item,
    carryDy: carries.get(item.id) ?? item.carryDy,
  }));
  return { ...built.instance, items, excused: stillExcused(excused, carries) };
}

/** Pairs excused for reasons that knowing the carries asked about would not lift, by the ids of the clubs. */
export function lastingExcuses(view: BagView, varied: Varied): [string, string][] {
  const ground = excusedByGround(view);
  const asked = (id: string) => varied === 'all' || varied.has(id);
  return [
    ...excusedByLongEnd(longEnd(view)).map(({ longer, shorter }): [string, string] => [
      longer.clubId,
      shorter.clubId,
    ]),
    ...(ground ? [[ground[0].clubId, ground[1].clubId] as [string, string]] : []),
    ...view.pairs
      .filter(({ state }) => state.startsWith('unsure'))
      .filter(({ longer, shorter }) => !asked(longer.clubId) && !asked(shorter.clubId))
      .map(({ longer, shorter }): [string, string] => [longer.clubId, shorter.clubId]),
    ...view.pairs
      .filter(
        ({ longer, shorter }) =>
          view.club(longer.clubId).goTo === true && view.club(shorter.clubId).goTo === true,
      )
      .filter(({ state }) => state.endsWith('crowded'))
      .map(({ longer, shorter }): [string, string] => [longer.clubId, shorter.clubId]),
  ];
}

/** Those of the pairs that still stand in ladder order. */
function stillExcused(
  pairs: readonly [string, string][],
  carries: ReadonlyMap<string, number>,
): [string, string][] {
  const seen = new Set<string>();
  return pairs
    .map(([longer, shorter]): [string, string] => [ownId(longer), ownId(shorter)])
    .filter(([longer, shorter]) => {
      const key = `${longer}\n${shorter}`;
      const [a, b] = [carries.get(longer) ?? 0, carries.get(shorter) ?? 0];
      if (seen.has(key) || a < b || (a === b && longer > shorter)) return false;
      seen.add(key);
      return true;
    });
}
