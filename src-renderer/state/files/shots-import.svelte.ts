import type { BagFile, ClubFile } from '../../../src-main/contract/formats/bag-file.ts';
import type { CallResult } from '../../../src-main/contract/calls/index.ts';
import type { ShotMapping } from '../../../src-main/contract/calls/records/shots.ts';
import type { CallError } from '../../../src-main/contract/gate.ts';
import { SvelteMap, SvelteSet } from 'svelte/reactivity';
import { isoToday } from '../format/formats.ts';
import { Live } from '../service/live.svelte.ts';
import type { Edited, Records } from '../service/records.svelte.ts';
import type { WaitingFile } from './intake.svelte.ts';

export const SHOT_COLUMNS = ['club', 'carry', 'total', 'ballSpeed', 'launch', 'spin'] as const;
export type ShotColumn = (typeof SHOT_COLUMNS)[number];
type Columns = ShotMapping['columns'];

/** A word of the file's club column, and the club that it would go to. */
export type WordLine = {
  label: string;
  shots: number;
  clubId: string | null;
  /** Nobody has said so yet: it is what the trade would call the club. */
  isProposed: boolean;
};

/** Shots before they come in: whose they are, which column holds what, which word means which club, what comes of it. */
export class ShotsImport {
  #records: Records;
  #file: WaitingFile;
  #bag: Live<'bags.read'>;
  #look: Live<'shots.look'>;
  #words: Live<'shots.preview'>;
  #preview: Live<'shots.preview'>;

  #bagId = $state<number | null>(null);
  #headerRow = $state<number>();
  /** What the user chose, each before what was remembered or is proposed. Null: no such column. */
  #columns = new SvelteMap<ShotColumn, number | null>();
  #format = $state<Partial<Pick<ShotMapping, 'decimal' | 'distance' | 'speed'>>>({});
  #clubs = new SvelteMap<string, string | null>();
  #leftOut = new SvelteSet<number>();
  skipBad = $state(false);
  sessionOn = $state('');

  constructor(records: Records, file: WaitingFile, bagId: number | null) {
    this.#records = records;
    this.#file = file;
    this.#bagId = bagId;
    this.sessionOn = file.day ?? isoToday();
    const { client, ticks } = records;
    const source = { upload: file.upload };
    this.#bag = new Live({
      ...{ client, ticks, name: 'bags.read' },
      args: () => (this.#bagId === null ? null : { bagId: this.#bagId }),
      subject: (args) => String(args.bagId),
    });
    this.#look = new Live({
      ...{ client, ticks, name: 'shots.look' },
      args: () => ({ source, ...(this.#headerRow === undefined ? {} : { headerRow: this.#headerRow }) }),
    });
    const asked = (mapping: ShotMapping | null, leaveOut: number[]) =>
      this.#bagId === null || mapping === null
        ? null
        : { bagId: this.#bagId, source, mapping, leaveOut, fileName: file.name.slice(0, 300) };
    // The words by themselves: what they are mapped to must not have them asked anew.
    this.#words = new Live({
      ...{ client, ticks, name: 'shots.preview' },
      args: () => asked(this.#unmapped, []),
      subject: subjectOf,
    });
    this.#preview = new Live({
      ...{ client, ticks, name: 'shots.preview' },
      args: () => asked(this.mapping, [...this.#leftOut]),
      subject: subjectOf,
    });
  }

  get bagId(): number | null {
    return this.#bagId;
  }

  get bag(): BagFile | undefined {
    return this.#bag.value?.bag;
  }

  /** Clubs that are hit full. */
  get clubs(): readonly ClubFile[] {
    return this.bag?.clubs.filter(({ kind }) => kind !== 'putter') ?? [];
  }

  get look(): CallResult<'shots.look'> | undefined {
    return this.#look.value;
  }

  get preview(): CallResult<'shots.preview'> | undefined {
    return this.#preview.value;
  }

  /** The file cannot be read at all. */
  get lookError(): CallError | undefined {
    return this.#look.error;
  }

  /** It cannot be read so. */
  get error(): CallError | undefined {
    return this.#bag.error ?? this.#words.error ?? this.#preview.error;
  }

  get isRemembered(): boolean {
    return this.look?.remembered !== null && this.look?.remembered !== undefined;
  }

  column(name: ShotColumn): number | null {
    const chosen = this.#columns.get(name);
    if (chosen !== undefined) return chosen;
    const { remembered, proposed } = this.look ?? {};
    return (remembered ? remembered.columns[name] : proposed?.columns[name]) ?? null;
  }

  get decimal(): ShotMapping['decimal'] {
    return this.#format.decimal ?? this.look?.remembered?.decimal ?? this.look?.proposed.decimal ?? '.';
  }

  get distance(): ShotMapping['distance'] {
    const { remembered, proposed } = this.look ?? {};
    return (
      this.#format.distance ?? remembered?.distance ?? proposed?.distance ?? this.bag?.units.distance ?? 'yd'
    );
  }

  get speed(): ShotMapping['speed'] {
    const { remembered, proposed } = this.look ?? {};
    return this.#format.speed ?? remembered?.speed ?? proposed?.speed ?? this.bag?.units.speed ?? 'mph';
  }

  get headerRow(): number {
    return this.look?.headerRow ?? this.#headerRow ?? 1;
  }

  get words(): readonly WordLine[] {
    const remembered = this.look?.remembered?.clubs ?? {};
    const known = (id: string | null | undefined) => this.clubs.find((club) => club.id === id)?.id;
    return (this.#words.value?.words ?? []).map(({ label, shots, proposed }) => {
      const said = this.#clubs.get(label);
      const before = known(Object.hasOwn(remembered, label) ? remembered[label] : undefined);
      if (said !== undefined || before !== undefined) {
        return { label, shots, clubId: said === undefined ? (before ?? null) : said, isProposed: false };
      }
      const clubId = known(proposed) ?? null;
      return { label, shots, clubId, isProposed: clubId !== null };
    });
  }

  get mapping(): ShotMapping | null {
    const unmapped = this.#unmapped;
    if (unmapped === null) return null;
    const clubs = Object.fromEntries(
      this.words.flatMap(({ label, clubId }) => (clubId === null ? [] : [[label, clubId]])),
    );
    return { ...unmapped, clubs };
  }

  /** How many shots and clubs would count. */
  get coming(): { shots: number; clubs: number } {
    const clubs = this.preview?.clubs.filter(({ shots }) => shots > 0) ?? [];
    return { shots: clubs.reduce((sum, { shots }) => sum + shots, 0), clubs: clubs.length };
  }

  chooseBag(bagId: number): void {
    this.#bagId = bagId;
    this.#clubs.clear();
  }

  chooseHeaderRow(row: number): void {
    this.#headerRow = row;
    this.#columns.clear();
    this.#begin();
  }

  chooseColumn(name: ShotColumn, at: number | null): void {
    this.#columns.set(name, at);
    this.#begin();
  }

  chooseFormat(format: Partial<Pick<ShotMapping, 'decimal' | 'distance' | 'speed'>>): void {
    this.#format = { ...this.#format, ...format };
  }

  chooseClub(label: string, clubId: string | null): void {
    this.#clubs.set(label, clubId);
  }

  leaveOut(rowNumber: number, isOut: boolean): void {
    if (isOut) this.#leftOut.add(rowNumber);
    else this.#leftOut.delete(rowNumber);
  }

  async run(): Promise<Edited<'shots.import'>> {
    const { mapping, skipBad, sessionOn } = this;
    const bagId = this.#bagId;
    if (bagId === null || mapping === null) {
      throw new Error('Shots without a bag or columns: a fault in Loftledger.');
    }
    return this.#records.edit('shots.import', {
      bagId,
      source: { upload: this.#file.upload },
      mapping,
      leaveOut: [...this.#leftOut],
      skipBad,
      sessionOn,
      fileName: this.#file.name.slice(0, 300),
    });
  }

  /** Other columns are other rows: what was said of these does not hold. */
  #begin(): void {
    this.#leftOut.clear();
    this.skipBad = false;
  }

  get #unmapped(): ShotMapping | null {
    if (this.look === undefined) return null;
    const [club, carry] = [this.column('club'), this.column('carry')];
    if (club === null || carry === null) return null;
    const columns: Columns = { club, carry };
    for (const name of ['total', 'ballSpeed', 'launch', 'spin'] as const) {
      const at = this.column(name);
      if (at !== null) columns[name] = at;
    }
    const { headerRow, decimal, distance, speed } = this;
    return { headerRow, columns, decimal, distance, speed, clubs: {} };
  }
}

/** An answer about other columns or another bag says nothing of these. */
function subjectOf({ bagId, mapping }: { bagId: number; mapping: ShotMapping }): string {
  const { clubs: _clubs, ...reading } = mapping;
  return JSON.stringify([bagId, reading]);
}
