import { describe, expect, it } from 'vitest';
import type { ShotMapping } from '../../../../src-main/contract/calls/records/shots.ts';
import { useService } from '../kit.ts';

const { call, refused, open, gate } = useService();

const mapping: ShotMapping = {
  columns: { club: 0, carry: 1 },
  decimal: '.',
  distance: 'yd',
  speed: 'mph',
  clubs: { seven: '7i', '7': '7i', pitch: 'pw' },
};
const preview = (bagId: number, text: string, more: object = {}) =>
  call('shots.preview', { bagId, source: { text }, mapping, leaveOut: [], ...more });
const imported = (bagId: number, text: string, more: object = {}) => ({
  bagId,
  source: { text },
  mapping,
  leaveOut: [],
  skipBad: false,
  sessionOn: '2026-11-20',
  ...more,
});
const carries = (...rows: (readonly [string, number | string])[]) =>
  `club,carry\n${rows.map((row) => row.join(',')).join('\n')}\n`;

const SESSION = carries(
  ...[128, 130, 129, 131, 127, 130, 128].map((carry) => ['seven', carry] as const),
  ['7', 62],
  ['pitch', 101],
  ['putter', 10],
);

describe('the preview', () => {
  it('tells each club’s mean of all the words for it, and marks what lies far off', async () => {
    const { bagId } = await open();
    const { words, clubs } = await preview(bagId, SESSION);
    expect(words).toEqual([
      { label: 'seven', shots: 7, clubId: '7i', proposed: null },
      { label: '7', shots: 1, clubId: '7i', proposed: null },
      { label: 'pitch', shots: 1, clubId: 'pw', proposed: null },
      { label: 'putter', shots: 1, clubId: null, proposed: null },
    ]);
    expect(clubs).toMatchObject([
      {
        clubId: '7i',
        labels: ['seven', '7'],
        shots: 8,
        mean: 120.6,
        marks: 1,
        marked: [{ rowNumber: 9, carry: 62, isOutlier: true, isLeftOut: false }],
      },
      { clubId: 'pw', shots: 1, mean: 101, sd: null, low: null, high: null, marks: 0 },
    ]);
  });
  it('keeps a mark on what is left out, and tells the mean of the rest', async () => {
    const { bagId } = await open();
    const { clubs } = await preview(bagId, SESSION, { leaveOut: [9, 10] });
    // 128 … 128 without 62: mean 129, SD 1.414, t of 6 degrees of freedom at 90 % 1.943 (NIST/SEMATECH 1.3.6.7.2).
    expect(clubs[0]).toMatchObject({ shots: 7, mean: 129, sd: 1.4, low: 128, high: 130 });
    expect(clubs[0]?.marked).toEqual([{ rowNumber: 9, carry: 62, isOutlier: true, isLeftOut: true }]);
    // A club whose shots are all left out can be taken in again.
    expect(clubs[1]).toMatchObject({ shots: 0, mean: null, sd: null, marks: 1 });
  });
  it('knows a file that was imported before', async () => {
    const { bagId } = await open();
    const fileName = 'range.csv';
    expect((await preview(bagId, SESSION, { fileName })).before).toBeNull();
    await call('shots.import', imported(bagId, SESSION, { fileName }));
    expect((await preview(bagId, SESSION, { fileName })).before).toBe('2026-11-20');
    expect((await preview(bagId, SESSION, { fileName: 'other.csv' })).before).toBeNull();
    expect((await preview(bagId, `${SESSION}seven,130\n`, { fileName })).before).toBeNull();
  });
  it('shows metres where the bag is in metres, and reads the file in its own unit', async () => {
    const { bagId } = await open();
    await call('bags.setUnits', { bagId, distance: 'm', keepNumbers: false });
    const metres = { ...mapping, distance: 'm' as const };
    const text = carries(['seven', 120], ['seven', 120]);
    expect((await preview(bagId, text, { mapping: metres })).clubs[0]?.mean).toBe(120);
    expect((await preview(bagId, text)).clubs[0]?.mean).toBe(109.7);
  });
});

describe('an import', () => {
  it('keeps what is left out as left out', async () => {
    const { bagId } = await open();
    await call('shots.import', imported(bagId, SESSION, { leaveOut: [9] }));
    const { bag } = await call('bags.read', { bagId });
    expect(bag.clubs.find(({ id }) => id === '7i')).toMatchObject({ carry: 129, shots: 7 });
  });
  it('from an upload is the same as from a text, also one that no call could carry', async () => {
    const { bagId } = await open();
    const row = `seven,130,${'x'.repeat(170)}\n`;
    const text = `club,carry,remark\n${row.repeat(13_000)}`;
    expect(text.length).toBeGreaterThan(2 * 1024 * 1024);
    async function* parts() {
      yield new TextEncoder().encode(text);
      await Promise.resolve();
    }
    const answer = await gate().upload('range.csv', parts());
    const { upload, kind } = answer.ok
      ? (answer.value as { upload: string; kind: string })
      : { upload: '', kind: '' };
    expect(kind).toBe('shots');
    const source = { upload };
    expect(await call('shots.look', { source })).toMatchObject({
      rows: 13_000,
      proposed: { columns: { club: 0 } },
    });
    expect((await call('shots.preview', { bagId, source, mapping, leaveOut: [] })).clubs[0]?.shots).toBe(
      13_000,
    );
    expect(await call('shots.import', { ...imported(bagId, ''), source })).toEqual({
      shots: 13_000,
      skipped: 0,
      clubs: 1,
    });
  });
  it('under a header that is not the first row is remembered with it', async () => {
    const { bagId } = await open();
    const text = `Range\nof today, cold\n${SESSION}`;
    const own = { ...mapping, headerRow: 3 };
    const source = { text };
    expect((await call('shots.look', { source })).headerRow).toBe(2);
    expect((await preview(bagId, text, { mapping: own })).clubs[0]?.marked[0]?.rowNumber).toBe(11);
    await call('shots.import', imported(bagId, text, { mapping: own }));
    expect((await call('shots.look', { source })).remembered).toBeNull();
    expect((await call('shots.look', { source, headerRow: 3 })).remembered).toEqual(own);
  });
  it.each([
    ['the putter', { clubs: { putter: 'putter' } }, SESSION, 'mapping.clubs', 'putter'],
    ['a column that is not there', { columns: { club: 0, carry: 2 } }, SESSION, 'mapping.columns.carry', '2'],
    [
      'a column of other things for the club',
      { columns: { club: 1, carry: 0 } },
      `carry,time\n${Array.from({ length: 101 }, (_, i) => `130,${String(i)}`).join('\n')}`,
      'mapping.columns.club',
      '',
    ],
    ['a spread above the carry', {}, carries(['pitch', 1], ['pitch', 2], ['pitch', 449]), '.carrySd', '258.'],
    ['a formula for a club', {}, carries(['=1+1', 130]), 'row 2, club', '=1+1'],
    ['markup for a club', {}, carries(['<b>7</b>', 130]), 'row 2, club', '<b>'],
    ['control characters for a club', {}, carries(['7\u001b[2J', 130]), 'row 2, club', '7'],
    ['a club of a page', {}, carries(['x'.repeat(300), 130]), 'row 2, club', 'xxx'],
    ['half a letter', {}, carries(['\ud800', 130]), 'line 2', 'half'],
  ])('of %s is refused, and nothing is kept', async (_, change, text, path, value) => {
    const { bagId } = await open();
    const { bag } = await call('bags.read', { bagId });
    const error = await refused(
      'shots.import',
      imported(bagId, text, { mapping: { ...mapping, ...change } }),
    );
    expect(error.kind).toBe('refused');
    expect(error.refusals?.[0]?.path).toContain(path);
    expect(error.refusals?.[0]?.value).toContain(value);
    expect(error.refusals?.[0]?.remedy).toMatch(/\w/);
    expect((await call('bags.read', { bagId })).bag).toEqual(bag);
    expect((await call('history.list', {})).undo).toHaveLength(1);
  });
});
