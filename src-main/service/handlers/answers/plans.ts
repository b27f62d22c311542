import { compareBags } from '../../../worker/compare.ts';
import { deletePlan, listPlans, pickPlan, readPlan, savePlan } from '../../../../db/repositories/plans.ts';
import { toMoney } from '../../bags/bag-rows.ts';
import { keptQuestion, questionOf } from '../../answers/question.ts';
import type { Handlers, Subject } from '../../handler.ts';
import { recordSchema } from '../../answers/plan-records.ts';
import { bagStep } from '../../records/steps.ts';

export const planHandlers: Handlers<Subject<'plans'>> = {
  'plans.pick': {
    step: ({ bagId, name }, { db }) => ({ ...bagStep(db, bagId), named: name }),
    run: (context, { bagId, name, why, items }) => {
      const { db, now, version } = context;
      const question = questionOf(context, bagId);
      const { file, catalogue, ...options } = question;
      const side = compareBags(file, catalogue, [items], options).sides[0];
      if (!side) throw new Error('one bag was compared and none came back');
      const { currency } = file.units;
      const planId = savePlan(
        db,
        {
          bagId,
          name,
          status: side.swaps.length === 0 ? 'nothing-needed' : 'ok',
          openFindings: 0,
          cash: toMoney(side.cash, currency),
          net: toMoney(side.net, currency),
          input: keptQuestion(question),
          output: { why, side },
          programVersion: version,
        },
        [],
        now(),
      );
      pickPlan(db, planId);
      return { planId };
    },
  },
  'plans.list': ({ db }, { bagId }) =>
    listPlans(db, bagId).flatMap(({ id, name, madeAt, picked, programVersion }) => {
      const record = recordSchema.safeParse(readPlan(db, id).output);
      return record.success ? [{ id, name: name ?? '', madeAt, picked, programVersion, ...record.data }] : [];
    }),
  'plans.remove': {
    step: ({ planId }, { db }) => {
      const { bagId, name } = readPlan(db, planId);
      return { ...bagStep(db, bagId), ...(name === undefined ? {} : { named: name }) };
    },
    run: ({ db }, { planId }) => {
      deletePlan(db, planId);
      return null;
    },
  },
};
