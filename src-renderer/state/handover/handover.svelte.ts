import type { CallArgs } from '../../../src-main/contract/calls/index.ts';
import type {
  AddedPatch,
  HandOverForm,
  LetterheadPatch,
} from '../../../src-main/contract/calls/answers/handover.ts';
import type { PlanRecord } from '../../../src-main/contract/calls/answers/plans.ts';
import type { PlanFile } from '../../../src-main/contract/formats/plan-file.ts';
import type { CallError } from '../../../src-main/contract/gate.ts';
import { CallFailed } from '../service/client.ts';
import type { Saved } from '../service/edits.ts';
import type { Formats } from '../format/formats.ts';
import { saveFile, saveFrom } from '../window/save-file.ts';
import { Live, type Progress } from '../service/live.svelte.ts';
import type { Records } from '../service/records.svelte.ts';
import { fieldMessage } from '../service/refusals.ts';
import type { Route } from '../window/route.svelte.ts';

export type TextFormat = 'md' | 'csv' | 'json';
const TYPES: Record<TextFormat, string> = {
  md: 'text/markdown',
  csv: 'text/csv',
  json: 'application/json',
};

/** Where a document that was set stands. */
export const addressOf = (page: string): string => `/page?id=${encodeURIComponent(page)}`;

type Preview = { address: string; title: string; status: PlanFile['plan']['status'] };
type Made = { bagId: number; name: string; file: string | null } | { bagId: number; error: CallError };

/** The document of the open bag: what it is set from, what a coach adds, and the ways to hand it over. */
export class HandoverState {
  #records: Records;
  #route: Route;
  #formats: () => Formats;
  #form: Live<'handover.form'>;
  #preview: Live<'handover.preview'>;
  #picks: Live<'plans.list'>;
  #chosen = $state.raw<{ bagId: number; record: number } | null>(null);
  #made = $state.raw<Made | null>(null);
  #isMaking = $state(false);
  #print: (() => void) | null = null;

  constructor(records: Records, route: Route, formats: () => Formats) {
    this.#records = records;
    this.#route = route;
    this.#formats = formats;
    const { client, ticks } = records;
    const bagId = () => (route.screen === 'handover' ? route.bagId : null);
    this.#picks = new Live({
      ...{ client, ticks, name: 'plans.list' },
      args: () => {
        const id = bagId();
        return id === null ? null : { bagId: id };
      },
      subject: (args) => String(args.bagId),
    });
    this.#form = new Live({
      ...{ client, ticks, name: 'handover.form' },
      args: () => {
        const id = bagId();
        return id === null ? null : { bagId: id, locale: formats().locale };
      },
      subject: (args) => String(args.bagId),
    });
    this.#preview = new Live({
      ...{ client, ticks, name: 'handover.preview' },
      args: () => {
        const id = bagId();
        return id === null ? null : this.#wanted(id);
      },
      subject: (args) => String(args.bagId),
      asJob: (args, job) => ({ ...args, job }),
    });
  }

  get form(): HandOverForm | undefined {
    return this.#form.value;
  }

  get error(): CallError | undefined {
    return this.#preview.error ?? this.#form.error;
  }

  /** Undefined until the document is set. */
  get preview(): Preview | undefined {
    const made = this.#preview.value;
    return made && { address: addressOf(made.page), title: made.title, status: made.status };
  }

  /** How far a document is that takes long; null while none does. */
  get slow(): { progress: Progress | null } | null {
    return this.#preview.slow;
  }

  stop(): void {
    void this.#preview.stop();
  }

  again(): void {
    this.#preview.again();
  }

  /** The records of what was picked, the newest first. */
  get picks(): readonly PlanRecord[] {
    return this.#picks.value ?? [];
  }

  /** The record that the document tells of; null for the plan as it is now. */
  get record(): number | null {
    const { bagId } = this.#route;
    const chosen = this.#chosen;
    if (chosen === null || chosen.bagId !== bagId) return null;
    const isGone = this.#picks.value?.every(({ id }) => id !== chosen.record) === true;
    return isGone ? null : chosen.record;
  }

  choose(record: number | null): void {
    const { bagId } = this.#route;
    this.#chosen = bagId === null || record === null ? null : { bagId, record };
  }

  setLetterhead(patch: LetterheadPatch): Saved {
    return this.#save('handover.setLetterhead', patch);
  }

  setPicture(picture: string | null): Saved {
    return this.#save('handover.setPicture', { picture });
  }

  setAdded(patch: AddedPatch): Saved {
    const { bagId } = this.#route;
    return bagId === null ? Promise.resolve(null) : this.#save('handover.setAdded', { bagId, patch });
  }

  /** The page on the screen can print its document. @returns the way to take it back */
  canPrint(print: () => void): () => void {
    this.#print = print;
    return () => {
      if (this.#print === print) this.#print = null;
    };
  }

  /** @returns whether there is a document to print. */
  print(): boolean {
    this.#print?.();
    return this.#print !== null;
  }

  get isMaking(): boolean {
    return this.#isMaking;
  }

  /** What was saved last for the open bag, or why not. */
  get made(): Made | null {
    return this.#made?.bagId === this.#route.bagId ? this.#made : null;
  }

  saveText(format: TextFormat): Promise<void> {
    return this.#make(async (wanted) => {
      const { name, text } = await this.#records.client.call('handover.text', { ...wanted, format });
      saveFile(name, text, TYPES[format]);
      return { name, file: null };
    });
  }

  savePdf(): Promise<void> {
    return this.#make(async (wanted) => {
      // Nothing in sight shows the exports, so nothing is read again.
      const done = await this.#records.edit('handover.pdf', wanted, true);
      if (!done.ok) throw new CallFailed(done.error);
      const { name, file, page } = done.value;
      saveFrom(addressOf(page), name);
      return { name, file };
    });
  }

  async #make(
    work: (wanted: CallArgs<'handover.pdf'>) => Promise<{ name: string; file: string | null }>,
  ): Promise<void> {
    const { bagId } = this.#route;
    if (bagId === null || this.#isMaking) return;
    this.#isMaking = true;
    this.#made = null;
    try {
      this.#made = { bagId, ...(await work(this.#wanted(bagId))) };
    } catch (error) {
      if (!(error instanceof CallFailed)) throw error;
      this.#made = { bagId, error: error.error };
    } finally {
      this.#isMaking = false;
    }
  }

  #wanted(bagId: number): { bagId: number; record?: number; locale: string } {
    const { locale } = this.#formats();
    return this.record === null ? { bagId, locale } : { bagId, record: this.record, locale };
  }

  async #save<K extends 'handover.setLetterhead' | 'handover.setPicture' | 'handover.setAdded'>(
    name: K,
    args: CallArgs<K>,
  ): Saved {
    const done = await this.#records.edit(name, args);
    return done.ok ? null : fieldMessage(done.error);
  }
}
