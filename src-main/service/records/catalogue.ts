import { archetypeSchema, type Archetype } from '../../contract/formats/catalogue.ts';
import {
  listArchetypes,
  type Archetype as ArchetypeRow,
} from '../../../db/repositories/prices/archetypes.ts';
import type { Db } from '../../../db/sqlite.ts';

const KINDS: readonly Archetype['kind'][] = [
  'driver',
  'fairway',
  'hybrid',
  'irons',
  'iron',
  'wedge',
  'putter',
];

/** Every archetype that is offered, shipped and the user's own: driver to putter, by loft, then id. */
export function readCatalogue(db: Db): Archetype[] {
  return listArchetypes(db)
    .map(archetypeOf)
    .sort(
      (a, b) =>
        KINDS.indexOf(a.kind) - KINDS.indexOf(b.kind) || a.loftDeg - b.loftDeg || (a.id < b.id ? -1 : 1),
    );
}

/** A row as the contract has it. */
export function archetypeOf(row: ArchetypeRow): Archetype {
  const { id, kind, loftDeg, forgiveness, spinTier, lengthIn, members } = row;
  return archetypeSchema.parse({
    id,
    kind,
    loftDeg,
    forgiveness,
    spinTier,
    lengthIn,
    ...(members ? { members: [...members] } : {}),
  });
}
