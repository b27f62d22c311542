import { describe, expect, it } from 'vitest';
import { archetypeId } from '../../../../db/catalogue/id.ts';

const hybrid = { kind: 'hybrid', loftDeg: 22, forgiveness: 3, spinTier: 'mid', lengthIn: 40 } as const;

describe('archetypeId', () => {
  // The three examples of the command's description in the design.
  it('gives kind, loft and tier', () => {
    expect(archetypeId(hybrid)).toBe('hybrid-22-t3');
  });

  it('adds the spin tier when it is not mid', () => {
    expect(archetypeId({ ...hybrid, kind: 'driver', loftDeg: 9, forgiveness: 2, spinTier: 'low' })).toBe(
      'driver-9-t2-low',
    );
  });

  it('names the first and last member of a set before its 7-iron loft', () => {
    const members = [
      { kind: 'iron' as const, number: '5', loftDeg: 23.5 },
      { kind: 'iron' as const, number: '7', loftDeg: 30 },
      { kind: 'wedge' as const, number: 'PW', loftDeg: 43.5 },
    ];
    expect(archetypeId({ ...hybrid, kind: 'irons', loftDeg: 30, members })).toBe('irons-5-pw-30-t3');
  });

  it('writes half degrees with a dot', () => {
    expect(archetypeId({ ...hybrid, kind: 'fairway', loftDeg: 16.5 })).toBe('fairway-16.5-t3');
  });

  it('does not depend on the length, which may be corrected', () => {
    expect(archetypeId({ ...hybrid, lengthIn: 39 })).toBe(archetypeId(hybrid));
  });
});
