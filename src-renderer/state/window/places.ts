/** The screens that exist, in the order of their work and of their shortcut's digit. */
export const SCREENS = ['players', 'bag', 'ladder', 'prices', 'spend', 'side', 'handover'] as const;
export type Screen = (typeof SCREENS)[number];

/** Pages without a tab: a button leads to them. */
const ASIDE = ['files'] as const;
export type Page = Screen | (typeof ASIDE)[number];

/** Where the window stands; it lives in the address, so that a reload and "back" keep it. */
export type Place = { screen: Page; bagId: number | null };

export function hashOf({ screen, bagId }: Place): string {
  return bagId === null ? `#/${screen}` : `#/${screen}/${String(bagId)}`;
}

/** Anything that is no place of ours is the roster. */
export function placeOf(hash: string): Place {
  const [, screen, bag] = /^#\/([a-z-]+)(?:\/([1-9]\d{0,14}))?$/.exec(hash) ?? [];
  return {
    screen: [...SCREENS, ...ASIDE].find((one) => one === screen) ?? 'players',
    bagId: bag === undefined ? null : Number(bag),
  };
}
