import { spawn, type ChildProcess } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import {
  chromium,
  type Browser,
  type BrowserContext,
  type BrowserContextOptions,
  type Page,
} from 'playwright';
import { findChromium } from '../../../build/find/find-chromium.mjs';

const ROOT = resolve(import.meta.dirname, '..', '..', '..');

const START = join(ROOT, 'build', 'start.mjs');

type Cookies = Awaited<ReturnType<BrowserContext['storageState']>>;

/** The real host on its own data folder, and a real Chromium to look at it with. */
export type Program = {
  /** A new window on the running host. */
  openWindow(options?: BrowserContextOptions): Promise<Window>;
  /** Ends the host and starts it again on the same records. */
  restart(): Promise<void>;
  /** A second start of the program, with these files: the running host shows them. */
  startAgain(...files: string[]): Promise<{ code: number | null; said: string }>;
  /** Where its records are. */
  folder: string;
  /** Ends the host under the open windows. */
  endHost(): Promise<void>;
  close(): Promise<void>;
};

export type Window = {
  page: Page;
  /** What the browser complained of: errors on the console, exceptions, breaches of the content security policy. */
  complaints: string[];
};

/** @param files that the program is started with. */
export async function startProgram(...files: string[]): Promise<Program> {
  const folder = mkdtempSync(join(tmpdir(), 'loftledger-e2e-'));
  const browser = await launchChromium();
  const first = await startHost(folder, files).catch(async (error: unknown) => {
    await browser.close();
    throw error;
  });
  let host = first;
  let cookies: Cookies | null = null;
  return {
    async openWindow(options) {
      // The token opens once; later windows come in on the cookie that it set.
      const window = await newWindow(browser, {
        ...options,
        ...(cookies === null ? {} : { storageState: cookies }),
      });
      await window.page.goto(cookies === null ? host.url : new URL(host.url).origin);
      await window.page.getByRole('heading', { level: 1 }).waitFor();
      cookies ??= await window.page.context().storageState();
      return window;
    },
    async restart() {
      await endHost(host.process);
      cookies = null;
      host = await startHost(folder);
    },
    startAgain: (...more) => startAgain(folder, more),
    folder,
    endHost: () => endHost(host.process),
    async close() {
      await browser.close();
      await endHost(host.process);
      rmSync(folder, { recursive: true, force: true });
    },
  };
}

export function launchChromium(): Promise<Browser> {
  const executablePath = findChromium();
  if (executablePath === null) throw new Error('No Chromium was found: npm test installs it where it may.');
  const asRoot = process.getuid?.() === 0;
  return chromium.launch({
    executablePath,
    args: [
      ...(asRoot ? ['--no-sandbox'] : []),
      '--disable-gpu',
      '--disable-background-networking',
      '--disable-component-update',
      '--no-first-run',
    ],
  });
}

async function startHost(
  folder: string,
  files: readonly string[] = [],
): Promise<{ process: ChildProcess; url: string }> {
  const words = [START, '--no-window', '--data', folder, ...files];
  const child = spawn(process.execPath, words, { stdio: ['ignore', 'pipe', 'pipe'] });
  let said = '';
  child.stderr.on('data', (chunk: Buffer) => (said += chunk.toString()));
  const url = await new Promise<string>((done, failed) => {
    let out = '';
    child.stdout.on('data', (chunk: Buffer) => {
      out += chunk.toString();
      if (out.includes('\n')) done((JSON.parse(out) as { url: string }).url);
    });
    child.once('exit', (code) => failed(new Error(`the host ended (${String(code)}):\n${said}`)));
  });
  return { process: child, url };
}

function startAgain(folder: string, files: readonly string[]) {
  const child = spawn(process.execPath, [START, '--data', folder, ...files], {
    stdio: ['ignore', 'ignore', 'pipe'],
  });
  let said = '';
  child.stderr.on('data', (chunk: Buffer) => (said += chunk.toString()));
  return new Promise<{ code: number | null; said: string }>((done) => {
    child.once('close', (code) => done({ code, said }));
  });
}

function endHost(child: ChildProcess): Promise<void> {
  if (child.exitCode !== null || child.signalCode !== null) return Promise.resolve();
  return new Promise((done) => {
    child.once('exit', () => done());
    child.kill('SIGTERM');
  });
}

async function newWindow(browser: Browser, options: BrowserContextOptions = {}): Promise<Window> {
  const context = await browser.newContext({
    viewport: { width: 1280, height: 800 },
    locale: 'en-GB',
    reducedMotion: 'reduce',
    ...options,
  });
  const page = await context.newPage();
  page.setDefaultTimeout(20_000);
  const complaints: string[] = [];
  page.on('pageerror', (error) => complaints.push(error.message));
  page.on('console', (message) => {
    // The browser reports breaches of the policy, and failed requests, as errors on the console.
    const { url } = message.location();
    if (message.type() === 'error') complaints.push(`${message.text()} ${url}`);
  });
  return { page, complaints };
}
