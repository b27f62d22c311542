import { describe, expect, it } from 'vitest';
import { needWeights } from '../../../../../src-main/domain/advice/question/need-weights.ts';
import { whyThisClub } from '../../../../../src-main/domain/advice/rules/clubs/why-this-club.ts';
import { gapSeverity, wideGap } from '../../../../../src-main/domain/advice/rules/gaps/wide-gap.ts';
import { english } from '../../../../../src-main/domain/advice/words/en.ts';
import type { BagFile } from '../../../../../src-main/contract/formats/bag-file.ts';
import { bagFile, viewOf, withClub, without } from '../../../../support/bags.ts';

const par3s = (length: number) => ({ holes: Array.from({ length: 18 }, () => ({ par: 3, length })) });

describe('needWeights', () => {
  const weights = (file = bagFile()) => {
    const view = viewOf(file);
    return needWeights(view.need, view.ladder, 2);
  };
  it('are whole numbers that average 2 over the bands of the bag', () => {
    const list = weights().map((one) => one.weight);
    for (const weight of list) expect(Number.isInteger(weight) && weight >= 1 && weight <= 6).toBe(true);
    expect(Math.abs(list.reduce((sum, weight) => sum + weight, 0) / list.length - 2)).toBeLessThan(0.2);
  });
  it('begin at 0 and ascend', () => {
    const from = weights().map((one) => one.fromYd);
    expect(from[0]).toBe(0);
    expect(from).toEqual([...from].sort((a, b) => a - b));
  });
  it('weigh a gap that the course asks for every hole above one it never asks for', () => {
    // A par-3 course of 120-yd holes: wide gaps below the 8-iron count, those below the 5-wood hardly.
    const list = weights({ ...bagFile(), course: par3s(120) });
    const at = (yd: number) => list.findLast((one) => one.fromYd <= yd)?.weight ?? 0;
    expect(at(130)).toBeGreaterThan(at(178));
  });
  it('are 2 where nothing is known', () => {
    expect(needWeights(null, [], 2)).toEqual([{ fromYd: 0, weight: 2 }]);
  });
});

describe('needWeights of a need that is known to the shot', () => {
  /** Shots by the carry that they want; the top and the bottom club of a ladder. */
  function weigh(shots: Record<number, number>, topYd: number, bottomYd: number, average = 2) {
    const asked: [number, number][] = [];
    const { need, ladder } = viewOf(bagFile());
    const [club] = ladder;
    if (!need || !club) throw new Error('the usual bag has a ladder and a need');
    const between = (lowYd: number, highYd: number) => {
      asked.push([lowYd, highYd]);
      const within = Object.entries(shots).filter(([yd]) => Number(yd) >= lowYd && Number(yd) < highYd);
      return within.reduce((sum, [, count]) => sum + count, 0);
    };
    const ends = [
      { ...club, carryYd: topYd },
      { ...club, carryYd: bottomYd },
    ];
    return { weights: needWeights({ ...need, between }, ends, average), asked };
  }
  it('go with the root of what is asked for 20 yd either side of each band’s edge', () => {
    // Bands from 60, 80 and 100 yd. Roots 1, 0 and 3 of mean 4/3: 1, 1 and 4 average 2.
    const { weights, asked } = weigh({ 40: 1, 119.9: 9 }, 100, 65);
    expect(weights).toEqual([
      { fromYd: 0, weight: 1 },
      { fromYd: 80, weight: 1 },
      { fromYd: 100, weight: 4 },
    ]);
    expect(asked).toEqual([
      [40, 80],
      [60, 100],
      [80, 120],
    ]);
    // Just outside of every window.
    const even = weigh({ 39.9: 9, 120: 9 }, 100, 65).weights.map(({ weight }) => weight);
    expect(even).toEqual([2, 2, 2]);
  });
  it('ask for no carry below nothing', () => {
    expect(weigh({ 5: 1 }, 25, 5).asked).toEqual([
      [0, 20],
      [0, 40],
    ]);
  });
  it('are at most three times the average, at least 1', () => {
    const list = (average: number) =>
      weigh({ 200: 100 }, 200, 60, average).weights.map(({ weight }) => weight);
    // One of eight bands has it all.
    expect(list(2)).toEqual([1, 1, 1, 1, 1, 1, 1, 6]);
    expect(Math.max(...list(4))).toBe(12);
    expect(Math.min(...list(4))).toBe(1);
  });
  it('are the same everywhere where the course asks for the same, and nothing for what the user holds at nothing', () => {
    const everywhere = Object.fromEntries(Array.from({ length: 30 }, (_, i) => [10 * i, 2]));
    expect(new Set(weigh(everywhere, 200, 60, 3).weights.map(({ weight }) => weight))).toEqual(new Set([3]));
    expect(weigh(everywhere, 200, 60, 0).weights).toEqual([{ fromYd: 0, weight: 0 }]);
    expect(weigh({}, 200, 180).weights.map(({ weight }) => weight)).toEqual([2, 2]);
  });
  it('average what they are to, as near as whole numbers come', () => {
    const shots = { 60: 1, 100: 4, 140: 9, 180: 16 };
    for (const average of [2, 3, 5]) {
      const { weights } = weigh(shots, 200, 60, average);
      const mean = weights.reduce((sum, { weight }) => sum + weight, 0) / weights.length;
      expect(Math.abs(mean - average)).toBeLessThanOrEqual(0.07);
      expect(weights.at(-1)?.weight).toBeGreaterThan(weights[0]?.weight ?? Infinity);
    }
  });
});

describe('gapSeverity', () => {
  const gappy = without(bagFile(), '4h', '5i'); // 177 to 138
  const severity = (file = gappy) => {
    const view = viewOf(file);
    const pair = view.pairs.find((one) => one.longer.clubId === '5w');
    return pair ? gapSeverity(view, pair) : 0;
  };
  it('is 3 where the course asks for it twice a round, 1 where hardly ever', () => {
    expect(severity({ ...gappy, course: par3s(155) })).toBe(3);
    expect(severity({ ...gappy, course: par3s(100) })).toBe(1);
  });
});

/** A view whose course asks `uses` times in `holes` holes for 155 yd, and as often for the 5-wood. */
function asking(uses: number, holes = 18) {
  const view = viewOf(gappy);
  const wanted = {
    tee: [{ carryYd: 155, shots: uses }],
    deck: [],
    edgesYd: new Float64Array(1),
    shots: new Float64Array(0),
  };
  const assumption = { holes, totalYd: 6000, parTotal: 72, source: 'given' as const };
  const byClub = new Map(view.ladder.map((rung) => [rung.clubId, uses]));
  const need = { fullShots: 36, teeShots: 18, between: () => 0, byClub, wanted, assumption };
  return { ...view, need };
}
const gappy = without(bagFile(), '4h', '5i');

describe('thresholds of need, both sides', () => {
  it.each([
    [0.2, 18, 1],
    [0.5, 18, 2],
    [1.5, 18, 2],
    [3, 18, 3],
    [1.2, 9, 3],
    [3, 36, 2],
  ])('%d shots in %i holes: severity %i', (uses, holes, severity) => {
    const view = asking(uses, holes);
    const pair = view.pairs.find((one) => one.longer.clubId === '5w');
    expect(pair && gapSeverity(view, pair)).toBe(severity);
  });
  it.each([
    [1.23, 1.2],
    [1.27, 1.3],
  ])('%d shots are told as %d', (uses, told) => {
    const row = wideGap(asking(uses)).flatMap(({ evidence }) => evidence);
    expect(row.find(({ figure }) => figure === english.figures.need)?.value).toBe(told);
  });
  it.each([
    [0.2, 18, true],
    [0.3, 18, false],
    [0.4, 18, false],
    [0.2, 9, false],
    [0.5, 36, true],
  ])('%d uses in %i holes: asked what it is for is %s', (uses, holes, asked) => {
    expect(whyThisClub(asking(uses, holes)).length > 0).toBe(asked);
  });
});

describe('why-this-club', () => {
  it('fires for a club that the course hardly asks for: keep, low priority', () => {
    const found = whyThisClub(viewOf({ ...bagFile(), course: par3s(120) }));
    expect(found.map((finding) => finding.clubs[0])).toContain('5w');
    expect(found[0]).toMatchObject({ verdict: 'keep', severity: 1 });
  });
  it('does not fire for what the course asks for', () => {
    expect(
      whyThisClub(viewOf({ ...bagFile(), course: par3s(120) })).map((finding) => finding.clubs[0]),
    ).not.toContain('8i');
  });
  it('is not asked of a driver, nor of a go-to club: the player knows', () => {
    const quiet = (file: BagFile) =>
      whyThisClub(viewOf({ ...file, course: par3s(120) })).map(({ clubs }) => clubs[0]);
    expect(quiet(bagFile())).not.toContain('driver');
    expect(quiet(bagFile())).toContain('5w');
    expect(quiet(withClub(bagFile(), '5w', { goTo: true }))).not.toContain('5w');
    expect(quiet(withClub(bagFile(), '4h', { goTo: true }))).toContain('5w');
  });
  it('is asked of fourteen clubs at most', () => {
    const clubs = Array.from({ length: 20 }, (_, i) => ({
      id: `i${String(i)}`,
      kind: 'iron' as const,
      loftDeg: 20 + i,
      carry: 200 - i,
    }));
    expect(whyThisClub(viewOf({ ...bagFile({ clubs }), course: par3s(60) }))).toHaveLength(14);
  });
  it('tells the uses in 18 holes to a hundredth, in words to a tenth', () => {
    const [finding] = whyThisClub(asking(0.123, 9));
    expect(finding?.evidence[0]?.value).toBe(0.25);
    expect(finding?.text).toMatch(/about 0\.2 times/);
  });
  it('counts nine holes as half a round', () => {
    const nine = { holes: Array.from({ length: 9 }, (_, i) => ({ par: 3, length: i === 0 ? 177 : 120 })) };
    // Once in nine holes is twice a round.
    expect(
      whyThisClub(viewOf({ ...bagFile(), course: nine })).map((finding) => finding.clubs[0]),
    ).not.toContain('5w');
  });
  it('cannot tell without a ladder', () => {
    const { driverSpeed: _speed, ...player } = bagFile().player;
    expect(whyThisClub(viewOf({ ...bagFile({ clubs: [{ id: '7i', kind: 'iron' }] }), player }))).toEqual([]);
  });
});
