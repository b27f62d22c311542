import { spawn, type ChildProcess } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync } from 'node:fs';
import { homedir, tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Readable, Writable } from 'node:stream';
import { PrintError, type Printer } from '../../service/handover/printer.ts';
import { openChromiumPipe, type ChromiumPipe } from '../chromium/chromium-pipe.ts';
import { headlessArguments } from './headless-arguments.ts';
import { withinTime } from './within-time.ts';

export type ChromiumPrinterOptions = {
  /** Path of the program; null where none was found. */
  chromium: string | null;
  env?: NodeJS.ProcessEnv;
  timeoutMs?: number;
};

const TIMEOUT_MS = 30_000;
const CLOSE_WITHIN_MS = 5_000;
const LAST_WORDS = 1_000;

/** A headless Chromium of its own, gone when the printer is closed. @throws PrintError where there is none. */
export function openChromiumPrinter({
  chromium,
  env = process.env,
  timeoutMs = TIMEOUT_MS,
}: ChromiumPrinterOptions): Printer {
  if (chromium === null) {
    throw new PrintError(
      'PDF needs Chromium, and none was found. Install it (on Debian: apt-get install chromium), or name its program in LOFTLEDGER_CHROMIUM.',
    );
  }
  const profile = makeProfile(chromium);
  const child = spawn(chromium, headlessArguments({ profile, asRoot: process.getuid?.() === 0 }), {
    env,
    stdio: ['ignore', 'ignore', 'pipe', 'pipe', 'pipe'],
  });
  const lastWords = listen(child);
  const ended = new Promise<void>((resolve) => {
    child.once('error', () => resolve());
    child.once('exit', () => resolve());
  }).finally(() => rmSync(profile, { recursive: true, force: true, maxRetries: 10, retryDelay: 50 }));
  const pipe = openChromiumPipe(child.stdio[3] as Writable, child.stdio[4] as Readable);
  let closed = false;
  return {
    async print(page, signal) {
      signal?.throwIfAborted();
      if (closed) throw new PrintError('The printer is closed. Open another one.');
      try {
        return await withinTime(printOne(pipe, page), timeoutMs, signal);
      } catch (error) {
        if (signal?.aborted === true) throw error;
        const why = error instanceof Error ? error.message : String(error);
        throw new PrintError(
          `The PDF could not be made: ${why.replace(/\.?$/, '.')} Try again; if it stays so, save another format.`,
          { cause: error, lastWords: lastWords() },
        );
      }
    },
    async close() {
      closed = true;
      // Asked first: killed, it would leave a folder of its own behind. One that does not listen is ended.
      pipe.send('Browser.close').catch(() => child.kill('SIGKILL'));
      const timer = setTimeout(() => child.kill('SIGKILL'), CLOSE_WITHIN_MS);
      await ended;
      clearTimeout(timer);
    },
  };
}

/** Private to this user. Chromium as a snap sees another /tmp than we do; its own folder it may use. */
function makeProfile(chromium: string): string {
  const snap = chromium.startsWith('/snap/');
  const parent = snap ? join(homedir(), 'snap', 'chromium', 'common', 'loftledger') : tmpdir();
  mkdirSync(parent, { recursive: true });
  return mkdtempSync(join(parent, 'loftledger-print-')); // mkdtemp makes it 0700
}

/** The last line that a Chromium which ended by itself had said. */
function listen(child: ChildProcess): () => string {
  let words = '';
  child.stderr?.setEncoding('utf8').on('data', (text: string) => {
    words = (words + text).slice(-LAST_WORDS);
  });
  child.once('error', (error) => {
    words = error.message;
  });
  return () => {
    const running = child.exitCode === null && child.signalCode === null && child.pid !== undefined;
    const last = words.trim().split('\n').at(-1) ?? '';
    return running ? '' : last;
  };
}

/** Each document in a tab of its own, so that several can be printed at once. */
async function printOne(pipe: ChromiumPipe, page: string): Promise<Uint8Array> {
  const { targetId } = (await pipe.send('Target.createTarget', { url: 'about:blank' })) as {
    targetId: string;
  };
  try {
    const attached = await pipe.send('Target.attachToTarget', { targetId, flatten: true });
    const session = attached['sessionId'] as string;
    const tree = (await pipe.send('Page.getFrameTree', {}, session)) as {
      frameTree: { frame: { id: string } };
    };
    await pipe.send('Page.setDocumentContent', { frameId: tree.frameTree.frame.id, html: page }, session);
    await settled(pipe, session);
    const printed = await pipe.send(
      'Page.printToPDF',
      {
        preferCSSPageSize: true,
        printBackground: true,
        displayHeaderFooter: false,
        generateTaggedPDF: true,
        generateDocumentOutline: true,
      },
      session,
    );
    return Buffer.from(printed['data'] as string, 'base64');
  } finally {
    pipe.send('Target.closeTarget', { targetId }).catch(() => undefined);
  }
}

/** The letterhead's picture is decoded and the fonts are there. */
async function settled(pipe: ChromiumPipe, session: string): Promise<void> {
  const expression =
    'Promise.all([document.fonts.ready, ...[...document.images].map((image) => image.decode().catch(() => undefined))]).then(() => true)';
  await pipe.send('Runtime.evaluate', { expression, awaitPromise: true }, session);
}
