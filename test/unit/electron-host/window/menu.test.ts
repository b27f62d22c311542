import type { MenuItemConstructorOptions } from 'electron';
import { describe, expect, it } from 'vitest';
import { menuTemplate } from '../../../../src-main/electron-host/window/menu.ts';
import { hostWords } from '../../../../src-main/electron-host/words.ts';

function items(isMac: boolean, press: (...args: unknown[]) => void = () => undefined, locale = 'en-GB') {
  const submenus = menuTemplate({ isMac, words: hostWords(locale), press }).map(
    ({ submenu }) => submenu ?? [],
  );
  return submenus.flat() as MenuItemConstructorOptions[];
}

describe('the menu', () => {
  it('presses the keys of undo, redo, print and finding, and leaves the keys themselves to the window', () => {
    const pressed: unknown[] = [];
    for (const isMac of [false, true]) {
      for (const label of ['Undo', 'Redo', 'Print …', 'Find or do …']) {
        const item = items(isMac, (...args) => void pressed.push(args)).find(
          (entry) => entry.label === label,
        );
        expect(item?.registerAccelerator).toBe(false);
        (item?.click as (() => void) | undefined)?.();
      }
    }
    expect(pressed).toEqual([
      ['Z', ['control']],
      ['Z', ['control', 'shift']],
      ['P', ['control']],
      ['K', ['control']],
      ['Z', ['meta']],
      ['Z', ['meta', 'shift']],
      ['P', ['meta']],
      ['K', ['meta']],
    ]);
  });

  it('has no way to a developer console or a reload', () => {
    const roles = items(false).map(({ role }) => role);
    for (const role of ['toggleDevTools', 'reload', 'forceReload']) expect(roles).not.toContain(role);
  });

  it('lists what was opened lately where the system keeps such a list in the menu', () => {
    expect(items(true).map(({ role }) => role)).toContain('recentDocuments');
    expect(items(false).map(({ role }) => role)).not.toContain('recentDocuments');
  });

  it('speaks the language of the system', () => {
    expect(items(false, undefined, 'de-AT').map(({ label }) => label)).toContain('Rückgängig');
    expect(items(false, undefined, 'dereham').map(({ label }) => label)).toContain('Undo');
  });
});
