import { describe, expect, it } from 'vitest';
import { RefusedInput } from '../../../../src-main/contract/refusal.ts';
import { recognise } from '../../../../src-main/service/files/recognise.ts';
import { bagFile } from '../../../support/bags.ts';

const bytes = (text: string) => new TextEncoder().encode(text);
const bag = JSON.stringify(bagFile());
const database = bytes('SQLite format 3\u0000and so on');

describe('a file is what it holds', () => {
  it.each([
    ['a bag', 'bag.json', bytes(bag), 'bag'],
    ['a bag by another name', 'bag.txt', bytes(`\ufeff\n ${bag}`), 'bag'],
    ['JSON that is no bag: its preview says why', 'x.json', bytes('"hello"'), 'bag'],
    ['records', 'all.loftledger', database, 'database'],
    ['records by another name', 'backup.db', database, 'database'],
    ['records that are none: the check says why', 'x.loftledger', bytes('hello'), 'database'],
    ['prices', 'p.csv', bytes('Archetype;Price\nx;1\n'), 'prices'],
    ['prices with a mark of their encoding', 'p.csv', bytes('\ufeffarchetype,likely\n'), 'prices'],
    ['a roster', 'r.tsv', bytes('Player\tHCP\nAda\t18\n'), 'roster'],
    ['a roster without an ending', 'roster', bytes('name,handicap\nAda,18\n'), 'roster'],
    ['any other table', 's.csv', bytes('Club,Carry\n7i,150\n'), 'shots'],
    ['a table under a title', 's.CSV', bytes('Session of today\n\nClub,Carry\n7i,150\n'), 'shots'],
  ])('%s', (_, name, head, kind) => {
    expect(recognise(name, head)).toBe(kind);
  });
  it('a letter that the end of the look cuts in two is none to mind', () => {
    expect(recognise('s.csv', bytes('Schläger,Carry\nä').subarray(0, -1))).toBe('shots');
  });
});

describe('what is none of the kinds is refused with its name, what it is, and what to do', () => {
  const UTF16 = new Uint8Array([0xff, 0xfe, 0x43, 0, 0x6c, 0]);
  it.each([
    ['an empty file', 'x.csv', bytes(''), /empty/, /save it again/],
    ['a picture', 'x.png', new Uint8Array([0x89, 0x50, 0x4e, 0x47, 0]), /none of the kinds/, /\.loftledger/],
    ['a spreadsheet', 'x.xlsx', bytes('PK\u0003\u0004...'), /packed/, /as CSV/],
    ['a spreadsheet called a table', 'x.csv', bytes('PK\u0003\u0004...'), /packed/, /as CSV/],
    ['a table in UTF-16', 'x.csv', UTF16, /UTF-16/, /UTF-8/],
    ['a table in another encoding', 'x.csv', new Uint8Array([0x41, 0xe4, 0x42]), /not UTF-8/, /UTF-8/],
    ['a binary called a bag', 'x.json', new Uint8Array([0x7b, 0]), /not UTF-8/, /bag file/],
    ['a plan', 'x.json', bytes('{"format": "loftledger-plan", "version": 1}'), /this is a plan/, /bag file/],
    ['prose', 'x.md', bytes('Dear coach, here is\nmy bag.'), /none of the kinds/, /price lists/],
    ['prose called a table', 'x.txt', bytes('Dear coach\nhere is my bag.'), /no table/, /as CSV/],
    ['a page', 'x.html', bytes('<!doctype html><p>7i,150</p>'), /none of the kinds/, /What is taken in/],
  ])('%s', (_, name, head, message, remedy) => {
    const refusals = (() => {
      try {
        recognise(name, head);
      } catch (error) {
        if (error instanceof RefusedInput) return error.refusals;
        throw error;
      }
      throw new Error('it was taken');
    })();
    expect(refusals).toHaveLength(1);
    expect(refusals[0]?.path).toBe(name);
    expect(refusals[0]?.message).toMatch(message);
    expect(refusals[0]?.remedy).toMatch(remedy);
  });
});
