import { describe, expect, it } from 'vitest';
import type { Finding } from '../../../../../src-main/domain/advice/finding.ts';
import { count } from '../../../../../src-main/domain/advice/rules/whole-bag/count.ts';
import { crowdedPair } from '../../../../../src-main/domain/advice/rules/gaps/crowded-pair.ts';
import { forgiveness } from '../../../../../src-main/domain/advice/rules/clubs/forgiveness.ts';
import { goTo } from '../../../../../src-main/domain/advice/rules/clubs/go-to.ts';
import {
  monthsLater,
  nothingNeeded,
} from '../../../../../src-main/domain/advice/rules/whole-bag/nothing-needed.ts';
import { pain } from '../../../../../src-main/domain/advice/rules/whole-bag/pain.ts';
import { findAll } from '../../../../../src-main/domain/advice/rules/table.ts';
import { tooLittleData } from '../../../../../src-main/domain/advice/rules/whole-bag/too-little-data.ts';
import { unsureGap } from '../../../../../src-main/domain/advice/rules/gaps/unsure-gap.ts';
import { wideGap } from '../../../../../src-main/domain/advice/rules/gaps/wide-gap.ts';
import { bagFile, viewOf, withClub, without } from '../../../../support/bags.ts';

// Each rule: fires, does not fire, cannot tell. The bags are invented: common practice, no source.
const clubsOf = (findings: Finding[]) => findings.map((finding) => finding.clubs);

describe('pain', () => {
  it('fires when the player reports it: stop', () => {
    expect(pain(viewOf(bagFile({}, { pain: true })))).toMatchObject([{ verdict: 'stop', severity: 3 }]);
  });
  it('does not fire when the player says there is none', () => {
    expect(pain(viewOf(bagFile({}, { pain: false })))).toEqual([]);
  });
  it('cannot tell when nothing is said: silence', () => {
    expect(pain(viewOf(bagFile()))).toEqual([]);
  });
});

describe('wide-gap', () => {
  const gappy = without(bagFile(), '4h', '5i'); // 5-wood 177, 6-iron 138: 39 yd, limit 20
  it('fires on a pair far beyond its limit, with both carries, the gap, the limit and the chance', () => {
    const [finding] = wideGap(viewOf(gappy));
    expect(finding).toMatchObject({ clubs: ['5w', '6i'], verdict: 'add', severity: 3 });
    expect(finding?.evidence.map((row) => row.value)).toEqual([177, 138, 39, 20, 1, expect.any(Number)]);
    expect(finding?.text).toMatch(/39 yd/);
  });
  it('says replace when the bag has no free place', () => {
    const wedges = ['a', 'b', 'c', 'd'].map((id, i) => ({
      id,
      kind: 'wedge' as const,
      loftDeg: 56,
      carry: 70 - 10 * i,
    }));
    const full = { ...gappy, clubs: [...gappy.clubs, ...wedges] };
    expect(full.clubs).toHaveLength(14);
    expect(wideGap(viewOf(full))[0]?.verdict).toBe('replace');
  });
  it('does not fire inside the limits', () => {
    expect(wideGap(viewOf(bagFile()))).toEqual([]);
  });
  it('gives driver and next club the first pair’s limit', () => {
    // 201 to 157: 44 yd, beyond 20 but inside 46
    expect(wideGap(viewOf(withClub(without(bagFile(), '4h', '5i'), '5w', { carry: 157 })))).toEqual([]);
  });
  it('cannot tell just beyond the limit: that is unsure-gap’s', () => {
    const near = withClub(bagFile(), 'sw', { carry: 73 }); // 17 yd where 16 is the limit, SD 3
    expect(wideGap(viewOf(near))).toEqual([]);
    expect(clubsOf(unsureGap(viewOf(near)))).toEqual([['gw', 'sw']]);
  });
});

describe('unsure-gap', () => {
  it('fires between limit and certainty, on both sides: ask', () => {
    const near = withClub(withClub(bagFile(), 'sw', { carry: 73 }), '9i', { carry: 115.5 });
    expect(unsureGap(viewOf(near))).toMatchObject([
      { clubs: ['8i', '9i'], verdict: 'ask', text: expect.stringMatching(/only 4 yd/) as string },
      { clubs: ['gw', 'sw'], verdict: 'ask', text: expect.stringMatching(/17 yd apart, beyond/) as string },
    ]);
  });
  it('does not fire inside the limits', () => {
    expect(unsureGap(viewOf(bagFile()))).toEqual([]);
  });
  it('does not fire when it is sure', () => {
    expect(unsureGap(viewOf(without(bagFile(), '4h', '5i')))).toEqual([]);
  });
});

describe('crowded-pair', () => {
  const crowded = withClub(bagFile(), '8i', { carry: 128 }); // 7-iron 129
  it('fires under the limit when sure', () => {
    expect(crowdedPair(viewOf(crowded))).toMatchObject([{ clubs: ['7i', '8i'], severity: 2 }]);
  });
  it('keeps two go-to clubs, and says why', () => {
    const both = withClub(withClub(crowded, '7i', { goTo: true }), '8i', { goTo: true });
    expect(crowdedPair(viewOf(both))[0]?.text).toMatch(/marked to be kept/);
    expect(crowdedPair(viewOf(both))[0]?.severity).toBe(1);
    // One alone holds nothing up.
    for (const id of ['7i', '8i']) {
      const [one] = crowdedPair(viewOf(withClub(crowded, id, { goTo: true })));
      expect(one?.text).not.toMatch(/marked to be kept/);
      expect(one?.severity).toBe(2);
    }
  });
  it('weighs more below half the limit of 5 yd', () => {
    const measured = { shots: 12, carrySd: 4 };
    const at = (carry: number) =>
      crowdedPair(viewOf(withClub(withClub(bagFile(), '7i', measured), '8i', { carry, ...measured })))[0]
        ?.severity;
    expect([at(126.6), at(126.5)]).toEqual([2, 1]);
  });
  it('does not fire inside the limits', () => {
    expect(crowdedPair(viewOf(bagFile()))).toEqual([]);
  });
  it('cannot tell at 4 yd of stated carries: unsure', () => {
    const near = withClub(bagFile(), '8i', { carry: 125 });
    expect(crowdedPair(viewOf(near))).toEqual([]);
    expect(clubsOf(unsureGap(viewOf(near)))).toContainEqual(['7i', '8i']);
  });
});

describe('forgiveness', () => {
  const blades = (player = {}) => {
    const file = bagFile({}, player);
    return {
      ...file,
      clubs: file.clubs.map((club) =>
        club.kind === 'iron' ? { ...club, set: 'irons', forgiveness: 1 as const } : club,
      ),
    };
  };
  it('fires once for a set below the least tier (handicap 15: tier 3, least 2 for irons)', () => {
    expect(forgiveness(viewOf(blades()))).toMatchObject([
      { clubs: ['5i', '6i', '7i', '8i', '9i'], verdict: 'replace' },
    ]);
  });
  it('does not fire at the least tier', () => {
    expect(forgiveness(viewOf(blades({ handicap: 12 })))).toEqual([]);
  });
  it('looks at where the handicap is going, at most four strokes on', () => {
    expect(forgiveness(viewOf(blades({ handicap: 15, targetHandicap: 5 })))).toEqual([]); // 11: tier 2, least 1
    expect(forgiveness(viewOf(blades({ handicap: 22, targetHandicap: 5 })))).toHaveLength(1); // 18: tier 3
  });
  it('leaves wedges and putters alone, for which there is no least tier', () => {
    const file = withClub(withClub(bagFile(), 'sw', { forgiveness: 1 }), 'putter', { forgiveness: 1 });
    expect(forgiveness(viewOf(file))).toEqual([]);
  });
  it('two tiers below is acted on first', () => {
    const two = withClub(bagFile({}, { handicap: 25 }), '5i', { forgiveness: 1 }); // tier 4, least 3
    expect(forgiveness(viewOf(two))).toMatchObject([{ severity: 3 }]);
    expect(forgiveness(viewOf(withClub(two, '5i', { forgiveness: 2 })))).toMatchObject([{ severity: 2 }]);
  });
  it('tells clubs of one set and tier together, others apart', () => {
    const tiers = (set?: string) => (set === undefined ? {} : { set });
    const file = [['5i', 's'], ['7i', 's'], ['8i', 't'], ['9i']].reduce(
      (bag, [id, set]) => withClub(bag, id ?? '', { forgiveness: 1, ...tiers(set) }),
      bagFile(),
    );
    expect(clubsOf(forgiveness(viewOf(file)))).toEqual([['5i', '7i'], ['8i'], ['9i']]);
  });
  it('leaves go-to clubs alone', () => {
    const file = withClub(bagFile(), '5i', { forgiveness: 1, goTo: true });
    expect(forgiveness(viewOf(file))).toEqual([]);
  });
  it('cannot tell where no tier is given: silence', () => {
    expect(forgiveness(viewOf(bagFile()))).toEqual([]);
  });
});

describe('go-to', () => {
  it('fires for a marked club: keep', () => {
    expect(goTo(viewOf(withClub(bagFile(), '4h', { goTo: true })))).toMatchObject([
      { clubs: ['4h'], verdict: 'keep' },
    ]);
  });
  it('does not fire for one marked false', () => {
    expect(goTo(viewOf(withClub(bagFile(), '4h', { goTo: false })))).toEqual([]);
  });
  it('cannot tell for one unmarked: silence', () => {
    expect(goTo(viewOf(bagFile()))).toEqual([]);
  });
});

describe('count', () => {
  const bagOf = (clubs: number) => {
    const file = bagFile();
    const more = Array.from({ length: clubs - file.clubs.length }, (_, i) => ({
      id: `w${String(i)}`,
      kind: 'wedge' as const,
      loftDeg: 60,
      carry: 60 - i,
    }));
    return { ...file, clubs: [...file.clubs, ...more] };
  };
  it('fires above 14: drop', () => {
    // Which ones go, only the plan knows.
    expect(count(viewOf(bagOf(16)))).toMatchObject([{ verdict: 'drop', severity: 3, clubs: [] }]);
  });
  it('does not fire at 14', () => {
    expect(count(viewOf(bagOf(14)))).toEqual([]);
  });
  it('counts clubs that cannot be placed as well', () => {
    const file = bagOf(14);
    expect(
      count(viewOf({ ...file, clubs: [...file.clubs, { id: 'mystery', kind: 'hybrid' }] })),
    ).toHaveLength(1);
  });
});

describe('too-little-data', () => {
  const nothing = () => {
    const { driverSpeed: _speed, ...player } = bagFile().player;
    return { ...bagFile({ clubs: [{ id: '7i', kind: 'iron', loftDeg: 33 }] }), player };
  };
  it('fires first when neither carry nor speed is known', () => {
    expect(tooLittleData(viewOf(nothing()))).toMatchObject([{ verdict: 'ask', severity: 3, clubs: [] }]);
  });
  it('fires first when no club but a putter is listed and nothing is priced', () => {
    for (const clubs of [[], [{ id: 'putter', kind: 'putter' as const }]]) {
      expect(tooLittleData(viewOf(bagFile({ clubs })))).toMatchObject([
        { verdict: 'ask', severity: 3, clubs: [] },
      ]);
    }
    const prices = [{ archetype: 'hybrid-22-t3', low: 30, likely: 50, high: 70 }];
    expect(tooLittleData(viewOf(bagFile({ clubs: [], prices })))).toEqual([]);
  });
  it('fires for one club without loft and carry', () => {
    const file = { ...bagFile(), clubs: [...bagFile().clubs, { id: 'mystery', kind: 'hybrid' as const }] };
    expect(tooLittleData(viewOf(file))).toMatchObject([{ clubs: ['mystery'], severity: 2 }]);
  });
  it('notes a ladder that is reckoned from the speed alone', () => {
    const file = bagFile({
      clubs: [
        { id: '7i', kind: 'iron', loftDeg: 33 },
        { id: '8i', kind: 'iron', loftDeg: 37 },
      ],
    });
    expect(tooLittleData(viewOf(file))).toMatchObject([{ severity: 1, clubs: [] }]);
  });
  it('does not fire when carries are given', () => {
    expect(tooLittleData(viewOf(bagFile()))).toEqual([]);
  });
});

describe('all findings', () => {
  it('of a player in pain none asks for money', () => {
    const verdicts = (pain: boolean) =>
      findAll(viewOf({ ...without(bagFile({}, { pain }), '4h', '5i') })).map(({ verdict }) => verdict);
    expect(verdicts(false)).toContain('add');
    expect(verdicts(true)).toContain('stop');
    expect(verdicts(true)).not.toContain('add');
  });
});

describe('nothing-needed', () => {
  it('fires when nothing asks for money, with a month to look again', () => {
    const view = viewOf(bagFile());
    expect(findAll(view)).toMatchObject([{ kind: 'nothing-needed', verdict: 'keep' }]);
    expect(findAll(view)[0]?.text).toContain('2027-05');
  });
  it('does not fire beside a finding that asks for money', () => {
    const kinds = findAll(viewOf(without(bagFile(), '4h', '5i'))).map((finding) => finding.kind);
    expect(kinds).toContain('wide-gap');
    expect(kinds).not.toContain('nothing-needed');
  });
  it.each<[Finding['verdict'], Finding['severity'], boolean]>([
    ['add', 1, false],
    ['replace', 1, false],
    ['stop', 1, false],
    ['coach-first', 1, false],
    ['ask', 1, true],
    ['ask', 2, false],
    ['ask', 3, false],
    ['drop', 3, true],
    ['wait', 2, true],
    ['keep', 2, true],
  ])('beside %s of severity %i: %s', (verdict, severity, said) => {
    const other: Finding = { kind: 'count', clubs: [], severity, verdict, text: '', evidence: [] };
    expect(nothingNeeded(viewOf(bagFile()), [other])).toHaveLength(said ? 1 : 0);
  });
  it('cannot tell when nothing is known: silence', () => {
    const { driverSpeed: _speed, ...player } = bagFile().player;
    const view = viewOf({ ...bagFile({ clubs: [] }), player });
    expect(nothingNeeded(view, tooLittleData(view))).toEqual([]);
  });
  it('counts months over the year', () => {
    expect([
      monthsLater('2026-11-26', 6),
      monthsLater('2026-01-31', 11),
      monthsLater('2026-12-01', 1),
    ]).toEqual(['2027-05', '2026-12', '2027-01']);
  });
});
