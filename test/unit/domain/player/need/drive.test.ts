import { describe, expect, it } from 'vitest';
import { carryFromTotal } from '../../../../../src-main/domain/player/model.ts';
import { driveRollYd, driveTotalYd } from '../../../../../src-main/domain/player/need/drive.ts';

describe('roll of a drive', () => {
  it('is 20 yd, a slow player 15', () => {
    expect(driveRollYd(200)).toBe(20);
    expect(driveRollYd(130)).toBe(15);
  });
  it('undoes the rule that takes a total for a carry', () => {
    for (let carryYd = 20; carryYd < 320; carryYd += 1) {
      expect(carryFromTotal(driveTotalYd(carryYd), undefined)).toBeCloseTo(carryYd, 9);
    }
  });
});
