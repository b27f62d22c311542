import { randomUUID } from 'node:crypto';
import { BrowserWindow, session as sessions, type Session } from 'electron';
import { ANSWER_HEADERS } from '../host/headers.ts';
import { withinTime } from '../host/print/within-time.ts';
import { PrintError, type Printer } from '../service/handover/printer.ts';
import { lockSession } from './policy/lockdown.ts';
import { APP_ORIGIN, APP_SCHEME } from './policy/urls.ts';

const TIMEOUT_MS = 30_000;

/** The document's style and picture stand in it; nothing else may be loaded, and no script runs. */
const POLICY =
  "default-src 'none'; style-src 'unsafe-inline'; img-src data:; base-uri 'none'; form-action 'none'";

type PrintSession = { session: Session; pages: Map<string, string> };
let shared: PrintSession | null = null;

/** In memory, apart from the window's, with nothing in it but the pages that are being printed. */
function printSession(): PrintSession {
  if (shared !== null) return shared;
  const pages = new Map<string, string>();
  const session = sessions.fromPartition('loftledger-print');
  lockSession(session);
  session.protocol.handle(APP_SCHEME, ({ url }) => {
    const page = pages.get(url);
    return new Response(page ?? '', {
      status: page === undefined ? 404 : 200,
      headers: {
        ...ANSWER_HEADERS,
        'Content-Type': 'text/html; charset=utf-8',
        'Content-Security-Policy': POLICY,
      },
    });
  });
  shared = { session, pages };
  return shared;
}

/**
 * Prints in windows that are never shown, one a document. The page is served and not put into an address, since
 * addresses of megabytes are cut.
 */
export function openPagePrinter(timeoutMs = TIMEOUT_MS): Printer {
  const windows = new Set<BrowserWindow>();
  const { session, pages } = printSession();
  return {
    async print(page, signal) {
      signal?.throwIfAborted();
      const url = `${APP_ORIGIN}/print/${randomUUID()}`;
      pages.set(url, page);
      const window = new BrowserWindow({
        show: false,
        webPreferences: {
          session,
          sandbox: true,
          contextIsolation: true,
          nodeIntegration: false,
          javascript: false,
          webviewTag: false,
          spellcheck: false,
        },
      });
      windows.add(window);
      try {
        return await withinTime(printIn(window, url), timeoutMs, signal);
      } catch (error) {
        if (signal?.aborted === true) throw error;
        const why = error instanceof Error ? error.message : String(error);
        throw new PrintError(
          `The PDF could not be made: ${why.replace(/\.?$/, '.')} Try again; if it stays so, save another format.`,
          { cause: error },
        );
      } finally {
        pages.delete(url);
        windows.delete(window);
        if (!window.isDestroyed()) window.destroy();
      }
    },
    close() {
      for (const window of windows) window.destroy();
      return Promise.resolve();
    },
  };
}

async function printIn(window: BrowserWindow, url: string): Promise<Uint8Array> {
  await window.loadURL(url);
  return window.webContents.printToPDF({
    preferCSSPageSize: true,
    printBackground: true,
    generateTaggedPDF: true,
    generateDocumentOutline: true,
  });
}
