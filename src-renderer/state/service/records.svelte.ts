import type { CallArgs, CallName, CallResult } from '../../../src-main/contract/calls/index.ts';
import type { CallError, HostEvent } from '../../../src-main/contract/gate.ts';
import { CallFailed, type Client } from './client.ts';
import { createEchoes } from './echoes.ts';
import { Ticks } from './ticks.svelte.ts';

export type Edited<K extends CallName> = { ok: true; value: CallResult<K> } | { ok: false; error: CallError };

/** Edits of the records, and the tick that has every live read ask again after one. */
export class Records {
  readonly client: Client;
  readonly ticks = new Ticks();
  /** Of the settings alone: the theme changes no answer. */
  readonly settingsTicks = new Ticks();
  #isLost = $state(false);
  #echoes = createEchoes();

  constructor(client: Client) {
    this.client = client;
    $effect(() => client.onEvent((event) => this.#hear(event)));
    $effect(() => client.onReach((isReached) => (this.#isLost = !isReached)));
  }

  /** The last call found nobody there. */
  get isLost(): boolean {
    return this.#isLost;
  }

  /**
   * Never throws for a refusal: the caller has a place to show it.
   * @param isQuiet nothing in sight shows what the edit changes, so nothing is read again.
   */
  async edit<K extends CallName>(name: K, args: CallArgs<K>, isQuiet = false): Promise<Edited<K>> {
    this.#echoes.sent(name);
    try {
      const value = await this.client.call(name, args);
      if (!isQuiet) this.#bump(name);
      return { ok: true, value };
    } catch (error) {
      this.#echoes.failed(name);
      if (error instanceof CallFailed) return { ok: false, error: error.error };
      throw error;
    }
  }

  #hear({ event, data }: HostEvent): void {
    if (event !== 'changed') return;
    const { call } = data as { call: string };
    if (call === 'reconnected') this.#echoes.forget();
    else if (this.#echoes.isEcho(call)) return;
    this.#bump(call);
  }

  #bump(call: string): void {
    if (call === 'reconnected' || call.startsWith('settings.')) this.settingsTicks.bump();
    if (!call.startsWith('settings.')) this.ticks.bump();
  }
}
