import type { SeenOne } from '../../contract/calls/money/prices.ts';

export type SeenOneFigures = {
  archetype: string;
  price: string;
  walkAway: string;
  /** What the reader calls the clubs it would replace; empty for none. */
  clubs: string;
};

export type SeenOneWords = Readonly<Record<SeenOne['why'], (figures: SeenOneFigures) => string>>;
