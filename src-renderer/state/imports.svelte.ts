import type { CallError } from '../../src-main/contract/gate.ts';
import { words } from '../words/index.ts';
import type { RosterState } from './roster.svelte.ts';

export type RefusedFile = { file: string; error: CallError };
export type TakenFile = { playerId: number; bagId: number };

/** A call's body is at most 1 MiB, quotes escaped; a usual bag file is about 5 kB. */
const MOST_BYTES = 500_000;

/** Bag files from a button or dropped on the window: each is taken in whole or refused whole. */
export class Imports {
  #roster: RosterState;
  #refused = $state.raw<RefusedFile[]>([]);

  constructor(roster: RosterState) {
    this.#roster = roster;
  }

  /** What was refused last, for the person to read and put away. */
  get refused(): readonly RefusedFile[] {
    return this.#refused;
  }

  dismiss(): void {
    this.#refused = [];
  }

  /** @returns those that were taken in. */
  async take(files: Iterable<File>): Promise<TakenFile[]> {
    const taken: TakenFile[] = [];
    const refused: RefusedFile[] = [];
    for (const file of files) {
      if (file.size > MOST_BYTES) {
        refused.push({ file: file.name, error: { kind: 'refused', message: words.imports.tooLarge } });
        continue;
      }
      const edited = await this.#roster.importBag(await file.text());
      if (edited.ok) taken.push(edited.value);
      else refused.push({ file: file.name, error: edited.error });
    }
    this.#refused = refused;
    return taken;
  }
}

/** Hands a text to the person as a file, through the browser's own download. */
export function saveFile(name: string, text: string, type = 'application/json'): void {
  const url = URL.createObjectURL(new Blob([text], { type }));
  saveFrom(url, name);
  // The download has begun by the next turn, and the text need not be held longer.
  setTimeout(() => URL.revokeObjectURL(url), 0);
}

/** Hands what stands at an address of our own to the person as a file. */
export function saveFrom(address: string, name: string): void {
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
}
