/**
 * Handicaps as golfers write them. Better than scratch is negative inside and in files; on paper it is a plus handicap,
 * "+2" (Rules of Handicapping, from memory).
 */

/** @param figure how a number that is not negative is written */
export function handicapText(handicap: number, figure: (value: number) => string): string {
  return handicap < 0 ? `+${figure(-handicap)}` : figure(handicap);
}

/** For a row of figures: the bare number, and better than scratch as it is written. */
export function handicapFigure(handicap: number, figure: (value: number) => string): number | string {
  return handicap < 0 ? handicapText(handicap, figure) : handicap;
}

/**
 * "+2" and "-2" are the same handicap.
 * @param read how a number without a plus is read; null where it is none
 * @returns null for what is no number
 */
export function readHandicap(text: string, read: (plain: string) => number | null): number | null {
  const plain = text.trim();
  if (!plain.startsWith('+')) return read(plain);
  const better = read(plain.slice(1));
  if (better === null || better < 0) return null;
  return better === 0 ? 0 : -better;
}
