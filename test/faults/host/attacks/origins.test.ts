import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { describe, expect, it } from 'vitest';
import { ask, enter, startRig } from '../../../unit/browser-host/kit.ts';
import { call, cookie, expectRefused, rig, useRig } from './kit.ts';

useRig();

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
