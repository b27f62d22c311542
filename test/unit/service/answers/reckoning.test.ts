import { describe, expect, it } from 'vitest';
import {
  conventionsSchema,
  type ConventionsFile,
} from '../../../../src-main/contract/calls/answers/reckoning.ts';
import { bagFile, withClub } from '../../../support/bags.ts';
import { useService } from '../kit.ts';

const { call, refused, open } = useService();

/** A gap of 14 yards between two clubs below the long ones: usual up to 16. */
const gapped = () => withClub(bagFile(), 'sw', { carry: 76 });
const priced = () => ({
  ...gapped(),
  budget: { amount: 200 },
  prices: [{ archetype: 'wedge-52-t3', low: 10, likely: 15, high: 20 }],
});

async function withWide(wideYd: number): Promise<void> {
  const { now } = await call('limits.read', {});
  await call('limits.set', { limits: now.limits.map((row) => ({ ...row, wideYd })) });
}

const findingsOf = async (bagId: number) => (await call('answers.plan', { bagId })).plan.findings;

describe('limits and weights', () => {
  it('are common practice until they are set, and again after a reset', async () => {
    const { now, usual } = await call('limits.read', {});
    expect(now).toEqual(usual);
    expect(usual.limits[2]).toEqual({
      fromMph: 90,
      crowdedYd: 5,
      wideYd: 16,
      wideLongYd: 20,
      firstPairYd: 46,
    });
    expect(usual.weights).toEqual({ wide: 2, crowd: 1, tier: 40 });
    await withWide(12);
    expect((await call('limits.read', {})).now.limits[2]?.wideYd).toBe(12);
    await call('limits.reset', {});
    expect((await call('limits.read', {})).now).toEqual(usual);
    await call('history.undo', {});
    expect((await call('limits.read', {})).now.limits[2]?.wideYd).toBe(12);
    await call('history.undo', {});
    expect((await call('limits.read', {})).now).toEqual(usual);
  });

  it('reach findings, marks, the instance and the plan, which says so', async () => {
    const { bagId } = await open(gapped());
    const before = await call('answers.plan', { bagId });
    expect(before.marks).toEqual([]);
    await withWide(10);
    const after = await call('answers.plan', { bagId });
    expect(after.marks).toContainEqual({ longer: 'gw', shorter: 'sw', state: 'wide', gap: 14, limit: 10 });
    expect(after.todayPenalty).toBeGreaterThan(before.todayPenalty);
    expect(after.plan.instance?.bands[0]?.wideDy).toBe(100);
    const finding = after.plan.findings.find(({ clubs }) => clubs.join() === 'gw,sw');
    expect(finding?.evidence.find(({ figure }) => figure === 'limit')).toMatchObject({
      value: 10,
      source: 'set by the user',
    });
    expect(after.plan.cautions[0]).toBe(
      'This plan was reckoned with the user’s own gap limits, not with common practice.',
    );
    expect(before.plan.cautions.join()).not.toContain('user’s own');
    const german = await call('answers.plan', { bagId, locale: 'de-DE' });
    expect(german.plan.cautions[0]).toContain('Abstandsgrenzen');
  });

  it('say nothing in a plan where they hold for other players', async () => {
    const { bagId } = await open(gapped());
    const { now } = await call('limits.read', {});
    await call('limits.set', { limits: now.limits.map((row, i) => (i === 0 ? { ...row, wideYd: 9 } : row)) });
    expect((await call('answers.plan', { bagId })).plan.cautions.join()).not.toContain('user’s own');
  });

  it('weights of 0 leave nothing to mend, and are said', async () => {
    const { bagId } = await open(withClub(bagFile(), '9i', { carry: 100.5 }));
    const before = await call('answers.plan', { bagId });
    expect(before.todayPenalty).toBeGreaterThan(0);
    await call('limits.set', { weights: { wide: 0, crowd: 0, tier: 0 } });
    const after = await call('answers.plan', { bagId });
    expect(after.todayPenalty).toBe(0);
    expect(after.plan.instance?.tierWeight).toBe(0);
    expect(after.plan.cautions[0]).toContain('weights');
  });

  it('forgiveness by handicap decides the least tier', async () => {
    const file = withClub(bagFile(), '7i', { forgiveness: 2 });
    const { bagId } = await open(file);
    expect((await findingsOf(bagId)).map(({ kind }) => kind)).not.toContain('forgiveness');
    await call('limits.set', { tierUpTo: [1, 5, 10] });
    const found = (await findingsOf(bagId)).find(({ kind }) => kind === 'forgiveness');
    expect(found?.evidence.find(({ source }) => source === 'set by the user')?.value).toBe(3);
  });

  it('the share of long clubs moves the lenient limit', async () => {
    const { bagId } = await open();
    const longFrom = async () => {
      const { plan } = await call('answers.plan', { bagId });
      return plan.instance?.bands.find((band) => band.wideDy === 200)?.fromDy;
    };
    const before = (await longFrom()) ?? 0;
    await call('limits.set', { longShare: 0.9 });
    expect(await longFrom()).toBeGreaterThan(before);
  });

  it('reach "seen one", the comparison and the watch list as well', async () => {
    const { bagId } = await open(priced());
    const compared = async () => {
      const { plan } = await call('answers.plan', { bagId });
      const today = plan.instance?.items.filter(({ origin }) => origin === 'owned').map(({ id }) => id) ?? [];
      return (await call('answers.compare', { bagId, bags: [today] })).sides[0]?.marks.length;
    };
    const seen = () => call('prices.seenOne', { bagId, archetype: 'wedge-52-t2', price: 5 });
    expect(await compared()).toBe(0);
    const before = await seen();
    await withWide(8);
    expect(await compared()).toBeGreaterThan(0);
    expect(await seen()).not.toEqual(before);
  });

  it('reach the document; that of a pick keeps those it was picked with', async () => {
    const { bagId } = await open(priced());
    const said = async (more = {}) =>
      (await call('handover.text', { bagId, format: 'md', ...more })).text.includes('set by the user');
    await withWide(10);
    expect(await said()).toBe(true);
    const { plan } = await call('answers.plan', { bagId });
    const items = plan.plan.items ?? [];
    const { planId } = await call('plans.pick', { bagId, name: 'The plan', why: '', items });
    await call('limits.reset', {});
    expect(await said()).toBe(false);
    expect(await said({ record: planId })).toBe(true);
  });

  it('contradictions are refused by place, and nothing is kept', async () => {
    const { now, usual } = await call('limits.read', {});
    const change = (row: number, part: Partial<ConventionsFile['limits'][number]>) =>
      now.limits.map((one, i) => (i === row ? { ...one, ...part } : one));
    const wrong = await refused('limits.set', { limits: change(1, { wideYd: 4 }) });
    expect(wrong.refusals?.[0]).toMatchObject({ path: '$.limits[1].wideYd', value: '4' });
    expect((await refused('limits.set', { limits: change(3, { fromMph: 100 }) })).refusals?.[0]?.path).toBe(
      '$.limits[3].fromMph',
    );
    expect((await refused('limits.set', { tierUpTo: [5, 5, 9] })).refusals?.[0]?.path).toBe('$.tierUpTo[1]');
    await refused('limits.set', { weights: { wide: -1, crowd: 1, tier: 1 } });
    await refused('limits.set', { weights: { wide: 1.5, crowd: 1, tier: 1 } });
    expect((await call('limits.read', {})).now).toEqual(usual);
    expect(conventionsSchema.parse(usual)).toEqual(usual);
  });

  it('set back by hand they are usual again, whatever the order of the keys', async () => {
    const { usual } = await call('limits.read', {});
    const { bagId } = await open(gapped());
    await withWide(10);
    await call('limits.set', {
      limits: usual.limits.map(({ fromMph, wideYd, ...rest }) => ({ ...rest, wideYd, fromMph })),
    });
    expect((await call('answers.plan', { bagId })).plan.cautions.join()).not.toContain('user’s own');
  });
});

describe('air', () => {
  it('is the player’s own, else the program’s, else a mild day at sea level', async () => {
    const { playerId } = await open();
    const mild = { temperatureC: 15, altitudeM: 0 };
    expect(await call('air.read', { playerId })).toEqual({ air: mild, from: 'usual' });
    await call('air.set', { playerId: null, air: { temperatureC: 25, altitudeM: 300 } });
    expect(await call('air.read', { playerId })).toEqual({
      air: { temperatureC: 25, altitudeM: 300 },
      from: 'program',
    });
    await call('air.set', { playerId, air: { temperatureC: 5, altitudeM: 20 } });
    expect(await call('air.read', { playerId })).toMatchObject({ air: { temperatureC: 5 }, from: 'player' });
    expect(await call('air.read', { playerId: null })).toMatchObject({ from: 'program' });
    await call('air.set', { playerId, air: null });
    expect((await call('air.read', { playerId })).from).toBe('program');
    await call('history.undo', {});
    expect((await call('air.read', { playerId })).from).toBe('player');
  });

  it('moves what is reckoned, and no carry that was given', async () => {
    const file = withClub(bagFile(), '8i', {});
    delete file.clubs.find(({ id }) => id === '8i')?.carry;
    delete file.player.driverSpeed;
    const { playerId, bagId } = await open(file);
    const speed = async () => (await call('answers.plan', { bagId })).speed.value ?? 0;
    const carry = async (id: string) =>
      (await call('answers.plan', { bagId })).plan.ladder.find(({ clubId }) => clubId === id)?.carry;
    const [before, seven] = [await speed(), await carry('7i')];
    await call('air.set', { playerId, air: { temperatureC: 35, altitudeM: 2000 } });
    // In thin air the same carry takes less speed.
    expect(await speed()).toBeLessThan(before);
    expect(await carry('7i')).toBe(seven);
    const { air } = await call('answers.flight', { bagId });
    expect(air).toEqual({ temperatureC: 35, altitudeM: 2000 });
  });

  it('what cannot be is refused', async () => {
    const error = await refused('air.set', { playerId: null, air: { temperatureC: 80, altitudeM: 0 } });
    expect(error.refusals?.[0]?.path).toBe('$.air.temperatureC');
    expect((await refused('air.read', { playerId: 99 })).kind).toBe('not-found');
  });
});
