import { describe, expect, it } from 'vitest';
import { ask, CALL, enter, exchange, parseAnswer, startRig } from '../../../unit/browser-host/kit.ts';
import { call, cookie, expectClean, expectRefused, rig, useRig } from './kit.ts';

useRig();

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
