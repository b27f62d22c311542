/** What new clubs and copies are called in the reader's language; they are the user's own names from then on. */
export type ClubNaming = {
  /** By the trade's short name, "7i" or "gw"; what is none of them is a name already. */
  label(short: string): string;
  copyOf(name: string): string;
};

type Nouns = { w: string; h: string; i: string };

const numbered = (short: string): [number: string, letter: keyof Nouns] | null => {
  const [, number, letter] = /^(\d+)([whi])$/.exec(short) ?? [];
  return number === undefined ? null : [number, letter as keyof Nouns];
};

const OTHERS: Readonly<Record<string, string>> = {
  driver: 'Driver',
  putter: 'Putter',
  pw: 'PW',
  gw: 'Gap wedge',
  sw: 'Sand wedge',
  lw: 'Lob wedge',
};

const ENGLISH: Nouns = { w: 'wood', h: 'hybrid', i: 'iron' };
const GERMAN: Nouns = { w: 'Holz', h: 'Hybrid', i: 'Eisen' };

const english: ClubNaming = {
  label(short) {
    const [number, letter] = numbered(short) ?? [];
    return letter === undefined ? (OTHERS[short] ?? short) : `${number ?? ''}-${ENGLISH[letter]}`;
  },
  copyOf: (name) => `${name} (copy)`,
};

const german: ClubNaming = {
  label(short) {
    const [number, letter] = numbered(short) ?? [];
    if (letter !== undefined) return `${GERMAN[letter]} ${number ?? ''}`;
    return (OTHERS[short] ?? short).replace(' wedge', ' Wedge');
  },
  copyOf: (name) => `${name} (Kopie)`,
};

export function clubNaming(locale = 'en'): ClubNaming {
  return locale.split('-')[0]?.toLowerCase() === 'de' ? german : english;
}
