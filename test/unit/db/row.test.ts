import { describe, expect, test } from 'vitest';
import { fromRow, toPatchRow, toRow, type Band, type Columns, type Money } from '../../../db/row.ts';
import { storageError } from './kit.ts';

type Thing = {
  name: string;
  lengthIn?: number;
  shots?: number;
  goTo?: boolean;
  tags?: string[];
  sell?: Band;
  fee?: Money;
};
const THING: Columns<Thing> = {
  name: ['name', 'text'],
  lengthIn: ['length_in', 'real'],
  shots: ['shots', 'int'],
  goTo: ['go_to', 'flag'],
  tags: ['tags_json', 'json'],
  sell: ['sell', 'band'],
  fee: ['', 'money'],
};
const FULL: Thing = {
  name: 'x',
  lengthIn: 0,
  shots: 0,
  goTo: false,
  tags: [],
  sell: { lowMinor: 0, likelyMinor: 1, highMinor: 2, currency: 'GBP' },
  fee: { minor: -3, currency: 'JPY' },
};

describe('a record', () => {
  test('becomes columns and comes back, zero, no and empty not taken for "not given"', () => {
    const row = toRow(THING, FULL);
    expect(row).toEqual({
      name: 'x',
      length_in: 0,
      shots: 0,
      go_to: 0,
      tags_json: '[]',
      sell_low_minor: 0,
      sell_likely_minor: 1,
      sell_high_minor: 2,
      sell_currency: 'GBP',
      minor: -3,
      currency: 'JPY',
    });
    expect(fromRow(THING, row)).toEqual(FULL);
  });

  test('what it leaves out becomes NULL, and NULL is left out again', () => {
    const row = toRow<Thing>(THING, { name: 'x' });
    expect(Object.keys(row)).toHaveLength(11);
    expect(Object.values(row).filter((value) => value !== null)).toEqual(['x']);
    expect(fromRow(THING, row)).toEqual({ name: 'x' });
    expect(Object.keys(fromRow(THING, row))).toEqual(['name']);
  });

  test('a patch names only what changes; null clears a whole band', () => {
    expect(toPatchRow<Thing>(THING, { goTo: true })).toEqual({ go_to: 1 });
    expect(toPatchRow<Thing>(THING, { sell: null, lengthIn: null })).toEqual({
      length_in: null,
      sell_low_minor: null,
      sell_likely_minor: null,
      sell_high_minor: null,
      sell_currency: null,
    });
    expect(toPatchRow<Thing>(THING, {})).toEqual({});
  });
});

describe('a number that no column takes is refused by name', () => {
  test.each([NaN, Infinity, -Infinity])('a length of %s', (value) => {
    const error = storageError(() => toRow<Thing>(THING, { name: 'x', lengthIn: value }));
    expect(error).toMatchObject({ code: 'bad-value' });
    expect(error.message).toContain(`lengthIn is ${String(value)}`);
  });

  test.each([0.5, NaN, 2 ** 53])('a count of %s', (value) => {
    expect(storageError(() => toRow<Thing>(THING, { name: 'x', shots: value })).message).toContain(
      'shots is',
    );
  });

  test('half a penny', () => {
    const fee = { minor: 0.5, currency: 'GBP' };
    expect(storageError(() => toRow<Thing>(THING, { name: 'x', fee })).message).toContain('fee.minor is 0.5');
    const sell = { lowMinor: 0, likelyMinor: 1.5, highMinor: 2, currency: 'GBP' };
    expect(storageError(() => toPatchRow<Thing>(THING, { sell })).message).toContain(
      'sell.likelyMinor is 1.5',
    );
  });
});
