import { THEMES, type Theme } from '../settings/settings.svelte.ts';
import type { LanguageChoice } from '../format/language.ts';
import { keysText } from '../window/keys.ts';
import { SCREENS, type Page } from '../window/places.ts';
import { words } from '../../words/index.ts';
import { LANGUAGE_NAMES, LANGUAGES } from '../../words/languages.ts';

export type CommandGroup = 'pages' | 'doing' | 'settings';

/** Something that the program does when it is asked. */
export type Command = {
  id: string;
  group: CommandGroup;
  text: string;
  /** Other words that it is looked for by. */
  also: string;
  /** Its shortcut as printed; null where it has none. */
  keys: string | null;
  /** Why there is nothing to do now, or that it is done already; null where it can be done. */
  off: string | null;
  run: () => void;
};

export type SettingsGroup = keyof typeof words.settings.groups;

/** What the program can be told to do, and what of it is so already. */
export type Doer = {
  isMac: boolean;
  /** What undo and redo would do; null for nothing. */
  undoable: string | null;
  redoable: string | null;
  theme: Theme;
  language: LanguageChoice;
  turn: (page: Page) => void;
  newPlayer: () => void;
  /** Null while no bag is open. */
  compare: (() => void) | null;
  openDemo: (demo: 'invented-bag' | 'range-bag') => void;
  undo: () => void;
  redo: () => void;
  print: () => void;
  showKeys: () => void;
  /** @param group left out: the drawer as it stands. */
  openSettings: (group?: SettingsGroup) => void;
  setTheme: (theme: Theme) => void;
  setLanguage: (language: LanguageChoice) => void;
};

/** All commands in the order in which they are shown while nothing is typed. */
export function commandsOf(doer: Doer): Command[] {
  return [...pagesOf(doer), ...doingOf(doer), ...settingsOf(doer)];
}

function pagesOf({ isMac, turn }: Doer): Command[] {
  const pages: readonly Page[] = [...SCREENS, 'files'];
  return pages.map((page) => ({
    id: `page-${page}`,
    group: 'pages',
    text: words.screens[page],
    also: words.find.also[page],
    keys: page === 'files' ? null : keysText({ do: 'go', screen: page }, isMac),
    off: null,
    run: () => turn(page),
  }));
}

function doingOf(doer: Doer): Command[] {
  const { isMac, undoable, redoable } = doer;
  const { find, history, players, print } = words;
  const command = (id: string, text: string, also: string, run: () => void): Command => ({
    id,
    group: 'doing',
    text,
    also,
    keys: null,
    off: null,
    run,
  });
  return [
    command('new-player', players.newPlayer, find.also.newPlayer, () => doer.newPlayer()),
    {
      ...command('compare', words.beside.compareCommand, words.beside.compareAlso, () => doer.compare?.()),
      off: doer.compare === null ? words.beside.noBag : null,
    },
    {
      ...command(
        'undo',
        undoable === null ? history.undo : history.undoStep(undoable),
        find.also.undo,
        doer.undo,
      ),
      keys: keysText({ do: 'undo' }, isMac),
      off: undoable === null ? history.nothingToUndo : null,
    },
    {
      ...command(
        'redo',
        redoable === null ? history.redo : history.redoStep(redoable),
        find.also.redo,
        doer.redo,
      ),
      keys: keysText({ do: 'redo' }, isMac),
      off: redoable === null ? history.nothingToRedo : null,
    },
    {
      ...command('print', print.page, find.also.print, () => doer.print()),
      keys: keysText({ do: 'print' }, isMac),
    },
    command('demo', players.openDemo, find.also.demo, () => doer.openDemo('invented-bag')),
    command('range-demo', players.openRangeDemo, find.also.demo, () => doer.openDemo('range-bag')),
    command('keys', find.keys, find.also.keys, () => doer.showKeys()),
  ];
}

function settingsOf(doer: Doer): Command[] {
  const { find, settings, theme } = words;
  const command = (id: string, text: string, also: string, isSet: boolean, run: () => void): Command => ({
    id,
    group: 'settings',
    text,
    also,
    keys: null,
    off: isSet ? find.isSet : null,
    run,
  });
  const groups = Object.keys(settings.groups) as SettingsGroup[];
  const languages: LanguageChoice[] = ['system', ...LANGUAGES];
  return [
    command('settings', find.settings, find.also.settings, false, () => doer.openSettings()),
    ...THEMES.map((one) =>
      command(`theme-${one}`, find.theme(theme[one]), find.also.theme, doer.theme === one, () =>
        doer.setTheme(one),
      ),
    ),
    ...languages.map((one) =>
      command(
        `language-${one}`,
        find.language(one === 'system' ? theme.system : LANGUAGE_NAMES[one]),
        find.also.language,
        doer.language === one,
        () => doer.setLanguage(one),
      ),
    ),
    ...groups.map((group) =>
      command(
        `settings-${group}`,
        find.group(settings.groups[group]),
        find.also[group === 'prices' ? 'howPrices' : group],
        false,
        () => doer.openSettings(group),
      ),
    ),
  ];
}
