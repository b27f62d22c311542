import type { MenuItemConstructorOptions } from 'electron';

type Modifier = 'meta' | 'control' | 'shift';

/**
 * The menu as data. Undo and redo are the program's own (they reach across screens and restarts): their items press
 * the keys that the window handles, and the keys themselves are left to it, or a text field would lose its own undo.
 */
export function menuTemplate(parts: {
  isMac: boolean;
  press: (keyCode: string, modifiers: Modifier[]) => void;
}): MenuItemConstructorOptions[] {
  const { isMac, press } = parts;
  const main: Modifier = isMac ? 'meta' : 'control';
  const own = (label: string, accelerator: string, modifiers: Modifier[]): MenuItemConstructorOptions => ({
    label,
    accelerator,
    registerAccelerator: false,
    click: () => press('Z', modifiers),
  });
  return [
    ...(isMac ? [{ role: 'appMenu' as const }] : []),
    { label: '&File', submenu: [isMac ? { role: 'close' } : { role: 'quit' }] },
    {
      label: '&Edit',
      submenu: [
        own('Undo', 'CmdOrCtrl+Z', [main]),
        own('Redo', 'CmdOrCtrl+Shift+Z', [main, 'shift']),
        { type: 'separator' },
        { role: 'cut' },
        { role: 'copy' },
        { role: 'paste' },
        { role: 'selectAll' },
      ],
    },
    {
      label: '&View',
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
