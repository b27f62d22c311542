import { describe, expect, test } from 'vitest';
import { flight, neverLanded, type FlightInput } from '../../../../src-main/domain/flight/flight.ts';

const drive: FlightInput = { ballSpeedMph: 140, launchDeg: 13, spinRpm: 2700 };
const mild = { temperatureC: 15, humidity: 0.5, altitudeM: 0 };

describe('accepted at both ends of every range', () => {
  test.each<Partial<FlightInput>>([
    { ballSpeedMph: 20 },
    { ballSpeedMph: 250 },
    { launchDeg: -10 },
    { launchDeg: 80 },
    { spinRpm: 0 },
    { spinRpm: 15_000 },
    { air: { ...mild, temperatureC: -30 } },
    { air: { ...mild, temperatureC: 50 } },
    { air: { ...mild, humidity: 0 } },
    { air: { ...mild, humidity: 1 } },
    { air: { ...mild, altitudeM: -430 } },
    { air: { ...mild, altitudeM: 4500 } },
    { wind: { headMph: 60, fromLeftMph: -60 } },
  ])('%j', (change) => {
    expect(flight({ ...drive, ...change }).ok).toBe(true);
  });
});

describe('refused, with place, value and remedy', () => {
  const cases: [string, Partial<FlightInput>, number][] = [
    ['flight.ballSpeedMph', { ballSpeedMph: NaN }, NaN],
    ['flight.ballSpeedMph', { ballSpeedMph: Infinity }, Infinity],
    ['flight.ballSpeedMph', { ballSpeedMph: 19.9 }, 19.9],
    ['flight.ballSpeedMph', { ballSpeedMph: -140 }, -140],
    ['flight.ballSpeedMph', { ballSpeedMph: 251 }, 251],
    ['flight.launchDeg', { launchDeg: -11 }, -11],
    ['flight.launchDeg', { launchDeg: 90 }, 90],
    ['flight.spinRpm', { spinRpm: -1 }, -1],
    ['flight.spinRpm', { spinRpm: 15_001 }, 15_001],
    ['flight.air.temperatureC', { air: { ...mild, temperatureC: 300 } }, 300],
    ['flight.air.humidity', { air: { ...mild, humidity: 50 } }, 50],
    ['flight.air.altitudeM', { air: { ...mild, altitudeM: 9000 } }, 9000],
    ['flight.wind.headMph', { wind: { headMph: NaN, fromLeftMph: 0 } }, NaN],
    ['flight.wind.fromLeftMph', { wind: { headMph: 0, fromLeftMph: 100 } }, 100],
  ];
  test.each(cases)('%s %j', (place, change, value) => {
    const got = flight({ ...drive, ...change });
    expect(got.ok).toBe(false);
    if (got.ok) return;
    expect(got.place).toBe(place);
    expect(got.value).toBe(value);
    expect(got.message).toContain(String(value));
    expect(got.remedy).toMatch(/^Give .+ as a number from -?[\d.]+ to /);
  });

  test('the place the caller names is the place in the message', () => {
    expect(flight({ ...drive, spinRpm: NaN, place: 'launches[3]' })).toMatchObject({
      ok: false,
      place: 'launches[3].spinRpm',
    });
  });

  test('something that is no number at all is refused in the same words', () => {
    const wrong = { ...drive, ballSpeedMph: '140' } as unknown as FlightInput;
    expect(flight(wrong)).toMatchObject({ ok: false, value: '140', place: 'flight.ballSpeedMph' });
  });

  test('a whole message', () => {
    expect(flight({ ...drive, ballSpeedMph: 300 })).toEqual({
      ok: false,
      place: 'flight.ballSpeedMph',
      value: 300,
      message: 'Ball speed is 300 mph, outside 20 to 250 mph',
      remedy: 'Give ball speed as a number from 20 to 250 mph.',
    });
  });

  test('what has no unit is told without one, what is no number as that', () => {
    expect(flight({ ...drive, air: { ...mild, humidity: 50 } })).toMatchObject({
      message: 'Relative humidity is 50, outside 0 to 1',
      remedy: 'Give relative humidity as a number from 0 to 1.',
    });
    expect(flight({ ...drive, spinRpm: 'fast' as unknown as number })).toMatchObject({
      message: 'Backspin is not a number, outside 0 to 15000 rpm',
    });
  });

  test('a ball that would never land is refused as our own fault', () => {
    expect(neverLanded('clubs[1]', 140)).toMatchObject({ ok: false, place: 'clubs[1]', value: 140 });
    expect(neverLanded('clubs[1]', 140).message).toMatch(/120 s.*fault of the model/);
  });
});
