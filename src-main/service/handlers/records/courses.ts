import type { HoleFile } from '../../../contract/calls/records/courses.ts';
import type { Units } from '../../../contract/primitives.ts';
import { jsonPath, RefusedInput, shownValue } from '../../../contract/refusal.ts';
import { fromYards, shownDistance, toYards } from '../../../contract/units.ts';
import { bagFromFile, HOLE_YD } from '../../../contract/formats/read-bag.ts';
import { ownedLadder } from '../../../domain/player/ladder/ladder.ts';
import { playerModel } from '../../../domain/player/model.ts';
import { courseOf, defaultCourse, TEE_LENGTHS_YD } from '../../../domain/player/need/courses.ts';
import type { Hole } from '../../../domain/bag/types.ts';
import { findBag, updateBag } from '../../../../db/repositories/bags/bags.ts';
import {
  addCourse,
  bagsOfCourse,
  deleteCourse,
  dropUnusedCourse,
  listCourses,
  readCourse,
  updateCourse,
} from '../../../../db/repositories/courses.ts';
import type { Db } from '../../../../db/sqlite.ts';
import { StorageError } from '../../../../db/errors.ts';
import type { Handlers, Subject } from '../../handler.ts';
import { questionOf } from '../../answers/question.ts';
import { bagStep } from '../../records/steps.ts';

type Distance = Units['distance'];

export const courseHandlers: Handlers<Subject<'courses'>> = {
  'courses.list': (context, { bagId }) => {
    const { db } = context;
    const { playerId, courseId, distanceUnit } = findBag(db, bagId);
    const { file, reckoning } = questionOf(context, bagId);
    const named = listCourses(db, playerId);
    const picked = courseId === undefined ? undefined : readCourse(db, courseId);
    const bag = bagFromFile(file);
    const model = playerModel(bag, reckoning.air);
    const drive = ownedLadder(bag, model).find(({ kind }) => kind === 'driver')?.carryYd;
    return {
      courses: named.map(({ id, name, holes }) => ({
        id,
        name: name ?? '',
        holes: shown(holes, distanceUnit),
        bags: bagsOfCourse(db, id),
      })),
      picked: picked?.name === undefined ? null : picked.id,
      fromFile: picked && picked.name === undefined ? shown(picked.holes, distanceUnit) : null,
      usual: drive === undefined ? null : shown(defaultCourse(drive).holes, distanceUnit),
      teeLengths: TEE_LENGTHS_YD.map((yards) => Math.round(fromYards(yards, distanceUnit))),
    };
  },
  'courses.layOut': ({ db }, { bagId, totalLength }) => {
    const { distanceUnit } = findBag(db, bagId);
    const totalYd = Math.round(toYards(totalLength, distanceUnit));
    return { holes: shown(courseOf(totalYd).holes, distanceUnit) };
  },
  'courses.save': {
    step: ({ name }) => ({ named: name }),
    run: ({ db, now }, { bagId, id, name, holes }) => {
      const { playerId, distanceUnit } = findBag(db, bagId);
      const fields = { name, holes: holes.map((hole) => stored(hole, distanceUnit)) };
      refuseSameName(db, playerId, name, id);
      refuseLengths(fields.holes, distanceUnit);
      if (id === undefined) return { id: addCourse(db, fields, now()) };
      namedCourse(db, id);
      updateCourse(db, id, fields);
      return { id };
    },
  },
  'courses.remove': {
    step: ({ id }, { db }) => ({ named: nameOf(db, id) }),
    run: ({ db }, { id }) => {
      namedCourse(db, id);
      deleteCourse(db, id);
      return null;
    },
  },
  'courses.pick': {
    step: ({ bagId, id }, { db }) => ({
      ...bagStep(db, bagId),
      named: id === null ? '' : nameOf(db, id),
    }),
    run: ({ db }, { bagId, id }) => {
      const { courseId: before } = findBag(db, bagId);
      if (id !== null) namedCourse(db, id);
      updateBag(db, bagId, { courseId: id });
      if (before !== undefined && before !== id) dropUnusedCourse(db, before);
      return null;
    },
  },
};

/** Lengths to 0.1 of the bag's unit, as the bag file has them. */
function shown(holes: readonly Hole[], unit: Distance): HoleFile[] {
  return holes.map(({ par, lengthYd }) => ({ par, length: shownDistance(lengthYd, unit) }));
}

function stored({ par, length }: HoleFile, unit: Distance): Hole {
  return { par, lengthYd: toYards(length, unit) };
}

/** @throws StorageError 'missing' for none, and for a course that is part of a bag's file. */
function namedCourse(db: Db, id: number): string {
  const { name } = readCourse(db, id);
  if (name !== undefined) return name;
  throw new StorageError('missing', `There is no course ${String(id)}`, 'Look at the list again.', db.name);
}

function nameOf(db: Db, id: number): string {
  try {
    return readCourse(db, id).name ?? '';
  } catch {
    return '';
  }
}

function refuseLengths(holes: readonly Hole[], unit: Distance): void {
  const [least, most] = HOLE_YD;
  const wrong = holes.findIndex(({ lengthYd }) => lengthYd < least || lengthYd > most);
  const hole = holes[wrong];
  if (!hole) return;
  const [low, high] = [least, most].map((yards) => String(shownDistance(yards, unit)));
  throw new RefusedInput('This course cannot be kept:', [
    {
      path: jsonPath(['holes', wrong, 'length']),
      value: shownValue(shownDistance(hole.lengthYd, unit)),
      message: `hole ${String(wrong + 1)} must be between ${low ?? ''} and ${high ?? ''} ${unit} long`,
      remedy: `Check the number and the unit (${unit}).`,
    },
  ]);
}

function refuseSameName(db: Db, playerId: number, name: string, id: number | undefined): void {
  const same = (one: string) => one.trim().toLowerCase() === name.trim().toLowerCase();
  if (!listCourses(db, playerId).some((course) => course.id !== id && same(course.name ?? ''))) return;
  throw new RefusedInput('This course cannot be kept:', [
    {
      path: '$.name',
      value: shownValue(name),
      message: 'there is a course of this name already',
      remedy: 'Give it another name, such as the same with its tees.',
    },
  ]);
}
