import { describe, expect, test } from 'vitest';
import { matching } from '../../../../../src-renderer/state/find/match.ts';

const all = [
  { text: 'Bag', also: 'clubs lofts' },
  { text: 'Hand-over', also: 'document print' },
  { text: 'Print this page', also: 'paper' },
  { text: 'Über das Programm', also: 'Version' },
];
const found = (typed: string) => matching(all, typed).map(({ text }) => text);

describe('commands by what was typed', () => {
  test('nothing typed: all, in their own order', () => {
    expect(found('')).toEqual(all.map(({ text }) => text));
    expect(found('  ')).toHaveLength(all.length);
  });

  test('the beginning of a word of their own comes before another name for them', () => {
    expect(found('print')).toEqual(['Print this page', 'Hand-over']);
    expect(found('pri')).toEqual(['Print this page', 'Hand-over']);
  });

  test('every word is wanted, in any order, whatever stands between', () => {
    expect(found('over hand')).toEqual(['Hand-over']);
    expect(found('print paper')).toEqual(['Print this page']);
    expect(found('print version')).toEqual([]);
  });

  test('without accents and case', () => {
    expect(found('UBER')).toEqual(['Über das Programm']);
    expect(found('über')).toEqual(['Über das Programm']);
  });

  test('within a word from three letters on, and only of the text itself', () => {
    expect(found('gramm')).toEqual(['Über das Programm']);
    expect(found('mm')).toEqual([]);
    expect(found('ofts')).toEqual([]);
  });

  test('signs alone are nothing typed', () => {
    expect(found('?!')).toHaveLength(all.length);
  });
});
