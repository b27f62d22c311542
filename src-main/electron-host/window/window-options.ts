import type { BrowserWindowConstructorOptions, Session } from 'electron';
import type { WindowPlace } from '../../host/window-place.ts';

/**
 * The window. What Electron has as a safe default is written out all the same, so that a change of the default, or of
 * this file, is seen by the test of the policy.
 */
export function windowOptions(parts: {
  place: WindowPlace | null;
  preload: string;
  session: Session;
}): BrowserWindowConstructorOptions {
  const { place } = parts;
  return {
    show: false,
    title: 'Loftledger',
    width: place?.width ?? 1280,
    height: place?.height ?? 900,
    ...(place === null ? {} : { x: place.left, y: place.top }),
    minWidth: 320,
    minHeight: 240,
    // The paper of the window, before its first paint.
    backgroundColor: '#f7f1e3',
    webPreferences: {
      preload: parts.preload,
      session: parts.session,
      sandbox: true,
      contextIsolation: true,
      nodeIntegration: false,
      nodeIntegrationInWorker: false,
      nodeIntegrationInSubFrames: false,
      webSecurity: true,
      allowRunningInsecureContent: false,
      experimentalFeatures: false,
      enableBlinkFeatures: '',
      webviewTag: false,
      navigateOnDragDrop: false,
      // Its dictionaries would be downloaded.
      spellcheck: false,
      safeDialogs: true,
    },
  };
}
