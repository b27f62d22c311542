import { describe, expect, it } from 'vitest';
import { asCallRequest, readUploadName, showableName } from '../../../src-main/host/requests.ts';

describe('asCallRequest', () => {
  it('takes a name and arguments, whatever they are', () => {
    expect(asCallRequest({ call: 'players.list', args: { a: 1 } })).toEqual({
      call: 'players.list',
      args: { a: 1 },
    });
    expect(asCallRequest({ call: 'a' })).toEqual({ call: 'a', args: undefined });
  });

  it.each([
    undefined,
    null,
    'a',
    [],
    {},
    { args: 1 },
    { call: '' },
    { call: 7 },
    { call: '.a' },
    { call: 'a/b' },
    { call: 'a\n' },
    { call: `a${'b'.repeat(80)}` },
    { call: 'a', args: 1, more: 1 },
    { call: 'a', ['__proto__x']: 1 },
  ])('%j is none', (value) => {
    expect(asCallRequest(value)).toBeNull();
  });
});

describe('readUploadName', () => {
  it.each(['bag.json', 'shots (1).csv', 'Müller – Tasche.json', 'a'.repeat(255), '.loftledger'])(
    '%s is a name',
    (name) => {
      expect(readUploadName(name)).toBe(name);
    },
  );

  it.each([null, '', '.', '..', '../a', 'a/b', 'C:\\a', 'a\u0000.csv', 'a\nb', '\ud800', 'a'.repeat(256)])(
    '%j is none',
    (name) => {
      expect(readUploadName(name)).toBeNull();
    },
  );
});

describe('showableName', () => {
  it.each([
    ['range.csv', 'range.csv'],
    ['a\\b/c\u0000.csv', 'a_b_c_.csv'],
    ['\ud800.json', '\ufffd.json'],
    ['..', 'file'],
    ['', 'file'],
  ])('%j becomes %j', (name, shown) => {
    expect(showableName(name)).toBe(shown);
  });
  it('keeps the ending of one that is too long', () => {
    const shown = showableName(`${'x'.repeat(300)}.loftledger`);
    expect(shown.length).toBeLessThanOrEqual(255);
    expect(shown).toMatch(/^x{200}…x+\.loftledger$/);
    expect(readUploadName(shown)).toBe(shown);
  });
});
