import type { z } from 'zod';
import { bagFileSchema } from '../../../../src-main/contract/formats/bag-file.ts';
import { calls } from '../../../../src-main/contract/calls/index.ts';
import { archetypeSchema } from '../../../../src-main/contract/formats/catalogue.ts';
import { launchListSchema } from '../../../../src-main/contract/formats/flight-file.ts';
import { instanceSchema, solutionSchema } from '../../../../src-main/contract/formats/instance.ts';
import { planFileSchema } from '../../../../src-main/contract/formats/plan-file.ts';
import { refusalLine, refusalsOf } from '../../../../src-main/contract/refusal.ts';
import { shapeOf, valueFor } from '../from-schema.ts';
import { broken, nastyValue } from '../nasty.ts';
import { poolsOf } from '../pools.ts';
import { Wrong, type Target } from '../target.ts';

/** Every schema of the contract, results and files too: it takes or refuses, and each refusal can be told. */
export const SCHEMAS: readonly (readonly [string, z.ZodType])[] = [
  ...Object.entries(calls).flatMap(([name, spec]) => [
    [`${name} args`, spec.args] as const,
    [`${name} result`, spec.result] as const,
  ]),
  ['bag file', bagFileSchema],
  ['plan file', planFileSchema],
  ['instance', instanceSchema],
  ['solution', solutionSchema],
  ['archetype', archetypeSchema],
  ['launches', launchListSchema],
];

const pools = poolsOf({ bags: [1], players: [1], notes: [1], uploads: [] });

export const schemasTarget: Target = {
  name: 'schemas',
  weight: 20,
  casesASession: 5_000,
  open: () =>
    Promise.resolve({
      run(draw) {
        const [name, schema] = draw.pick(SCHEMAS);
        const value = draw.chance(0.1)
          ? nastyValue(draw, true)
          : broken(draw, valueFor(draw, shapeOf(schema), pools), true);
        const parsed = schema.safeParse(value);
        if (parsed.success) return Promise.resolve('taken');
        const refusals = refusalsOf(parsed.error, value);
        if (refusals.length === 0 || refusals.length > 10) {
          throw new Wrong(`${name}: ${String(refusals.length)} refusals`, value);
        }
        for (const refusal of refusals) {
          if (refusalLine(refusal).length > 20_000) throw new Wrong(`${name}: a refusal without end`, value);
        }
        return Promise.resolve('refused');
      },
      close: () => Promise.resolve(),
    }),
};
