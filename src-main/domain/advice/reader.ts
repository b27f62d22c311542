/** How the reader wants figures: units, currency, locale. Made at the edge; the domain only calls it. */
export type Reader = {
  /** Yards → the reader's unit, to 0.1. */
  distance(yards: number): number;
  /** "31 yd", whole. */
  distanceText(yards: number): string;
  speed(mph: number): number;
  speedText(mph: number): string;
  /** Minor → major units, as a number with the currency's digits. */
  money(minor: number): number;
  moneyText(minor: number): string;
  /** A bare number: "14.3"; with `digits`, just so many after the mark. */
  numberText(value: number, digits?: number): string;
  distanceUnit: string;
  speedUnit: string;
};
