import { describe, expect, it } from 'vitest';
import type { BagFile } from '../../../../../src-main/contract/formats/bag-file.ts';
import { normalDraw, seeded } from '../../../../../src-main/domain/advice/unknowns/random.ts';
import { SAMPLES, worthOfKnowing } from '../../../../../src-main/domain/advice/unknowns/robustness.ts';
import { sampledInstance, type Varied } from '../../../../../src-main/domain/advice/unknowns/sampled.ts';
import { loadCatalogue } from '../../../../../db/catalogue/index.ts';
import { candidate, instance } from '../../solve/instances.ts';
import { readInstance } from '../../../../../src-main/domain/solve/model/read.ts';
import type { Instance, Point } from '../../../../../src-main/domain/solve/instance.ts';
import { bagFile, preparedOf, withClub } from '../../../../support/bags.ts';

const priced = (...archetypes: string[]): BagFile['prices'] =>
  archetypes.map((archetype) => ({ archetype, low: 30, likely: 50, high: 70 }));
const usual = bagFile({ prices: priced('hybrid-25-t3', 'irons-5-pw-33-t3') });

const DRAWS = 4000;
const statistics = (values: readonly number[]) => {
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  return {
    mean,
    sd: Math.sqrt(values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / values.length),
  };
};

describe('random draws', () => {
  it('are the same for the same seed, and lie in [0, 1)', () => {
    const [a, b, c] = [seeded(5), seeded(5), seeded(6)];
    const draws = Array.from({ length: DRAWS }, () => a());
    expect(draws).toEqual(Array.from({ length: DRAWS }, () => b()));
    expect(draws).not.toEqual(Array.from({ length: DRAWS }, () => c()));
    expect(draws.every((draw) => draw >= 0 && draw < 1)).toBe(true);
    // Uniform: mean 1/2, standard deviation 1/√12.
    const { mean, sd } = statistics(draws);
    expect(mean).toBeCloseTo(0.5, 1);
    expect(sd).toBeCloseTo(Math.sqrt(1 / 12), 1);
  });
  it('normal ones have mean 0 and standard deviation 1, and their tails', () => {
    const random = seeded(7);
    const draws = Array.from({ length: DRAWS }, () => normalDraw(random));
    const { mean, sd } = statistics(draws);
    expect(Math.abs(mean)).toBeLessThan(0.06);
    expect(Math.abs(sd - 1)).toBeLessThan(0.05);
    // Normal table: P(|z| > 1.96) = .05.
    expect(draws.filter((draw) => Math.abs(draw) > 1.96).length / DRAWS).toBeCloseTo(0.05, 1);
    expect(draws.every(Number.isFinite)).toBe(true);
  });
});

describe('a sampled ladder', () => {
  const samplesOf = (file: BagFile, varied: Varied, count = DRAWS) => {
    const { view, built } = preparedOf(file);
    const random = seeded(11);
    return Array.from({ length: count }, () => sampledInstance(view, built, varied, random));
  };
  const carriesOf = (samples: readonly Instance[], id: string) =>
    samples.map(({ items }) => (items.find((item) => item.id === id)?.carryDy ?? NaN) / 10);
  const gapSd = (samples: readonly Instance[], a: string, b: string) => {
    const [x, y] = [carriesOf(samples, a), carriesOf(samples, b)];
    return statistics(x.map((carry, i) => carry - (y[i] ?? 0))).sd;
  };

  it('has the gap SDs of DESIGN §7: stated 3 yd or 2 %, interpolated 2, modelled 4, across families 8', () => {
    const unhit = (file: BagFile, ...ids: string[]) => ({
      ...file,
      clubs: file.clubs.map(({ carry, ...club }) =>
        ids.includes(club.id) ? club : { ...club, ...(carry === undefined ? {} : { carry }) },
      ),
    });
    const file = unhit(usual, '6i', '8i');
    const samples = samplesOf(file, 'all');
    expect(gapSd(samples, 'own:7i', 'own:9i')).toBeCloseTo(3, 0);
    expect(
      Math.abs(gapSd(samples, 'own:driver', 'own:5w') - 0.02 * Math.sqrt((201 ** 2 + 177 ** 2) / 2)),
    ).toBeLessThan(0.2);
    expect(Math.abs(gapSd(samples, 'own:6i', 'own:8i') - 2)).toBeLessThan(0.15);
    const all = bagFile({ clubs: usual.clubs.map(({ carry: _carry, ...club }) => club) });
    const modelled = samplesOf(all, 'all');
    expect(Math.abs(gapSd(modelled, 'own:6i', 'own:8i') - 4)).toBeLessThan(0.2);
    expect(Math.abs(gapSd(modelled, 'own:4h', 'own:5i') - 8)).toBeLessThan(0.4);
    expect(Math.abs(gapSd(modelled, 'own:5w', 'own:4h') - 8)).toBeLessThan(0.4);
    // What was hit shares no error across families: 2 % of 162 and 3 yd.
    expect(Math.abs(gapSd(samples, 'own:4h', 'own:5i') - Math.sqrt((3.24 ** 2 + 3 ** 2) / 2))).toBeLessThan(
      0.2,
    );
    // Nor is the mean moved.
    expect(Math.abs(statistics(carriesOf(samples, 'own:7i')).mean - 129)).toBeLessThan(0.2);
  });
  it('a measured club has its own standard error, a tight one at least 1.5 yd a pair', () => {
    const measured = (sd: number) => ({ shots: 16, carrySd: sd });
    const pair = (sd: number) => withClub(withClub(usual, '7i', measured(sd)), '8i', measured(sd));
    expect(Math.abs(gapSd(samplesOf(pair(12), 'all'), 'own:7i', 'own:8i') - 3 * Math.SQRT2)).toBeLessThan(
      0.2,
    );
    expect(Math.abs(gapSd(samplesOf(pair(1), 'all'), 'own:7i', 'own:8i') - 1.5)).toBeLessThan(0.1);
  });
  it('moves only what the question is about', () => {
    const samples = samplesOf(usual, new Set(['7i']), 50);
    expect(new Set(carriesOf(samples, 'own:7i')).size).toBeGreaterThan(20);
    expect(new Set(carriesOf(samples, 'own:8i'))).toEqual(new Set([119]));
    expect(new Set(carriesOf(samples, 'buy:hybrid-25-t3')).size).toBe(1);
    const set = samplesOf(usual, new Set(['buy:irons-5-pw-33-t3']), 50);
    expect(new Set(carriesOf(set, 'buy:irons-5-pw-33-t3:7')).size).toBeGreaterThan(20);
  });
  it('the same clubs get the same draws, whatever varies', () => {
    const seven = carriesOf(samplesOf(usual, new Set(['7i']), 20), 'own:7i');
    expect(carriesOf(samplesOf(usual, new Set(['7i', '8i']), 20), 'own:7i')).toEqual(seven);
  });
  it('excuses no pair that was asked about for being unsure; others still are', () => {
    const near = withClub(usual, 'sw', { carry: 73 });
    expect(preparedOf(near).built.instance.excused).toEqual([['own:gw', 'own:sw']]);
    for (const asked of ['all', new Set(['gw', 'sw']), new Set(['gw']), new Set(['sw'])] as const)
      for (const { excused } of samplesOf(near, asked, 3)) expect(excused).toEqual([]);
    for (const { excused } of samplesOf(near, new Set(['7i']), 3))
      expect(excused).toEqual([['own:gw', 'own:sw']]);
  });
  it('firm ground and two kept clubs still are', () => {
    const firm = withClub({ ...usual, player: { ...usual.player, ground: 'firm' } }, '5w', { carry: 198 });
    for (const { excused } of samplesOf(firm, new Set(), 3))
      expect(excused).toEqual([['own:driver', 'own:5w']]);
    const apart = withClub(withClub(usual, '8i', { goTo: true }), '7i', { goTo: true });
    for (const { excused } of samplesOf(apart, new Set(), 3)) expect(excused).toEqual([]);
    const kept = withClub(withClub(usual, '8i', { carry: 128, goTo: true }), '7i', { goTo: true });
    for (const { excused } of samplesOf(kept, new Set(), 3)) expect(excused).toEqual([['own:7i', 'own:8i']]);
    const unsure = withClub(kept, '8i', { carry: 125 });
    for (const { excused } of samplesOf(unsure, new Set(), 3))
      expect(excused).toEqual([['own:7i', 'own:8i']]);
  });
  it('is always a question that can be asked: excuses stand in ladder order, or are gone', () => {
    const firm = withClub({ ...usual, player: { ...usual.player, ground: 'firm' } }, '5w', { carry: 199 });
    const samples = samplesOf(firm, 'all', 200);
    let gone = 0;
    for (const sample of samples) {
      expect(readInstance(sample)).toEqual(sample);
      if (sample.excused.length === 0) gone++;
    }
    expect(gone).toBeGreaterThan(20);
    expect(gone).toBeLessThan(180);
  });
});

describe('worth of knowing', () => {
  const { view, built } = preparedOf(
    bagFile({ prices: priced('hybrid-25-t3', 'hybrid-27-t3', 'wedge-50-t3') }),
  );
  const point = (cost: number, ...items: string[]): Point => ({ cost, penalty: 0, changes: 0, items });
  const plan = point(5000, 'buy:hybrid-25-t3');
  /** Answers in turn. */
  const worth = (answers: (Point | null)[], untilShare: number | null = null) => {
    let asked = 0;
    const got = worthOfKnowing(
      view,
      built,
      plan,
      'all',
      () => answers[asked++ % answers.length] ?? null,
      untilShare,
    );
    return { ...got, asked };
  };
  it('is how often something else is bought, and by how much money on the mean', () => {
    const other = point(9000, 'buy:wedge-50-t3');
    const cheaper = point(3000, 'buy:wedge-50-t3');
    expect(worth([plan])).toEqual({ share: 0, stakeMinor: 0, asked: SAMPLES });
    expect(worth([other])).toEqual({ share: 1, stakeMinor: 4000, asked: SAMPLES });
    expect(worth([plan, other])).toEqual({ share: 0.5, stakeMinor: 4000, asked: SAMPLES });
    expect(worth([cheaper, other])).toEqual({ share: 1, stakeMinor: 3000, asked: SAMPLES });
    expect(worth([null])).toEqual({ share: 1, stakeMinor: 5000, asked: SAMPLES });
    expect(worth([point(9000, 'buy:hybrid-25-t3', 'buy:wedge-50-t3')]).share).toBe(1);
  });
  it('one changed purchase of two is a change', () => {
    const two = point(8000, 'buy:hybrid-25-t3', 'buy:wedge-50-t3');
    const other = point(8000, 'buy:hybrid-25-t3', 'buy:hybrid-27-t3');
    expect(worthOfKnowing(view, built, two, 'all', () => other).share).toBe(1);
    expect(worthOfKnowing(view, built, two, 'all', () => two).share).toBe(0);
  });
  it('another club of the same kind within 3° does the same job', () => {
    expect(worth([point(7000, 'buy:hybrid-27-t3')]).share).toBe(0);
    const far = preparedOf(bagFile({ prices: priced('hybrid-20-t3', 'hybrid-25-t3') }));
    const got = worthOfKnowing(far.view, far.built, plan, 'all', () => point(0, 'buy:hybrid-20-t3'));
    expect(got.share).toBe(1);
  });
  it('another kind of nearly its loft does another job, in whatever order they are bought', () => {
    const kinds = preparedOf(bagFile({ prices: priced('hybrid-25-t3', 'iron-26-t3') }));
    const [hybrid, iron] = ['buy:hybrid-25-t3', 'buy:iron-26-t3'] as const;
    const share = (was: string[], is: string[]) =>
      worthOfKnowing(kinds.view, kinds.built, point(0, ...was), 'all', () => point(0, ...is)).share;
    expect(share([hybrid], [iron])).toBe(1);
    expect(share([hybrid, iron], [iron, hybrid])).toBe(0);
    expect(share([], [])).toBe(0);
  });
  it('what is bought is compared by kind and loft, not by id', () => {
    const heads = Object.entries({
      'buy:1': ['iron', 26],
      'buy:2': ['hybrid', 25],
      'buy:3': ['hybrid', 28],
      'buy:4': ['iron', 24],
      'buy:5': ['hybrid', 20],
      'buy:6': ['hybrid', 22],
    } as const);
    const one = loadCatalogue()[0]!;
    const own = {
      instance: instance(heads.map(([id]) => candidate(id, 10))),
      candidates: new Map(
        heads.map(([id, [kind, loftDeg]]) => [id, { archetype: { ...one, kind, loftDeg }, clubs: [] }]),
      ),
    };
    const share = (was: string[] | null, is: string[] | null) =>
      worthOfKnowing(view, own, was && point(0, ...was), 'all', () => is && point(0, ...is)).share;
    expect(share(['buy:1', 'buy:2'], ['buy:3', 'buy:4'])).toBe(0);
    expect(share(['buy:2', 'buy:5'], ['buy:3', 'buy:6'])).toBe(0);
    expect(share(['buy:5', 'buy:3'], ['buy:2', 'buy:6'])).toBe(0);
    // 25° to 28° is alike, 24° to 28° is not, nor 25° to 20°.
    expect(share(['buy:2'], ['buy:3'])).toBe(0);
    expect(share(['buy:2'], ['buy:5'])).toBe(1);
    expect(share(['buy:1'], ['buy:2'])).toBe(1);
    expect([share(null, null), share(null, []), share(null, ['buy:1'])]).toEqual([0, 0, 1]);
  });
  it('ends as soon as it is settled whether the share is reached', () => {
    const other = point(9000, 'buy:wedge-50-t3');
    expect(worth([other], 0.3)).toMatchObject({ asked: 3 });
    expect(worth([plan], 0.3)).toMatchObject({ asked: 8 });
    expect(worth([plan], 0.3).share).toBeLessThan(0.3);
    expect(worth([other], 0.3).share).toBeGreaterThanOrEqual(0.3);
  });
});
