import type { CallResult } from '../../../src-main/contract/calls/index.ts';
import type { CallError } from '../../../src-main/contract/gate.ts';
import { SvelteMap, SvelteSet } from 'svelte/reactivity';
import { CallFailed } from '../service/client.ts';
import type { Edited, Records } from '../service/records.svelte.ts';
import type { WaitingFile } from './intake.svelte.ts';

type Preview = CallResult<'files.previewBag'>;
type Looked = { preview: Preview } | { error: CallError };

export type BagLine = WaitingFile & { looked: Looked | undefined; isWanted: boolean };

/** Bag files, looked at one after the other; those wanted come in together, or none of them. */
export class BagsImport {
  #records: Records;
  #files: () => readonly WaitingFile[];
  #looked = new SvelteMap<number, Looked>();
  /** Where the user has decided; else a file is wanted unless its player is on the roster. */
  #decided = new SvelteMap<number, boolean>();
  #asked = new SvelteSet<number>();

  constructor(records: Records, files: () => readonly WaitingFile[]) {
    this.#records = records;
    this.#files = files;
    $effect(() => {
      for (const file of files()) void this.#look(file);
    });
  }

  get lines(): readonly BagLine[] {
    return this.#files().map((file) => {
      const looked = this.#looked.get(file.key);
      return { ...file, looked, isWanted: this.#isWanted(file.key, looked) };
    });
  }

  get wanted(): readonly BagLine[] {
    return this.lines.filter(({ isWanted }) => isWanted);
  }

  get isLooking(): boolean {
    return this.lines.some(({ looked }) => looked === undefined);
  }

  want(key: number, isWanted: boolean): void {
    this.#decided.set(key, isWanted);
  }

  /** One file opens by itself, so it is a step of its own name. */
  async run(): Promise<Edited<'files.importBags'>> {
    const sources = this.wanted.map(({ upload }) => ({ upload }));
    const [only] = sources;
    if (sources.length !== 1 || only === undefined) {
      return this.#records.edit('files.importBags', { sources });
    }
    const edited = await this.#records.edit('files.importBag', { source: only });
    return edited.ok ? { ok: true, value: { players: [edited.value] } } : edited;
  }

  #isWanted(key: number, looked: Looked | undefined): boolean {
    if (looked === undefined || 'error' in looked) return false;
    return this.#decided.get(key) ?? looked.preview.known.length === 0;
  }

  async #look({ key, upload }: WaitingFile): Promise<void> {
    if (this.#asked.has(key)) return;
    this.#asked.add(key);
    try {
      const preview = await this.#records.client.call('files.previewBag', { source: { upload } });
      this.#looked.set(key, { preview });
    } catch (error) {
      if (!(error instanceof CallFailed)) throw error;
      this.#looked.set(key, { error: error.error });
    }
  }
}
