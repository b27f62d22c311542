import { describe, expect, test } from 'vitest';
import { airDensity, PLAYER_AIR, REFERENCE_AIR } from '../../../../src-main/domain/flight/air.ts';

describe('airDensity', () => {
  test('falls with altitude, heat and damp', () => {
    const at = airDensity(REFERENCE_AIR);
    expect(airDensity({ ...REFERENCE_AIR, altitudeM: 500 })).toBeLessThan(at);
    expect(airDensity({ ...REFERENCE_AIR, temperatureC: 30 })).toBeLessThan(at);
    expect(airDensity({ ...REFERENCE_AIR, humidity: 0.9 })).toBeLessThan(at);
    expect(airDensity({ ...REFERENCE_AIR, altitudeM: -400 })).toBeGreaterThan(at);
  });

  test('the player’s air is cooler and denser than the reference air', () => {
    expect(PLAYER_AIR).toEqual({ temperatureC: 15, humidity: 0.5, altitudeM: 0 });
    expect(airDensity(PLAYER_AIR)).toBeGreaterThan(airDensity(REFERENCE_AIR));
  });
});
