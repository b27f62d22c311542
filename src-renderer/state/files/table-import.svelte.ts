import type { CallArgs, CallResult } from '../../../src-main/contract/calls/index.ts';
import type { Units } from '../../../src-main/contract/primitives.ts';
import { Live } from '../service/live.svelte.ts';
import type { Edited, Records } from '../service/records.svelte.ts';
import type { WaitingFile } from './intake.svelte.ts';

export type Decimal = '.' | ',';

/** A price list before it comes in. */
export class PricesImport {
  #records: Records;
  #live: Live<'files.previewPrices'>;
  #options: () => Omit<CallArgs<'files.previewPrices'>, 'decimal'>;
  #decimal = $state<Decimal>();
  currency: string = $state('');
  skipBad = $state(false);

  constructor(records: Records, file: WaitingFile, currency: string) {
    this.#records = records;
    this.currency = currency;
    this.#options = () => ({ source: { upload: file.upload }, currency: this.currency });
    this.#live = new Live({
      client: records.client,
      ticks: records.ticks,
      name: 'files.previewPrices',
      args: () => ({ ...this.#options(), decimal: this.#decimal }),
    });
  }

  get preview(): CallResult<'files.previewPrices'> | undefined {
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

  run(): Promise<Edited<'files.importPrices'>> {
    const { decimal, skipBad } = this;
    return this.#records.edit('files.importPrices', { ...this.#options(), decimal, skipBad });
  }
}

/** A roster before it comes in. */
export class RosterImport {
  #records: Records;
  #live: Live<'files.previewRoster'>;
  #options: () => Omit<CallArgs<'files.previewRoster'>, 'decimal'>;
  #decimal = $state<Decimal>();
  units: Units = $state({ distance: 'yd', speed: 'mph', currency: '' });
  skipBad = $state(false);
  skipKnown = $state(true);

  constructor(records: Records, file: WaitingFile, units: Units) {
    this.#records = records;
    this.units = { ...units };
    this.#options = () => ({ source: { upload: file.upload }, units: $state.snapshot(this.units) });
    this.#live = new Live({
      client: records.client,
      ticks: records.ticks,
      name: 'files.previewRoster',
      args: () => ({ ...this.#options(), decimal: this.#decimal }),
    });
  }

  get preview(): CallResult<'files.previewRoster'> | undefined {
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

  /** How many would come in. */
  get coming(): number {
    const { ready = 0, known = 0 } = this.preview ?? {};
    return this.skipKnown ? ready - known : ready;
  }

  run(): Promise<Edited<'files.importRoster'>> {
    const { decimal, skipBad, skipKnown } = this;
    return this.#records.edit('files.importRoster', { ...this.#options(), decimal, skipBad, skipKnown });
  }
}
