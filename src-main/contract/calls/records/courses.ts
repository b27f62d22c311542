import { z } from 'zod';
import { bagFileSchema } from '../../formats/bag-file.ts';
import { textSchema } from '../../primitives.ts';
import { rowId } from './players.ts';
import { read, undoable } from '../spec.ts';

/** Lengths are in the distance unit of the bag that is asked about. */
export const holesSchema = bagFileSchema.shape.course.unwrap().shape.holes;
export type HoleFile = z.infer<typeof holesSchema>[number];

const courseSchema = z.strictObject({
  id: rowId,
  name: z.string(),
  holes: holesSchema,
  /** Bags that it is picked for, other players' too. */
  bags: z.int(),
});
export type CourseLine = z.infer<typeof courseSchema>;

export const courseCalls = {
  /** The named courses, and which is picked for the bag. */
  'courses.list': read(
    z.strictObject({ bagId: rowId }),
    z.strictObject({
      courses: z.array(courseSchema),
      picked: rowId.nullable(),
      /** A course without a name that came with the bag's file, and is picked. */
      fromFile: holesSchema.nullable(),
      /** What is reckoned with where none is picked: tees that suit the drive. Null where no drive is known. */
      usual: holesSchema.nullable(),
      /** Total lengths that a usual course can be laid out in, shortest first. */
      teeLengths: z.array(z.number()),
    }),
  ),
  /** A usual layout of that total length, to begin a course with. */
  'courses.layOut': read(
    z.strictObject({ bagId: rowId, totalLength: z.number().min(500).max(10_000) }),
    z.strictObject({ holes: holesSchema }),
  ),
  /** Adds a course, or with an id changes it, for every bag that it is picked for. */
  'courses.save': undoable(
    z.strictObject({
      bagId: rowId,
      id: rowId.optional(),
      name: textSchema(120).min(1),
      holes: holesSchema,
    }),
    z.strictObject({ id: rowId }),
  ),
  /** Bags that it was picked for go back to the usual course. */
  'courses.remove': undoable(z.strictObject({ id: rowId }), z.null()),
  /** Null: the usual course. */
  'courses.pick': undoable(z.strictObject({ bagId: rowId, id: rowId.nullable() }), z.null()),
};
