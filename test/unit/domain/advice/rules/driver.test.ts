import { describe, expect, it } from 'vitest';
import { misfitsOf } from '../../../../../src-main/domain/advice/question/misfits.ts';
import { driverBehindIrons } from '../../../../../src-main/domain/advice/rules/clubs/driver-behind-irons.ts';
import {
  driverLaunchSpin,
  headHelps,
} from '../../../../../src-main/domain/advice/rules/clubs/driver-launch-spin.ts';
import { flex } from '../../../../../src-main/domain/advice/rules/clubs/flex.ts';
import { bagFile, viewOf, withClub } from '../../../../support/bags.ts';

// Windows and flex bands: test/reference/data/conventions.json, common practice, no source.
const driver = (changes: object) => withClub(bagFile(), 'driver', changes);
const price = (archetype: string) => ({ archetype, low: 50, likely: 70, high: 90 });

describe('driver-behind-irons', () => {
  it('fires when the driver carries more than 10 % less than 1.55 × the 7-iron: ask', () => {
    expect(driverBehindIrons(viewOf(driver({ carry: 178 })))).toMatchObject([
      { verdict: 'ask', clubs: ['driver', '7i'] },
    ]);
  });
  it('says coach first when launch and spin are inside their window', () => {
    const file = driver({ carry: 178, ballSpeed: 128, launchDeg: 15, spinRpm: 2700 });
    expect(driverBehindIrons(viewOf(file))).toMatchObject([{ verdict: 'coach-first' }]);
  });
  it('asks where only one of them is known to be inside, or one is outside', () => {
    const verdict = (more: object) =>
      driverBehindIrons(viewOf(driver({ carry: 178, ballSpeed: 128, ...more }))).map((one) => one.verdict);
    expect(verdict({ launchDeg: 15 })).toEqual(['ask']);
    expect(verdict({ spinRpm: 2700 })).toEqual(['ask']);
    expect(verdict({ launchDeg: 15, spinRpm: 3900 })).toEqual(['ask']);
  });
  it('fires for a driver that carries more as well, and says which', () => {
    const [behind, ahead] = [178, 222].map((carry) => driverBehindIrons(viewOf(driver({ carry })))[0]);
    expect(behind?.text).toMatch(/about 22 yd less/);
    expect(ahead?.text).toMatch(/about 22 yd more/);
  });
  it('corrects a strong 7-iron for its loft', () => {
    // 141 yd at 28° is about 129 at 33°: no finding, though 1.55 × 141 is far above 201
    expect(driverBehindIrons(viewOf(withClub(bagFile(), '7i', { carry: 141, loftDeg: 28 })))).toEqual([]);
  });
  it('does not fire within 10 %', () => {
    expect(driverBehindIrons(viewOf(bagFile()))).toEqual([]);
  });
  it('looks at the driver wherever it lies in the bag', () => {
    const file = driver({ carry: 178 });
    expect(driverBehindIrons(viewOf({ ...file, clubs: file.clubs.toReversed() }))).toMatchObject([
      { clubs: ['driver', '7i'] },
    ]);
  });
  it('cannot tell without a 7-iron carry', () => {
    const file = driver({ carry: 178 });
    expect(
      driverBehindIrons(viewOf({ ...file, clubs: file.clubs.filter((club) => club.id !== '7i') })),
    ).toEqual([]);
  });
});

describe('driver-launch-spin', () => {
  const spinnyLaunch = { ballSpeed: 132, launchDeg: 18, spinRpm: 3600 };
  const spinny = driver({ ...spinnyLaunch, flex: 'A' });
  it('fires outside the window and never promises it all back', () => {
    const [finding] = driverLaunchSpin(viewOf(spinny));
    expect(finding).toMatchObject({ verdict: 'ask', severity: 3 });
    expect(finding?.text).toMatch(/launches high and spins much.*cannot remove all of it/s);
    expect(finding?.text).not.toMatch(/loft down/i);
  });
  it('says replace when a head that helps is priced', () => {
    const withHead = (id: string) => driverLaunchSpin(viewOf({ ...spinny, prices: [price(id)] }))[0]?.verdict;
    expect(withHead('driver-10.5-t3-low')).toBe('replace');
    expect(withHead('driver-10.5-t3')).toBe('ask');
  });
  it('marks the owned driver and heads that do not help as misfits: both 120, one 60', () => {
    const { misfits, candidateMisfits } = misfitsOf(viewOf(spinny));
    expect(misfits.get('driver')).toBe(120);
    expect(candidateMisfits.get('driver-10.5-t3')).toBe(120);
    expect(candidateMisfits.get('driver-10.5-t3-low')).toBeUndefined();
    expect(
      misfitsOf(viewOf(driver({ ballSpeed: 132, launchDeg: 14, spinRpm: 3600 }))).misfits.get('driver'),
    ).toBe(60);
  });
  it('does not fire inside the window', () => {
    expect(driverLaunchSpin(viewOf(driver({ ballSpeed: 132, launchDeg: 14, spinRpm: 2600 })))).toEqual([]);
  });
  it('takes the row of a boundary speed from the faster side', () => {
    const at = (ballSpeed: number) =>
      driverLaunchSpin(viewOf(driver({ ballSpeed, launchDeg: 16.5, spinRpm: 2600 })));
    expect(at(129.9)).toEqual([]); // 13–17°
    expect(at(130)).toHaveLength(1); // 12–16°
  });
  it('looks at the driver alone, and of two at the one that was measured', () => {
    const off = { ballSpeed: 132, launchDeg: 22, spinRpm: 5000 };
    expect(driverLaunchSpin(viewOf(withClub(bagFile(), '7i', off)))).toEqual([]);
    const two = driver({ ballSpeed: 132 });
    const mini = { id: 'mini', kind: 'driver' as const, loftDeg: 13, carry: 190, ...off };
    expect(driverLaunchSpin(viewOf({ ...two, clubs: [...two.clubs, mini] }))).toMatchObject([
      { clubs: ['mini'] },
    ]);
  });
  it('a go-to driver is asked about, not replaced', () => {
    const better = { ...driver({ ...spinnyLaunch, goTo: true }), prices: [price('driver-10.5-t3-low')] };
    expect(driverLaunchSpin(viewOf(better))).toMatchObject([{ verdict: 'ask' }]);
  });
  it('cannot tell without a ball speed', () => {
    expect(driverLaunchSpin(viewOf(driver({ launchDeg: 18, spinRpm: 3600 })))).toEqual([]);
  });
});

describe('a head that helps', () => {
  const sides = (launch: -1 | 0 | 1, spin: -1 | 0 | 1, loftDeg?: number) => ({
    club: { id: 'd', kind: 'driver' as const, ...(loftDeg === undefined ? {} : { loftDeg }) },
    launch,
    spin,
    ballSpeedMph: 132,
  });
  const head = (spinTier: 'low' | 'mid' | 'high', loftDeg = 10.5) => ({
    id: 'x',
    kind: 'driver' as const,
    loftDeg,
    forgiveness: 3 as const,
    spinTier,
    lengthIn: 45.5,
  });
  it('works against the spin first, then against the launch', () => {
    const tiers = (...off: Parameters<typeof sides>) =>
      (['low', 'mid', 'high'] as const).filter((tier) => headHelps(sides(...off), head(tier)));
    expect(tiers(0, 1)).toEqual(['low']);
    expect(tiers(-1, 1)).toEqual(['low']);
    expect(tiers(0, -1)).toEqual(['high']);
    expect(tiers(1, -1)).toEqual(['high']);
    expect(tiers(1, 0)).toEqual(['low']);
    expect(tiers(-1, 0)).toEqual(['high']);
    expect(tiers(0, 0)).toEqual(['low', 'mid', 'high']);
  });
  it('more loft than the own helps a low launch, where the own is known', () => {
    expect(headHelps(sides(-1, 0, 9), head('mid', 10.5))).toBe(true);
    expect(headHelps(sides(-1, 0, 10.5), head('mid', 10.5))).toBe(false);
    expect(headHelps(sides(-1, 0), head('mid', 12))).toBe(false);
    expect(headHelps(sides(-1, 1, 9), head('mid', 12))).toBe(false);
  });
});

describe('flex', () => {
  it('fires outside the band of the speed', () => {
    expect(flex(viewOf(driver({ flex: 'X' })))).toMatchObject([{ verdict: 'ask', severity: 1 }]);
    expect(flex(viewOf(driver({ flex: 'A' })))[0]?.text).toMatch(/looks soft/);
    expect(flex(viewOf(driver({ flex: 'X' })))[0]?.text).toMatch(/looks stiff/);
  });
  it('weighs more with a miss that fits, mirrored for a left-handed player', () => {
    const soft = driver({ flex: 'A' });
    const miss = (handed: 'left' | 'right', side: 'left' | 'right') =>
      flex(viewOf({ ...soft, player: { ...soft.player, handed, miss: [side] } }))[0]?.severity;
    expect([
      miss('right', 'left'),
      miss('right', 'right'),
      miss('left', 'right'),
      miss('left', 'left'),
    ]).toEqual([2, 1, 2, 1]);
  });
  it('does not fire where bands overlap', () => {
    expect(
      flex(
        viewOf(
          bagFile(
            { clubs: [{ id: 'driver', kind: 'driver', loftDeg: 10.5, flex: 'S' }] },
            { driverSpeed: 94 },
          ),
        ),
      ),
    ).toEqual([]);
    expect(
      flex(
        viewOf(
          bagFile(
            { clubs: [{ id: 'driver', kind: 'driver', loftDeg: 10.5, flex: 'R' }] },
            { driverSpeed: 94 },
          ),
        ),
      ),
    ).toEqual([]);
  });
  it('high and low are the same from either side', () => {
    const miss = (handed: 'left' | 'right', label: 'A' | 'X', side: 'high' | 'low') =>
      flex(viewOf(withClub(bagFile({}, { handed, miss: [side] }), 'driver', { flex: label })))[0]?.severity;
    for (const handed of ['left', 'right'] as const) {
      expect([miss(handed, 'A', 'high'), miss(handed, 'A', 'low')]).toEqual([2, 1]);
      expect([miss(handed, 'X', 'high'), miss(handed, 'X', 'low')]).toEqual([1, 2]);
    }
  });
  it('looks at the driver’s flex, not another club’s', () => {
    expect(flex(viewOf(withClub(bagFile(), '7i', { flex: 'X' })))).toEqual([]);
    const irons = withClub(driver({ flex: 'A' }), '7i', { flex: 'X' });
    expect(flex(viewOf({ ...irons, clubs: irons.clubs.toReversed() }))).toMatchObject([
      { clubs: ['driver'] },
    ]);
  });
  it('cannot tell without a given speed or a flex', () => {
    expect(flex(viewOf(bagFile()))).toEqual([]);
    const { driverSpeed: _speed, ...player } = bagFile().player;
    expect(flex(viewOf({ ...driver({ flex: 'X' }), player }))).toEqual([]);
  });
});
