import { describe, expect, it } from 'vitest';
import { german } from '../../../../src-main/domain/advice/words/de.ts';
import { english } from '../../../../src-main/domain/advice/words/en.ts';
import { atHead } from '../../../../src-main/domain/advice/words/at-head.ts';

// What the sentences hang on; how they read is for people to judge (test/reference/cases reads them all).
describe.each([english, german])('words in $language', (words) => {
  it('a club is called by its label, else by its id; a driver or putter without a label by its kind', () => {
    expect(words.clubName({ id: 'c7', label: 'my 7', kind: 'iron' })).toBe('my 7');
    expect(words.clubName({ id: 'c7', kind: 'iron' })).toBe('c7');
    for (const kind of ['driver', 'putter'] as const) {
      expect(words.clubName({ id: 'c7', kind })).not.toContain('c7');
      expect(words.clubName({ id: 'c7', label: 'mine', kind })).toBe('mine');
    }
    expect(words.clubName({ id: 'c7', kind: 'driver' })).not.toBe(
      words.clubName({ id: 'c7', kind: 'putter' }),
    );
  });
  it('a speed that was given is told apart from one that was reckoned', () => {
    const reckoned = ['driver carry', 'driver total', '7-iron carry', 'another carry'] as const;
    expect(new Set(['given' as const, ...reckoned].map(words.speedSource)).size).toBe(5);
  });
  it('each flex, cause, side and state has a sentence of its own', () => {
    const flex = (fit: 'too-soft' | 'too-stiff', miss: boolean) =>
      words.flex({ club: 'D', flex: 'R', fit, speed: '90', miss });
    expect(
      new Set([
        flex('too-soft', true),
        flex('too-soft', false),
        flex('too-stiff', true),
        flex('too-stiff', false),
      ]).size,
    ).toBe(4);
    const causes = ['flat-ball-speed', 'wide-spread', 'make-up', 'unknown', 'odd-pair'] as const;
    expect(new Set(causes.map((cause) => words.longEnd({ clubs: 'A', cause, usual: '10' }))).size).toBe(5);
    const sides = ([-1, 0, 1] as const).flatMap((launch) =>
      ([-1, 0, 1] as const)
        .filter((spin) => launch !== 0 || spin !== 0)
        .map((spin) => [launch, spin] as const),
    );
    expect(
      new Set(sides.map(([launch, spin]) => words.driverLaunchSpin({ club: 'D', launch, spin, left: false })))
        .size,
    ).toBe(sides.length);
    const unsure = (state: 'unsure-wide' | 'unsure-crowded') =>
      words.unsureGap({ longer: 'A', shorter: 'B', gap: '4', limit: '5', state });
    expect(unsure('unsure-wide')).not.toBe(unsure('unsure-crowded'));
  });
  it('a set, its members and single heads are named by what they are', () => {
    const base = { id: 'x', loftDeg: 30, forgiveness: 3 as const, spinTier: 'mid' as const, lengthIn: 37 };
    const members = [
      { kind: 'iron' as const, number: '5', loftDeg: 24 },
      { kind: 'wedge' as const, number: 'PW', loftDeg: 44 },
    ];
    const set = words.archetypeName({ ...base, kind: 'irons', members });
    expect(set).toMatch(/5.*PW/);
    const single = words.archetypeName({ ...base, kind: 'iron' });
    expect(single).toMatch(/30/);
    expect(set).not.toBe(single);
  });
});

it.each([
  ['driver', 'Driver'],
  ['my old 7', 'My old 7'],
  ['iX wood', 'IX wood'],
  ['7-iron', '7-iron'],
  ['PW', 'PW'],
  ['übungseisen', 'Übungseisen'],
  ['ß', 'ß'],
  ['𐐨x', '𐐀x'],
  ['', ''],
])('at the head of a sentence %s is %s', (name, head) => {
  expect(atHead(name, 'de')).toBe(head);
});
it('a capital follows its language', () => {
  expect(atHead('iron', 'tr')).toBe('İron');
  expect(atHead('iron', 'en')).toBe('Iron');
});
