import { describe, expect, it } from 'vitest';
import {
  courseOf,
  defaultCourse,
  TEE_LENGTHS_YD,
  teeLengthYd,
  type CoursePar,
} from '../../../../../src-main/domain/player/need/courses.ts';

const pars: CoursePar[] = [70, 71, 72];

describe('courseOf', () => {
  it.each(TEE_LENGTHS_YD.flatMap((yd) => pars.map((par) => [yd, par] as const)))(
    '%d yd, par %d: 18 holes that add up to it',
    (totalYd, parTotal) => {
      const { holes } = courseOf(totalYd, parTotal);
      expect(holes).toHaveLength(18);
      expect(holes.reduce((sum, hole) => sum + hole.par, 0)).toBe(parTotal);
      expect(holes.reduce((sum, hole) => sum + hole.lengthYd, 0)).toBe(totalYd);
      expect(holes.every((hole) => Number.isInteger(hole.lengthYd))).toBe(true);
    },
  );

  it('has par 3s shorter than par 4s, and these shorter than par 5s', () => {
    for (const parTotal of pars) {
      const { holes } = courseOf(6300, parTotal);
      const of = (par: number) => holes.filter((hole) => hole.par === par).map((hole) => hole.lengthYd);
      expect(of(3)).toHaveLength(4);
      expect(of(5)).toHaveLength(parTotal - 68);
      expect(Math.max(...of(3))).toBeLessThan(Math.min(...of(4)));
      expect(Math.max(...of(4))).toBeLessThan(Math.min(...of(5)));
    }
  });
});

describe('defaultCourse', () => {
  it('goes by the drive with its roll, to the nearest tees', () => {
    expect(teeLengthYd(205)).toBe(5900);
    expect(teeLengthYd(217)).toBe(5900);
    expect(teeLengthYd(218)).toBe(6300);
  });
  it('takes the forward tees of two as near', () => {
    expect(teeLengthYd(217.5)).toBe(5900);
  });
  it('ends at the shortest and the longest tees', () => {
    expect(teeLengthYd(0)).toBe(2200);
    expect(teeLengthYd(400)).toBe(7200);
  });
  it('is par 72 unless asked', () => {
    expect(defaultCourse(205)).toEqual(courseOf(5900, 72));
    expect(defaultCourse(205, 70)).toEqual(courseOf(5900, 70));
  });
  it('is never shorter for a longer drive', () => {
    const lengths = Array.from({ length: 300 }, (_, i) => teeLengthYd(40 + i));
    expect([...lengths].sort((a, b) => a - b)).toEqual(lengths);
  });
});
