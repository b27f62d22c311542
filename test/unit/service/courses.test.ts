import { describe, expect, it } from 'vitest';
import { bagFile } from '../../support/bags.ts';
import { useService } from './kit.ts';

const { call, refused, open } = useService();
const holes = (length: number) => [
  { par: 4, length },
  { par: 3, length: 150 },
];
const sum = (all: readonly { length: number }[] | null) =>
  Math.round((all ?? []).reduce((total, { length }) => total + length, 0));
const needSource = async (bagId: number) => (await call('answers.plan', { bagId })).need?.source ?? '';

describe('courses', () => {
  it('none picked: the usual one by the drive', async () => {
    const { bagId } = await open();
    const { courses, picked, fromFile, usual, teeLengths } = await call('courses.list', { bagId });
    expect({ courses, picked, fromFile }).toEqual({ courses: [], picked: null, fromFile: null });
    expect(usual).toHaveLength(18);
    // A drive of 201 with its roll of about 20: the chart's row of 225.
    expect(sum(usual)).toBe(5900);
    expect(teeLengths).toContain(5900);
    expect(await needSource(bagId)).toContain('5900');
  });

  it('are named, picked for a bag, changed for all, and undone', async () => {
    const { bagId } = await open();
    const { id } = await call('courses.save', { bagId, name: 'Home, back tees', holes: holes(400) });
    await call('courses.pick', { bagId, id });
    expect(await needSource(bagId)).toMatch(/^course given: 2 holes, par 7, 550 yd/);
    expect((await call('bags.read', { bagId })).bag.course?.holes).toEqual(holes(400));
    await call('courses.save', { bagId, id, name: 'Home', holes: holes(350) });
    expect((await call('courses.list', { bagId })).courses).toEqual([
      { id, name: 'Home', holes: holes(350), bags: 1 },
    ]);
    expect(await needSource(bagId)).toContain('500 yd');
    await call('courses.pick', { bagId, id: null });
    expect(await needSource(bagId)).toMatch(/^default course/);
    await call('history.undo', {});
    expect((await call('courses.list', { bagId })).picked).toBe(id);
    await call('courses.remove', { id });
    expect(await needSource(bagId)).toMatch(/^default course/);
    await call('history.undo', {});
    expect((await call('courses.list', { bagId })).picked).toBe(id);
  });

  it('one that came with a file is no named one, and goes when another is picked', async () => {
    const { bagId } = await open(bagFile({ course: { holes: holes(380) } }));
    const listed = await call('courses.list', { bagId });
    expect(listed).toMatchObject({ courses: [], picked: null, fromFile: holes(380) });
    const { id } = await call('courses.save', { bagId, name: 'Club', holes: holes(420) });
    await call('courses.pick', { bagId, id });
    expect(await call('courses.list', { bagId })).toMatchObject({ picked: id, fromFile: null });
    await call('history.undo', {});
    expect(await call('courses.list', { bagId })).toMatchObject({ picked: null, fromFile: holes(380) });
  });

  it('speak the unit of the bag', async () => {
    const { bagId } = await open();
    const { id } = await call('courses.save', { bagId, name: 'Club', holes: holes(400) });
    await call('bags.setUnits', { bagId, distance: 'm' });
    const metres = await call('courses.list', { bagId });
    expect(metres.courses[0]?.holes[0]?.length).toBe(365.8);
    const { holes: laid } = await call('courses.layOut', { bagId, totalLength: 5500 });
    expect(laid).toHaveLength(18);
    expect(Math.abs(sum(laid) - 5500)).toBeLessThanOrEqual(1);
    await call('courses.save', { bagId, id, name: 'Club', holes: [{ par: 4, length: 400 }] });
    await call('bags.setUnits', { bagId, distance: 'yd' });
    expect((await call('courses.list', { bagId })).courses[0]?.holes[0]?.length).toBe(437.4);
  });

  it('refuses a second of a name, holes that cannot be, and what is not there', async () => {
    const { bagId } = await open(bagFile({ course: { holes: holes(380) } }));
    const { id } = await call('courses.save', { bagId, name: 'Club', holes: holes(400) });
    expect(
      (await refused('courses.save', { bagId, name: ' club ', holes: holes(400) })).refusals?.[0],
    ).toMatchObject({ path: '$.name' });
    await call('courses.save', { bagId, id, name: 'CLUB', holes: holes(400) });
    const long = await refused('courses.save', { bagId, name: 'Long', holes: holes(1200) });
    expect(long.refusals?.[0]).toMatchObject({ path: '$.holes[0].length', value: '1200' });
    expect((await refused('courses.save', { bagId, name: 'None', holes: [] })).kind).toBe('refused');
    expect((await refused('courses.pick', { bagId, id: 99 })).kind).toBe('not-found');
    expect((await refused('courses.remove', { id: 99 })).kind).toBe('not-found');
    // A file's own course is nobody else's to pick.
    const unnamed = await refused('courses.pick', { bagId, id: 1 });
    expect(unnamed.kind).toBe('not-found');
  });

  it('no drive is known: no usual one', async () => {
    const file = bagFile({ clubs: [{ id: 'putter', kind: 'putter' }] });
    delete file.player.driverSpeed;
    const { bagId } = await open(file);
    expect((await call('courses.list', { bagId })).usual).toBeNull();
  });
});
