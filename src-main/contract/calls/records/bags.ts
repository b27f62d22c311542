import { z } from 'zod';
import {
  bagFileSchema,
  bandFileSchema,
  budgetSchema,
  clubFileSchema,
  costsSchema,
} from '../../formats/bag-file.ts';
import {
  currencySchema,
  distanceUnitSchema,
  idSchema,
  localeSchema,
  speedUnitSchema,
} from '../../primitives.ts';
import { rowId } from './players.ts';
import { read, undoable } from '../spec.ts';

const club = clubFileSchema.shape;

/** Null clears an optional field. Distances, speeds and money are in the bag's units, as in the bag file. */
export const clubPatchSchema = z
  .strictObject({
    kind: club.kind,
    label: club.label.nullable(),
    loftDeg: club.loftDeg.nullable(),
    loftMeasured: club.loftMeasured.nullable(),
    lieDeg: club.lieDeg.nullable(),
    lengthIn: club.lengthIn.nullable(),
    carry: club.carry.nullable(),
    carrySd: club.carrySd.nullable(),
    shots: club.shots.nullable(),
    total: club.total.nullable(),
    ballSpeed: club.ballSpeed.nullable(),
    launchDeg: club.launchDeg.nullable(),
    spinRpm: club.spinRpm.nullable(),
    forgiveness: club.forgiveness.nullable(),
    spinTier: club.spinTier.nullable(),
    flex: club.flex.nullable(),
    yearMade: club.yearMade.nullable(),
    goTo: club.goTo.nullable(),
    set: club.set.nullable(),
    sell: club.sell.nullable(),
  })
  .partial();
export type ClubPatch = z.infer<typeof clubPatchSchema>;

const bagId = rowId;

export const bagCalls = {
  /** The bag as its file would have it, in the reader's units. */
  'bags.read': read(z.strictObject({ bagId }), z.strictObject({ playerId: rowId, bag: bagFileSchema })),
  /** The bag file's text, to be saved by the reader. */
  'bags.export': read(z.strictObject({ bagId }), z.strictObject({ name: z.string(), text: z.string() })),
  'bags.addClub': undoable(
    z.strictObject({ bagId, club: clubFileSchema, before: idSchema.optional() }),
    z.null(),
  ),
  'bags.updateClub': undoable(z.strictObject({ bagId, clubId: idSchema, patch: clubPatchSchema }), z.null()),
  'bags.removeClub': undoable(z.strictObject({ bagId, clubId: idSchema }), z.null()),
  'bags.sellSet': undoable(
    z.strictObject({ bagId, setId: idSchema, sell: bandFileSchema.nullable() }),
    z.null(),
  ),
  'bags.setPrice': undoable(
    z.strictObject({
      bagId,
      archetype: idSchema,
      band: bandFileSchema.nullable(),
      seen: z.iso.date().optional(),
    }),
    z.null(),
  ),
  'bags.setBudget': undoable(z.strictObject({ bagId, budget: budgetSchema.nullable() }), z.null()),
  'bags.setCosts': undoable(z.strictObject({ bagId, costs: costsSchema }), z.null()),
  'bags.setChoices': undoable(z.strictObject({ bagId, changePutter: z.boolean() }), z.null()),
  /**
   * Distances and speeds at any time; another currency only where the bag holds no amounts, or with `keepNumbers`, which
   * relabels them: nothing is ever converted.
   */
  'bags.setUnits': undoable(
    z.strictObject({
      bagId,
      distance: distanceUnitSchema.optional(),
      speed: speedUnitSchema.optional(),
      currency: currencySchema.optional(),
      keepNumbers: z.boolean().optional(),
    }),
    z.null(),
  ),
  /** What of a bag is in its currency, and would have to be meant anew in another: for asking before `keepNumbers`. */
  'bags.amounts': read(
    z.strictObject({ bagId }),
    z.strictObject({
      currency: currencySchema,
      count: z.int(),
      kinds: z.array(z.enum(['budget', 'costs', 'sales', 'prices'])),
    }),
  ),
  /**
   * "Bought at X", for the club or the whole set alone, in the bag's currency: it becomes a club (a set its clubs), what
   * it replaces goes to the shelf or is sold, the budget pays. Money of the answer is in major units.
   */
  'bags.bought': undoable(
    z.strictObject({
      bagId,
      archetype: idSchema,
      price: bandFileSchema.shape.low,
      replaced: z
        .array(
          z.strictObject({
            clubId: idSchema,
            to: z.enum(['shelf', 'sold']),
            price: bandFileSchema.shape.low.optional(),
          }),
        )
        .max(60),
      /** Today when left out. */
      on: z.iso.date().optional(),
      /** Of the new clubs' names. */
      locale: localeSchema.optional(),
    }),
    z.strictObject({ clubs: z.array(z.string()), spent: z.number(), budget: z.number().nullable() }),
  ),
};
