import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { ANSWER_HEADERS } from '../../../src-main/host/headers.ts';
import {
  ask,
  CALL,
  enter,
  exchange,
  OUTSIDE,
  parseAnswer,
  startRig,
  type Answer,
  type Ask,
  type Rig,
} from '../../unit/browser-host/kit.ts';

/**
 * The loopback host under attack: a hostile web page, a page of another port, another user of the machine, DNS
 * rebinding, and requests that no browser would send. Raw sockets, since fetch would mend half of it.
 */
const LIMITS = { headersMs: 300, checkEveryMs: 50, bodyIdleMs: 300, lingerMs: 300, requestMs: 5_000 };

let rig: Rig;
let cookie: string;

beforeAll(async () => {
  rig = await startRig({ limits: LIMITS });
  cookie = await enter(rig);
});
afterAll(() => rig.close());
beforeEach(() => {
  rig.gate.calls.length = 0;
  rig.gate.uploads.length = 0;
});

/** On every answer here: all headers there, and nothing of our inside in it. */
function expectClean(answer: Answer): void {
  for (const [name, value] of Object.entries(ANSWER_HEADERS)) {
    expect(answer.headers.get(name.toLowerCase()), name).toBe(value);
  }
  for (const name of ['access-control-allow-origin', 'server', 'x-powered-by']) {
    expect(answer.headers.has(name), name).toBe(false);
  }
  expect(answer.raw).not.toMatch(/node_modules|\.ts\b|\bat .+:\d+:\d+|Error:|\/home\/|\/tmp\/|\\Users\\/);
  expect(answer.raw).not.toContain(import.meta.dirname);
  expect(answer.raw).not.toContain(OUTSIDE);
}

async function expectRefused(status: number, change: Ask, as: string | null = cookie): Promise<Answer> {
  const answer = await ask(rig, as, change);
  expect(answer.status).toBe(status);
  expectClean(answer);
  expect(rig.gate.calls).toEqual([]);
  expect(rig.gate.uploads).toEqual([]);
  return answer;
}

const call = (change: Ask = {}): Ask => ({ method: 'POST', target: '/call', body: CALL, ...change });

describe('the own window', () => {
  it('is answered, which the refusals below are measured against', async () => {
    const answer = await ask(rig, cookie, call());
    expect(answer.status).toBe(200);
    expect(JSON.parse(answer.body)).toEqual({ ok: true, value: JSON.parse(CALL) });
    expectClean(answer);
  });

  it.each(['/', '/index.html', '/assets/app.js'])('reads %s', async (target) => {
    const answer = await ask(rig, cookie, { target });
    expect(answer.status).toBe(200);
    expectClean(answer);
  });

  it('gets the headers on the event stream too', async () => {
    const head = await exchange(
      rig.loopback.port,
      `GET /events HTTP/1.1\r\nHost: 127.0.0.1:${String(rig.loopback.port)}\r\nCookie: ${cookie}\r\n\r\n`,
      { until: /\r\n\r\n/ },
    );
    expect(parseAnswer(head).status).toBe(200);
    expectClean(parseAnswer(head));
  });
});

describe('without the token', () => {
  it.each(['/', '/assets/app.js', '/events', '/nothing-there'])('GET %s is 401', async (target) => {
    await expectRefused(401, { target }, null);
  });

  it('POST /call, /upload and /painted are 401', async () => {
    await expectRefused(401, call(), null);
    await expectRefused(401, call({ target: '/upload?name=a.csv' }), null);
    await expectRefused(401, { method: 'POST', target: '/painted' }, null);
    expect(rig.painted()).toBe(0);
  });

  it('a made-up cookie of the right name is 401', async () => {
    const name = cookie.split('=')[0] ?? '';
    const real = cookie.slice(name.length + 1);
    for (const value of ['', 'x', real.slice(1), `${real}x`, real.toUpperCase(), 'A'.repeat(43)]) {
      await expectRefused(401, call(), `${name}=${value}`);
    }
  });

  it('the session under another name, or another start’s, is 401', async () => {
    await expectRefused(401, call(), cookie.replace('loftledger-', 'loftledger'));
    const other = await startRig();
    await expectRefused(401, call(), await enter(other));
    await other.close();
  });
});

describe('the launch token', () => {
  it('replayed is refused, and gives no cookie', async () => {
    const target = rig.loopback.openUrl.slice(rig.loopback.origin.length);
    for (const headers of [
      { 'Sec-Fetch-Site': null },
      { 'Sec-Fetch-Site': 'none', 'Sec-Fetch-Mode': 'navigate' },
    ]) {
      const answer = await expectRefused(401, { target, headers }, null);
      expect(answer.headers.has('set-cookie')).toBe(false);
    }
    // From a page, where it was exempt while unused.
    const answer = await expectRefused(403, { target, headers: { 'Sec-Fetch-Site': 'cross-site' } }, null);
    expect(answer.headers.has('set-cookie')).toBe(false);
  });

  it('opens once, of two that come together', async () => {
    const fresh = await startRig();
    const cookies = await Promise.all([enter(fresh), enter(fresh), enter(fresh)]);
    expect(cookies.filter((text) => text !== '')).toHaveLength(1);
    await fresh.close();
  });

  it('wrong, cut, empty or missing is refused and does not use up the right one', async () => {
    const fresh = await startRig();
    const { origin, openUrl } = fresh.loopback;
    const target = openUrl.slice(origin.length);
    const wrong = [target.slice(0, -1), `${target}A`, '/open?token=', '/open', '/open?token=x&token=y'];
    for (const text of wrong) {
      const answer = await ask(fresh, null, { target: text, headers: { 'Sec-Fetch-Site': null } });
      expect(answer.status, text).toBe(401);
      expectClean(answer);
    }
    expect(await enter(fresh)).toMatch(/^loftledger-\d+=[\w-]{43}$/);
    await fresh.close();
  });

  it('is not used up by HEAD, and not taken by POST', async () => {
    const fresh = await startRig();
    const target = fresh.loopback.openUrl.slice(fresh.loopback.origin.length);
    expect((await ask(fresh, null, { method: 'HEAD', target })).status).toBe(405);
    expect((await ask(fresh, null, { method: 'POST', target })).status).toBe(405);
    expect(await enter(fresh)).not.toBe('');
    await fresh.close();
  });

  it('gives a cookie that scripts and other sites cannot use', async () => {
    const fresh = await startRig();
    const target = fresh.loopback.openUrl.slice(fresh.loopback.origin.length);
    const answer = await ask(fresh, null, { target, headers: { 'Sec-Fetch-Site': 'cross-site' } });
    expect(answer.status).toBe(200);
    expect(answer.headers.get('set-cookie')).toMatch(/; Path=\/; HttpOnly; SameSite=Strict$/);
    expect(answer.body).not.toContain(fresh.loopback.openUrl);
    expectClean(answer);
    await fresh.close();
  });
});

describe('DNS rebinding and other hosts', () => {
  it.each(['evil.example', 'localhost', '127.0.0.1', '127.0.0.1.', '[::1]', '0.0.0.0', '127.1', ''])(
    'Host %j is 421, even with the session',
    async (name) => {
      const port = String(rig.loopback.port);
      await expectRefused(421, call({ headers: { Host: name.endsWith('1') ? name : `${name}:${port}` } }));
    },
  );

  it('another port, and a foreign name on the right port, are 421', async () => {
    await expectRefused(421, call({ headers: { Host: `127.0.0.1:${String(rig.loopback.port + 1)}` } }));
    await expectRefused(421, { headers: { Host: `rebound.example:${String(rig.loopback.port)}` } });
  });

  it('no Host is 421, and two Hosts are 400', async () => {
    await expectRefused(421, { headers: { Host: null } });
    await expectRefused(400, { headers: { host: 'evil.example' } });
  });

  it('a foreign name cannot use the launch token either', async () => {
    const fresh = await startRig();
    const target = fresh.loopback.openUrl.slice(fresh.loopback.origin.length);
    const answer = await ask(fresh, null, { target, headers: { Host: 'evil.example' } });
    expect(answer.status).toBe(421);
    expect(await enter(fresh)).not.toBe('');
    await fresh.close();
  });

  it('listens on 127.0.0.1 alone', async () => {
    const reached = await fetch(`http://[::1]:${String(rig.loopback.port)}/`).then(
      () => true,
      () => false,
    );
    expect(reached).toBe(false);
  });
});

describe('a hostile page', () => {
  const FOREIGN = ['https://evil.example', 'null', 'http://127.0.0.1', 'http://localhost:80', 'file://'];

  it.each(FOREIGN)('POST with Origin %s is 403', async (origin) => {
    await expectRefused(403, call({ headers: { Origin: origin } }));
    await expectRefused(403, call({ target: '/upload?name=a.csv', headers: { Origin: origin } }));
  });

  it('a page of another port of this machine is 403', async () => {
    const origin = `http://127.0.0.1:${String(rig.loopback.port + 1)}`;
    await expectRefused(403, call({ headers: { Origin: origin, 'Sec-Fetch-Site': 'same-site' } }));
    await expectRefused(403, call({ headers: { Origin: origin, 'Sec-Fetch-Site': null } }));
  });

  it('POST without Origin is 403', async () => {
    await expectRefused(403, call({ headers: { Origin: null } }));
    await expectRefused(403, { method: 'POST', target: '/painted', headers: { Origin: null } });
  });

  it('GET with a foreign Origin is 403', async () => {
    await expectRefused(403, { target: '/events', headers: { Origin: 'https://evil.example' } });
  });

  it.each(['cross-site', 'same-site', 'none', 'SAME-ORIGIN', '', 'nonsense'])(
    'Sec-Fetch-Site %j is 403 on everything',
    async (site) => {
      const headers = { 'Sec-Fetch-Site': site };
      for (const target of ['/', '/assets/app.js', '/events', '/open', '/nothing-there']) {
        await expectRefused(403, { target, headers });
      }
      await expectRefused(403, call({ headers }));
    },
  );

  it('Sec-Fetch-Site none passes for what the user opens, not for what a script fetches', async () => {
    const typed = { 'Sec-Fetch-Site': 'none', 'Sec-Fetch-Mode': 'navigate' };
    expect((await ask(rig, cookie, { headers: typed })).status).toBe(200);
    await expectRefused(403, { headers: { ...typed, 'Sec-Fetch-Mode': 'cors' } });
  });

  it('an absent Sec-Fetch-Site passes, and two are 400', async () => {
    expect((await ask(rig, cookie, { headers: { 'Sec-Fetch-Site': null } })).status).toBe(200);
    await expectRefused(400, { headers: { 'sec-fetch-site': 'cross-site' } });
  });

  it.each(['text/plain', 'application/x-www-form-urlencoded', 'multipart/form-data; boundary=x', ''])(
    'a body of type %j, which a form can send, is 415',
    async (type) => {
      await expectRefused(415, call({ headers: { 'Content-Type': type } }));
      await expectRefused(415, call({ target: '/upload?name=a.csv', headers: { 'Content-Type': type } }));
    },
  );

  it('look-alikes of JSON, no type, and a packed body are 415', async () => {
    for (const type of ['application/jsonp', 'text/json', 'application/json; charset=utf-7', null]) {
      await expectRefused(415, call({ headers: { 'Content-Type': type } }));
    }
    await expectRefused(415, call({ headers: { 'Content-Encoding': 'gzip' } }));
  });

  it('a CORS preflight is refused without any CORS header', async () => {
    const headers = { Origin: 'https://evil.example', 'Access-Control-Request-Method': 'POST' };
    await expectRefused(405, { method: 'OPTIONS', target: '/call', headers });
  });

  it('a page served on another port cannot read the events, cookie and all', async () => {
    const foreign = createServer((_request, response) => response.end('<script></script>'));
    await new Promise<void>((resolve) => foreign.listen(0, '127.0.0.1', resolve));
    const origin = `http://127.0.0.1:${String((foreign.address() as AddressInfo).port)}`;
    // What a browser sends for EventSource(withCredentials) from there: same site, so with the cookie.
    const headers = {
      Origin: origin,
      'Sec-Fetch-Site': 'same-site',
      'Sec-Fetch-Mode': 'cors',
      Referer: origin,
    };
    await expectRefused(403, { target: '/events', headers });
    expect(rig.gate.listeners()).toBe(0);
    foreign.close();
  });
});

describe('methods', () => {
  it.each(['TRACE', 'PUT', 'DELETE', 'PATCH', 'OPTIONS', 'PROPFIND', 'LINK'])('%s is 405', async (method) => {
    for (const target of ['/', '/call', '/events']) {
      const answer = await expectRefused(405, { method, target });
      expect(answer.headers.get('allow')).toMatch(/^(GET, HEAD|POST|GET)$/);
      expect(answer.body).not.toContain('Cookie');
    }
  });

  it('POST to a page, GET of /call, HEAD of /events are 405', async () => {
    await expectRefused(405, { method: 'POST', target: '/' });
    await expectRefused(405, { target: '/call' });
    await expectRefused(405, { method: 'HEAD', target: '/events' });
  });

  it('CONNECT is refused', async () => {
    const raw = await exchange(
      rig.loopback.port,
      'CONNECT evil.example:443 HTTP/1.1\r\nHost: evil.example\r\n\r\n',
    );
    expect(parseAnswer(raw).status).toBe(405);
    expectClean(parseAnswer(raw));
  });

  it('a made-up method is 400', async () => {
    const raw = await exchange(rig.loopback.port, 'BREW / HTTP/1.1\r\nHost: x\r\n\r\n');
    expect(parseAnswer(raw).status).toBe(400);
    expectClean(parseAnswer(raw));
  });
});

describe('traversal', () => {
  it.each([
    ['dots', '/../outside.txt'],
    ['deep dots', '/assets/../../outside.txt'],
    ['encoded', '/%2e%2e/outside.txt'],
    ['encoded slash', '/..%2foutside.txt'],
    ['twice encoded', '/%252e%252e/outside.txt'],
    ['backslash', '/..\\outside.txt'],
    ['encoded backslash', '/..%5coutside.txt'],
    ['overlong', '/%c0%ae%c0%ae/outside.txt'],
    ['overlong bytes', '/\u00c0\u00ae\u00c0\u00ae/outside.txt'],
    ['NUL', '/index.html%00.png'],
    ['doubled slash', '//outside.txt'],
    ['semicolon', '/..;/outside.txt'],
    ['three dots', '/.../outside.txt'],
    ['absolute form', 'http://127.0.0.1/../outside.txt'],
    ['drive', '/C:/outside.txt'],
    ['full-width dots', '/\u00ef\u00bc\u008e\u00ef\u00bc\u008e/outside.txt'],
    ['no slash', 'outside.txt'],
  ])('%s is 400', async (_name, target) => {
    const answer = await ask(rig, cookie, { target });
    expect(answer.status).toBe(400);
    expectClean(answer);
  });

  it('a link inside the folder does not lead out, and a source map is not served', async () => {
    await expectRefused(404, { target: '/link.txt' });
    await expectRefused(404, { target: '/assets/app.js.map' });
  });

  it.each(['/nothing-there', '/assets', '/constructor', '/__proto__', '/.git', '/index.html.bak'])(
    '%s is 404',
    async (target) => {
      const answer = await expectRefused(404, { target });
      expect(answer.body).not.toContain(target.slice(1));
    },
  );
});

describe('malformed and oversize', () => {
  const BAD_JSON = [
    '{"call":',
    '',
    'null',
    '[]',
    '"demo"',
    '{"call":1}',
    '{"call":"a b"}',
    '{"call":"a","args":1,"more":2}',
    `{"call":"${'x'.repeat(100)}"}`,
    '{"call":"a","args":NaN}',
    '[['.repeat(5_000),
    '\u00ff\u00fe',
  ];
  it.each(BAD_JSON)('body %j is 400', async (body) => {
    const answer = await expectRefused(
      400,
      call({ body, headers: { 'Content-Length': String(body.length) } }),
    );
    expect(JSON.parse(answer.body)).toMatchObject({ ok: false, error: { kind: 'refused' } });
  });

  it('over 1 MiB is 413 when announced, and when only sent', async () => {
    const body = JSON.stringify({ call: 'a', args: 'x'.repeat(1024 * 1024) });
    await expectRefused(413, call({ body }));
    const chunk = `${body.length.toString(16)}\r\n${body}\r\n0\r\n\r\n`;
    await expectRefused(
      413,
      call({ body: chunk, headers: { 'Transfer-Encoding': 'chunked', 'Content-Length': null } }),
    );
  });

  it('1 MiB exactly passes', async () => {
    const frame = JSON.stringify({ call: 'a', args: '' }).length;
    const answer = await ask(
      rig,
      cookie,
      call({ body: JSON.stringify({ call: 'a', args: 'x'.repeat(1024 * 1024 - frame) }) }),
    );
    expect(answer.status).toBe(200);
    expectClean(answer);
  });

  it('an announced petabyte is 413 at once', async () => {
    await expectRefused(413, call({ headers: { 'Content-Length': '1125899906842624' } }));
    await expectRefused(413, {
      method: 'POST',
      target: '/upload?name=a.csv',
      headers: { 'Content-Type': 'application/octet-stream', 'Content-Length': '1125899906842624' },
    });
  });

  it('a body where none belongs is 413', async () => {
    await expectRefused(413, { method: 'POST', target: '/painted', body: 'x' });
  });

  it('asks the guards before it says 100 Continue', async () => {
    const answer = await expectRefused(
      413,
      call({ headers: { Expect: '100-continue', 'Content-Length': '9999999' } }),
    );
    expect(answer.raw).not.toContain('100 Continue');
    expect((await ask(rig, cookie, call({ headers: { Expect: '100-continue' } }))).raw).toContain(
      '100 Continue',
    );
  });

  it('another expectation is 417', async () => {
    await expectRefused(417, call({ headers: { Expect: 'tea' } }));
  });

  const host = () => `Host: 127.0.0.1:${String(rig.loopback.port)}\r\n`;
  it.each([
    ['no HTTP at all', () => '\u0000\u0001\u0002 hello\r\n\r\n', 400],
    ['a TLS greeting', () => '\u0016\u0003\u0001\u0002\u0000\u0001', 400],
    [
      'both lengths',
      () =>
        `POST /call HTTP/1.1\r\n${host()}Content-Length: 5\r\nTransfer-Encoding: chunked\r\n\r\n0\r\n\r\n`,
      400,
    ],
    [
      'two lengths',
      () => `POST /call HTTP/1.1\r\n${host()}Content-Length: 5\r\nContent-Length: 6\r\n\r\nhello`,
      400,
    ],
    ['a negative length', () => `POST /call HTTP/1.1\r\n${host()}Content-Length: -5\r\n\r\n`, 400],
    ['a bare line feed in a header', () => `GET / HTTP/1.1\r\n${host()}A: b\nC: d\r\n\r\n`, 400],
    ['a zero byte in a header', () => `GET / HTTP/1.1\r\n${host()}A: b\u0000c\r\n\r\n`, 400],
    ['headers over 16 KiB', () => `GET / HTTP/1.1\r\n${host()}A: ${'x'.repeat(20_000)}\r\n\r\n`, 431],
  ])('%s is refused with all headers', async (_name, text, status) => {
    const answer = parseAnswer(await exchange(rig.loopback.port, Buffer.from(text(), 'latin1')));
    expect(answer.status).toBe(status);
    expectClean(answer);
    expect(rig.gate.calls).toEqual([]);
  });
});

describe('slow and greedy', () => {
  it('headers that do not end are cut with 408', async () => {
    const answer = parseAnswer(await exchange(rig.loopback.port, 'GET / HTTP/1.1\r\nHost: x\r\n'));
    expect(answer.status).toBe(408);
    expectClean(answer);
  });

  it('a connection that says nothing is cut', async () => {
    // Resolves only when the host ends it.
    expect(await exchange(rig.loopback.port, '')).toMatch(/^(HTTP\/1\.1 408 |$)/);
  });

  it('a body that does not come is cut with 408', async () => {
    const answer = await expectRefused(408, call({ body: '{', headers: { 'Content-Length': '100' } }));
    expect(answer.status).toBe(408);
  });

  it('more connections than there may be are not taken', async () => {
    const small = await startRig({ limits: { connections: 2 } });
    const silent = [exchange(small.loopback.port, ''), exchange(small.loopback.port, '')];
    expect(await exchange(small.loopback.port, 'GET / HTTP/1.1\r\n\r\n')).toBe('');
    await small.close();
    await Promise.all(silent);
  });

  it('event streams beyond the limit are 503', async () => {
    const small = await startRig({ limits: { eventStreams: 1 } });
    const inside = await enter(small);
    const first = await fetch(`${small.loopback.origin}/events`, { headers: { Cookie: inside } });
    const second = await ask(small, inside, { target: '/events' });
    expect(second.status).toBe(503);
    expectClean(second);
    await first.body?.cancel();
    await small.close();
  });
});

describe('faults of ours', () => {
  it('tell nothing of the inside', async () => {
    rig.gate.onCall = () =>
      Promise.reject(new Error(`ENOENT: no such file, open '${import.meta.dirname}/x.db'`));
    const answer = await ask(rig, cookie, call());
    rig.gate.onCall = null;
    expect(answer.status).toBe(500);
    expect(JSON.parse(answer.body)).toMatchObject({ ok: false, error: { kind: 'bug' } });
    expectClean(answer);
    expect(rig.faults).toHaveLength(1);
  });

  it('an answer that cannot be written as JSON is one too', async () => {
    rig.gate.onCall = () => Promise.resolve({ ok: true, value: 1n });
    const answer = await ask(rig, cookie, call());
    rig.gate.onCall = null;
    expect(answer.status).toBe(500);
    expectClean(answer);
  });
});
