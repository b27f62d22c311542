import { describe, expect, it } from 'vitest';
import { loadCatalogue } from '../../../../../db/catalogue/index.ts';
import type { BagFile } from '../../../../../src-main/contract/formats/bag-file.ts';
import { readerFor } from '../../../../../src-main/contract/reader.ts';
import type { Finding, FindingKind } from '../../../../../src-main/domain/advice/finding.ts';
import { findAll } from '../../../../../src-main/domain/advice/rules/table.ts';
import { viewBag } from '../../../../../src-main/domain/advice/bag-view/view.ts';
import { german } from '../../../../../src-main/domain/advice/words/de.ts';
import { english } from '../../../../../src-main/domain/advice/words/en.ts';
import type { Words } from '../../../../../src-main/domain/advice/words/words.ts';
import { bagFile, domainBag, withClub, without } from '../../../../support/bags.ts';

// What a finding says has the names and the figures it is about: in both languages, whatever the sentence.
type Changes = Partial<BagFile['clubs'][number]>;
const each = (file: BagFile, changes: Record<string, Changes>) =>
  Object.entries(changes).reduce((bag, [id, change]) => withClub(bag, id, change), file);
const added = (...clubs: BagFile['clubs']): BagFile => ({
  ...bagFile(),
  clubs: [...bagFile().clubs, ...clubs],
});
const wedge = (label: string, loftDeg: number, carry: number) => ({
  id: label,
  kind: 'wedge' as const,
  label,
  loftDeg,
  carry,
});
const irons = (change: Changes, player: Partial<BagFile['player']> = {}): BagFile => ({
  ...bagFile({}, player),
  clubs: bagFile().clubs.map((club) => (club.kind === 'iron' ? { ...club, ...change } : club)),
});
const par3s = (length: number): BagFile => ({
  ...bagFile(),
  course: { holes: Array.from({ length: 18 }, () => ({ par: 3, length })) },
});
const measured = { shots: 12, carrySd: 4 };
const spinny = { ballSpeed: 132, launchDeg: 18, spinRpm: 3600 };
const lobs = ['l1', 'l2', 'l3', 'l4'].map((id, i) => wedge(id, 60, 60 - i));

/** A bag for each finding, and what its text must have. */
const TOLD: Record<FindingKind, [file: BagFile, ...has: string[]]> = {
  pain: [bagFile({}, { pain: true })],
  'too-little-data': [added({ id: 'mystery', kind: 'hybrid' }), 'mystery'],
  'wide-gap': [without(bagFile(), '4h', '5i'), '5w', '6i', '39 yd', '20 yd'],
  'unsure-gap': [withClub(bagFile(), 'sw', { carry: 73 }), 'gw', 'sw', '17 yd', '16 yd'],
  'crowded-pair': [withClub(bagFile(), '8i', { carry: 128 }), '7i', '8i', '1 yd', '5 yd'],
  'long-end-falls-off': [
    each(bagFile(), { '5w': { carry: 156 }, '4h': { carry: 153 }, '5i': { carry: 149 } }),
    '5w, 4h, 5i',
    '10 yd',
  ],
  // 1.55 × 129 yd is 200.
  'driver-behind-irons': [withClub(bagFile(), 'driver', { label: 'Big', carry: 176 }), 'Big', '24 yd'],
  'driver-launch-spin': [withClub(bagFile(), 'driver', { label: 'Big', ...spinny }), 'Big'],
  flex: [withClub(bagFile(), 'driver', { label: 'Big', flex: 'A' }), 'Big', 'A', '90 mph'],
  'wedge-surplus': [added(wedge('lob', 57, 75)), 'lob', 'sw'],
  'wedge-shortage': [without(bagFile(), 'gw'), 'pw', 'sw', '20 yd', '16 yd'],
  forgiveness: [
    irons({ set: 's', forgiveness: 1 }),
    '5i, 6i, 7i, 8i, 9i',
    english.tierName(1),
    english.tierName(2),
    '15',
  ],
  improving: [bagFile({}, { handicap: 15, targetHandicap: 9.5 }), '15', '9.5'],
  'go-to': [withClub(bagFile(), '4h', { goTo: true }), '4h'],
  'why-this-club': [par3s(120), '5w'],
  'hard-from-the-deck': [
    withClub(bagFile({}, { driverSpeed: 80 }), '5w', { label: 'Wood', loftDeg: 15 }),
    'Wood',
  ],
  'firm-ground': [
    each(bagFile({}, { ground: 'firm' }), { driver: { label: 'Big' }, '5w': { carry: 198 } }),
    'Big',
    '5w',
    '3 yd',
  ],
  'strong-lofts': [withClub(bagFile(), '7i', { label: '7i strong', loftDeg: 28 }), '7i strong'],
  'one-length': [irons({ lengthIn: 37 }, { driverSpeed: 85 }), '85 mph'],
  'check-conformity': [withClub(bagFile(), 'driver', { label: 'Big', yearMade: 2001 }), 'Big'],
  count: [added(...lobs), '16', '14'],
  bend: [each(bagFile(), { gw: measured, sw: { carry: 86.6, ...measured } }), 'gw', 'sw', '1.5°'],
  'nothing-needed': [bagFile(), '2027'],
};

function told(file: BagFile, words: Words, kind: FindingKind): Finding {
  const [reader, catalogue, today] = [readerFor(file.units), loadCatalogue(), '2026-11-26'];
  const found = findAll(viewBag({ bag: domainBag(file), catalogue, reader, words, today })).find(
    (one) => one.kind === kind,
  );
  if (!found) throw new Error(`no ${kind} in this bag`);
  return found;
}

describe.each([english, german])('a finding in $language', (words) => {
  it.each(Object.entries(TOLD))('%s', (kind, [file, ...has]) => {
    const { text, evidence } = told(file, words, kind as FindingKind);
    for (const one of has) expect(text.toLowerCase()).toContain(one.toLowerCase());
    const rows = evidence.map(({ figure, source }) => `${figure} ${source}`);
    for (const one of [text, ...rows]) expect(one).not.toMatch(/undefined|NaN|\[object/);
  });
  it('of clubs that wait for a handicap says which', () => {
    const file = withClub(bagFile({}, { handicap: 25, targetHandicap: 20 }), '5i', { forgiveness: 2 });
    const { text, verdict } = told(file, words, 'forgiveness');
    expect(verdict).toBe('wait');
    for (const one of ['5i', '20']) expect(text).toContain(one);
  });
  it('of two clubs that are both kept says which', () => {
    const file = each(bagFile(), { '7i': { goTo: true }, '8i': { goTo: true, carry: 128 } });
    const { text } = told(file, words, 'crowded-pair');
    for (const one of ['7i', '8i', '1 yd']) expect(text).toContain(one);
  });
  it('of a wedge beyond 60° names it alone', () => {
    const { text, clubs } = told(added(wedge('lob', 62, 68)), words, 'wedge-surplus');
    expect(clubs).toEqual(['lob']);
    // At the head of its sentence.
    expect(text).toContain('Lob');
    expect(text).not.toMatch(/\bsw\b/);
  });
  it('of a driver tells the left miss only where it is one, mirrored for a left-handed player', () => {
    const says = (handed: 'left' | 'right', ...miss: ('left' | 'right' | 'high')[]) =>
      told(
        withClub(bagFile({}, { handed, ...(miss.length > 0 ? { miss } : {}) }), 'driver', spinny),
        words,
        'driver-launch-spin',
      ).text;
    const plain = says('right');
    const left = says('right', 'high', 'left');
    expect(left).not.toBe(plain);
    expect([says('right', 'right', 'high'), says('left', 'left')]).toEqual([plain, plain]);
    expect(says('left', 'right')).toBe(left);
  });
});
