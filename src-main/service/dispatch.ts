import { calls, type CallName, type ChangeEvent } from '../contract/calls/index.ts';
import type { CallAnswer, CallRequest, HostEvent } from '../contract/gate.ts';
import { RefusedInput, refusalsOf } from '../contract/refusal.ts';
import { undoable } from '../../db/undo/undo.ts';
import { callError } from './call-error.ts';
import type { Context, Handlers } from './handler.ts';
import { answerHandlers } from './handlers/answers/answers.ts';
import { bagHandlers } from './handlers/records/bags.ts';
import { clubHandlers } from './handlers/records/clubs.ts';
import { costHandlers } from './handlers/money/costs.ts';
import { courseHandlers } from './handlers/records/courses.ts';
import { diaryHandlers } from './handlers/records/diary.ts';
import { fileHandlers } from './handlers/program/files.ts';
import { handoverHandlers } from './handlers/answers/handover.ts';
import { besideHandlers } from './handlers/answers/beside.ts';
import { planHandlers } from './handlers/answers/plans.ts';
import { playerHandlers } from './handlers/records/players.ts';
import { priceHandlers } from './handlers/money/prices.ts';
import { programHandlers } from './handlers/program/program.ts';
import { reckoningHandlers } from './handlers/answers/reckoning.ts';
import { rosterHandlers } from './handlers/records/roster.ts';
import { searchHandlers } from './handlers/program/search.ts';
import { shotHandlers } from './handlers/records/shots.ts';
import { stepLabel, type StepParts } from './records/steps.ts';

const handlers: Handlers = {
  ...playerHandlers,
  ...diaryHandlers,
  ...bagHandlers,
  ...rosterHandlers,
  ...answerHandlers,
  ...besideHandlers,
  ...planHandlers,
  ...priceHandlers,
  ...searchHandlers,
  ...clubHandlers,
  ...costHandlers,
  ...courseHandlers,
  ...reckoningHandlers,
  ...fileHandlers,
  ...handoverHandlers,
  ...programHandlers,
  ...shotHandlers,
};

/**
 * Checks a call against the contract, runs it as its mode asks, tells the windows of changes. Never rejects.
 * @param onFault told of what is no fault of the caller; the window only learns that it happened.
 */
export function dispatcher(
  context: Context,
  emit: (event: HostEvent) => void,
  onFault: (error: unknown, call: string) => void,
) {
  return async ({ call, args }: CallRequest): Promise<CallAnswer> => {
    try {
      if (!isCall(call)) {
        return { ok: false, error: { kind: 'not-found', message: 'There is no such call.' } };
      }
      const parsed = calls[call].args.safeParse(args);
      if (!parsed.success) throw new RefusedInput('This cannot be used:', refusalsOf(parsed.error, args));
      context.afterAnswer.settle();
      const value = await run(context, call, parsed.data);
      if (calls[call].mode !== 'read') emit(changed(call, parsed.data, value));
      return { ok: true, value };
    } catch (error) {
      const told = callError(error);
      if (told.kind === 'bug') onFault(error, call);
      return { ok: false, error: told };
    }
  };
}

function isCall(name: string): name is CallName {
  return Object.hasOwn(calls, name);
}

type AnyRun = (context: Context, args: unknown) => unknown;
type AnyHandler = AnyRun | { step: (args: unknown, context: Context) => StepParts; run: AnyRun };

function run(context: Context, call: CallName, args: unknown): unknown {
  // The table is typed call by call; here the call is only known to be one of them, and its args were parsed by it.
  const handler = handlers[call] as AnyHandler;
  if (typeof handler === 'function') return handler(context, args);
  const step = { label: stepLabel(call, handler.step(args, context)), at: context.now() };
  return undoable(context.db, step, () => handler.run(context, args));
}

function changed(call: CallName, args: unknown, value: unknown): ChangeEvent {
  const ids = { ...(args as object), ...(typeof value === 'object' ? value : {}) } as Record<string, unknown>;
  const { bagId, playerId } = ids;
  return {
    event: 'changed',
    data: {
      call,
      ...(typeof bagId === 'number' ? { bagId } : {}),
      ...(typeof playerId === 'number' ? { playerId } : {}),
    },
  };
}
