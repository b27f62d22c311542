import type { CostLineFile } from '../../../src-main/contract/calls/money/costs.ts';

export type CostKind = CostLineFile['kind'];

export const COST_KINDS: readonly CostKind[] = [
  'delivery',
  'regrip',
  'sell-fee',
  'sell-postage',
  'bend',
  'shaft',
  'other',
];

/** Of these a bag has one each. */
export const ONCE: readonly CostKind[] = ['delivery', 'regrip', 'sell-fee', 'sell-postage'];
/** A fee is a share of the price; all others are sums. */
export const isPercent = (kind: CostKind): boolean => kind === 'sell-fee';
