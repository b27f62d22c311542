import { describe, expect, test } from 'vitest';
import { keysText, shortcutOf } from '../../../../../src-renderer/state/window/keys.ts';

const press = (
  key: string,
  held: Partial<Record<'ctrlKey' | 'metaKey' | 'altKey' | 'shiftKey', boolean>> = {},
  code = '',
) => ({
  key,
  code,
  ctrlKey: false,
  metaKey: false,
  altKey: false,
  shiftKey: false,
  ...held,
});

describe('shortcutOf', () => {
  test('undo and redo, with the key of the machine', () => {
    expect(shortcutOf(press('z', { ctrlKey: true }), false)).toEqual({ do: 'undo' });
    expect(shortcutOf(press('Z', { ctrlKey: true, shiftKey: true }), false)).toEqual({ do: 'redo' });
    expect(shortcutOf(press('y', { ctrlKey: true }), false)).toEqual({ do: 'redo' });
    expect(shortcutOf(press('z', { metaKey: true }), true)).toEqual({ do: 'undo' });
    expect(shortcutOf(press('z', { ctrlKey: true }), true)).toBeNull();
    expect(shortcutOf(press('z', { metaKey: true }), false)).toBeNull();
  });

  test('pages by the digit’s place on the keyboard, whatever it prints', () => {
    expect(shortcutOf(press('2', { altKey: true }, 'Digit2'), false)).toEqual({ do: 'go', screen: 'bag' });
    expect(shortcutOf(press('™', { altKey: true }, 'Digit2'), true)).toEqual({ do: 'go', screen: 'bag' });
    expect(shortcutOf(press('7', { altKey: true }, 'Digit7'), false)).toEqual({
      do: 'go',
      screen: 'handover',
    });
    expect(shortcutOf(press('8', { altKey: true }, 'Digit8'), false)).toBeNull();
  });

  test('AltGr, which is Ctrl and Alt, writes its letter', () => {
    expect(shortcutOf(press('²', { altKey: true, ctrlKey: true }, 'Digit2'), false)).toBeNull();
    expect(shortcutOf(press('z', { altKey: true, ctrlKey: true }), false)).toBeNull();
  });

  test('print, with the key of the machine; a letter alone asks for nothing', () => {
    expect(shortcutOf(press('p', { ctrlKey: true }), false)).toEqual({ do: 'print' });
    expect(shortcutOf(press('p', { metaKey: true }), true)).toEqual({ do: 'print' });
    expect(shortcutOf(press('P', { ctrlKey: true, shiftKey: true }), false)).toBeNull();
    expect(shortcutOf(press('p'), false)).toBeNull();
    expect(keysText({ do: 'print' }, true)).toBe('⌘P');
  });

  test('find or do, with the key of the machine', () => {
    expect(shortcutOf(press('k', { ctrlKey: true }), false)).toEqual({ do: 'find' });
    expect(shortcutOf(press('k', { metaKey: true }), true)).toEqual({ do: 'find' });
    // On a Mac, Ctrl+K strikes out the rest of a line in any field.
    expect(shortcutOf(press('k', { ctrlKey: true }), true)).toBeNull();
    expect(shortcutOf(press('K', { ctrlKey: true, shiftKey: true }), false)).toBeNull();
    expect(shortcutOf(press('k'), false)).toBeNull();
    expect(keysText({ do: 'find' }, false)).toBe('Ctrl+K');
    expect(keysText({ do: 'find' }, true)).toBe('⌘K');
  });

  test('plain letters ask for nothing; a slash searches', () => {
    expect(shortcutOf(press('z'), false)).toBeNull();
    expect(shortcutOf(press('2', {}, 'Digit2'), false)).toBeNull();
    expect(shortcutOf(press('/'), false)).toEqual({ do: 'search' });
  });
});

test('tips name the keys of the machine', () => {
  expect(keysText({ do: 'redo' }, false)).toBe('Ctrl+Shift+Z');
  expect(keysText({ do: 'redo' }, true)).toBe('⇧⌘Z');
  expect(keysText({ do: 'go', screen: 'spend' }, false)).toBe('Alt+5');
});
