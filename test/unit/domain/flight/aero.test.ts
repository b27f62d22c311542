import { describe, expect, test } from 'vitest';
import { SAT6 } from '../../../../src-main/domain/flight/aero.ts';

describe('SAT6', () => {
  test('no spin, no lift, and the base drag above 36.3 m/s', () => {
    expect(SAT6.lift(0, 60)).toBe(0);
    expect(SAT6.drag(0, 60)).toBe(0.1775);
  });

  test('drag grows below 36.3 m/s and is continuous there', () => {
    expect(SAT6.drag(0, 20)).toBeGreaterThan(SAT6.drag(0, 36.3));
    expect(SAT6.drag(0, 36.3 - 1e-9)).toBeCloseTo(SAT6.drag(0, 36.3), 9);
  });

  test('drag stops growing with the spin ratio at its peak; lift saturates at 0.47', () => {
    expect(SAT6.drag(30, 40)).toBe(SAT6.drag(20, 40));
    expect(SAT6.drag(10, 40)).toBeLessThan(SAT6.drag(20, 40));
    expect(SAT6.lift(1e6, 1)).toBeCloseTo(0.47, 6);
  });

  test.each([
    [0, 0],
    [20, 0],
    [0, 1e-12],
    [1e-300, 0],
  ])('still air at the ball (%d, %d): a number', (spin, speed) => {
    expect(SAT6.drag(spin, speed)).toBeGreaterThan(0);
    expect(SAT6.lift(spin, speed)).toBeGreaterThanOrEqual(0);
  });
});
