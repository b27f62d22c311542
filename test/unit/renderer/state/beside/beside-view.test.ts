import { describe, expect, test } from 'vitest';
import { loadCatalogue } from '../../../../../db/catalogue/index.ts';
import type { BesideBag } from '../../../../../src-main/contract/calls/answers/beside.ts';
import type { BagFile } from '../../../../../src-main/contract/formats/bag-file.ts';
import { besideView } from '../../../../../src-main/worker/beside.ts';
import {
  besideOverlay,
  hasOtherAir,
  marksOf,
  slotRows,
} from '../../../../../src-renderer/state/beside/beside-view.ts';
import { bagFile } from '../../../../support/bags.ts';

const catalogue = loadCatalogue();

/** The real view, so that what is made of it is tested on what the window gets. */
function bagOf(file: BagFile, distance: 'yd' | 'm' = 'yd'): BesideBag {
  const shownIn = { distance, speed: 'mph' as const };
  const view = besideView({ file, catalogue, today: '2026-11-26', shownIn });
  const of = { bagId: 1, playerId: 1, player: file.player.name, archived: false, bag: null };
  return { ...of, state: 'now', ...view };
}

const usual = bagOf(bagFile());
const gapped = bagOf(bagFile({ clubs: bagFile().clubs.filter(({ id }) => id !== '4h') }));
const { driverSpeed: _driverSpeed, ...unknown } = bagFile().player;
const blank = bagOf({ ...bagFile({ clubs: [{ id: 'putter', kind: 'putter' }] }), player: unknown });

describe('two ladders on one scale', () => {
  test('no club is on both pages, though ids and carries are the same', () => {
    const { rows, steps } = besideOverlay({ left: usual, right: usual });
    expect(rows).toHaveLength(22);
    expect(rows.every(({ on }) => on.left !== on.right)).toBe(true);
    expect(steps.every(({ on }) => on !== 'both')).toBe(true);
    expect(rows.map(({ name }) => name).slice(0, 4)).toEqual(['driver', 'driver', '5w', '5w']);
    expect(rows.every(({ bought }) => !bought)).toBe(true);
  });

  test('gaps beyond a limit stand on the page that has them', () => {
    const { rows, steps } = besideOverlay({ left: usual, right: gapped });
    const beyond = steps.filter(({ state }) => state !== 'fine');
    expect(beyond).toMatchObject([{ on: 'right', state: 'wide' }]);
    expect(rows[beyond[0]?.longer ?? -1]).toMatchObject({ name: '5w', on: { right: true } });
  });

  test('a bag of which nothing is known leaves its page empty', () => {
    const { rows } = besideOverlay({ left: usual, right: blank });
    expect(rows).toHaveLength(11);
    expect(besideOverlay({ left: blank, right: blank })).toEqual({ rows: [], steps: [] });
  });
});

describe('clubs in their slots', () => {
  test('with both carries and what lies between them', () => {
    const rows = slotRows({ left: usual, right: bagOf(bagFile(), 'm') });
    expect(rows).toHaveLength(12);
    // As if the second were told in metres: figures are taken as they come.
    expect(rows[0]).toMatchObject({
      group: 'driver',
      left: { carry: { value: 201 } },
      difference: 184 - 201,
    });
  });

  test('a club that only one has, and one of unknown carry', () => {
    const rows = slotRows({ left: usual, right: gapped });
    const lone = rows.find(({ left }) => left?.name === '4h');
    expect(lone).toMatchObject({ group: 'hybrid', right: null, difference: null });
    expect(slotRows({ left: usual, right: blank }).at(-1)).toMatchObject({
      group: 'putter',
      left: { carry: null },
      right: { carry: null },
      difference: null,
    });
  });
});

test('wide gaps and crowded pairs by name, with their limits', () => {
  expect(marksOf(usual)).toEqual([]);
  expect(marksOf(gapped)).toMatchObject([{ longer: '5w', shorter: '5i', state: 'wide', gap: 29 }]);
  expect(marksOf(blank)).toEqual([]);
});

test('another air is noticed, by either part', () => {
  const warm = { ...usual, air: { ...usual.air, temperatureC: 25 } };
  const high = { ...usual, air: { ...usual.air, altitudeM: 900 } };
  expect(hasOtherAir({ left: usual, right: gapped })).toBe(false);
  expect(hasOtherAir({ left: usual, right: warm })).toBe(true);
  expect(hasOtherAir({ left: high, right: usual })).toBe(true);
});
