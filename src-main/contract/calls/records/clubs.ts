import { z } from 'zod';
import { bandFileSchema, clubFileSchema } from '../../formats/bag-file.ts';
import { idSchema } from '../../primitives.ts';
import { rowId } from './players.ts';
import { read, undoable } from '../spec.ts';

const club = { bagId: rowId, clubId: idSchema };
const money = bandFileSchema.shape.low;
const { carry, carrySd, shots, total } = clubFileSchema.shape;

/** Distances are in the bag's unit, money in major units of the currency beside it. */
export const carryEntrySchema = z.strictObject({
  id: rowId,
  on: z.iso.date(),
  source: z.enum(['stated', 'measured']),
  carry: z.number(),
  carrySd: z.number().exactOptional(),
  shots: z.int().exactOptional(),
  total: z.number().exactOptional(),
  /** From an imported session. */
  imported: z.boolean(),
  /** The club's carry is this one. */
  counts: z.boolean(),
});

export const clubCalls = {
  /** A club's dated carries, the newest first, and their trend. */
  'clubs.history': read(
    z.strictObject(club),
    z.strictObject({
      entries: z.array(carryEntrySchema),
      /** Distance a year by least squares, with a 90 % range; null below three entries over a month. */
      trend: z.strictObject({ perYear: z.number(), low: z.number(), high: z.number() }).nullable(),
    }),
  ),
  /** Adds to the history; the newest day counts. */
  'clubs.recordCarry': undoable(
    z.strictObject({
      ...club,
      on: z.iso.date(),
      carry: carry.unwrap(),
      carrySd,
      shots,
      total,
    }),
    z.null(),
  ),
  'clubs.removeCarry': undoable(z.strictObject({ ...club, carryId: rowId }), z.null()),
  /** Clubs that have left the bag: on the shelf, then sold. */
  'clubs.elsewhere': read(
    z.strictObject({ bagId: rowId }),
    z.array(
      z.strictObject({
        clubId: z.string(),
        kind: clubFileSchema.shape.kind,
        label: z.string().exactOptional(),
        place: z.enum(['shelf', 'sold']),
        soldFor: z.strictObject({ amount: z.number(), currency: z.string() }).exactOptional(),
        soldOn: z.iso.date().exactOptional(),
        boughtFor: z.strictObject({ amount: z.number(), currency: z.string() }).exactOptional(),
        boughtOn: z.iso.date().exactOptional(),
      }),
    ),
  ),
  /** Instead of striking out: to the shelf, sold (for a price), or back into the bag. */
  'clubs.move': undoable(
    z.strictObject({ ...club, to: z.enum(['bag', 'shelf', 'sold']), price: money.optional() }),
    z.null(),
  ),
};
