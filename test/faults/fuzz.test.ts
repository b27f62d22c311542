import { describe, expect, test } from 'vitest';
import { Draw } from './fuzz/draw.ts';
import { fuzz } from './fuzz/run.ts';
import { Wrong, type Session, type Target } from './fuzz/target.ts';
import { TARGETS } from './fuzz/targets/index.ts';
import { SCHEMAS } from './fuzz/targets/schemas.ts';
import { openRecords } from './fuzz/records.ts';
import { calls } from '../../src-main/contract/calls/index.ts';

/** `npm run fuzz` in small, with a seed of its own. What was once found has a test of its own, where it was mended. */
test.each(TARGETS)('broken input for $name: taken or refused in plain words', async (target) => {
  const report = await fuzz({ targets: [target], cases: 250, seed: 20_261_126 });
  expect(report.faults).toEqual([]);
  expect(report.cases).toBe(250);
});

test('every call has its arguments and its result among the schemas', () => {
  const names = new Set(SCHEMAS.map(([name]) => name));
  for (const call of Object.keys(calls)) {
    expect(names).toContain(`${call} args`);
    expect(names).toContain(`${call} result`);
  }
});

describe('the fuzz finds', () => {
  const one = (run: Session['run'], open?: () => Promise<Session>): Target => ({
    name: 'one',
    weight: 1,
    casesASession: 10,
    open: open ?? (() => Promise.resolve({ run, close: () => Promise.resolve() })),
  });
  const find = async (target: Target) => (await fuzz({ targets: [target], cases: 12, seed: 1 })).faults;

  test('a crash, and tells the case', async () => {
    const faults = await find(
      one((draw) => {
        if (draw.below(4) === 3) throw new TypeError('x is undefined');
        return Promise.resolve('taken');
      }),
    );
    expect(faults.length).toBeGreaterThan(0);
    expect(faults[0]?.what).toContain('x is undefined');
    // The same case again, alone.
    const { number } = faults[0] ?? { number: 0 };
    expect(number).toBeLessThan(12);
  });

  test('a hang, and not what was slow once', async () => {
    let slowLeft = 1;
    const slow = (always: boolean): Target =>
      one(async () => {
        if (always || slowLeft-- > 0) await new Promise((done) => setTimeout(done, 2_100));
        return 'taken';
      });
    const options = { seed: 1, cases: 1 };
    const once = await fuzz({ ...options, targets: [slow(false)] });
    expect([once.faults.length, once.targets[0]?.slowOnce]).toEqual([0, 1]);
    const always = await fuzz({ ...options, targets: [slow(true)] });
    expect(always.faults).toHaveLength(1);
    expect(always.faults[0]?.what).toMatch(/^it took 2\d\d\d ms$/);
  });

  test('a change on refusal, and a write where only reading was due', async () => {
    const records = await openRecords();
    const edit = { call: 'history.undo', args: {} };
    records.watch.begin();
    await records.gate.call(edit);
    expect(() => records.watch.expectSame('changed', edit)).toThrow(Wrong);
    records.watch.begin();
    expect(() => records.watch.expectSame('changed', edit)).not.toThrow();
    records.watch.begin(true);
    await records.gate.call({ call: 'history.redo', args: {} });
    expect(() => records.watch.expectSame('changed', edit)).toThrow(Wrong);
    await records.close();
  });
});

test('a case is the same whenever it is played', () => {
  const of = (seed: number) =>
    Array.from(
      { length: 5 },
      (
        (draw) => () =>
          draw.next()
      )(new Draw(seed)),
    );
  expect(of(7)).toEqual(of(7));
  expect(of(7)).not.toEqual(of(8));
});
