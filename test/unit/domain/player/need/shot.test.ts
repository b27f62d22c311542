import { describe, expect, it } from 'vitest';
import { leave, type Shot } from '../../../../../src-main/domain/player/need/shot.ts';

const edges = Float64Array.from({ length: 401 }, (_, i) => i);
const left = (shot: Shot, weight = 1): Float64Array => {
  const into = new Float64Array(edges.length - 1);
  leave(shot, weight, edges, into);
  return into;
};
const sum = (cells: Float64Array) => cells.reduce((total, cell) => total + cell, 0);
const mean = (cells: Float64Array) => cells.reduce((total, cell, i) => total + cell * (i + 0.5), 0);

describe('leave', () => {
  it('loses nothing, short or long', () => {
    for (const remainingYd of [50, 200, 215, 380]) {
      for (const sdYd of [0, 2, 12, 100, 200]) {
        expect(sum(left({ remainingYd, meanYd: 200, sdYd, rollYd: 0 }, 0.7))).toBeCloseTo(0.7, 8);
      }
    }
  });
  it('at the pin leaves the mean of a half-normal: sd · √(2/π)', () => {
    const cells = left({ remainingYd: 200, meanYd: 200, sdYd: 12, rollYd: 0 });
    expect(mean(cells)).toBeCloseTo(12 * Math.sqrt(2 / Math.PI), 1);
  });
  it('out of reach leaves the rest on the mean, roll taken off', () => {
    expect(mean(left({ remainingYd: 380, meanYd: 200, sdYd: 12, rollYd: 20 }))).toBeCloseTo(160, 6);
  });
  it('past the pin what is over is left', () => {
    expect(mean(left({ remainingYd: 100, meanYd: 200, sdYd: 5, rollYd: 20 }))).toBeCloseTo(120, 6);
  });
  it('keeps only what lies beyond the first border', () => {
    const short = Float64Array.of(40, 50, 60);
    const into = new Float64Array(2);
    leave({ remainingYd: 250, meanYd: 200, sdYd: 10, rollYd: 0 }, 1, short, into);
    // Normal tables: P(0 < z < 1) = .34134, P(−1 < z < 0) the same.
    expect(into[0]).toBeCloseTo(0.34134, 5);
    expect(into[1]).toBeCloseTo(0.34134, 5);
  });
  it('a carry is never below 0 nor above twice the mean', () => {
    const cells = left({ remainingYd: 100, meanYd: 100, sdYd: 100, rollYd: 0 });
    expect(sum(cells.subarray(0, 100))).toBeCloseTo(1, 9);
    // Normal tables: P(|z| < .5) = .38292, P(|z| < 1) = .68269.
    expect(sum(cells.subarray(0, 50))).toBeCloseTo(0.38292 / 0.68269, 4);
  });
});
