import type { App, Session, WebContents } from 'electron';
import { isOwnUrl, mayOpenExternally } from './urls.ts';

/** Every permission refused, asked for or looked up, devices included; nothing requested that is not app://. */
export function lockSession(session: Session): void {
  session.setPermissionRequestHandler((_contents, _permission, decide) => decide(false));
  session.setPermissionCheckHandler(() => false);
  session.setDevicePermissionHandler(() => false);
  session.setDisplayMediaRequestHandler(null);
  session.webRequest.onBeforeRequest((details, decide) => decide({ cancel: !mayRequest(details.url) }));
}

/** The window's own files, what it makes itself in memory (a download of its own), and pictures within a page. */
function mayRequest(url: string): boolean {
  return (
    isOwnUrl(url) ||
    url.startsWith('blob:app://') ||
    url.startsWith('data:image/') ||
    url.startsWith('devtools://')
  );
}

/** No way to another page, in this window or a new one, and no page inside the page. */
export function lockContents(contents: WebContents, openExternal: (url: string) => void): void {
  const stay = (event: { preventDefault: () => void; url: string }) => {
    if (!isOwnUrl(event.url)) event.preventDefault();
  };
  contents.on('will-navigate', stay);
  contents.on('will-frame-navigate', stay);
  contents.on('will-redirect', stay);
  contents.on('will-attach-webview', (event) => event.preventDefault());
  contents.setWindowOpenHandler(({ url }) => {
    if (mayOpenExternally(url)) openExternal(url);
    return { action: 'deny' };
  });
}

/** For every contents that there will ever be, before it can load anything. */
export function lockAllContents(app: App, openExternal: (url: string) => void): void {
  app.on('web-contents-created', (_event, contents) => lockContents(contents, openExternal));
}

/** Chromium's own switches, before it starts: names do not resolve, so that nothing is ever asked of the network. */
export const PROCESS_SWITCHES: readonly (readonly [name: string, value?: string])[] = [
  ['host-resolver-rules', 'MAP * ~NOTFOUND'],
  ['no-proxy-server'],
  ['no-pings'],
  ['disable-background-networking'],
  ['disable-component-update'],
  ['disable-domain-reliability'],
];
