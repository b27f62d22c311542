import { mkdtempSync, readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { BagFile } from '../../../src-main/contract/formats/bag-file.ts';
import { planFileSchema, type PlanFile } from '../../../src-main/contract/formats/plan-file.ts';
import { bagFile, withClub } from '../../support/bags.ts';
import { cli } from '../../support/cli.ts';

let folder = '';
beforeAll(() => {
  folder = mkdtempSync(path.join(tmpdir(), 'loftledger-plan-'));
});
afterAll(() => {
  rmSync(folder, { recursive: true, force: true });
});

const data = () => ['--data', path.join(folder, 'data')];
const demo = (name: string) => readFileSync(`db/demo/${name}.json`, 'utf8');

function plan(bag: string, ...more: string[]): PlanFile {
  const result = cli(['plan', '--bag', '-', '--json', ...data(), ...more], { input: bag });
  expect(result.stderr).toBe('');
  expect(result.status).toBe(0);
  return planFileSchema.parse(JSON.parse(result.stdout));
}

const purchases = (file: PlanFile) =>
  file.plan.swaps.filter((swap) => swap.action === 'buy').map((swap) => swap.archetype);

describe('plan on the demos', () => {
  it('answers the invented bag with a valid plan file', () => {
    const file = plan(demo('invented-bag'));
    expect(file.plan.status).toBe('ok');
    expect(purchases(file)).toHaveLength(1);
    expect(file.findings.map((finding) => finding.kind)).toContain('wide-gap');
    expect(file.plan.cash).toBe(62); // 45 the club, 8 delivery, 9 grip
  });
  it('keeps the real shots as measured, with their t-intervals', () => {
    const file = plan(demo('range-bag'));
    const rows = new Map(file.ladder.map((row) => [row.clubId, row]));
    for (const id of ['driver', '3w', '5w', '3i', '5i', '7i', '9i', 'gw', 'lw'])
      expect(rows.get(id)?.source).toBe('measured');
    for (const id of ['4i', '6i', '8i', 'pw', 'sw']) expect(rows.get(id)?.source).toBe('interpolated');
    // 3-iron: seven shots, mean 208.0, SD 15.6 → ± 1.943 · 15.6 / √7 = 11.5 (t: NIST e-Handbook 1.3.6.7.2)
    expect(rows.get('3i')).toMatchObject({ carry: 208, low: 196.5, high: 219.5 });
    expect(file.findings.map((finding) => finding.kind)).toContain('count');
  });
  it('adds the instance, the item ids and the walk-away map when asked', () => {
    const file = plan(demo('invented-bag'), '--with-instance');
    expect(file.instance?.items.length).toBeGreaterThan(10);
    expect(file.plan.items?.some((id) => id.startsWith('buy:'))).toBe(true);
    expect(file.walkAway).toBeDefined();
    expect(plan(demo('invented-bag')).instance).toBeUndefined();
  });
  it('lets --budget stand in for the budget of the file', () => {
    const file = plan(demo('invented-bag'), '--budget', '20');
    expect(purchases(file)).toEqual([]);
    expect(file.plan.remaining).toBeGreaterThanOrEqual(20);
  });
  it('writes text tables without --json', () => {
    const { stdout, status } = cli(['plan', '--bag', 'db/demo/invented-bag.json', ...data()]);
    expect(status).toBe(0);
    expect(stdout).toMatch(/^Ladder today$/m);
    expect(stdout).toMatch(/^buy +hybrid-/m);
  });
  it('writes to --out, from where the user stands, and keeps standard output empty', () => {
    const result = cli(
      ['plan', '--bag', path.resolve('db/demo/invented-bag.json'), '--json', '--out', 'plan.json', ...data()],
      { cwd: folder },
    );
    expect(result).toMatchObject({ status: 0, stdout: '' });
    expect(
      planFileSchema.parse(JSON.parse(readFileSync(path.join(folder, 'plan.json'), 'utf8'))).format,
    ).toBe('loftledger-plan');
  });
});

describe('units', () => {
  /** The same bag as a reader of metres, km/h and euro would type it (one to one in money). */
  function metric(file: BagFile): BagFile {
    const m = (yd: number | undefined) => (yd === undefined ? undefined : Number((yd * 0.9144).toFixed(6)));
    const club = (one: BagFile['clubs'][number]) =>
      Object.fromEntries(
        Object.entries({
          ...one,
          carry: m(one.carry),
          carrySd: m(one.carrySd),
          total: m(one.total),
          ballSpeed: one.ballSpeed && one.ballSpeed * 1.609344,
        }).filter(([, value]) => value !== undefined),
      ) as BagFile['clubs'][number];
    const { driverSpeed, ...player } = file.player;
    return {
      ...file,
      units: { distance: 'm', speed: 'km/h', currency: 'EUR' },
      player: { ...player, ...(driverSpeed === undefined ? {} : { driverSpeed: driverSpeed * 1.609344 }) },
      clubs: file.clubs.map(club),
    };
  }
  it.each(['invented-bag', 'range-bag'])(
    '%s in metres, km/h and euro gives the same purchases and the same integers',
    (name) => {
      const file = JSON.parse(demo(name)) as BagFile;
      const yards = plan(JSON.stringify(file), '--with-instance');
      const metres = plan(JSON.stringify(metric(file)), '--with-instance');
      expect(purchases(metres)).toEqual(purchases(yards));
      expect(metres.instance).toEqual(yards.instance);
      expect(metres.units.distance).toBe('m');
      expect(metres.ladder[0]?.carry).toBeCloseTo((yards.ladder[0]?.carry ?? 0) * 0.9144, 0);
    },
  );
});

describe('bad input: exit 2, place, value, remedy, nothing touched', () => {
  const write = (name: string, content: string | Uint8Array) => {
    const file = path.join(folder, name);
    writeFileSync(file, content);
    return file;
  };
  const databaseBytes = () =>
    readdirSync(path.join(folder, 'data'))
      .filter((name) => name.endsWith('.db'))
      .map((name) => readFileSync(path.join(folder, 'data', name)).toString('base64'))
      .join();

  it.each([
    [
      'an unknown key',
      () => JSON.stringify({ ...bagFile(), colour: 'red' }),
      /\$\.colour = "red".*Check its spelling/,
    ],
    [
      'a missing kind',
      () => JSON.stringify(withClub(bagFile(), '7i', { kind: undefined } as never)),
      /\$\.clubs\[5\]\.kind = \(missing\)/,
    ],
    [
      'a carry of 900 yd',
      () => JSON.stringify(withClub(bagFile(), 'driver', { carry: 900 })),
      /\$\.clubs\[0\]\.carry = 900/,
    ],
    ['NaN', () => JSON.stringify(bagFile()).replace('201', 'NaN'), /line 1, column \d+/],
    [
      'an unknown archetype',
      () => JSON.stringify(bagFile({ prices: [{ archetype: 'hybrid-22-t9', low: 1, likely: 2, high: 3 }] })),
      /\$\.prices\[0\]\.archetype = "hybrid-22-t9".*near it: hybrid-22/,
    ],
    [
      'two go-to putters',
      () =>
        JSON.stringify({
          ...bagFile(),
          clubs: [...bagFile().clubs, { id: 'p2', kind: 'putter', goTo: true }].map((club) =>
            club.kind === 'putter' ? { ...club, goTo: true } : club,
          ),
        }),
      /\$\.clubs\[12\]\.goTo/,
    ],
    ['an empty file', () => '', /\(empty\)/],
    ['version 2', () => JSON.stringify({ ...bagFile(), version: 2 }), /\$\.version = 2.*newer/],
  ])('%s', (_name, text, message) => {
    cli(['catalogue', ...data()]);
    const before = databaseBytes();
    const result = cli(['plan', '--bag', write('bad.json', text()), ...data()]);
    expect(result.status).toBe(2);
    expect(result.stdout).toBe('');
    expect(result.stderr).toMatch(message);
    expect(databaseBytes()).toBe(before);
  });

  it('a file of 50 MB, before it is read', () => {
    const result = cli(['plan', '--bag', write('big.json', Buffer.alloc(50 * 1024 * 1024, 32)), ...data()]);
    expect(result).toMatchObject({ status: 2, stdout: '' });
    expect(result.stderr).toMatch(/is 50\.0 MB; a bag file has at most 2\.0 MB/);
  });
  it('a binary file', () => {
    const result = cli([
      'plan',
      '--bag',
      write('binary.json', new Uint8Array([0xff, 0xd8, 0, 1])),
      ...data(),
    ]);
    expect(result).toMatchObject({ status: 2, stdout: '' });
    expect(result.stderr).toMatch(/not UTF-8/);
  });
  it('a folder, and a file that is not there', () => {
    expect(cli(['plan', '--bag', folder, ...data()]).stderr).toMatch(/is a folder/);
    const gone = cli(['plan', '--bag', 'no-such-file.json', ...data()]);
    expect(gone.status).toBe(2);
    expect(gone.stderr).toMatch(/no such file/);
  });
  it.each([
    [[], /give --bag FILE/],
    [['--bag', 'x', '--shout'], /--shout/],
    [['--bag', 'db/demo/invented-bag.json', '--budget', '-5'], /--budget/],
    [['--bag', 'db/demo/invented-bag.json', '--budget', '12.345'], /no amount in GBP/],
    [['--bag', 'db/demo/invented-bag.json', '--today', '2026-02-30'], /is no date/],
  ])('wrong use: %j', (words, message) => {
    const result = cli(['plan', ...words, ...data()]);
    expect(result.status).toBe(2);
    expect(result.stderr).toMatch(message);
  });
  it('--help is no wrong use', () => {
    expect(cli(['plan', '--help'])).toMatchObject({ status: 0, stderr: '' });
  });
});
