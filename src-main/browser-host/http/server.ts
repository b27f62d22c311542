import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import type { Gate } from '../../contract/gate.ts';
import { linger, send, sendBug, sendRefusal } from './answers.ts';
import { BodyCut } from './body.ts';
import { answerCall } from './call.ts';
import { createEvents } from './events.ts';
import { factsOf, type Asked } from './guard/facts.ts';
import { firstRefusal, GUARDS, type Guard } from './guard/guards.ts';
import { openedPage } from './launch-page.ts';
import { LIMITS, type Limits } from './guard/limits.ts';
import { answerBrokenRequests } from './broken-requests.ts';
import { pageHeaders } from '../../host/headers.ts';
import { readStaticFiles, type StaticFile } from '../../host/static-files.ts';
import { createDoor, type Door } from './guard/token.ts';
import { createUploads } from './upload.ts';

export type LoopbackOptions = {
  gate: Gate;
  /** The built window: a folder with index.html. */
  rendererDir: string;
  /** The window says that it has painted (POST /painted). */
  onPainted?: () => void;
  /** The token was used: the launch page has done its work. */
  onOpened?: () => void;
  /** Faults of ours, whose text no answer carries. */
  onFault?: (error: unknown) => void;
  limits?: Partial<Limits>;
  /** Tests take one out to see that its attack then gets through. */
  guards?: readonly Guard[];
};

export type Loopback = {
  port: number;
  /** `http://127.0.0.1:port` */
  origin: string;
  /** Opens the window once; carries the token. */
  openUrl: string;
  close(): Promise<void>;
};

/** Serves the window and the gate on 127.0.0.1, on a port that the system picks. */
export async function startLoopback(options: LoopbackOptions): Promise<Loopback> {
  const limits = { ...LIMITS, ...options.limits };
  const files = readStaticFiles(options.rendererDir);
  const server = createServer({
    headersTimeout: limits.headersMs,
    requestTimeout: limits.requestMs,
    connectionsCheckingInterval: limits.checkEveryMs,
    keepAliveTimeout: limits.keepAliveMs,
    // Host is our own guard's: Node would answer a missing one without our headers.
    requireHostHeader: false,
  });
  server.maxConnections = limits.connections;
  await listen(server);
  const { port } = server.address() as AddressInfo;
  const host = `127.0.0.1:${String(port)}`;
  const door = createDoor(port);
  const events = createEvents({ gate: options.gate, limits });
  const handle = createHandler({ ...options, limits, files, host, door, openEvents: events.open });
  server.on('request', handle);
  // "Expect: 100-continue" is asked the guards first, like any other request.
  server.on('checkContinue', handle);
  answerBrokenRequests(server);
  return {
    port,
    origin: `http://${host}`,
    openUrl: `http://${host}/open?token=${door.token}`,
    async close() {
      events.closeAll();
      const closed = new Promise<void>((resolve) => server.close(() => resolve()));
      server.closeIdleConnections();
      // A call in flight may finish; a connection that hangs may not hold the program.
      const timer = setTimeout(() => server.closeAllConnections(), 2_000);
      await closed;
      clearTimeout(timer);
    },
  };
}

const GONE = 'This page is no more. Turn to Hand-over again.';

type HandlerParts = Omit<LoopbackOptions, 'limits'> & {
  limits: Limits;
  files: ReadonlyMap<string, StaticFile>;
  host: string;
  door: Door;
  openEvents: (response: ServerResponse) => void;
};

function createHandler(parts: HandlerParts) {
  const { gate, limits, files, host, door } = parts;
  const guards = parts.guards ?? GUARDS;
  const answerUpload = createUploads({ gate, limits });

  async function answer(request: IncomingMessage, response: ServerResponse, asked: Asked): Promise<void> {
    const { facts, path, query } = asked;
    const refused = firstRefusal(guards, facts);
    if (refused !== null) return sendRefusal(response, refused);
    if (request.headers.expect !== undefined) response.writeContinue();
    switch (facts.route.name) {
      case 'call':
        return answerCall(request, response, { gate, limits });
      case 'upload':
        return answerUpload(request, response, query);
      case 'events':
        return parts.openEvents(response);
      case 'painted':
        parts.onPainted?.();
        return send(response, 204, {});
      case 'page':
        return answerPage(response, query);
      case 'open':
        return answerOpen(response, query);
      case 'file':
        return answerFile(response, path);
    }
  }

  function answerOpen(response: ServerResponse, query: URLSearchParams): void {
    const cookie = door.open(query.get('token'));
    if (cookie === null)
      return sendRefusal(response, { status: 401, message: 'This link was used already.' });
    parts.onOpened?.();
    const headers = { 'Content-Type': 'text/html; charset=utf-8', 'Set-Cookie': cookie };
    send(response, 200, headers, openedPage());
  }

  async function answerPage(response: ServerResponse, query: URLSearchParams): Promise<void> {
    const page = await gate.page(query.get('id') ?? '');
    if (page === null) return sendRefusal(response, { status: 404, message: GONE });
    send(response, 200, pageHeaders(page), Buffer.from(page.bytes));
  }

  function answerFile(response: ServerResponse, path: string): void {
    const file = files.get(path);
    if (file === undefined) return sendRefusal(response, { status: 404, message: 'There is no such page.' });
    send(response, 200, { 'Content-Type': file.type }, file.bytes);
  }

  return (request: IncomingMessage, response: ServerResponse): void => {
    const asked = factsOf(request, { host, door, limits });
    answer(request, response, asked)
      .catch((error: unknown) => {
        if (error instanceof BodyCut) return sendRefusal(response, error);
        // The sender went away: there is nobody to answer.
        if (request.errored !== null && !request.complete) return;
        parts.onFault?.(error);
        sendBug(response);
      })
      .finally(() => linger(request, limits.lingerMs));
  };
}

function listen(server: Server): Promise<void> {
  return new Promise((resolve, reject) => {
    server.once('error', reject);
    server.listen(0, '127.0.0.1', () => {
      server.off('error', reject);
      resolve();
    });
  });
}
