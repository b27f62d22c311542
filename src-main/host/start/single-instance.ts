import { createHash } from 'node:crypto';
import { chmodSync, rmSync } from 'node:fs';
import { connect, createServer, type Server } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { askLine, LONGEST_ASK, readAsk, type Asked } from './asked.ts';

/** What the first start answers the second. */
export type FirstSays = 'brought-to-front' | 'has-no-window';

/** Asked again for this long, since the first may be starting itself. */
const ASK_FOR_MS = 5_000;
const ASK_EVERY_MS = 100;
const ANSWER_WITHIN_MS = 3_000;
/** The longest socket path that every system takes (macOS has 104 with the ending zero). */
const LONGEST_SOCKET_PATH = 100;

/**
 * Where the first start listens: a socket in the (private) data folder. Where that path is too long for a socket, or
 * on Windows, a name made of it.
 */
export function controlAddress(dataDir: string, platform: NodeJS.Platform = process.platform): string {
  const digest = createHash('sha256').update(dataDir).digest('hex').slice(0, 24);
  if (platform === 'win32') return `\\\\.\\pipe\\loftledger-${digest}`;
  const inside = join(dataDir, 'window.sock');
  return Buffer.byteLength(inside) <= LONGEST_SOCKET_PATH
    ? inside
    : join(process.env['XDG_RUNTIME_DIR'] ?? tmpdir(), `loftledger-${digest}.sock`);
}

/**
 * The first start, which holds the instance lock, answers later ones.
 * @param onAsked opens the files and brings the window to the front; tells whether there is one.
 */
export async function listenForOthers(
  dataDir: string,
  onAsked: (asked: Asked) => Promise<FirstSays>,
): Promise<{ close(): Promise<void> }> {
  const address = controlAddress(dataDir);
  const isFile = !address.startsWith('\\\\');
  // Ours by the lock: a socket of that name is left from an unclean end.
  if (isFile) rmSync(address, { force: true });
  const server = createServer((socket) => {
    let asked = '';
    socket.setTimeout(ANSWER_WITHIN_MS, () => socket.destroy());
    socket.on('error', () => socket.destroy());
    socket.setEncoding('utf8').on('data', (text: string) => {
      asked += text;
      if (asked.length > LONGEST_ASK) socket.destroy();
      if (!asked.includes('\n')) return;
      const ask = readAsk(asked);
      asked = '';
      if (ask === null) socket.destroy();
      else {
        onAsked(ask).then(
          (says) => socket.end(`${says}\n`),
          () => socket.destroy(),
        );
      }
    });
  });
  server.maxConnections = 8;
  await listen(server, address);
  if (isFile) chmodSync(address, 0o600);
  return {
    close: () =>
      new Promise((resolve) => {
        server.close(() => resolve());
      }),
  };
}

/**
 * The second start asks the first to show itself, and the files.
 * @returns null when the one who holds the folder does not answer (a command that is just running, or one that hangs).
 */
export async function askTheFirst(
  dataDir: string,
  asked: Asked = { files: [] },
  forMs = ASK_FOR_MS,
): Promise<FirstSays | null> {
  const address = controlAddress(dataDir);
  for (let waitedMs = 0; ; waitedMs += ASK_EVERY_MS) {
    const says = await askOnce(address, askLine(asked));
    if (says !== null || waitedMs >= forMs) return says;
    await new Promise((resolve) => setTimeout(resolve, ASK_EVERY_MS));
  }
}

function askOnce(address: string, line: string): Promise<FirstSays | null> {
  return new Promise((resolve) => {
    let said = '';
    const socket = connect(address, () => socket.write(line));
    socket.setTimeout(ANSWER_WITHIN_MS, () => socket.destroy());
    socket.setEncoding('utf8').on('data', (text: string) => {
      said = (said + text).slice(0, 100);
    });
    socket.on('error', () => socket.destroy());
    socket.on('close', () => {
      const word = said.trim();
      resolve(word === 'brought-to-front' || word === 'has-no-window' ? word : null);
    });
  });
}

function listen(server: Server, address: string): Promise<void> {
  return new Promise((resolve, reject) => {
    server.once('error', reject);
    server.listen(address, () => {
      server.off('error', reject);
      resolve();
    });
  });
}
