import type { CallArgs, CallResult } from '../../../src-main/contract/calls/index.ts';
import type { FileSource } from '../../../src-main/contract/calls/program/incoming.ts';
import type { Units } from '../../../src-main/contract/primitives.ts';
import { words } from '../../words/index.ts';
import { Live } from '../service/live.svelte.ts';
import type { Edited, Records } from '../service/records.svelte.ts';
import type { WaitingFile } from './intake.svelte.ts';

export type Decimal = '.' | ',';
type TableCall = 'files.previewPrices' | 'files.previewRoster';

/** A table before it comes in: looked at anew with each choice. */
export abstract class TableImport<K extends TableCall> {
  protected readonly records: Records;
  protected readonly source: FileSource;
  #live: Live<K>;
  #decimal = $state<Decimal>();
  skipBad = $state(false);

  constructor(records: Records, file: WaitingFile, name: K) {
    this.records = records;
    this.source = { upload: file.upload };
    const { client, ticks } = records;
    this.#live = new Live({ client, ticks, name, args: () => this.question(this.#decimal) });
  }

  /** @param decimal undefined leaves it to the figures */
  protected abstract question(decimal: Decimal | undefined): CallArgs<K>;

  /** How many would come in. */
  abstract get coming(): number;

  get preview(): CallResult<K> | undefined {
    return this.#live.value;
  }

  get error() {
    return this.#live.error;
  }

  get decimal(): Decimal {
    return this.#decimal ?? this.preview?.decimal ?? '.';
  }

  set decimal(mark: Decimal) {
    this.#decimal = mark;
  }
}

export class PricesImport extends TableImport<'files.previewPrices'> {
  currency: string = $state('');

  constructor(records: Records, file: WaitingFile, currency: string) {
    super(records, file, 'files.previewPrices');
    this.currency = currency;
  }

  protected question(decimal: Decimal | undefined) {
    return { source: this.source, currency: this.currency, decimal };
  }

  get coming(): number {
    return this.preview?.ready ?? 0;
  }

  run(): Promise<Edited<'files.importPrices'>> {
    const { skipBad } = this;
    return this.records.edit('files.importPrices', { ...this.question(this.decimal), skipBad });
  }
}

export class RosterImport extends TableImport<'files.previewRoster'> {
  units: Units = $state({ distance: 'yd', speed: 'mph', currency: '' });
  skipKnown = $state(true);

  constructor(records: Records, file: WaitingFile, units: Units) {
    super(records, file, 'files.previewRoster');
    this.units = { ...units };
  }

  protected question(decimal: Decimal | undefined) {
    return { source: this.source, units: $state.snapshot(this.units), decimal };
  }

  get coming(): number {
    const { ready = 0, known = 0 } = this.preview ?? {};
    return this.skipKnown ? ready - known : ready;
  }

  run(): Promise<Edited<'files.importRoster'>> {
    const { skipBad, skipKnown } = this;
    const { language: locale } = words;
    return this.records.edit('files.importRoster', {
      ...this.question(this.decimal),
      skipBad,
      skipKnown,
      locale,
    });
  }
}
