import { describe, expect, it } from 'vitest';
import type { BagFile } from '../../../../../src-main/contract/formats/bag-file.ts';
import { ladderOrder, ownedLadder } from '../../../../../src-main/domain/player/ladder/ladder.ts';
import { playerModel } from '../../../../../src-main/domain/player/model.ts';
import { centredCarryYd } from '../../../../../src-main/domain/player/carry-model.ts';
import { bagFile, domainBag, withClub } from '../../../../support/bags.ts';

function ladderOf(file: BagFile) {
  const bag = domainBag(file);
  const model = playerModel(bag);
  return { model, ladder: ownedLadder(bag, model) };
}
const rungOf = (file: BagFile, id: string) => ladderOf(file).ladder.find((rung) => rung.clubId === id);
const bare = (id: string) => ({ id, kind: 'iron' as const, loftDeg: 30 });

describe('ladder order', () => {
  const order = (...clubs: [string, number][]) =>
    clubs
      .map(([clubId, carryYd]) => ({ clubId, carryYd }))
      .sort(ladderOrder)
      .map(({ clubId }) => clubId);
  it('is by carry to a tenth of a yard, then by id in code-unit order, whatever came first', () => {
    expect(order(['a', 120], ['b', 130], ['c', 120.1])).toEqual(['b', 'c', 'a']);
    for (const [one, other] of [
      ['a', 'b'],
      ['10', '9'],
      ['B', 'a'],
    ] as const) {
      expect(order([one, 120], [other, 120.04])).toEqual([one, other]);
      expect(order([other, 120.04], [one, 120])).toEqual([one, other]);
    }
    expect(ladderOrder({ clubId: 'a', carryYd: 120 }, { clubId: 'a', carryYd: 120 })).toBe(0);
  });
});

describe('the ladder', () => {
  it('keeps a carry that was given, whatever the model thinks', () => {
    expect(rungOf(withClub(bagFile(), '7i', { carry: 155 }), '7i')).toMatchObject({
      carryYd: 155,
      source: 'stated',
    });
  });
  it('stands in ladder order, ties by id', () => {
    const { ladder } = ladderOf(withClub(withClub(bagFile(), '7i', { carry: 129 }), '8i', { carry: 129 }));
    expect(ladder.map((rung) => rung.clubId)).toEqual([
      'driver',
      '5w',
      '4h',
      '5i',
      '6i',
      '7i',
      '8i',
      '9i',
      'pw',
      'gw',
      'sw',
    ]);
  });
  it('is ordered in tenths of a yard, as the solver is', () => {
    const { ladder } = ladderOf(
      withClub(withClub(bagFile(), '7i', { carry: 129.04 }), '8i', { carry: 128.96 }),
    );
    const swapped = ladderOf(withClub(withClub(bagFile(), '7i', { carry: 128.96 }), '8i', { carry: 129.04 }));
    expect(ladder.map((rung) => rung.clubId)).toEqual(swapped.ladder.map((rung) => rung.clubId));
  });
  it('calls two shots or more measured, one stated', () => {
    expect(rungOf(withClub(bagFile(), '7i', { shots: 8, carrySd: 6 }), '7i')?.source).toBe('measured');
    expect(rungOf(withClub(bagFile(), '7i', { shots: 1 }), '7i')?.source).toBe('stated');
  });
  it('a measured carry has its t-interval; between clubs few shots count with the bag’s usual spread', () => {
    // t(.95, 3) = 2.353, t(.95, 15) = 1.753: NIST/SEMATECH e-Handbook 1.3.6.7.2
    const few = rungOf(withClub(bagFile(), '7i', { carry: 130, shots: 4, carrySd: 2 }), '7i');
    expect(few?.highYd).toBeCloseTo(130 + (2.353 * 2) / 2, 9);
    // Its own spread is the bag's median, 2 of 130.
    expect(few?.standardErrorYd).toBeCloseTo(2 / 2, 9);
    const wild = withClub(bagFile(), '8i', { carry: 120, shots: 10, carrySd: 12 });
    const lucky = rungOf(withClub(wild, '7i', { carry: 130, shots: 4, carrySd: 2 }), '7i');
    // Median of 10 % and 1.54 %, of 130 yd.
    expect(lucky?.standardErrorYd).toBeCloseTo((((12 / 120 + 2 / 130) / 2) * 130) / 2, 9);
    expect(lucky?.highYd).toBeCloseTo(130 + (2.353 * 2) / 2, 9);
    const many = rungOf(withClub(wild, '7i', { carry: 130, shots: 16, carrySd: 2 }), '7i');
    expect(many?.standardErrorYd).toBeCloseTo(2 / 4, 9);
    const unknown = rungOf(withClub(bagFile(), '7i', { carry: 130, shots: 16 }), '7i');
    // Without a spread 6 % of the carry.
    expect(unknown?.standardErrorYd).toBeCloseTo((0.06 * 130) / 4, 9);
    expect(unknown?.highYd).toBeCloseTo(130 + (1.753 * 0.06 * 130) / 4, 9);
  });
  it('interpolates in loft between neighbours of the family', () => {
    const { carry: _carry, ...noCarry } = bagFile().clubs[5]!;
    const file = { ...bagFile(), clubs: bagFile().clubs.map((club) => (club.id === '7i' ? noCarry : club)) };
    // 29° 138 yd, 37° 119 yd: halfway at 33°
    expect(rungOf(file, '7i')).toMatchObject({ carryYd: 128.5, source: 'interpolated' });
  });
  it('goes beyond the known range by physics times the nearest residual', () => {
    const file = bagFile({
      clubs: [
        { id: '7i', kind: 'iron', loftDeg: 33, carry: 140 },
        { id: '4i', kind: 'iron', loftDeg: 23.5 },
      ],
    });
    const { model, ladder } = ladderOf(file);
    const centred = (loftDeg: number) => centredCarryYd({ kind: 'iron', loftDeg }, 90, model.air);
    const rung = ladder.find(({ clubId }) => clubId === '4i');
    expect(rung?.source).toBe('modelled');
    expect(rung?.carryYd).toBeCloseTo((centred(23.5) * 140) / centred(33), 9);
  });
  it('does not lend an iron residual to woods', () => {
    const woods = (carry: number) =>
      rungOf(
        bagFile({
          clubs: [
            { id: '7i', kind: 'iron', loftDeg: 33, carry },
            { id: '5w', kind: 'fairway', loftDeg: 18 },
          ],
        }),
        '5w',
      );
    expect(woods(120)?.carryYd).toBe(woods(150)?.carryYd);
  });
  it('lends hybrids the mean of the residuals of woods and irons', () => {
    const known = [
      { id: '5w', kind: 'fairway' as const, loftDeg: 18, carry: 190 },
      { id: '5i', kind: 'iron' as const, loftDeg: 26, carry: 140 },
    ];
    const { model, ladder } = ladderOf(
      bagFile({ clubs: [...known, { id: '4h', kind: 'hybrid', loftDeg: 22 }] }),
    );
    const residual = (kind: 'fairway' | 'iron', loftDeg: number, carry: number) =>
      carry / centredCarryYd({ kind, loftDeg }, 90, model.air);
    const mean = (residual('fairway', 18, 190) + residual('iron', 26, 140)) / 2;
    expect(ladder.find(({ clubId }) => clubId === '4h')?.carryYd).toBeCloseTo(
      mean * centredCarryYd({ kind: 'hybrid', loftDeg: 22 }, 90, model.air),
      9,
    );
  });
  it('scales physics to the mean of shots where nothing is known', () => {
    const { model, ladder } = ladderOf(bagFile({ clubs: [{ id: 'driver', kind: 'driver', loftDeg: 10.5 }] }));
    expect(model.meanFactor).toBe(0.92); // handicap 15: tier 3
    expect(ladder[0]?.carryYd).toBeCloseTo(
      0.92 * centredCarryYd({ kind: 'driver', loftDeg: 10.5 }, 90, model.air),
      9,
    );
  });
  it('takes a driver total less its roll as a rough carry', () => {
    const { carry: _carry, ...driver } = bagFile().clubs[0]!;
    const file = bagFile({ clubs: [{ ...driver, total: 221 }] });
    expect(ladderOf(file).ladder[0]).toMatchObject({ carryYd: 201, source: 'modelled', fromTotal: true });
    expect(ladderOf({ ...file, player: { ...file.player, driverSpeed: 75 } }).ladder[0]?.carryYd).toBe(206);
  });
  it('leaves out a club that nothing tells of', () => {
    expect(
      rungOf(bagFile({ clubs: [...bagFile().clubs, { id: 'mystery', kind: 'hybrid' }] }), 'mystery'),
    ).toBeUndefined();
  });
  it('is empty when neither a speed nor a carry is known', () => {
    const { driverSpeed: _speed, ...player } = bagFile().player;
    expect(ladderOf({ ...bagFile({ clubs: [bare('6i')] }), player }).ladder).toEqual([]);
  });
});

describe('driver speed', () => {
  const unknown = (clubs: BagFile['clubs']) => {
    const { driverSpeed: _speed, ...player } = bagFile().player;
    return ladderOf({ ...bagFile({ clubs }), player }).model;
  };
  it('is taken from the driver, before the 7-iron', () => {
    const model = unknown([
      { id: '7i', kind: 'iron', loftDeg: 33, carry: 129 },
      { id: 'driver', kind: 'driver', loftDeg: 10.5, carry: 201 },
    ]);
    expect(model.speedFrom).toBe('driver carry');
    expect(
      centredCarryYd({ kind: 'driver', loftDeg: 10.5 }, model.driverSpeedMph!, model.air) * model.meanFactor,
    ).toBeCloseTo(201, 1);
  });
  it('is taken from the 7-iron where there is no driver', () => {
    expect(unknown([{ id: '7i', kind: 'iron', loftDeg: 33, carry: 129 }]).speedFrom).toBe('7-iron carry');
  });
  it('stays unknown without any carry', () => {
    expect(unknown([bare('6i')])).toMatchObject({ driverSpeedMph: null, speedFrom: 'nothing' });
  });
});
