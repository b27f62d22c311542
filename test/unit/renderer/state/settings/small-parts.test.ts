import { expect, test } from 'vitest';
import { stampOf } from '../../../../../db/files/files.ts';
import { USUAL_CONVENTIONS } from '../../../../../src-main/domain/bag/conventions.ts';
import { conventionsFile } from '../../../../../src-main/service/answers/reckoning.ts';
import { momentOf } from '../../../../../src-renderer/state/settings/backup-moment.ts';
import { ownValues } from '../../../../../src-renderer/state/settings/own-values.ts';
import { searchRoster } from '../../../../../src-renderer/state/roster/roster-search.ts';

test('the moment in a backup’s name is the one that it was made at', () => {
  for (const iso of ['2026-11-26T09:05:07.123Z', '2026-01-01T00:00:00Z']) {
    expect(new Date(momentOf({ takenAt: stampOf(iso) })).toISOString()).toBe(new Date(iso).toISOString());
  }
});

test('values of the user’s own are counted one by one', () => {
  const usual = conventionsFile(USUAL_CONVENTIONS);
  expect(ownValues(usual, usual)).toBe(0);
  const limits = usual.limits.map((row, i) => (i === 1 ? { ...row, wideYd: 12, firstPairYd: 30 } : row));
  const weights = { ...usual.weights, tier: 0 };
  expect(ownValues({ ...usual, limits, weights, longShare: 0.8, tierUpTo: [5.4, 12.4, 18] }, usual)).toBe(5);
});

test('anybody with a name can be searched for', () => {
  const people = [
    { id: 1, name: 'José' },
    { id: 2, name: 'Bea' },
  ];
  expect(searchRoster(people, 'jose')).toEqual([people[0]]);
});
