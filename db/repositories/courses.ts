import type { Columns } from '../row.ts';
import { fromRow } from '../row.ts';
import type { Db } from '../sqlite.ts';
import { all, deleteRow, get, insertRow, missing, run, updateRow } from '../statement.ts';

export type Hole = { par: number; lengthYd: number };

/** Without playerId it is everybody's. A course from a bag file has no name. */
export type CourseFields = { playerId?: number; name?: string; holes: readonly Hole[] };
export type Course = CourseFields & { id: number; createdAt: string };

type CourseRow = Omit<Course, 'holes'>;

const COURSE: Columns<CourseRow> = {
  id: ['id', 'int'],
  playerId: ['player_id', 'int'],
  name: ['name', 'text'],
  createdAt: ['created_at', 'text'],
};
const HOLE: Columns<Hole> = { par: ['par', 'int'], lengthYd: ['length_yd', 'real'] };

/** @returns the new course's id. */
export function addCourse(db: Db, course: CourseFields, at: string): number {
  return db.transaction(() => {
    const values = { player_id: course.playerId ?? null, name: course.name ?? null, created_at: at };
    const id = insertRow(db, 'course', values);
    insertHoles(db, id, course.holes);
    return id;
  })();
}

/** Gives a course a new name, or other holes. */
export function updateCourse(db: Db, id: number, change: { name?: string; holes?: readonly Hole[] }): void {
  db.transaction(() => {
    updateRow(db, 'course', id, change.name === undefined ? {} : { name: change.name });
    if (change.holes === undefined) return;
    run(db, 'DELETE FROM course_hole WHERE course_id = @id', { id });
    insertHoles(db, id, change.holes);
  })();
}

function insertHoles(db: Db, courseId: number, holes: readonly Hole[]): void {
  holes.forEach(({ par, lengthYd }, index) => {
    insertRow(db, 'course_hole', { course_id: courseId, number: index + 1, par, length_yd: lengthYd });
  });
}

/** @throws StorageError 'missing'. */
export function readCourse(db: Db, id: number): Course {
  const row = get(db, 'SELECT * FROM course WHERE id = @id', { id });
  if (row === undefined) throw missing(db, 'course', id);
  return { ...fromRow(COURSE, row), holes: holesOf(db, id) };
}

function holesOf(db: Db, courseId: number): Hole[] {
  const sql = 'SELECT par, length_yd FROM course_hole WHERE course_id = @courseId ORDER BY number';
  return all(db, sql, { courseId }).map((row) => fromRow(HOLE, row));
}

/** Named courses: everybody's and, with a player, that player's own too. */
export function listCourses(db: Db, playerId?: number): Course[] {
  const sql = `SELECT * FROM course WHERE name IS NOT NULL AND (player_id IS NULL OR player_id = @playerId)
               ORDER BY name COLLATE NOCASE, id`;
  return all(db, sql, { playerId: playerId ?? null }).map((row) => {
    const course = fromRow(COURSE, row);
    return { ...course, holes: holesOf(db, course.id) };
  });
}

/** How many bags it is picked for. */
export function bagsOfCourse(db: Db, id: number): number {
  const row = get<{ bags: number }>(db, 'SELECT count(*) AS bags FROM bag WHERE course_id = @id', { id });
  return row?.bags ?? 0;
}

export function deleteCourse(db: Db, id: number): void {
  deleteRow(db, 'course', id);
}

/** Deletes a nameless course that no bag names any more. */
export function dropUnusedCourse(db: Db, id: number): void {
  const sql = `DELETE FROM course WHERE id = @id AND name IS NULL
               AND NOT EXISTS (SELECT 1 FROM bag WHERE bag.course_id = @id)`;
  run(db, sql, { id });
}
