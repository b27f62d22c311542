import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import type { CallAnswer } from '../../../../src-main/contract/gate.ts';
import { ask, CALL, enter, fakeGate, startRig, type Rig } from '../kit.ts';

const MIB = 1024 * 1024;

let rig: Rig;
let cookie: string;
let post: (target: string, body: BodyInit | null, type?: string) => Promise<Response>;

beforeAll(async () => {
  rig = await startRig();
  cookie = await enter(rig);
  post = (target, body, type = 'application/octet-stream') =>
    fetch(`${rig.loopback.origin}${target}`, {
      method: 'POST',
      headers: { Cookie: cookie, Origin: rig.loopback.origin, 'Content-Type': type },
      body,
      duplex: 'half',
    } as RequestInit);
});
afterAll(() => rig.close());
beforeEach(() => {
  rig.gate.calls.length = 0;
  rig.gate.uploads.length = 0;
});

describe('/call', () => {
  it('hands the request to the gate and its answer back, whether ok or not', async () => {
    const refused: CallAnswer = { ok: false, error: { kind: 'not-found', message: 'No such player.' } };
    rig.gate.onCall = () => Promise.resolve(refused);
    const answer = await ask(rig, cookie, { method: 'POST', target: '/call', body: CALL });
    rig.gate.onCall = null;
    expect(answer.status).toBe(200);
    expect(JSON.parse(answer.body)).toEqual(refused);
    expect(rig.gate.calls).toEqual([JSON.parse(CALL)]);
  });

  it('takes JSON in UTF-8, said or not', async () => {
    const body = JSON.stringify({ call: 'a', args: 'Müller 🏌' });
    for (const type of [
      'application/json',
      'application/json; charset=utf-8',
      'Application/JSON;charset=UTF-8',
    ]) {
      const answer = await post('/call', body, type);
      expect(await answer.json()).toEqual({ ok: true, value: { call: 'a', args: 'Müller 🏌' } });
    }
  });

  it('answers several at once on their own', async () => {
    const bodies = Array.from({ length: 20 }, (_, i) => JSON.stringify({ call: 'a', args: i }));
    const answers = await Promise.all(bodies.map((body) => post('/call', body, 'application/json')));
    const values = await Promise.all(answers.map((answer) => answer.json()));
    expect(values).toEqual(bodies.map((body) => ({ ok: true, value: JSON.parse(body) as unknown })));
  });
});

describe('/page', () => {
  it('answers what a call has set, under its own policy, and says when it is gone', async () => {
    const policy = "default-src 'none'; sandbox";
    rig.gate.pages.set('abc', { type: 'text/html; charset=utf-8', bytes: Buffer.from('<p>ü'), policy });
    rig.gate.pages.set('pdf', {
      type: 'application/pdf',
      bytes: Buffer.from('%PDF'),
      name: 'Plan for Zoë.pdf',
    });
    const shown = await ask(rig, cookie, { target: '/page?id=abc' });
    expect([shown.status, Buffer.from(shown.body, 'latin1').toString()]).toEqual([200, '<p>ü']);
    expect(shown.headers.get('content-security-policy')).toBe(policy);
    expect(shown.headers.get('cross-origin-resource-policy')).toBe('same-origin');
    const saved = await ask(rig, cookie, { target: '/page?id=pdf' });
    expect(saved.headers.get('content-type')).toBe('application/pdf');
    expect(saved.headers.get('content-disposition')).toBe(
      "attachment; filename*=UTF-8''Plan%20for%20Zo%C3%AB.pdf",
    );
    expect(saved.headers.get('content-security-policy')).toContain("frame-ancestors 'none'");
    for (const target of ['/page', '/page?id=', '/page?id=abd', '/page/abc']) {
      expect((await ask(rig, cookie, { target })).status).toBe(404);
    }
  });

  it('is for the window alone', async () => {
    rig.gate.pages.set('abc', { type: 'text/html', bytes: Buffer.from('secret'), policy: '' });
    const refusals = await Promise.all([
      ask(rig, null, { target: '/page?id=abc' }),
      ask(rig, cookie, { target: '/page?id=abc', headers: { 'Sec-Fetch-Site': 'cross-site' } }),
      ask(rig, cookie, { target: '/page?id=abc', headers: { 'Sec-Fetch-Site': 'same-site' } }),
      ask(rig, cookie, { target: '/page?id=abc', headers: { Host: 'evil.example' } }),
      ask(rig, cookie, { target: '/page?id=abc', method: 'POST' }),
    ]);
    expect(refusals.map(({ status }) => status)).toEqual([401, 403, 403, 421, 405]);
    for (const { body } of refusals) expect(body).not.toContain('secret');
  });
});

describe('/upload', () => {
  it('streams the file to the gate under its name', async () => {
    const answer = await post('/upload?name=shots%20(1).csv', 'a,b\n1,2\n');
    expect(await answer.json()).toEqual({ ok: true, value: 8 });
    expect(rig.gate.uploads).toEqual([{ name: 'shots (1).csv', bytes: 8, failed: false }]);
  });

  it('takes 200 MiB, and not a byte more', async () => {
    const part = new Uint8Array(MIB);
    const stream = (parts: number, more = 0) =>
      new ReadableStream<Uint8Array>({
        pull(controller) {
          if (parts-- > 0) return controller.enqueue(part);
          if (more > 0) controller.enqueue(new Uint8Array(more));
          controller.close();
        },
      });
    expect(await (await post('/upload?name=a.csv', stream(200))).json()).toEqual({
      ok: true,
      value: 200 * MIB,
    });
    expect((await post('/upload?name=b.csv', stream(200, 1))).status).toBe(413);
    expect(rig.gate.uploads[1]).toMatchObject({ name: 'b.csv', failed: true });
  });

  it('answers when the gate has seen enough, and goes on with the next request', async () => {
    const { upload } = rig.gate;
    rig.gate.upload = async (_name, stream) => {
      for await (const _chunk of stream) break;
      return { ok: false, error: { kind: 'refused', message: 'No bag file.' } };
    };
    const answer = await ask(rig, cookie, {
      method: 'POST',
      target: '/upload?name=a.json',
      headers: { 'Content-Type': 'application/octet-stream' },
      body: 'x'.repeat(20 * MIB),
    });
    rig.gate.upload = upload;
    expect(answer.status).toBe(200);
    expect(answer.body).toContain('No bag file.');
    expect((await post('/call', CALL, 'application/json')).status).toBe(200);
  });

  it('tells the gate when the sender goes away', async () => {
    const gone = new AbortController();
    const endless = new ReadableStream<Uint8Array>({
      async pull(controller) {
        controller.enqueue(new Uint8Array(1000));
        await new Promise((resolve) => setTimeout(resolve, 5));
      },
    });
    const sent = fetch(`${rig.loopback.origin}/upload?name=a.csv`, {
      method: 'POST',
      headers: { Cookie: cookie, Origin: rig.loopback.origin, 'Content-Type': 'application/octet-stream' },
      body: endless,
      duplex: 'half',
      signal: gone.signal,
    } as RequestInit);
    await expect.poll(() => rig.gate.uploads[0]?.bytes).toBeGreaterThan(0);
    gone.abort();
    await expect(sent).rejects.toThrow();
    await expect.poll(() => rig.gate.uploads[0]?.failed).toBe(true);
    expect(rig.faults).toEqual([]);
  });

  it.each(['/upload', '/upload?name=', '/upload?name=..%2Fa.csv', '/upload?name=a%00.csv'])(
    '%s is 400',
    async (target) => {
      expect((await post(target, 'x')).status).toBe(400);
      expect(rig.gate.uploads).toEqual([]);
    },
  );

  it('of more than two at once is 503', async () => {
    const { upload } = rig.gate;
    const both = Promise.withResolvers<undefined>();
    let waiting = 0;
    rig.gate.upload = async () => {
      if (++waiting === 2) both.resolve(undefined);
      await new Promise((resolve) => setTimeout(resolve, 100));
      return { ok: true, value: null };
    };
    const first = [post('/upload?name=a.csv', 'x'), post('/upload?name=b.csv', 'x')];
    await both.promise;
    expect((await post('/upload?name=c.csv', 'x')).status).toBe(503);
    expect((await Promise.all(first)).map(({ status }) => status)).toEqual([200, 200]);
    rig.gate.upload = upload;
  });
});

describe('/events', () => {
  it('carries the gate’s events, and stops listening when the window goes', async () => {
    const gone = new AbortController();
    const { signal } = gone;
    const response = await fetch(`${rig.loopback.origin}/events`, { headers: { Cookie: cookie }, signal });
    expect(response.headers.get('content-type')).toBe('text/event-stream; charset=utf-8');
    const reader = response.body!.pipeThrough(new TextDecoderStream()).getReader();
    let text = '';
    rig.gate.emit({ event: 'changed', data: { note: 'two\nlines' } });
    while (!text.includes('data:')) text += (await reader.read()).value ?? '';
    expect(text).toBe('retry: 1000\n\ndata: {"event":"changed","data":{"note":"two\\nlines"}}\n\n');
    expect(rig.gate.listeners()).toBe(1);
    gone.abort();
    await expect.poll(() => rig.gate.listeners()).toBe(0);
  });

  it('beats, so that a dead connection is noticed', async () => {
    const quick = await startRig({ limits: { heartbeatMs: 10 } });
    const response = await fetch(`${quick.loopback.origin}/events`, {
      headers: { Cookie: await enter(quick) },
    });
    const reader = response.body!.pipeThrough(new TextDecoderStream()).getReader();
    let text = '';
    while (!text.includes('\n:\n\n')) text += (await reader.read()).value ?? '';
    await reader.cancel();
    await quick.close();
  });

  it('cuts a reader that sleeps instead of keeping everything for it', async () => {
    const small = await startRig({ limits: { eventBacklogBytes: 1000 } });
    const response = await fetch(`${small.loopback.origin}/events`, {
      headers: { Cookie: await enter(small) },
    });
    const big = 'x'.repeat(4 * MIB);
    for (let i = 0; i < 10; i++) small.gate.emit({ event: 'changed', data: big });
    await expect.poll(() => small.gate.listeners()).toBe(0);
    await response.body?.cancel().catch(() => undefined);
    await small.close();
  });
});

describe('/painted', () => {
  it('tells the host, and answers nothing', async () => {
    const answer = await ask(rig, cookie, { method: 'POST', target: '/painted' });
    expect([answer.status, answer.body]).toEqual([204, '']);
    expect(rig.painted()).toBe(1);
  });
});

describe('closing', () => {
  it('ends the event streams and lets a running call finish', async () => {
    const gate = fakeGate();
    const other = await startRig({ gate });
    const inside = await enter(other);
    const stream = await fetch(`${other.loopback.origin}/events`, { headers: { Cookie: inside } });
    const begun = Promise.withResolvers<undefined>();
    gate.onCall = async () => {
      begun.resolve(undefined);
      await new Promise((resolve) => setTimeout(resolve, 50));
      return { ok: true, value: 'done' };
    };
    const running = ask(other, inside, { method: 'POST', target: '/call', body: CALL });
    await begun.promise;
    await other.close();
    expect((await running).body).toContain('done');
    expect(await stream.text()).toBe('retry: 1000\n\n');
    await expect(fetch(other.loopback.origin)).rejects.toThrow();
  });

  it('does not wait for ever for a call that hangs', async () => {
    const gate = fakeGate();
    const other = await startRig({ gate });
    const inside = await enter(other);
    gate.onCall = () => new Promise(() => undefined);
    const hanging = ask(other, inside, { method: 'POST', target: '/call', body: CALL });
    await expect.poll(() => gate.calls.length).toBe(1);
    await other.close();
    expect((await hanging).raw).toBe('');
  });
});

it('HEAD answers the headers of GET without the body', async () => {
  const get = await ask(rig, cookie, { target: '/index.html' });
  const head = await ask(rig, cookie, { method: 'HEAD', target: '/index.html' });
  expect(head.status).toBe(200);
  expect(head.body).toBe('');
  expect(head.headers.get('content-length')).toBe(String(get.body.length));
});
