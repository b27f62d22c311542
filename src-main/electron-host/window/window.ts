import { BrowserWindow, type Session } from 'electron';
import { readWindowPlace, writeWindowPlace } from '../../host/window-place.ts';
import { windowOptions } from './window-options.ts';
import { WINDOW_URL } from '../policy/urls.ts';

/** The one window, where it was last; shown when it has something to show. */
export function openWindow(parts: { dataDir: string; preload: string; session: Session }): BrowserWindow {
  const place = readWindowPlace(parts.dataDir);
  const window = new BrowserWindow(windowOptions({ ...parts, place }));
  if (place?.maximized === true) window.maximize();
  window.once('ready-to-show', () => window.show());
  window.on('close', () => {
    const { x, y, width, height } = window.getNormalBounds();
    const now = { left: x, top: y, width, height, maximized: window.isMaximized() };
    writeWindowPlace(parts.dataDir, now);
  });
  void window.loadURL(WINDOW_URL);
  return window;
}

export function bringToFront(window: BrowserWindow): void {
  if (window.isMinimized()) window.restore();
  window.show();
  window.focus();
}
