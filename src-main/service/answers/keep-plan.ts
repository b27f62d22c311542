import type { PlanFile } from '../../contract/formats/plan-file.ts';
import { keepLatestPlan } from '../../../db/repositories/plans.ts';
import type { BagTask } from '../../worker/bag-task.ts';
import { toMoney } from '../bags/bag-rows.ts';
import type { Context } from '../handler.ts';
import { keptQuestion } from './question.ts';

/**
 * Keeps the newest answer of a bag for the roster. Only a cache: the bag may have gone while it was reckoned, and the
 * next answer writes it again, so a failure changes nothing.
 */
export function keepPlan(
  { db, now, version }: Pick<Context, 'db' | 'now' | 'version'>,
  bagId: number,
  question: BagTask,
  plan: PlanFile,
): void {
  const { currency } = question.file.units;
  try {
    keepLatestPlan(
      db,
      {
        bagId,
        status: plan.plan.status,
        openFindings: plan.findings.filter((finding) => finding.verdict !== 'keep').length,
        cash: toMoney(plan.plan.cash, currency),
        net: toMoney(plan.plan.net, currency),
        input: keptQuestion(question),
        output: plan,
        programVersion: version,
      },
      now(),
    );
  } catch {
    // As said above.
  }
}
