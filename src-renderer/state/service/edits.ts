import type { BagFile } from '../../../src-main/contract/formats/bag-file.ts';

export type Band = NonNullable<BagFile['clubs'][number]['sell']>;

/** Null: kept. Else what to say beside the field. */
export type Saved = Promise<string | null>;
