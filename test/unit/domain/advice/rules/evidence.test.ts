import { describe, expect, it } from 'vitest';
import type { Evidence, FindingKind } from '../../../../../src-main/domain/advice/finding.ts';
import { findAll } from '../../../../../src-main/domain/advice/rules/table.ts';
import { english } from '../../../../../src-main/domain/advice/words/en.ts';
import type { BagFile } from '../../../../../src-main/contract/formats/bag-file.ts';
import { bagFile, viewOf, withClub, without } from '../../../../support/bags.ts';

// What each finding stands on (DESIGN §9: figure, range, source). Values are the bag's own or worked by hand.
const { figures, source } = english;
const { playerSource, practice, limitSource, tierSource, ladderSource, ruleSource, typical } = figures;
const stated = source('stated');
const both = `${stated} / ${stated}`;

const evidenceOf = (file: BagFile, kind: FindingKind): Evidence[] => {
  const found = findAll(viewOf(file)).find((finding) => finding.kind === kind);
  if (!found) throw new Error(`no ${kind} in this bag`);
  return found.evidence;
};
const row = (figure: string, value: Evidence['value'], from: string, range?: [number, number]): Evidence => ({
  figure,
  value,
  ...(range ? { range } : {}),
  source: from,
});
const near = (value: number, digits = 1) => expect.closeTo(value, digits) as number;
const carry = (id: string, yd: number, half = 5) =>
  row(`${figures.carry}, ${id}`, yd, stated, [near(yd - half), near(yd + half)]);
const byEach = (file: BagFile, changes: Record<string, Partial<BagFile['clubs'][number]>>) =>
  Object.entries(changes).reduce((bag, [id, change]) => withClub(bag, id, change), file);

describe('a pair of neighbours: both carries, the gap with its 90 % range, the limit and the chance', () => {
  // Stated carries: SD of a gap 3 yd (2 % of 177 = 3.54), 90 % within 1.645 of them.
  it('wide-gap, with how often the course asks for it', () => {
    const rows = evidenceOf(without(bagFile(), '4h', '5i'), 'wide-gap');
    expect(rows.slice(0, 5)).toEqual([
      carry('5w', 177, 5.3),
      carry('6i', 138),
      row(figures.gap, 39, both, [near(39 - 5.82), near(39 + 5.82)]),
      row(figures.limit, 20, limitSource),
      row(figures.chance, 1, both),
    ]);
    expect(rows).toHaveLength(6);
    expect(rows[5]?.figure).toBe(figures.need);
    expect(rows[5]?.source).toMatch(/18 holes/);
    // Shots a round, to a tenth.
    expect(Number(rows[5]?.value) * 10).toBeCloseTo(Math.round(Number(rows[5]?.value) * 10), 9);
  });
  it('crowded-pair, unsure-gap on either side, wedge-shortage: against the limit that holds', () => {
    expect(evidenceOf(withClub(bagFile(), '8i', { carry: 128 }), 'crowded-pair')).toEqual([
      carry('7i', 129),
      carry('8i', 128),
      row(figures.gap, 1, both, [near(1 - 4.93), near(1 + 4.93)]),
      row(figures.limit, 5, limitSource),
      // P(z < 4/3) = .9088
      row(figures.chance, 0.91, both),
    ]);
    const wide = evidenceOf(withClub(bagFile(), 'sw', { carry: 73 }), 'unsure-gap');
    // P(z > −1/3) = .6306
    expect(wide.slice(3)).toEqual([row(figures.limit, 16, limitSource), row(figures.chance, 0.63, both)]);
    const narrow = evidenceOf(withClub(bagFile(), '9i', { carry: 115.5 }), 'unsure-gap');
    expect(narrow.slice(3)).toEqual([row(figures.limit, 5, limitSource), row(figures.chance, 0.69, both)]);
    const short = evidenceOf(without(bagFile(), 'gw'), 'wedge-shortage');
    expect(short.slice(3)).toEqual([row(figures.limit, 16, limitSource), row(figures.chance, 0.91, both)]);
  });
  it('firm-ground: the gap against 10 yd', () => {
    const file = withClub(bagFile({}, { ground: 'firm' }), '5w', { carry: 198 });
    expect(evidenceOf(file, 'firm-ground')).toEqual([
      row(figures.gap, 3, ladderSource),
      row(figures.limit, 10, practice),
    ]);
  });
  it('long-end-falls-off: each narrow gap, the usual one, and ball speeds where they are known', () => {
    const file = byEach(bagFile(), {
      '5w': { carry: 156, ballSpeed: 121 },
      '4h': { carry: 153, ballSpeed: 120.5 },
      '5i': { carry: 149 },
    });
    expect(evidenceOf(file, 'long-end-falls-off')).toEqual([
      row(`${figures.gap}, 5w – 4h`, 3, both),
      row(`${figures.gap}, 4h – 5i`, 4, both),
      row(figures.usualGap, 10, ladderSource),
      row(`${figures.ballSpeed}, 5w`, 121, source('measured')),
      row(`${figures.ballSpeed}, 4h`, 120.5, source('measured')),
    ]);
  });
  it('bend: by how much, within two degrees', () => {
    const measured = { shots: 12, carrySd: 4 };
    const file = byEach(bagFile(), { gw: measured, sw: { carry: 86.6, ...measured } });
    expect(evidenceOf(file, 'bend')).toEqual([row(figures.bend, -1.5, practice, [-2, 2])]);
  });
});

describe('a driver', () => {
  it('behind the irons: its carry against 1.55 of the 7-iron, 10 % either way', () => {
    expect(evidenceOf(withClub(bagFile(), 'driver', { carry: 176 }), 'driver-behind-irons')).toEqual([
      row(`${figures.carry}, driver`, 176, playerSource),
      // 1.55 × 129 yd at 33° is 199.95; told to a tenth.
      row(figures.expected, 200, practice, [180, 219.9]),
    ]);
  });
  it('launch and spin against the window of its ball speed; what was not measured is not told', () => {
    const driver = (more: object) => withClub(bagFile(), 'driver', { ballSpeed: 132, ...more });
    const speed = row(figures.ballSpeed, 132, source('measured'));
    const launch = row(figures.launch, 18, practice, [12, 16]);
    const spin = row(figures.spin, 3600, practice, [2200, 2900]);
    const rows = (more: object) => evidenceOf(driver(more), 'driver-launch-spin');
    expect(rows({ launchDeg: 18, spinRpm: 3600 })).toEqual([speed, launch, spin]);
    expect(rows({ spinRpm: 3600 })).toEqual([speed, spin]);
    expect(rows({ launchDeg: 18 })).toEqual([speed, launch]);
  });
  it('flex: the speed against that of the label, which may have no upper end', () => {
    expect(evidenceOf(withClub(bagFile(), 'driver', { flex: 'A' }), 'flex')).toEqual([
      row(figures.speed, 90, practice, [70, 83]),
      row(figures.flex, 'A', playerSource),
    ]);
    expect(evidenceOf(withClub(bagFile(), 'driver', { flex: 'X' }), 'flex')[0]).toEqual(
      row(figures.speed, 90, practice),
    );
  });
});

describe('single clubs', () => {
  it('forgiveness: tier, least tier and handicap', () => {
    expect(evidenceOf(withClub(bagFile(), '5i', { forgiveness: 1 }), 'forgiveness')).toEqual([
      row(figures.tier, 1, playerSource),
      row(figures.leastTier, 2, tierSource),
      row(figures.handicap, 15, playerSource),
    ]);
  });
  it('wedge-surplus: the lofts', () => {
    const wedge = (loftDeg: number, at: number) => ({
      ...bagFile(),
      clubs: [...bagFile().clubs, { id: 'x', kind: 'wedge' as const, loftDeg, carry: at }],
    });
    const { figure, ...high } = evidenceOf(wedge(62, 68), 'wedge-surplus')[0] ?? row('', 0, '');
    expect(high).toEqual({ value: 62, source: playerSource });
    expect(figure).toMatch(new RegExp(`^${figures.loft}, .*x`));
    expect(evidenceOf(wedge(57, 75), 'wedge-surplus').map(({ value }) => value)).toEqual([57, 55]);
  });
  it('hard-from-the-deck: loft, speed and handicap, each with where it is from', () => {
    const rows = (more: object) =>
      evidenceOf(
        withClub(bagFile({}, { driverSpeed: 80 }), '5w', { loftDeg: 15, ...more }),
        'hard-from-the-deck',
      );
    expect(rows({})).toEqual([
      row(figures.loft, 15, playerSource),
      row(figures.speed, 80, english.speedSource('given')),
      row(figures.handicap, 15, playerSource),
    ]);
    const typicalLoft = bagFile(
      {
        clubs: [
          { id: '3w', kind: 'fairway', label: '3w', carry: 160 },
          { id: 'p', kind: 'putter' },
        ],
      },
      { driverSpeed: 80 },
    );
    expect(evidenceOf(typicalLoft, 'hard-from-the-deck')[0]).toEqual(row(figures.loft, 15, typical));
  });
  it('one-length, strong-lofts, check-conformity, why-this-club', () => {
    const equal = {
      ...bagFile({}, { driverSpeed: 85 }),
      clubs: bagFile().clubs.map((club) => (club.kind === 'iron' ? { ...club, lengthIn: 37 } : club)),
    };
    expect(evidenceOf(equal, 'one-length')).toEqual([
      row(figures.length, 37, playerSource),
      row(figures.speed, 85, english.speedSource('given')),
    ]);
    const strong = (loftMeasured: boolean) =>
      evidenceOf(withClub(bagFile(), '7i', { loftDeg: 28.5, loftMeasured }), 'strong-lofts');
    expect(strong(false)).toEqual([row(figures.loft, 28.5, playerSource), row(figures.limit, 29, practice)]);
    expect(strong(true)[0]?.source).toBe(source('measured'));
    expect(evidenceOf(withClub(bagFile(), 'driver', { yearMade: 2008 }), 'check-conformity')).toEqual([
      row(figures.yearMade, '2008', playerSource),
    ]);
    const holes = Array.from({ length: 18 }, () => ({ par: 3, length: 120 }));
    const [uses, limit] = evidenceOf({ ...bagFile(), course: { holes } }, 'why-this-club');
    expect(uses?.figure).toBe(figures.need);
    expect(Number(uses?.value)).toBeLessThan(0.3);
    expect(limit).toEqual(row(figures.limit, 0.3, practice));
  });
});

describe('the whole bag', () => {
  it('count: how many against fourteen', () => {
    const lobs = Array.from({ length: 4 }, (_, i) => ({
      id: `w${String(i)}`,
      kind: 'wedge' as const,
      loftDeg: 60,
      carry: 60 - i,
    }));
    expect(evidenceOf({ ...bagFile(), clubs: [...bagFile().clubs, ...lobs] }, 'count')).toEqual([
      row(figures.clubs, 16, playerSource),
      row(figures.limit, 14, ruleSource),
    ]);
  });
  it('improving: from and to', () => {
    expect(evidenceOf(bagFile({}, { handicap: 15, targetHandicap: 10 }), 'improving')).toEqual([
      row(figures.handicap, 15, playerSource),
      row(figures.target, 10, playerSource),
    ]);
  });
  it('too-little-data: the longest modelled carry with its 8 %; nothing where nothing is known', () => {
    const file = bagFile({ clubs: [{ id: '7i', kind: 'iron', label: '7i', loftDeg: 33 }] });
    const [only, ...others] = evidenceOf(file, 'too-little-data');
    const yd = Number(only?.value);
    expect(others).toEqual([]);
    expect(only).toEqual(
      row(`${figures.carry}, 7i`, yd, source('modelled'), [near(0.92 * yd, 0), near(1.08 * yd, 0)]),
    );
    expect(evidenceOf(bagFile({ clubs: [] }), 'too-little-data')).toEqual([]);
  });
  it('pain, go-to and nothing-needed stand on what the player said', () => {
    expect(evidenceOf(bagFile({}, { pain: true }), 'pain')).toEqual([]);
    expect(evidenceOf(withClub(bagFile(), '4h', { goTo: true }), 'go-to')).toEqual([]);
    expect(evidenceOf(bagFile(), 'nothing-needed')).toEqual([]);
  });
});
