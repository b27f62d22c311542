import { openChromium, type ChromiumEnd } from './chromium.ts';
import type { Display } from './display.ts';
import { bringToFront, currentPlace, hasPage } from './window-control.ts';
import { readWindowPlace, writeWindowPlace } from '../../host/window-place.ts';

/** The window did not come up, or fell over. */
export class Unready extends Error {}

export type HostWindow = {
  ended: Promise<ChromiumEnd>;
  /** Rejects when it ends before anyone asked it to; for those who wait for its first paint. */
  failed: Promise<never>;
  bringToFront(): Promise<void>;
  close(): Promise<void>;
};

export type WindowOptions = {
  chromium: string | null;
  display: Display;
  dataDir: string;
  openUrl: string;
  opened: Promise<void>;
  say: (line: string) => void;
};

const PLACE_EVERY_MS = 3_000;

/** Opens the program's window and keeps its place. @throws Unready without a Chromium. */
export function openWindow(options: WindowOptions): HostWindow {
  const { chromium, display, dataDir, openUrl, say } = options;
  if (chromium === null) {
    throw new Unready(
      'No Chromium was found. Install one (on Debian: apt-get install chromium), or use --no-window.',
    );
  }
  const asRoot = process.getuid?.() === 0;
  if (asRoot)
    say("Running as root: Chromium's own sandbox is off (--no-sandbox). Use another user where you can.");
  let place = readWindowPlace(dataDir);
  const window = openChromium({ binary: chromium, dataDir, openUrl, place, env: display.env, asRoot });
  void options.opened.then(() => window.forgetLaunchPage());

  const keepPlace = async () => {
    const now = await currentPlace(window.pipe, place).catch(() => null);
    if (now === null || JSON.stringify(now) === JSON.stringify(place)) return;
    place = now;
    writeWindowPlace(dataDir, now);
  };
  // On macOS a browser lives on without a window: then ended by us. (Twice missed: not a page that is just changing.)
  let missed = 0;
  const endWithoutPage = async () => {
    missed = (await hasPage(window.pipe).catch(() => true)) ? 0 : missed + 1;
    if (missed === 2) await window.close();
  };
  const timer = setInterval(() => void keepPlace().then(endWithoutPage), PLACE_EVERY_MS);
  void window.ended.then(() => clearInterval(timer));

  const failed = window.ended.then((end) => {
    throw new Unready(whyItEnded(end));
  });
  // Only those who wait for it mind.
  failed.catch(() => undefined);
  return {
    ended: window.ended,
    failed,
    bringToFront: () => bringToFront(window.pipe),
    async close() {
      await keepPlace();
      await window.close();
    },
  };
}

/** What to tell of a Chromium that ended by itself, with what can be done about the known reasons. */
export function whyItEnded(end: ChromiumEnd): string {
  const how = end.signal === null ? `code ${String(end.code)}` : `signal ${end.signal}`;
  const remedy = REMEDIES.find(({ sign }) => sign.test(end.lastWords))?.remedy;
  if (remedy !== undefined) return `Chromium ended (${how}): ${remedy}`;
  const words = end.lastWords.trim();
  return `Chromium ended (${how})${words === '' ? '.' : `. It last said:\n${words}`}`;
}

const REMEDIES = [
  {
    sign: /Missing X server|cannot open display|Failed to connect to Wayland/i,
    remedy:
      'the display that DISPLAY or WAYLAND_DISPLAY names cannot be reached. Correct it, or use --no-window.',
  },
  {
    sign: /No usable sandbox|SUID sandbox helper/i,
    remedy:
      'the system gives it no sandbox. Allow unprivileged user namespaces, or install Chromium from the system’s packages.',
  },
];
