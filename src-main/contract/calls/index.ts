import type { z } from 'zod';
import { answerCalls } from './answers/answers.ts';
import { besideCalls } from './answers/beside.ts';
import { bagCalls } from './records/bags.ts';
import { clubCalls } from './records/clubs.ts';
import { archetypeCalls, costCalls } from './money/costs.ts';
import { courseCalls } from './records/courses.ts';
import { diaryCalls } from './records/diary.ts';
import { backupCalls, fileCalls } from './program/files.ts';
import { handoverCalls } from './answers/handover.ts';
import { planCalls } from './answers/plans.ts';
import { playerCalls } from './records/players.ts';
import { priceCalls } from './money/prices.ts';
import { programCalls } from './program/program.ts';
import { reckoningCalls } from './answers/reckoning.ts';
import { rosterCalls } from './records/roster.ts';
import { searchCalls } from './program/search.ts';
import { shotCalls } from './records/shots.ts';
import type { CallSpec } from './spec.ts';

/** Every call that the window can make; the service and the renderer's client derive their types from it. */
export const calls = {
  ...playerCalls,
  ...diaryCalls,
  ...bagCalls,
  ...rosterCalls,
  ...answerCalls,
  ...besideCalls,
  ...planCalls,
  ...priceCalls,
  ...searchCalls,
  ...clubCalls,
  ...costCalls,
  ...courseCalls,
  ...reckoningCalls,
  ...archetypeCalls,
  ...fileCalls,
  ...backupCalls,
  ...handoverCalls,
  ...programCalls,
  ...shotCalls,
} satisfies Record<string, CallSpec>;

export type CallName = keyof typeof calls;
export type CallMode<K extends CallName> = (typeof calls)[K]['mode'];
/** The calls that undo takes back. */
export type UndoableCall = { [K in CallName]: CallMode<K> extends 'undoable' ? K : never }[CallName];
export type CallArgs<K extends CallName> = z.infer<(typeof calls)[K]['args']>;
export type CallResult<K extends CallName> = z.infer<(typeof calls)[K]['result']>;

/** How far a long piece of work is; `job` is the name that its call gave. */
export type ProgressEvent = { event: 'progress'; data: { job: string; done: number; of: number } };

/** What the service tells every window: after a change, so that screens read again. */
export type ChangeEvent = { event: 'changed'; data: { call: string; bagId?: number; playerId?: number } };
