import { driverMisfit, driverSides, headHelps } from '../rules/clubs/driver-launch-spin.ts';
import { hardWoods } from '../rules/clubs/hard-from-the-deck.ts';
import { surplusWedges } from '../rules/gaps/wedge-surplus.ts';
import type { BagView } from '../bag-view/view.ts';

/** Penalties for being in the bag at all (DESIGN §8): set by the findings. */
const HARD_WOOD = 60;
const SURPLUS_WEDGE = 40;

/** Misfit of owned clubs by club id, of archetypes by archetype id; absent is 0. */
export function misfitsOf(view: BagView): {
  misfits: Map<string, number>;
  candidateMisfits: Map<string, number>;
} {
  const misfits = new Map<string, number>();
  const candidateMisfits = new Map<string, number>();
  for (const { clubId } of hardWoods(view)) misfits.set(clubId, HARD_WOOD);
  for (const { id } of surplusWedges(view)) misfits.set(id, SURPLUS_WEDGE);
  const sides = driverSides(view);
  if (sides === null) return { misfits, candidateMisfits };
  const driver = driverMisfit(sides);
  if (driver > 0) {
    misfits.set(sides.club.id, driver);
    for (const archetype of view.catalogue) {
      if (archetype.kind === 'driver' && !headHelps(sides, archetype))
        candidateMisfits.set(archetype.id, driver);
    }
  }
  return { misfits, candidateMisfits };
}
