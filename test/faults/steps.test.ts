import { describe, expect, test } from 'vitest';
import { killAtEachStep } from './step/run.ts';
import { statementsOf } from './step/stepping.ts';
import { CARELESS, WORKS } from './step/works.ts';

/** `npm run faults -- --steps` in small: some of the steps of each work; the whole takes minutes. */
const MOST = 4;

describe('killed before any of its steps, it leaves what was there or what it makes:', () => {
  test.each(WORKS)('$name', async (work) => {
    const report = await killAtEachStep(work, { most: MOST });
    expect(report.problems).toEqual([]);
    expect(report.killed).toBe(Math.min(MOST, report.steps));
  });

  test('and what does not is found out', async () => {
    const report = await killAtEachStep(CARELESS);
    expect(report.problems).toEqual(['step 2: neither what was there nor what the work makes']);
  });
});

test('statements are parted at their ends alone', () => {
  const trigger = 'CREATE TRIGGER t AFTER INSERT ON a BEGIN DELETE FROM b; DELETE FROM c; END;';
  const sql = `-- one; two's\nCREATE TABLE a (x TEXT DEFAULT ';');\n${trigger}\nINSERT INTO a VALUES ('it''s;');`;
  expect(statementsOf(sql)).toEqual([
    `-- one; two's\nCREATE TABLE a (x TEXT DEFAULT ';');`,
    `\n${trigger}`,
    `\nINSERT INTO a VALUES ('it''s;');`,
  ]);
});
