import type { Archetype } from '../../src-main/contract/formats/catalogue.ts';

/**
 * The readable id that an archetype's fields give: kind, loft in degrees, forgiveness tier, and the spin
 * tier when it is not mid (`driver-9-t2-low`); a set names its first and last member before the loft of its
 * 7-iron (`irons-5-pw-30-t3`). Prices and plans keep these ids, so the rule must not change.
 */
export function archetypeId(archetype: Omit<Archetype, 'id'>): string {
  const { kind, loftDeg, forgiveness, spinTier, members = [] } = archetype;
  const first = members[0];
  const last = members.at(-1);
  const span = first && last ? [first.number.toLowerCase(), last.number.toLowerCase()] : [];
  const spin = spinTier === 'mid' ? [] : [spinTier];
  return [kind, ...span, String(loftDeg), `t${String(forgiveness)}`, ...spin].join('-');
}
