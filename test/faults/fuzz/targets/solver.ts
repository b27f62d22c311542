import { loadCatalogue } from '../../../../db/catalogue/index.ts';
import { solutionSchema } from '../../../../src-main/contract/formats/instance.ts';
import { readBagFile } from '../../../../src-main/contract/formats/read-bag.ts';
import { RefusedInput } from '../../../../src-main/contract/refusal.ts';
import { InstanceError, readInstance, solve } from '../../../../src-main/domain/solve/index.ts';
import { planFileSchema } from '../../../../src-main/contract/formats/plan-file.ts';
import { answerBag } from '../../../../src-main/worker/answer.ts';
import type { Draw } from '../draw.ts';
import { shapeOf, valueFor } from '../from-schema.ts';
import { broken } from '../nasty.ts';
import { BAG_TEXT, poolsOf } from '../pools.ts';
import { bagFileSchema } from '../../../../src-main/contract/formats/bag-file.ts';
import { Wrong, type Target } from '../target.ts';
import { INSTANCE } from './instance.ts';

const catalogue = loadCatalogue();
const pools = poolsOf({ bags: [], players: [], notes: [], uploads: [] });
const whole = JSON.parse(INSTANCE) as { items: object[] };

/** The reader of solver instances, and the solver on what it lets through. */
export const solverTarget: Target = {
  name: 'solver instances',
  weight: 8,
  casesASession: 5_000,
  open: () =>
    Promise.resolve({
      run(draw) {
        const made = shaken(draw);
        const value = draw.gives(draw.chance(0.25) ? made : broken(draw, made));
        try {
          const solution = solve(readInstance(value));
          const parsed = solutionSchema.safeParse(solution);
          if (!parsed.success) throw new Wrong(`no solution: ${parsed.error.message}`, value);
          return Promise.resolve('taken');
        } catch (error) {
          if (!(error instanceof InstanceError)) throw error;
          if (error.message.trim() === '') throw new Wrong('refused without a word', value);
          return Promise.resolve('refused');
        }
      },
      close: () => Promise.resolve(),
    }),
};

/** The instance with other numbers, so that what is solved is not always the same question. */
function shaken(draw: Draw): unknown {
  const items = whole.items.map((item) => ({
    ...item,
    ...(draw.chance(0.3) ? { carryDy: draw.between(0, 2500) } : {}),
    ...(draw.chance(0.2) ? { price: draw.between(0, 20_000), tier: draw.between(1, 4) } : {}),
  }));
  return { ...whole, items, budget: draw.pick([null, 0, 5000, 50_000]), basis: draw.pick(['net', 'cash']) };
}

/** The reader of bag files, and the whole answer for what it lets through. */
export const plansTarget: Target = {
  name: 'plans',
  weight: 5,
  casesASession: 5_000,
  open: () =>
    Promise.resolve({
      run(draw) {
        const made = draw.chance(0.5)
          ? valueFor(draw, shapeOf(bagFileSchema), pools)
          : broken(draw, JSON.parse(BAG_TEXT));
        const text = draw.gives(JSON.stringify(made));
        try {
          const file = readBagFile(text);
          const { plan } = answerBag(file, catalogue, { today: '2026-11-26', withInstance: true });
          const parsed = planFileSchema.safeParse(plan);
          if (!parsed.success) throw new Wrong(`no plan file: ${parsed.error.message}`, text);
          return Promise.resolve('taken');
        } catch (error) {
          if (!(error instanceof RefusedInput)) throw error;
          return Promise.resolve('refused');
        }
      },
      close: () => Promise.resolve(),
    }),
};
