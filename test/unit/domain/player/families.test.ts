import { describe, expect, it } from 'vitest';
import { familyOf, playingKind } from '../../../../src-main/domain/player/families.ts';

// DESIGN §6 and §7: woods lend to each other, irons and wedges too; a set's own wedge is an iron of the set.
describe('families', () => {
  it('driver and fairway woods, hybrids, irons and wedges', () => {
    expect((['driver', 'fairway', 'hybrid', 'iron', 'wedge'] as const).map(familyOf)).toEqual([
      'woods',
      'woods',
      'hybrids',
      'irons',
      'irons',
    ]);
  });
  it('a wedge of a set plays as an iron; every other club as what it is', () => {
    expect(playingKind({ kind: 'wedge', set: 's' })).toBe('iron');
    expect(playingKind({ kind: 'wedge' })).toBe('wedge');
    for (const kind of ['driver', 'fairway', 'hybrid', 'iron', 'putter'] as const) {
      expect(playingKind({ kind, set: 's' })).toBe(kind);
      expect(playingKind({ kind })).toBe(kind);
    }
  });
});
