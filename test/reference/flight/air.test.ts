import { describe, expect, test } from 'vitest';
import { airDensity, REFERENCE_AIR, type Air } from '../../../src-main/domain/flight/air.ts';
import { flight } from '../../../src-main/domain/flight/flight.ts';
import { constants } from './support/data.ts';
import { percentOff } from './support/stats.ts';

/** Published tour men's averages for a driver and a 7-iron. */
const driver = { ballSpeedMph: 167, launchDeg: 10.9, spinRpm: 2686 };
const seven = { ballSpeedMph: 120, launchDeg: 16.3, spinRpm: 7097 };

const carry = (launch: typeof driver, air: Partial<Air> = {}) => {
  const got = flight({ ...launch, air: { ...REFERENCE_AIR, ...air } });
  return got.ok ? got.carryYd : NaN;
};
const change = (launch: typeof driver, air: Partial<Air>) => percentOff(carry(launch, air), carry(launch));

function within(value: number, low: number, high: number) {
  expect(value).toBeGreaterThanOrEqual(low);
  expect(value).toBeLessThanOrEqual(high);
}

describe('density', () => {
  test('reference air: 1.1769 kg/m³ (constants file)', () => {
    expect(airDensity(REFERENCE_AIR)).toBeCloseTo(constants.air.rho, 4);
  });

  test('dry air at 15 °C and sea level: 1.225 kg/m³ (International Standard Atmosphere)', () => {
    expect(airDensity({ temperatureC: 15, humidity: 0, altitudeM: 0 })).toBeCloseTo(1.225, 3);
  });

  test('ISA at 1,000 and 2,000 m, at the temperatures it gives there: 1.1117 and 1.0066 kg/m³', () => {
    expect(airDensity({ temperatureC: 8.5, humidity: 0, altitudeM: 1000 })).toBeCloseTo(1.1117, 3);
    expect(airDensity({ temperatureC: 2, humidity: 0, altitudeM: 2000 })).toBeCloseTo(1.0066, 3);
  });

  test('saturated air at 25 °C is lighter than dry by 3/8 of its vapour pressure (3169 Pa, steam tables)', () => {
    const dry = airDensity({ temperatureC: 25, humidity: 0, altitudeM: 0 });
    const wet = airDensity({ temperatureC: 25, humidity: 1, altitudeM: 0 });
    within((dry - wet) / dry, 0.011, 0.0125);
  });
});

describe('carry: directions and sizes as bands (check values, section 7; our own model apart from the last)', () => {
  test('10 °C instead of 25: about 3 % shorter', () => {
    within(change(driver, { temperatureC: 10 }), -4, -2);
    within(change(seven, { temperatureC: 10 }), -4.5, -2);
  });

  test('dry to saturated: about 0.6 % longer', () => {
    within(percentOff(carry(driver, { humidity: 1 }), carry(driver, { humidity: 0 })), 0.3, 0.9);
  });

  test('1,500 m: about 8 % for a driver, 10.5 % for a 7-iron', () => {
    within(change(driver, { altitudeM: 1500 }), 7, 9);
    within(change(seven, { altitudeM: 1500 }), 9.5, 11.5);
  });

  test('2,100 m: about 10 % for a driver, in line with what players see in the air there', () => {
    within(change(driver, { altitudeM: 2100 }), 9, 12);
  });

  test('1,950 m: 7-iron near the 12 to 14 % of tour players’ planning numbers at 6,400 ft', () => {
    within(change(seven, { altitudeM: 1950 }), 11.5, 14.5);
  });

  test('higher, warmer and damper air each carry further, step by step', () => {
    for (const launch of [driver, seven]) {
      for (let i = 0; i < 20; i += 1) {
        expect(carry(launch, { altitudeM: 200 * (i + 1) })).toBeGreaterThan(
          carry(launch, { altitudeM: 200 * i }),
        );
        expect(carry(launch, { temperatureC: 2 * i + 2 })).toBeGreaterThan(
          carry(launch, { temperatureC: 2 * i }),
        );
        expect(carry(launch, { humidity: (i + 1) / 20 })).toBeGreaterThan(
          carry(launch, { humidity: i / 20 }),
        );
      }
    }
  });
});

describe('what a mile an hour of ball speed is worth (check values, section 7)', () => {
  test('about 1.9 yd with a driver, 1.7 with a 7-iron', () => {
    within(carry({ ...driver, ballSpeedMph: 168 }) - carry(driver), 1.6, 2.2);
    within(carry({ ...seven, ballSpeedMph: 121 }) - carry(seven), 1.4, 2);
  });
});
