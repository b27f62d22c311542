import { describe, expect, it } from 'vitest';
import { ask, enter, exchange, parseAnswer, startRig } from '../../../unit/browser-host/kit.ts';
import { call, cookie, expectClean, expectRefused, rig, useRig } from './kit.ts';

useRig();

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
