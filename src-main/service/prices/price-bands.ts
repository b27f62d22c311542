import { fromBand } from '../bags/bag-rows.ts';
import type { BagFile } from '../../contract/formats/bag-file.ts';
import { priceBand, type DerivedBand } from '../../domain/prices/band.ts';
import { DEFAULT_ASSUMPTIONS, type PriceAssumptions } from '../../domain/prices/condition.ts';
import { listClubs } from '../../../db/repositories/bags/clubs.ts';
import { newestNotes, notesOfBag, type PriceNote } from '../../../db/repositories/prices/price-notes.ts';
import { getSetting } from '../../../db/repositories/settings.ts';
import type { Db } from '../../../db/sqlite.ts';
import { assumptionsSchema } from '../../contract/calls/money/prices.ts';

/** How many of an archetype's newest notes count; older ones would weigh next to nothing. Own choice. */
export const NOTES_COUNTED = 24;

const KEY = 'prices.assumptions';
export const ASSUMPTIONS_KEY = KEY;

/** The user's assumptions; what was never set is the default. */
export function readAssumptions(db: Db): PriceAssumptions {
  const stored = assumptionsSchema.partial().safeParse(getSetting(db, KEY) ?? {});
  if (!stored.success) return DEFAULT_ASSUMPTIONS;
  const { factors, condition, staleDays, halfLifeDays } = stored.data;
  return {
    factors: factors ?? DEFAULT_ASSUMPTIONS.factors,
    condition: condition ?? DEFAULT_ASSUMPTIONS.condition,
    staleDays: staleDays ?? DEFAULT_ASSUMPTIONS.staleDays,
    halfLifeDays: halfLifeDays ?? DEFAULT_ASSUMPTIONS.halfLifeDays,
  };
}

/** What an archetype costs, with the notes that say so. `own`: the bag's own, which then speak alone. */
export type NotedBand = { archetypeId: string; own: boolean; notes: PriceNote[]; derived: DerivedBand };

/** The day that a note counts from: when it was seen, else when it was written down. */
export const dayOfNote = ({ seenOn, createdAt }: PriceNote): string => seenOn ?? createdAt.slice(0, 10);

/** `shared`: everybody's bands, where they are known already. */
export type BandOptions = { ownOnly?: boolean; shared?: (currency: string) => readonly NotedBand[] };

/**
 * The band of each archetype that has notes in the bag's currency: from the bag's own notes where it has any, else
 * from everybody's newest. The bag's own come first, in its order. Notes in other currencies are left out.
 */
export function notedBands(db: Db, bagId: number, currency: string, options: BandOptions = {}): NotedBand[] {
  const assumptions = readAssumptions(db);
  const own = notesOfBag(db, bagId).filter((note) => note.band.currency === currency);
  const bands = grouped(own).map(([archetypeId, notes]) => noted(archetypeId, notes, true, assumptions));
  if (options.ownOnly === true) return bands;
  const spoken = new Set([...bands.map(({ archetypeId }) => archetypeId), ...heldArchetypes(db, bagId)]);
  const shared = options.shared?.(currency) ?? sharedBands(db, currency, assumptions);
  return [...bands, ...shared.filter(({ archetypeId }) => !spoken.has(archetypeId))];
}

/** Of everybody's newest notes in a currency. */
export function sharedBands(
  db: Db,
  currency: string,
  assumptions: PriceAssumptions = readAssumptions(db),
): NotedBand[] {
  const notes = grouped(newestNotes(db, currency, { most: NOTES_COUNTED }));
  return notes.map(([archetypeId, some]) => noted(archetypeId, some, false, assumptions));
}

/** As the bag file has it. */
export function filePrices(bands: readonly NotedBand[], currency: string): BagFile['prices'] {
  return bands.map(({ archetypeId, notes, derived }) => {
    const dated = notes.some((note) => note.seenOn === derived.newestOn);
    return {
      archetype: archetypeId,
      ...fromBand({ ...derived.band, currency }),
      ...(dated ? { seen: derived.newestOn } : {}),
    };
  });
}

/** What was bought and is in the bag is no candidate any more. */
function heldArchetypes(db: Db, bagId: number): string[] {
  return listClubs(db, bagId).flatMap((club) => club.archetypeId ?? []);
}

function grouped(notes: readonly PriceNote[]): [string, PriceNote[]][] {
  const groups = new Map<string, PriceNote[]>();
  for (const note of notes) groups.set(note.archetypeId, [...(groups.get(note.archetypeId) ?? []), note]);
  return [...groups];
}

export function noted(
  archetypeId: string,
  notes: PriceNote[],
  own: boolean,
  assumptions: PriceAssumptions,
): NotedBand {
  const seen = notes.map((note) => ({
    band: note.band,
    onDate: dayOfNote(note),
    ...(note.condition === undefined ? {} : { condition: note.condition }),
  }));
  const derived = priceBand(seen, assumptions);
  if (derived === null) throw new RangeError(`no notes on ${archetypeId}`);
  return { archetypeId, own, notes, derived };
}
