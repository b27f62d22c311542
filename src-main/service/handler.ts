import type { CallArgs, CallMode, CallName, CallResult } from '../contract/calls/index.ts';
import type { Archetype } from '../contract/formats/catalogue.ts';
import type { Answerer } from './answers/answerer.ts';
import type { Pages } from './handover/pages.ts';
import type { Printer } from './handover/printer.ts';
import type { AfterAnswer } from './answers/after-answer.ts';
import type { Jobs } from './answers/jobs.ts';
import type { Opened } from './files/opened.ts';
import type { Uploads } from './files/uploads.ts';
import type { Records } from './records/records.ts';
import type { Search } from './search/index.ts';
import type { StepParts } from './records/steps.ts';
import type { Db } from '../../db/sqlite.ts';

/**
 * What every handler may use. `now` is ISO time, `today` an ISO date: the service has the only clock. `db` is asked
 * for anew after a wait, since the records may have been replaced.
 */
export type Context = {
  readonly db: Db;
  records: Pick<Records, 'file' | 'replace'>;
  uploads: Uploads;
  opened: Opened;
  catalogue(): readonly Archetype[];
  answerer: Answerer;
  jobs: Jobs;
  afterAnswer: AfterAnswer;
  search: Search;
  printer: Printer;
  pages: Pages;
  now(): string;
  today(): string;
  version: string;
  dataFolder: string;
  /** What the host does for the window beside carrying its calls; none in tests and on the command line. */
  host?: HostServices | undefined;
};

export type HostServices = {
  name: 'electron' | 'browser';
  /** Shows the data folder, and no other, to the user; false where that failed. Null where the host cannot. */
  openDataFolder: (() => Promise<boolean>) | null;
};

type Run<K extends CallName> = (context: Context, args: CallArgs<K>) => CallResult<K>;

/**
 * An edit tells what it does for the undo list, by the names that things have before it; it runs inside one
 * transaction, so it does not wait for anything.
 */
export type Undoable<K extends CallName> = {
  step: (args: CallArgs<K>, context: Context) => StepParts;
  run: Run<K>;
};

type Later<K extends CallName> = (
  context: Context,
  args: CallArgs<K>,
) => CallResult<K> | Promise<CallResult<K>>;

/** The handler that a call of this mode needs: a write that is not registered as one does not compile. */
export type Handler<K extends CallName> = CallMode<K> extends 'undoable' ? Undoable<K> : Later<K>;

export type Handlers<K extends CallName = CallName> = { [N in K]: Handler<N> };

/** The calls of one subject, by the beginning of their names. */
export type Subject<P extends string> = Extract<CallName, `${P}.${string}`>;
