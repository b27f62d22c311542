import { beforeEach, describe, expect, it, vi } from 'vitest';
import { openPagePrinter } from '../../../src-main/electron-host/page-printer.ts';
import { PrintError } from '../../../src-main/service/handover/printer.ts';

type Serve = (request: { url: string }) => Response;
type FakeWindow = { options: Record<string, unknown>; loaded: string; isGone: boolean };

/** As much of Electron as printing uses: a window loads what its session serves, and prints what it loaded. */
const electron = vi.hoisted(() => ({
  windows: [] as FakeWindow[],
  handlers: 0,
  serve: null as Serve | null,
  print: (page: string): Promise<Uint8Array> => Promise.resolve(Buffer.from(`%PDF ${page}`)),
  asked: {} as Record<string, unknown>,
  partition: '',
}));
vi.mock('electron', () => ({
  session: {
    fromPartition: (name: string) => {
      electron.partition = name;
      const lock = () => undefined;
      return {
        setPermissionRequestHandler: lock,
        setPermissionCheckHandler: lock,
        setDevicePermissionHandler: lock,
        setDisplayMediaRequestHandler: lock,
        webRequest: { onBeforeRequest: lock },
        protocol: {
          handle: (_scheme: string, serve: Serve) => {
            electron.handlers += 1;
            electron.serve = serve;
          },
        },
      };
    },
  },
  BrowserWindow: class {
    record: FakeWindow;
    constructor(options: Record<string, unknown>) {
      this.record = { options, loaded: '', isGone: false };
      electron.windows.push(this.record);
    }
    async loadURL(url: string) {
      const answer = electron.serve?.({ url });
      if (answer?.status !== 200) throw new Error(`status ${String(answer?.status)}`);
      this.record.loaded = await answer.text();
    }
    webContents = {
      printToPDF: (options: Record<string, unknown>) => {
        electron.asked = options;
        return electron.print(this.record.loaded);
      },
    };
    isDestroyed = () => this.record.isGone;
    destroy = () => void (this.record.isGone = true);
  },
}));

beforeEach(() => {
  electron.windows.length = 0;
  electron.print = (page) => Promise.resolve(Buffer.from(`%PDF ${page}`));
});

describe('the printer of the Electron host', () => {
  it('prints the page in a window that is never shown, tagged, on the paper of its style', async () => {
    const printer = openPagePrinter();
    expect(Buffer.from(await printer.print('<p>ü</p>')).toString()).toBe('%PDF <p>ü</p>');
    expect(electron.asked).toEqual({
      preferCSSPageSize: true,
      printBackground: true,
      generateTaggedPDF: true,
      generateDocumentOutline: true,
    });
    const [window] = electron.windows;
    expect(window?.isGone).toBe(true);
    expect(window?.options).toMatchObject({
      show: false,
      webPreferences: { sandbox: true, contextIsolation: true, nodeIntegration: false, javascript: false },
    });
    expect(window?.options['webPreferences']).not.toHaveProperty('preload');
    expect(electron.partition).toBe('loftledger-print'); // no "persist:": in memory
  });

  it('several at once print their own pages, in one session, which then serves none of them', async () => {
    const printer = openPagePrinter();
    const another = openPagePrinter();
    const pdfs = await Promise.all([printer.print('a'), printer.print('b'), another.print('c')]);
    expect(pdfs.map((pdf) => Buffer.from(pdf).toString())).toEqual(['%PDF a', '%PDF b', '%PDF c']);
    expect(electron.handlers).toBe(1);
    expect(electron.serve?.({ url: 'app://loftledger/index.html' }).status).toBe(404);
    const policy = electron.serve?.({ url: 'x' }).headers.get('content-security-policy');
    expect(policy).toMatch(/^default-src 'none'; style-src 'unsafe-inline'; img-src data:;/);
  });

  it('says what went wrong, and closes the window all the same', async () => {
    electron.print = () => Promise.reject(new Error('no printer'));
    const failed = openPagePrinter().print('a');
    await expect(failed).rejects.toThrow(PrintError);
    await expect(failed).rejects.toThrow('The PDF could not be made: no printer. Try again');
    expect(electron.windows.map(({ isGone }) => isGone)).toEqual([true]);
  });

  it('ends when it is told to, or when it takes too long', async () => {
    electron.print = () => new Promise(() => undefined);
    const stop = new AbortController();
    const printing = openPagePrinter().print('a', stop.signal);
    stop.abort(new Error('enough'));
    await expect(printing).rejects.toThrow('enough');
    await expect(openPagePrinter(1).print('a')).rejects.toThrow(/took longer/);
    await expect(openPagePrinter().print('a', stop.signal)).rejects.toThrow('enough');
    expect(electron.windows.map(({ isGone }) => isGone)).toEqual([true, true]);
  });

  it('closing it closes what it still prints in', async () => {
    electron.print = () => new Promise(() => undefined);
    const printer = openPagePrinter(50);
    const printing = printer.print('a').catch((error: unknown) => error);
    await printer.close();
    expect(electron.windows.map(({ isGone }) => isGone)).toEqual([true]);
    expect(await printing).toBeInstanceOf(PrintError);
  });
});
