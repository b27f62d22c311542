import type { BagFile } from '../contract/formats/bag-file.ts';
import type { Archetype } from '../contract/formats/catalogue.ts';
import type { Reckoning } from '../domain/advice/bag-view/reckoning.ts';

/** What every answer for a bag begins with; plain data, since it crosses to another thread. */
export type BagTask = {
  /** With all prices that the plan reckons with. */
  file: BagFile;
  catalogue: readonly Archetype[];
  /** ISO date. */
  today: string;
  /** Of the sentences and their figures; English when left out. */
  locale?: string | undefined;
  /** The user's limits, weights and air; the usual ones when left out. */
  reckoning?: Reckoning | undefined;
};
