import { createSubscriber } from 'svelte/reactivity';
import { en, type Words } from './en/index.ts';
import { DICTIONARIES, type Language } from './languages.ts';

export type { Words } from './en/index.ts';

let current: Words = en;
let changed: (() => void) | undefined;
const follow = createSubscriber((update) => {
  changed = update;
  return () => (changed = undefined);
});

/** The texts in the language that is set now; whatever reads one of its parts while it is drawn follows a change. */
export const words: Words = new Proxy(en, {
  get(_target, key: keyof Words) {
    follow();
    return current[key];
  },
});

export function setLanguage(language: Language): void {
  if (current === DICTIONARIES[language]) return;
  current = DICTIONARIES[language];
  changed?.();
}
