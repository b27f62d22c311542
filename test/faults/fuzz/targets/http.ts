import { startLoopback } from '../../../../src-main/browser-host/http/server.ts';
import { enter, exchange, makeRenderer, makeTempDir, parseAnswer } from '../../../unit/browser-host/kit.ts';
import type { Draw } from '../draw.ts';
import { broken, brokenText, NASTY_TEXTS, nastyValue } from '../nasty.ts';
import { openRecords } from '../records.ts';
import { Wrong, type Target } from '../target.ts';

/** Waits are short here, so that many requests that never end can be tried. */
const LIMITS = {
  headersMs: 150,
  requestMs: 1_000,
  checkEveryMs: 50,
  bodyIdleMs: 150,
  lingerMs: 50,
  keepAliveMs: 150,
};

const METHODS = ['GET', 'GET', 'POST', 'POST', 'HEAD', 'OPTIONS', 'PUT', 'TRACE', 'CONNECT', 'get', 'BREW'];
const TARGETS = [
  '/',
  '/call',
  '/call',
  '/upload?name=a.csv',
  '/events',
  '/open?token=x',
  '/painted',
  '/index.html',
];
const CALLS = ['history.state', 'players.roster', 'players.create', 'history.undo', 'no.such'];

/** One request in bytes, right in most of its parts. */
function request(draw: Draw, own: { port: number; origin: string; cookie: string | null }): Buffer {
  const call = { call: draw.pick(CALLS), args: draw.chance(0.6) ? {} : nastyValue(draw, false) };
  const json = JSON.stringify(draw.chance(0.5) ? call : broken(draw, call)) ?? '';
  const body = draw.chance(0.2) ? brokenText(draw, json) : json;
  const length = String(Buffer.byteLength(body));
  // Right in all, or wrong in one or two places: what is wrong all over is refused at the first.
  const headers: [string, string][] = [
    ['Host', `127.0.0.1:${String(own.port)}`],
    ['Origin', own.origin],
    ['Content-Type', 'application/json'],
    ['Sec-Fetch-Site', 'same-origin'],
    ['Cookie', own.cookie ?? 'none=x'],
    ['Content-Length', length],
    ['Connection', 'close'],
  ];
  for (let n = draw.pick([0, 0, 1, 1, 2]); n > 0; n -= 1) {
    const header = draw.pick(headers);
    const how = draw.below(5);
    if (how === 0) headers.splice(headers.indexOf(header), 1);
    else if (how === 1) headers.push(header);
    else if (how === 2) headers.push(['Transfer-Encoding', draw.pick(['chunked', 'gzip', 'identity'])]);
    else if (header[0] === 'Content-Length') header[1] = String(draw.pick([0, -1, 1e15, 'x', `${length}0`]));
    else header[1] = headerText(draw);
  }
  const method = draw.chance(0.6) ? 'POST' : draw.chance(0.8) ? draw.pick(METHODS) : headerText(draw);
  const target = draw.chance(0.6) ? '/call' : draw.chance(0.7) ? draw.pick(TARGETS) : `/${headerText(draw)}`;
  const lines = headers.map(([name, value]) => `${name}: ${value}\r\n`).join('');
  const text = `${method} ${target} HTTP/1.1\r\n${lines}\r\n${body}`;
  return Buffer.from(draw.chance(0.1) ? brokenText(draw, text) : text, 'latin1');
}

const headerText = (draw: Draw): string => draw.pick(NASTY_TEXTS).slice(0, 20_000);

/** The loopback server with the real service behind it, by raw sockets; half of it without the session. */
export const httpTarget: Target = {
  name: 'HTTP',
  weight: 5,
  casesASession: 400,
  async open() {
    const records = await openRecords();
    const temp = makeTempDir();
    const faults: unknown[] = [];
    const loopback = await startLoopback({
      gate: records.gate,
      rendererDir: makeRenderer(temp.dir),
      onFault: (error) => faults.push(error),
      limits: LIMITS,
    });
    const session = await enter({ loopback });
    return {
      async run(draw) {
        const cookie = draw.chance(0.5) ? session : null;
        const bytes = request(draw, { ...loopback, cookie });
        const input = draw.gives(bytes.toString('latin1'));
        records.watch.begin();
        const raw = await exchange(loopback.port, bytes, {
          until: /text\/event-stream[^]*\r\n\r\n/,
          endAfterSend: draw.chance(0.3),
        });
        if (faults.length > 0) throw new Wrong(`a fault of the program: ${String(faults.pop())}`, input);
        const { status } = parseAnswer(raw);
        if (status >= 500 && status !== 503) throw new Wrong(`status ${String(status)}`, input);
        const taken = status === 200 || status === 204;
        if (!input.includes(session)) {
          if (status === 200) throw new Wrong('answered 200 without a session', input);
          records.watch.expectSame('written without a session', input);
        } else if (!taken) records.watch.expectSame('refused and yet something was written', input);
        return taken ? 'taken' : 'refused';
      },
      async close() {
        await loopback.close();
        await records.close();
        temp.remove();
      },
    };
  },
};
