import { en } from './en/index.ts';

/** What a translation has to bring: the same keys, its own sentences. */
export type Words = typeof en;

export const words: Words = en;
