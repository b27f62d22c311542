import { SCREENS, type Screen } from './places.ts';

export type Shortcut =
  | { do: 'undo' }
  | { do: 'redo' }
  | { do: 'go'; screen: Screen }
  | { do: 'find' }
  | { do: 'search' }
  | { do: 'print' };

type Pressed = {
  key: string;
  code: string;
  ctrlKey: boolean;
  metaKey: boolean;
  altKey: boolean;
  shiftKey: boolean;
};

/** What a key press asks of the window. Digits go by their place on the keyboard: Option changes what they print. */
export function shortcutOf(pressed: Pressed, isMac: boolean): Shortcut | null {
  const { key, code, ctrlKey, metaKey, altKey, shiftKey } = pressed;
  const command = isMac ? metaKey && !ctrlKey : ctrlKey && !metaKey;
  if (command && !altKey) {
    const letter = key.toLowerCase();
    if (letter === 'z') return { do: shiftKey ? 'redo' : 'undo' };
    if (letter === 'k' && !shiftKey) return { do: 'find' };
    if (letter === 'p' && !shiftKey) return { do: 'print' };
    if (letter === 'y' && !isMac && !shiftKey) return { do: 'redo' };
  }
  if (altKey && !ctrlKey && !metaKey && !shiftKey) {
    const screen = SCREENS[Number(/^Digit([1-9])$/.exec(code)?.[1] ?? NaN) - 1];
    if (screen !== undefined) return { do: 'go', screen };
  }
  if (key === '/' && !command && !altKey) return { do: 'search' };
  return null;
}

/** How the shortcut is printed in tips. */
export function keysText(shortcut: Shortcut, isMac: boolean): string {
  switch (shortcut.do) {
    case 'undo':
      return isMac ? '⌘Z' : 'Ctrl+Z';
    case 'redo':
      return isMac ? '⇧⌘Z' : 'Ctrl+Shift+Z';
    case 'go': {
      const digit = String(SCREENS.indexOf(shortcut.screen) + 1);
      return isMac ? `⌥${digit}` : `Alt+${digit}`;
    }
    case 'find':
      return isMac ? '⌘K' : 'Ctrl+K';
    case 'print':
      return isMac ? '⌘P' : 'Ctrl+P';
    case 'search':
      return '/';
  }
}
