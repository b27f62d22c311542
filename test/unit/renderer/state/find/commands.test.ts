import { describe, expect, test, vi } from 'vitest';
import { commandsOf, type Doer } from '../../../../../src-renderer/state/find/commands.ts';
import { SCREENS } from '../../../../../src-renderer/state/window/places.ts';

function doerOf(own: Partial<Doer> = {}): Doer {
  return {
    isMac: false,
    undoable: null,
    redoable: null,
    theme: 'light',
    language: 'system',
    turn: vi.fn(),
    newPlayer: vi.fn(),
    compare: null,
    openDemo: vi.fn(),
    undo: vi.fn(),
    redo: vi.fn(),
    print: vi.fn(),
    showKeys: vi.fn(),
    openSettings: vi.fn(),
    setTheme: vi.fn(),
    setLanguage: vi.fn(),
    ...own,
  };
}

function command(id: string, doer = doerOf()) {
  const found = commandsOf(doer).find((one) => one.id === id);
  if (!found) throw new Error(`no command ${id}`);
  return found;
}

describe('commands', () => {
  test('each has a name of its own, and words that it is looked for by', () => {
    const all = commandsOf(doerOf());
    expect(new Set(all.map(({ id }) => id)).size).toBe(all.length);
    expect(new Set(all.map(({ text }) => text)).size).toBe(all.length);
    expect(all.filter(({ text, also }) => text === '' || also === '')).toEqual([]);
  });

  test('every page, with the shortcut that turns to it', () => {
    const doer = doerOf();
    for (const screen of SCREENS) {
      const page = command(`page-${screen}`, doer);
      expect(page.keys).toBe(`Alt+${String(SCREENS.indexOf(screen) + 1)}`);
      page.run();
      expect(doer.turn).toHaveBeenLastCalledWith(screen);
    }
    expect(command('page-files').keys).toBeNull();
  });

  test('shortcuts as the machine prints them', () => {
    expect(command('undo', doerOf({ isMac: true })).keys).toBe('⌘Z');
    expect(command('print').keys).toBe('Ctrl+P');
  });

  test('undo and redo name their step, and are off where there is none', () => {
    expect(command('undo').off).toBe('There is nothing to take back.');
    const doer = doerOf({ undoable: 'carry of the 7-iron', redoable: 'a new player' });
    expect(command('undo', doer)).toMatchObject({ text: 'Undo: carry of the 7-iron', off: null });
    expect(command('redo', doer)).toMatchObject({ text: 'Redo: a new player', off: null });
    command('redo', doer).run();
    expect(doer.redo).toHaveBeenCalledOnce();
    expect(doer.undo).not.toHaveBeenCalled();
  });

  test('what is set already is off, the others set it', () => {
    const doer = doerOf({ theme: 'lamp-lit', language: 'de' });
    expect(command('theme-lamp-lit', doer).off).not.toBeNull();
    expect(command('language-de', doer).off).not.toBeNull();
    command('theme-light', doer).run();
    expect(doer.setTheme).toHaveBeenCalledWith('light');
    command('language-system', doer).run();
    expect(doer.setLanguage).toHaveBeenCalledWith('system');
  });

  test('the drawer as it stands, or one of its groups', () => {
    const doer = doerOf();
    command('settings', doer).run();
    expect(doer.openSettings).toHaveBeenLastCalledWith();
    command('settings-records', doer).run();
    expect(doer.openSettings).toHaveBeenLastCalledWith('records');
  });
});

test('another bag beside this one, once a bag is open', () => {
  expect(command('compare').off).toBe('no player is open');
  const compare = vi.fn();
  const open = command('compare', doerOf({ compare }));
  expect(open.off).toBeNull();
  open.run();
  expect(compare).toHaveBeenCalledOnce();
});
