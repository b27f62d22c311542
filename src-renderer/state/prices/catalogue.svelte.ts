import type { CallResult } from '../../../src-main/contract/calls/index.ts';
import type { Formats } from '../format/formats.ts';
import { Live } from '../service/live.svelte.ts';
import type { Records } from '../service/records.svelte.ts';
import { Ticks } from '../service/ticks.svelte.ts';

export type CatalogueLine = CallResult<'catalogue.list'>[number];

/** No edit of this window changes the catalogue, so it is read once in each language. */
export class CatalogueState {
  #live: Live<'catalogue.list'>;
  #names = $derived.by<Record<string, string>>(() =>
    Object.fromEntries(this.lines.map(({ archetype, name }) => [archetype.id, name])),
  );

  constructor(records: Records, formats: () => Formats) {
    this.#live = new Live({
      client: records.client,
      ticks: new Ticks(),
      name: 'catalogue.list',
      args: () => ({ locale: formats().locale }),
    });
  }

  get lines(): readonly CatalogueLine[] {
    return this.#live.value ?? [];
  }

  name(archetype: string): string {
    return this.#names[archetype] ?? archetype;
  }
}
