import type { IncomingKind } from '../../../src-main/contract/formats/incoming-kinds.ts';
import type { Incoming } from '../../../src-main/contract/calls/program/incoming.ts';
import { OPENED_EVENT, type CallError } from '../../../src-main/contract/gate.ts';
import { words } from '../../words/index.ts';
import { CallFailed } from '../service/client.ts';
import { isoDay } from '../format/formats.ts';
import type { Page } from '../window/places.ts';
import type { Records } from '../service/records.svelte.ts';
import type { Route } from '../window/route.svelte.ts';
import { folderOf } from './folder.ts';
import { mostBytes, sentName } from './sending.ts';

/** A file that was sent and waits for its preview to be agreed to. `day`: it was last changed, where that is known. */
export type WaitingFile = Incoming & { key: number; day: string | null };
export type RefusedFile = { file: string; error: CallError };
/** `next`: where what came in can be looked at. */
export type TakenFile = { key: number; file: string; text: string; next?: Next };
type Next = { text: string; screen: Page };

/** What of a folder was not taken in, by its place there; `found` is how many bag files it had. */
export type LeftAside = { folder: string; found: number; names: readonly string[] };

/** What is looked at now: bag files together, any other file by itself. */
export type Group =
  | { kind: 'bag'; key: string; files: readonly WaitingFile[] }
  | { kind: Exclude<IncomingKind, 'bag'>; key: string; file: WaitingFile };

/** A table can be read as each of these; what it is called does not decide. */
export const TABLE_KINDS = ['shots', 'prices', 'roster'] as const;
export type TableKind = (typeof TABLE_KINDS)[number];

const TABLES = ['.csv', '.tsv', '.txt'] as const;
/** How files of each kind end, as a rule; what they hold decides. */
export const ENDINGS_OF: Readonly<Record<IncomingKind, readonly string[]>> = {
  bag: ['.json'],
  prices: TABLES,
  roster: TABLES,
  shots: TABLES,
  database: ['.loftledger'],
};
/** What the file chooser offers. */
export const ENDINGS = Object.values(ENDINGS_OF)
  .flat()
  .filter((one, i, all) => all.indexOf(one) === i);

/** Files from a button, dropped on the window or opened from outside: each is shown before anything comes in. */
export class Intake {
  #records: Records;
  #route: Route;
  #waiting = $state.raw<readonly WaitingFile[]>([]);
  #refused = $state.raw<readonly RefusedFile[]>([]);
  #taken = $state.raw<readonly TakenFile[]>([]);
  #leftAside = $state.raw<LeftAside | null>(null);
  #sending = $state<string | null>(null);
  #last = 0;
  /** Of the preview whose heading had the focus last; not a state, since nothing is drawn by it. */
  shownKey: string | null = null;

  constructor(records: Records, route: Route) {
    this.#records = records;
    this.#route = route;
    $effect(() =>
      records.client.onEvent(({ event }) => {
        if (event === OPENED_EVENT) void this.takeOpened();
      }),
    );
    void this.takeOpened();
  }

  get waiting(): readonly WaitingFile[] {
    return this.#waiting;
  }

  /** What was refused since the last choice of files, for the person to read and put away. */
  get refused(): readonly RefusedFile[] {
    return this.#refused;
  }

  /** What has come in since the last choice of files. */
  get taken(): readonly TakenFile[] {
    return this.#taken;
  }

  /** Of the folder that was chosen last; null where files were. */
  get leftAside(): LeftAside | null {
    return this.#leftAside;
  }

  /** The name of the file that is being sent now. */
  get sending(): string | null {
    return this.#sending;
  }

  get group(): Group | null {
    const [first] = this.#waiting;
    if (first === undefined) return null;
    if (first.kind === 'bag') {
      return { kind: 'bag', key: 'bags', files: this.#waiting.filter(({ kind }) => kind === 'bag') };
    }
    return { kind: first.kind, key: `${String(first.key)} ${first.kind}`, file: first };
  }

  dismiss(at: number): void {
    this.#refused = this.#refused.filter((_, i) => i !== at);
  }

  async take(files: Iterable<File>): Promise<void> {
    await this.#take(
      [...files].map((file) => ({ file, name: file.name })),
      null,
    );
  }

  /** The bag files of a folder; the others are named and left aside. */
  async takeFolder(files: Iterable<File>): Promise<void> {
    const { name, bags, aside } = folderOf([...files]);
    await this.#take(bags, { folder: name, found: bags.length, names: aside });
  }

  async #take(files: readonly { file: File; name: string }[], leftAside: LeftAside | null): Promise<void> {
    if (files.length === 0 && leftAside === null) return;
    this.#refused = [];
    this.#taken = [];
    this.#leftAside = leftAside;
    this.#route.go('files');
    for (const { file, name } of files) {
      this.#sending = name;
      try {
        this.#add(await this.#send(file, name), dayOf(file));
      } catch (error) {
        if (!(error instanceof CallFailed)) throw error;
        this.#refused = [...this.#refused, { file: name, error: error.error }];
      }
    }
    this.#sending = null;
  }

  /** What was opened from outside of the window since it was last asked. */
  async takeOpened(): Promise<void> {
    const opened = await this.#records.client.call('files.opened', {}).catch(() => []);
    if (opened.length === 0) return;
    for (const one of opened) {
      if ('error' in one) this.#refused = [...this.#refused, { file: one.name, error: one.error }];
      else this.#add(one, null);
    }
    this.#route.go('files');
  }

  /** The user knows better what a table is. */
  readAs(key: number, kind: TableKind): void {
    this.#waiting = this.#waiting.map((file) => (file.key === key ? { ...file, kind } : file));
  }

  putAway(keys: readonly number[]): void {
    for (const { upload } of this.#remove(keys)) {
      // One that is gone already needs no more.
      this.#records.client.call('files.dropUpload', { upload }).catch(() => undefined);
    }
  }

  /** They have come in: what to say of each stays in sight. */
  finish(keys: readonly number[], said: (file: WaitingFile) => { text: string; next?: Next }): void {
    const files = this.#waiting.filter(({ key }) => keys.includes(key));
    const taken = files.map((file) => ({ key: file.key, file: file.name, ...said(file) }));
    this.#taken = [...this.#taken, ...taken];
    this.putAway(keys);
  }

  refuse(key: number, error: CallError): void {
    const file = this.#waiting.find((one) => one.key === key);
    if (file === undefined) return;
    this.#refused = [...this.#refused, { file: file.name, error }];
    this.putAway([key]);
  }

  #add(incoming: Incoming, day: string | null): void {
    this.#last += 1;
    this.#waiting = [...this.#waiting, { ...incoming, key: this.#last, day }];
  }

  #remove(keys: readonly number[]): readonly WaitingFile[] {
    const gone = this.#waiting.filter(({ key }) => keys.includes(key));
    this.#waiting = this.#waiting.filter(({ key }) => !keys.includes(key));
    return gone;
  }

  async #send(file: File, name: string): Promise<Incoming> {
    const most = mostBytes(file.name);
    const refuse = (message: string) => new CallFailed({ kind: 'refused', message });
    if (file.size > most) throw refuse(words.files.tooLarge(megabytes(file.size), megabytes(most)));
    // A folder that was dropped looks like a file until it is read.
    await file
      .slice(0, 1)
      .arrayBuffer()
      .catch(() => {
        throw refuse(words.files.unreadable);
      });
    return this.#records.client.upload(file, sentName(name));
  }
}

function megabytes(bytes: number): string {
  return String(Math.ceil(bytes / 1024 / 1024));
}

/** A clock that was moved back gives days to come: those tell nothing. */
function dayOf(file: File): string | null {
  const [day, today] = [isoDay(new Date(file.lastModified)), isoDay(new Date())];
  return day > today ? null : day;
}
