import type { MenuItemConstructorOptions } from 'electron';
import type { HostWords } from '../words.ts';

type Modifier = 'meta' | 'control' | 'shift';

/**
 * The menu as data. Undo, redo, print and finding are the program's own (undo reaches across screens and restarts,
 * print knows what to print): their items press the keys that the window handles, and the keys themselves are left to
 * it, or a text field would lose its own undo.
 */
export function menuTemplate(parts: {
  isMac: boolean;
  words: HostWords;
  press: (keyCode: string, modifiers: Modifier[]) => void;
}): MenuItemConstructorOptions[] {
  const { isMac, words, press } = parts;
  const main: Modifier = isMac ? 'meta' : 'control';
  const own = (label: string, letter: string, modifiers: Modifier[]): MenuItemConstructorOptions => ({
    label,
    accelerator: `CmdOrCtrl+${modifiers.includes('shift') ? 'Shift+' : ''}${letter}`,
    registerAccelerator: false,
    click: () => press(letter, modifiers),
  });
  return [
    ...(isMac ? [{ role: 'appMenu' as const }] : []),
    {
      label: words.file,
      submenu: [
        ...(isMac ? [recent(words)] : []),
        own(words.print, 'P', [main]),
        { type: 'separator' },
        isMac ? { role: 'close' } : { role: 'quit' },
      ],
    },
    {
      label: words.edit,
      submenu: [
        own(words.undo, 'Z', [main]),
        own(words.redo, 'Z', [main, 'shift']),
        { type: 'separator' },
        { role: 'cut' },
        { role: 'copy' },
        { role: 'paste' },
        { role: 'selectAll' },
        { type: 'separator' },
        own(words.find, 'K', [main]),
      ],
    },
    {
      label: words.view,
      submenu: [
        { role: 'resetZoom' },
        { role: 'zoomIn' },
        { role: 'zoomOut' },
        { type: 'separator' },
        { role: 'togglefullscreen' },
      ],
    },
    { role: 'windowMenu' },
  ];
}

/** macOS fills it with what was opened; Windows shows the same beside the program's icon, Linux has no such list. */
function recent({ recent: label }: HostWords): MenuItemConstructorOptions {
  return { label, role: 'recentDocuments', submenu: [{ role: 'clearRecentDocuments' }] };
}
