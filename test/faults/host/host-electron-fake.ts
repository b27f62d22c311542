import { EventEmitter } from 'node:events';
import type { CallRequest } from '../../../src-main/contract/gate.ts';

/**
 * As much of Electron as our entry uses, for machines without its binary: it writes down what is set up, and its
 * window behaves as the real page does (reads itself, calls over IPC, tells that it has painted). It proves our wiring
 * and our bundle, not Electron.
 */
export const steps: string[] = [];
const note = (step: string) => void steps.push(step);

type AppHandler = (request: Request) => Promise<Response>;
type IpcHandler = (event: unknown, message: unknown) => Promise<{ ok: boolean; value: unknown }>;
let serve: AppHandler | null = null;
let answerCall: IpcHandler | null = null;

class App extends EventEmitter {
  isPackaged = false;
  commandLine = { appendSwitch: (name: string) => note(`switch ${name}`) };
  enableSandbox = () => note('sandbox');
  setPath = (name: string) => note(`path ${name}`);
  getVersion = () => '0.0.0';
  getLocale = () => 'en-GB';
  addRecentDocument = (file: string) => note(`recent ${file.split('/').at(-1) ?? ''}`);
  whenReady = () => {
    // macOS hands a double-clicked file over before anything is ready.
    const file = process.env['FAKE_ELECTRON_OPENS'];
    if (file !== undefined) this.emit('open-file', { preventDefault: () => note('file taken') }, file);
    note('ready');
    return Promise.resolve();
  };
  exit(code: number) {
    note(`exit ${String(code)}`);
    process.stderr.write(`${JSON.stringify(steps)}\n`);
    process.exit(code);
  }
}
export const app = new App();

export const protocol = { registerSchemesAsPrivileged: () => note('scheme') };
export const shell = { openExternal: () => Promise.reject(new Error('nothing is handed to the system')) };
export const dialog = {
  showErrorBox: (_title: string, text: string) => note(`told: ${text}`),
  showMessageBox: () => Promise.resolve({ response: 0 }),
};
export const Menu = { buildFromTemplate: () => ({}), setApplicationMenu: () => note('menu') };
export const ipcMain = {
  handle(_channel: string, handler: IpcHandler) {
    answerCall = handler;
    note('ipc');
  },
  removeHandler: () => note('ipc taken down'),
};
export const session = {
  fromPartition: (name: string) => ({
    protocol: {
      handle(scheme: string, handler: AppHandler) {
        serve = handler;
        note(`serve ${scheme} in ${name}`);
      },
    },
    webRequest: { onBeforeRequest: () => note('requests locked') },
    setPermissionRequestHandler: () => undefined,
    setPermissionCheckHandler: () => undefined,
    setDevicePermissionHandler: () => undefined,
    setDisplayMediaRequestHandler: () => undefined,
  }),
};

export class BrowserWindow extends EventEmitter {
  webContents = Object.assign(new EventEmitter(), {
    send: (_channel: string, event: unknown) => void process.send?.({ event }),
    isDestroyed: () => false,
    setWindowOpenHandler: () => note('contents locked'),
    sendInputEvent: () => undefined,
  });
  constructor(options: { webPreferences: { preload: string } }) {
    super();
    note(`window with ${options.webPreferences.preload.split('/').at(-1) ?? ''}`);
    app.emit('web-contents-created', {}, this.webContents);
  }
  show = () => undefined;
  focus = () => undefined;
  isMinimized = () => false;
  async loadURL(url: string) {
    const page = await serve?.(new Request(url));
    note(`page ${String(page?.status)}`);
    // The gate is mounted in the same turn as the window is made; the page comes after both.
    await new Promise((resolve) => setTimeout(resolve, 0));
    if (process.send !== undefined) {
      this.#beDriven(process.send.bind(process));
      return;
    }
    await this.#playPage();
    await serve?.(new Request('app://loftledger/painted', { method: 'POST' }));
    if (process.env['FAKE_ELECTRON_CLOSES'] !== undefined) this.emit('closed');
  }
  /** Does as a page what the process that forked this one asks, and answers it. */
  #beDriven(answer: (message: unknown) => void) {
    process.on(
      'message',
      (asked: { id: number; message?: unknown; fetch?: { path: string } & RequestInit }) => {
        const { id, message, fetch: wanted } = asked;
        const from = { senderFrame: { url: 'app://loftledger/index.html', parent: null } };
        const work =
          wanted === undefined
            ? Promise.resolve(answerCall?.(from, message))
            : Promise.resolve(serve?.(new Request(`app://loftledger${wanted.path}`, wanted))).then(
                async (response) => ({
                  status: response?.status,
                  headers: Object.fromEntries(response?.headers ?? []),
                  body: await response?.text(),
                }),
              );
        void work.then((value) => answer({ id, value }));
      },
    );
    process.on('disconnect', () => this.emit('closed'));
    answer({ ready: true });
  }
  async #playPage() {
    const ask = (call: string, args: unknown) => {
      const request: CallRequest = { call, args };
      return answerCall?.({ senderFrame: { url: 'app://loftledger/index.html', parent: null } }, request);
    };
    const opened = await ask('players.openDemo', { demo: 'invented-bag' });
    const { bagId } = opened?.value as { bagId: number };
    const plan = await ask('answers.plan', { bagId });
    const files = process.env['FAKE_ELECTRON_FILES'];
    if (files !== undefined) {
      const names: string[] = [];
      while (names.length < Number(files)) {
        const answer = await ask('files.opened', {});
        names.push(...(answer?.value as { name: string }[]).map(({ name }) => name));
        await new Promise((resolve) => setTimeout(resolve, 10));
      }
      note(`opened ${names.sort().join(' ')}`);
    }
    note(`plan ${plan?.ok === true ? 'answered' : JSON.stringify(plan)}`);
  }
}
