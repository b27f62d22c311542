import { protocol, type Session } from 'electron';
import { answerAppRequest, type AppParts } from './app-requests.ts';
import { APP_SCHEME } from './urls.ts';

/** Before Electron is ready: app:// is an origin like https, with fetch, and with streams for uploads. */
export function registerAppScheme(): void {
  protocol.registerSchemesAsPrivileged([
    { scheme: APP_SCHEME, privileges: { standard: true, secure: true, supportFetchAPI: true, stream: true } },
  ]);
}

/** In the window's own session only; no other page could ask app:// anything. */
export function serveApp(session: Session, parts: AppParts): void {
  session.protocol.handle(APP_SCHEME, (request) => answerAppRequest(request, parts));
}
