import type { CallResult } from '../../../contract/calls/index.ts';
import { planRoster } from '../../answers/plan-roster.ts';
import type { Handlers, Subject } from '../../handler.ts';

export const rosterHandlers: Handlers<Subject<'roster'>> = {
  'roster.plan': (context, { bagIds, job }): Promise<CallResult<'roster.plan'>> =>
    context.jobs.run(job, (work) => planRoster(context, bagIds, work)),
};
