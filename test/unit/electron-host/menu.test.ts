import type { MenuItemConstructorOptions } from 'electron';
import { describe, expect, it } from 'vitest';
import { menuTemplate } from '../../../src-main/electron-host/menu.ts';

function items(isMac: boolean, press: (...args: unknown[]) => void = () => undefined) {
  const submenus = menuTemplate({ isMac, press }).map(({ submenu }) => submenu ?? []);
  return submenus.flat() as MenuItemConstructorOptions[];
}

describe('the menu', () => {
  it('presses the keys of undo and redo, and leaves the keys themselves to the window', () => {
    const pressed: unknown[] = [];
    for (const isMac of [false, true]) {
      for (const label of ['Undo', 'Redo']) {
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
      ['Z', ['meta']],
      ['Z', ['meta', 'shift']],
    ]);
  });

  it('has no way to a developer console or a reload', () => {
    const roles = items(false).map(({ role }) => role);
    for (const role of ['toggleDevTools', 'reload', 'forceReload']) expect(roles).not.toContain(role);
  });
});
