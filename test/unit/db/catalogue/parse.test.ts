import { describe, expect, it } from 'vitest';
import { joinCatalogueFiles, parseCatalogueFile } from '../../../../db/catalogue/parse.ts';

const wedge = {
  id: 'wedge-54-t2',
  kind: 'wedge',
  loftDeg: 54,
  forgiveness: 2,
  spinTier: 'mid',
  lengthIn: 35.25,
};
const set = {
  id: 'irons-6-8-30-t3',
  kind: 'irons',
  loftDeg: 30,
  forgiveness: 3,
  spinTier: 'mid',
  lengthIn: 37,
  members: [
    { kind: 'iron', number: '6', loftDeg: 26.5 },
    { kind: 'iron', number: '7', loftDeg: 30 },
    { kind: 'iron', number: '8', loftDeg: 34 },
  ],
};
const member = (number: string, loftDeg: number) => ({ kind: 'iron', number, loftDeg });

describe('parseCatalogueFile', () => {
  it('keeps good entries as they are, in order', () => {
    expect(parseCatalogueFile('a.json', [wedge, set])).toEqual([wedge, set]);
  });

  it.each([
    ['no list', { wedge }, /a\.json: holds no list/],
    ['an unknown key', [{ ...wedge, brand: 'x' }], /entry 1 \(wedge-54-t2\).*brand/],
    ['a missing key', [wedge, { ...wedge, lengthIn: undefined }], /entry 2 .*lengthIn is nothing/],
    ['a tier beyond 4', [{ ...wedge, forgiveness: 5 }], /forgiveness is 5/],
    ['a tier that is no whole number', [{ ...wedge, forgiveness: 2.5 }], /forgiveness is 2\.5/],
    ['an unknown spin tier', [{ ...wedge, spinTier: 'middle' }], /spinTier is "middle"/],
    ['an unknown kind', [{ ...wedge, kind: 'chipper' }], /kind is "chipper"/],
    ['a loft as text', [{ ...wedge, loftDeg: '54' }], /loftDeg is "54"/],
    ['a loft beyond any club', [{ ...wedge, loftDeg: 81 }], /loftDeg is 81/],
    ['a length beyond any club', [{ ...wedge, lengthIn: 352.5 }], /lengthIn is 352\.5/],
    ['an id with a colon, which parts item ids', [{ ...wedge, id: 'wedge:54' }], /id is "wedge:54".*hyphens/],
    ['an id in capitals', [{ ...wedge, id: 'Wedge-54' }], /id is "Wedge-54"/],
    ['something that is no entry', [null], /entry 1: entry is null/],
    ['members of a single club', [{ ...wedge, members: set.members }], /a single wedge has no members/],
    ['a set without members', [{ ...wedge, kind: 'irons' }], /a set needs at least two members/],
    ['a set of one', [{ ...set, members: [member('7', 30)] }], /a set needs at least two members/],
    ['a set without a 7', [{ ...set, members: [member('8', 34), member('9', 38)] }], /there is no 7/],
    ['a set whose loft is not its 7-iron’s', [{ ...set, loftDeg: 31 }], /loftDeg 31 is not the 7-iron's 30/],
    ['a number twice', [{ ...set, members: [member('7', 30), member('7', 34)] }], /7 is listed twice/],
    ['equal lofts', [{ ...set, members: [member('7', 30), member('8', 30)] }], /8 at 30° follows 7 at 30°/],
    [
      'lofts that fall',
      [{ ...set, members: [member('8', 34), member('7', 30)] }],
      /7 at 30° follows 8 at 34°/,
    ],
    [
      'a member that is a wood',
      [{ ...set, members: [{ ...member('5', 24), kind: 'hybrid' }, member('7', 30)] }],
      /members\.0\.kind is "hybrid"/,
    ],
    [
      'a member number with a colon',
      [{ ...set, members: [member('7', 30), member('8:', 34)] }],
      /members\.1\.number is "8:"/,
    ],
  ])('refuses %s by file, entry and value', (_what, entries, message) => {
    expect(() => parseCatalogueFile('a.json', entries)).toThrow(message);
  });
});

describe('joinCatalogueFiles', () => {
  it('keeps the order of files', () => {
    const ids = joinCatalogueFiles([
      ['b.json', [set]],
      ['a.json', [wedge]],
    ]).map(({ id }) => id);
    expect(ids).toEqual([set.id, wedge.id]);
  });

  it('refuses an id used twice, within a file and across two', () => {
    expect(() => joinCatalogueFiles([['a.json', [wedge, wedge]]])).toThrow(
      /a\.json: id "wedge-54-t2" is used already in a\.json/,
    );
    expect(() =>
      joinCatalogueFiles([
        ['a.json', [wedge]],
        ['b.json', [set, wedge]],
      ]),
    ).toThrow(/b\.json: id "wedge-54-t2" is used already in a\.json/);
  });
});
