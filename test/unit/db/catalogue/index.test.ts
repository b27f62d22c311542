import { describe, expect, it } from 'vitest';
import { archetypeId } from '../../../../db/catalogue/id.ts';
import { loadCatalogue } from '../../../../db/catalogue/index.ts';
import type { Archetype } from '../../../../src-main/contract/formats/catalogue.ts';

const catalogue = loadCatalogue();
const ofKind = (kind: Archetype['kind']) => catalogue.filter((archetype) => archetype.kind === kind);
const idsWhere = (isWrong: (archetype: Archetype) => boolean) =>
  catalogue.filter(isWrong).map(({ id }) => id);

/** The order inside a file (db/catalogue/README.md): loft, tier, spin tier, first and last member's loft. */
function fileOrder(a: Archetype, b: Archetype): number {
  const spin = ['low', 'mid', 'high'];
  const key = ({ loftDeg, forgiveness, spinTier, members = [] }: Archetype) => [
    loftDeg,
    forgiveness,
    spin.indexOf(spinTier),
    members[0]?.loftDeg ?? 0,
    members.at(-1)?.loftDeg ?? 0,
  ];
  const keyB = key(b);
  for (const [index, value] of key(a).entries()) {
    const difference = value - (keyB[index] ?? 0);
    if (difference !== 0) return difference;
  }
  return 0;
}

describe('the shipped catalogue', () => {
  it('holds 120 to 180 archetypes', () => {
    expect(catalogue.length).toBeGreaterThanOrEqual(120);
    expect(catalogue.length).toBeLessThanOrEqual(180);
  });

  it('is a fresh list at every call, so that a caller cannot spoil it', () => {
    const spoiled = loadCatalogue();
    for (const archetype of spoiled) archetype.loftDeg = 0;
    spoiled.length = 0;
    expect(loadCatalogue()).toEqual(catalogue);
  });

  it('gives each id as the fields say', () => {
    expect(idsWhere((archetype) => archetype.id !== archetypeId(archetype))).toEqual([]);
  });

  it('keeps the ids that the files’ description names', () => {
    const ids = new Set(catalogue.map(({ id }) => id));
    const named = ['hybrid-22-t3', 'driver-9-t2-low', 'irons-5-pw-30-t3'];
    expect(named.filter((id) => !ids.has(id))).toEqual([]);
  });

  it('goes from driver to putter, and up in loft, tier and spin tier within a kind', () => {
    const kinds = ['driver', 'fairway', 'hybrid', 'irons', 'iron', 'wedge', 'putter'] as const;
    const sorted = kinds.flatMap((kind) => ofKind(kind).sort(fileOrder));
    expect(catalogue.map(({ id }) => id)).toEqual(sorted.map(({ id }) => id));
  });

  it('gives lofts in half degrees and lengths in quarter inches: typical values, no more exact', () => {
    const isStep = (value: number, step: number) => Number.isInteger(value / step);
    const isWrong = ({ loftDeg, lengthIn, members = [] }: Archetype) =>
      !isStep(lengthIn, 0.25) ||
      [loftDeg, ...members.map((member) => member.loftDeg)].some((loft) => !isStep(loft, 0.5));
    expect(idsWhere(isWrong)).toEqual([]);
  });
});

describe('the spread of tiers', () => {
  it.each(['driver', 'fairway', 'hybrid', 'irons', 'wedge', 'putter'] as const)(
    'has every forgiveness tier among %s archetypes, none on more than half of them',
    (kind) => {
      const counts = [1, 2, 3, 4].map(
        (tier) => ofKind(kind).filter(({ forgiveness }) => forgiveness === tier).length,
      );
      expect(Math.min(...counts), counts.join('/')).toBeGreaterThan(0);
      expect(Math.max(...counts), counts.join('/')).toBeLessThanOrEqual(ofKind(kind).length / 2);
    },
  );

  it('has the first three tiers among single irons, and no super game improvement, which are hybrids', () => {
    expect([...new Set(ofKind('iron').map(({ forgiveness }) => forgiveness))].sort()).toEqual([1, 2, 3]);
  });

  it.each(['driver', 'fairway', 'hybrid', 'irons', 'iron', 'wedge'] as const)(
    'has every spin tier among %s archetypes, most of them mid',
    (kind) => {
      const count = (tier: string) => ofKind(kind).filter(({ spinTier }) => spinTier === tier).length;
      expect(count('low')).toBeGreaterThan(0);
      expect(count('high')).toBeGreaterThan(0);
      expect(count('mid')).toBeGreaterThan(count('low') + count('high'));
    },
  );

  it('says nothing about a putter’s spin', () => {
    expect(idsWhere(({ kind, spinTier }) => kind === 'putter' && spinTier !== 'mid')).toEqual([]);
  });
});

describe('sets', () => {
  const sets = ofKind('irons');

  it('calls numbered clubs irons and lettered ones wedges, in the usual run without a break', () => {
    const run = ['2', '3', '4', '5', '6', '7', '8', '9', 'PW', 'AW', 'SW'];
    const isWrong = ({ members = [] }: Archetype) => {
      const numbers = members.map(({ number }) => number);
      const span = run.slice(run.indexOf(numbers[0] ?? ''), run.indexOf(numbers.at(-1) ?? '') + 1);
      // Older sets went from PW straight to SW.
      const isRun = [span, span.filter((number) => number !== 'AW')].some(
        (usual) => usual.join() === numbers.join(),
      );
      return !isRun || members.some(({ kind, number }) => (kind === 'iron') !== /^[0-9]$/.test(number));
    };
    expect(sets.filter(isWrong).map(({ id }) => id)).toEqual([]);
  });

  it('rises by 2 to 6.5° from member to member', () => {
    const isWrong = ({ members = [] }: Archetype) =>
      members.some(({ loftDeg }, index) => {
        const before = members[index - 1];
        return before !== undefined && (loftDeg - before.loftDeg < 2 || loftDeg - before.loftDeg > 6.5);
      });
    expect(sets.filter(isWrong).map(({ id }) => id)).toEqual([]);
  });

  it('comes in several make-ups, to AW and SW as well', () => {
    const makeUps = new Set(sets.map(({ id }) => id.split('-').slice(1, 3).join('-')));
    expect([...makeUps]).toEqual(
      expect.arrayContaining(['3-pw', '4-pw', '5-pw', '6-pw', '5-aw', '6-aw', '5-sw']),
    );
  });
});

describe('putters', () => {
  // 3 to 4° and 33 to 35 in: common practice, no source.
  it('have usual lofts and lengths', () => {
    const isWrong = ({ kind, loftDeg, lengthIn }: Archetype) =>
      kind === 'putter' && (loftDeg < 3 || loftDeg > 4 || lengthIn < 33 || lengthIn > 35);
    expect(idsWhere(isWrong)).toEqual([]);
  });
});
