import type { Band, Saved } from '../../state/service/edits.ts';
import { readBand, BAND_PARTS, type BandPart, type BandTexts } from './read-band.ts';

type Options = {
  band: () => Band | undefined;
  typed: (value: number) => string;
  parse: (text: string) => number | null;
  save: (band: Band | null) => Saved;
};

/** Low, likely and high are one value: kept when all three are there, taken out when all three are blank. */
export class BandDraft {
  #options: Options;
  #shown = $derived.by(() => {
    const band = this.#options.band();
    return BAND_PARTS.map((part) => (band === undefined ? '' : this.#options.typed(band[part]))).join('\n');
  });
  #texts = $derived.by<BandTexts>(() => {
    const [low = '', likely = '', high = ''] = this.#shown.split('\n');
    return { low, likely, high };
  });
  #message = $derived.by<string | null>(() => {
    void this.#shown;
    return null;
  });

  /** Leaving a field says "changed" and "left" in one breath: the same texts are sent once. */
  #sent: BandTexts | null = null;

  constructor(options: Options) {
    this.#options = options;
  }

  get texts(): BandTexts {
    return this.#texts;
  }

  get message(): string | null {
    return this.#message;
  }

  get isDirty(): boolean {
    return BAND_PARTS.map((part) => this.#texts[part]).join('\n') !== this.#shown;
  }

  write(part: BandPart, text: string): void {
    this.#texts = { ...this.#texts, [part]: text };
    this.#message = null;
  }

  revert(): void {
    const [low = '', likely = '', high = ''] = this.#shown.split('\n');
    this.#texts = { low, likely, high };
    this.#message = null;
  }

  /** @param leaving the focus leaves the three fields: only then is an unfinished band worth a word. */
  async commit(leaving: boolean): Promise<void> {
    const texts = this.#texts;
    if (!this.isDirty || this.#sent === texts) return;
    const read = readBand(texts, this.#options.parse);
    if ('message' in read) {
      if (leaving || !read.unfinished) this.#message = read.message;
      return;
    }
    this.#sent = texts;
    const message = await this.#options.save(read.band);
    if (this.#texts === texts) this.#message = message;
  }
}
