import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { z } from 'zod';
import { archetypeSchema } from '../../../src-main/contract/formats/catalogue.ts';
import { flightRowSchema } from '../../../src-main/contract/formats/flight-file.ts';
import { solutionSchema } from '../../../src-main/contract/formats/instance.ts';
import { cli } from '../../support/cli.ts';

let folder = '';
beforeAll(() => {
  folder = mkdtempSync(path.join(tmpdir(), 'loftledger-cli-'));
});
afterAll(() => {
  rmSync(folder, { recursive: true, force: true });
});
const data = () => ['--data', path.join(folder, 'data')];

describe('catalogue', () => {
  it('prints every archetype as JSON', () => {
    const { status, stdout } = cli(['catalogue', '--json', ...data()]);
    expect(status).toBe(0);
    const list = z.array(archetypeSchema).parse(JSON.parse(stdout));
    expect(list.length).toBeGreaterThanOrEqual(120);
    expect(list.map((one) => one.id)).toContain('irons-5-pw-30-t3');
    expect(list.map((one) => one.id)).toContain('driver-9-t2-low');
  });
  it('prints a table without --json', () => {
    expect(cli(['catalogue', ...data()]).stdout).toMatch(
      /^hybrid-22-t3 +hybrid +22 +game improvement +mid +40/m,
    );
  });
  it('serves from memory, and says so, where the usual folder cannot be written', () => {
    const result = cli(['catalogue', '--json'], {
      env: { XDG_DATA_HOME: '/dev/null', HOME: '/dev/null', APPDATA: '/dev/null' },
    });
    expect(result.status).toBe(0);
    expect(result.stderr).toMatch(/without your own records/);
    expect(JSON.parse(result.stdout)).toHaveLength(
      JSON.parse(cli(['catalogue', '--json', ...data()]).stdout).length,
    );
  });
});

describe('flight', () => {
  const launches = [
    { ballSpeedMph: 167, launchDeg: 10.9, spinRpm: 2686 },
    {
      ballSpeedMph: 120,
      launchDeg: 16.3,
      spinRpm: 7097,
      air: { temperatureC: 15, humidity: 0.5, altitudeM: 0 },
    },
  ];
  it('answers in the same order, and takes 25 °C where no air is given', () => {
    const same = { ...launches[0], air: { temperatureC: 25, humidity: 0.5, altitudeM: 0 } };
    const result = cli(['flight', '--json', '-'], { input: JSON.stringify([...launches, same]) });
    const rows = z.array(flightRowSchema).parse(JSON.parse(result.stdout));
    expect(rows).toHaveLength(3);
    expect(rows[2]).toEqual(rows[0]);
    expect(rows[0]?.carryYd).toBeGreaterThan(rows[1]?.carryYd ?? Infinity);
  });
  it('gives an empty list for an empty list', () => {
    expect(cli(['flight', '--json', '-'], { input: '[]' })).toMatchObject({ status: 0, stdout: '[]\n' });
  });
  it.each([
    ['absurd speed', [{ ...launches[0], ballSpeedMph: 999 }], /\$\[0\]\.ballSpeedMph = 999/],
    ['a missing figure', [{ ballSpeedMph: 100 }], /\$\[0\]\.launchDeg = \(missing\)/],
    ['an unknown key', [{ ...launches[0], club: '7i' }], /\$\[0\]\.club/],
    ['no list', launches[0], /must be a list/],
  ])('refuses %s: exit 2', (_name, input, message) => {
    const result = cli(['flight', '--json', '-'], { input: JSON.stringify(input) });
    expect(result).toMatchObject({ status: 2, stdout: '' });
    expect(result.stderr).toMatch(message);
  });
});

describe('solve', () => {
  const instance = {
    limit: 3,
    items: [
      { id: 'a', origin: 'owned', kind: 'iron', carryDy: 1500 },
      { id: 'b', origin: 'owned', kind: 'iron', carryDy: 1100 },
      { id: 'c', origin: 'candidate', kind: 'iron', carryDy: 1300, price: 4000 },
    ],
    bands: [{ fromDy: 0, wideDy: 200, crowdedDy: 50, wideWeight: 2, crowdWeight: 1 }],
    top: { atLeastDy: 1500, weight: 2 },
    bottom: { atMostDy: 1100, weight: 2 },
    budget: 5000,
  };
  it('answers one instance with one object', () => {
    const solution = solutionSchema.parse(
      JSON.parse(cli(['solve', '--instance', '-', '--json'], { input: JSON.stringify(instance) }).stdout),
    );
    expect(solution.today).toEqual({ cost: 0, penalty: 400, changes: 0, items: ['a', 'b'] });
    expect(solution.cheapestClean).toEqual({ cost: 4000, penalty: 0, changes: 1, items: ['a', 'b', 'c'] });
    expect(solution.headline).toEqual(solution.cheapestClean);
    expect(solution.walkAway).toEqual({ c: null });
  });
  it('answers an array with an array in the same order', () => {
    const out = JSON.parse(
      cli(['solve', '--instance', '-', '--json'], {
        input: JSON.stringify([instance, { ...instance, items: [] }]),
      }).stdout,
    ) as unknown[];
    expect(out).toHaveLength(2);
    expect(out[1]).toEqual({
      today: null,
      cheapestClean: null,
      bestWithinBudget: null,
      headline: null,
      frontier: [],
      walkAway: {},
    });
  });
  it.each([
    [
      'a locked candidate',
      { ...instance, items: [{ id: 'c', origin: 'candidate', kind: 'iron', carryDy: 1, locked: true }] },
      /\$\.items\[0\]\.locked/,
    ],
    [
      'half a tenth',
      { ...instance, items: [{ id: 'a', origin: 'owned', kind: 'iron', carryDy: 1.5 }] },
      /\$\.items\[0\]\.carryDy/,
    ],
    [
      'an unknown lot',
      { ...instance, items: [{ id: 'a', origin: 'owned', kind: 'iron', carryDy: 1, lot: 'x' }] },
      /\$\.items\[0\]\.lot/,
    ],
    ['bands not from 0', { ...instance, bands: [{ fromDy: 5, wideDy: 1, crowdedDy: 1 }] }, /\$\.bands\[0\]/],
    ['an unknown key in the second of two', [instance, { ...instance, colour: 1 }], /\$\[1\]\.colour/],
  ])('refuses %s: exit 2', (_name, input, message) => {
    const result = cli(['solve', '--instance', '-', '--json'], { input: JSON.stringify(input) });
    expect(result).toMatchObject({ status: 2, stdout: '' });
    expect(result.stderr).toMatch(message);
  });
});

it('an unknown command is wrong use, no command an overview', () => {
  expect(cli(['dance']).status).toBe(2);
  expect(cli([])).toMatchObject({ status: 0, stderr: '' });
});
