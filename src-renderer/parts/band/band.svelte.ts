import type { Band, Saved } from '../../state/service/edits.ts';
import { readBand, BAND_PARTS, type BandPart, type BandTexts } from './read-band.ts';

type Options = {
  band: () => Band | undefined;
  typed: (value: number) => string;
  parse: (text: string) => number | null;
  save: (band: Band | null) => Saved;
};

/** One field of the three: it follows the records until someone types, and then until this very figure changes there. */
class PartDraft {
  #figure: () => string;
  #shown = $derived.by(() => this.#figure());
  #text = $derived(this.#shown);

  constructor(figure: () => string) {
    this.#figure = figure;
  }

  get shown(): string {
    return this.#shown;
  }

  get text(): string {
    return this.#text;
  }

  set text(typed: string) {
    this.#text = typed;
  }
}

/** Low, likely and high are one value: kept when all three are there, taken out when all three are blank. */
export class BandDraft {
  #options: Options;
  // Apart, so that one which is still typed outlives the answer to another's keeping.
  #parts: Record<BandPart, PartDraft>;
  #shown = $derived.by(() => BAND_PARTS.map((part) => this.#parts[part].shown).join('\n'));
  #message = $derived.by<string | null>(() => {
    void this.#shown;
    return null;
  });

  /** Leaving a field says "changed" and "left" in one breath: the same texts are sent once. */
  #sent: string | null = null;
  /** One after the other, so that none overtakes a later one on its way. */
  #saving: Promise<unknown> = Promise.resolve();

  constructor(options: Options) {
    this.#options = options;
    const draftOf = (part: BandPart) =>
      new PartDraft(() => {
        const band = options.band();
        return band === undefined ? '' : options.typed(band[part]);
      });
    this.#parts = { low: draftOf('low'), likely: draftOf('likely'), high: draftOf('high') };
  }

  get texts(): BandTexts {
    const { low, likely, high } = this.#parts;
    return { low: low.text, likely: likely.text, high: high.text };
  }

  get message(): string | null {
    return this.#message;
  }

  get isDirty(): boolean {
    return this.#joined !== this.#shown;
  }

  get #joined(): string {
    return BAND_PARTS.map((part) => this.#parts[part].text).join('\n');
  }

  write(part: BandPart, text: string): void {
    this.#parts[part].text = text;
    this.#message = null;
    this.#sent = null;
  }

  revert(): void {
    for (const part of BAND_PARTS) this.write(part, this.#parts[part].shown);
  }

  /** @param leaving the focus leaves the three fields: only then is an unfinished band worth a word. */
  async commit(leaving: boolean): Promise<void> {
    const joined = this.#joined;
    if (!this.isDirty || this.#sent === joined) return;
    const read = readBand(this.texts, this.#options.parse);
    if ('message' in read) {
      if (leaving || !read.unfinished) this.#message = read.message;
      return;
    }
    this.#sent = joined;
    const save = () => this.#options.save(read.band);
    const saving = this.#saving.then(save, save);
    this.#saving = saving;
    const message = await saving;
    if (this.#joined === joined) this.#message = message;
  }
}
