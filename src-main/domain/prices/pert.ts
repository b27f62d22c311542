import type { PriceBand } from '../bag/types.ts';
import { betaCdf } from './beta.ts';

/** Weight of the likely value (Malcolm, Roseboom, Clark & Fazar 1959: mean = (low + 4·likely + high) / 6). */
const LAMBDA = 4;

/** Shape of the beta distribution on [low, high] that a PERT band stands for. */
export function pertShape({ lowMinor, likelyMinor, highMinor }: PriceBand): { alpha: number; beta: number } {
  const width = highMinor - lowMinor;
  return {
    alpha: 1 + (LAMBDA * (likelyMinor - lowMinor)) / width,
    beta: 1 + (LAMBDA * (highMinor - likelyMinor)) / width,
  };
}

/** Chance that a price of this band is at most `priceMinor`. A band without width is a sure price. */
export function pertCdf(band: PriceBand, priceMinor: number): number {
  const width = band.highMinor - band.lowMinor;
  if (width === 0) return priceMinor >= band.lowMinor ? 1 : 0;
  const { alpha, beta } = pertShape(band);
  return betaCdf((priceMinor - band.lowMinor) / width, alpha, beta);
}

export function pertMean({ lowMinor, likelyMinor, highMinor }: PriceBand): number {
  return (lowMinor + LAMBDA * likelyMinor + highMinor) / (LAMBDA + 2);
}
