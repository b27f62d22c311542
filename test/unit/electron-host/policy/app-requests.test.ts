import { beforeEach, describe, expect, it } from 'vitest';
import { answerAppRequest } from '../../../../src-main/electron-host/policy/app-requests.ts';
import { ANSWER_HEADERS } from '../../../../src-main/host/headers.ts';
import { fakeGate, type FakeGate } from '../../browser-host/kit.ts';

const file = (text: string) => ({ bytes: Buffer.from(text), type: 'text/html; charset=utf-8' });
const files = new Map([
  ['/', file('index')],
  ['/index.html', file('index')],
]);

let gate: FakeGate;
let painted: number;
let faults: unknown[];
beforeEach(() => ([gate, painted, faults] = [fakeGate(), 0, []]));

/** A plain object where the platform's Request takes no app:// address with a body. */
async function ask(path: string, init: RequestInit = {}): Promise<Response> {
  const request = new Request(`app://loftledger${path}`, { duplex: 'half', ...init } as RequestInit);
  const answer = await answerAppRequest(request, {
    gate,
    files,
    onPainted: () => painted++,
    onFault: (error) => faults.push(error),
  });
  for (const [name, value] of Object.entries(ANSWER_HEADERS)) expect(answer.headers.get(name)).toBe(value);
  return answer;
}

const upload = (path: string, body: BodyInit, type = 'application/octet-stream') =>
  ask(path, { method: 'POST', body, headers: { 'Content-Type': type } });

describe('app://', () => {
  it('serves the files of the window with all headers', async () => {
    const answer = await ask('/index.html');
    expect([answer.status, await answer.text()]).toEqual([200, 'index']);
    expect(answer.headers.get('content-type')).toBe('text/html; charset=utf-8');
    expect(await (await ask('/', { method: 'HEAD' })).text()).toBe('');
  });

  it.each([
    '/nothing',
    '/../index.html.bak',
    '/%2e%2e/etc/passwd',
    '/..%2fetc/passwd',
    '/constructor',
    '//index.html',
  ])('%s is 404', async (path) => {
    expect((await ask(path)).status).toBe(404);
  });

  it('answers the pages of the gate, each under its own policy', async () => {
    gate.pages.set('abc', { type: 'text/html', bytes: Buffer.from('<p>x'), policy: "default-src 'none'" });
    const parts = { gate, files, onPainted: () => painted++, onFault: () => undefined };
    const page = await answerAppRequest(new Request('app://loftledger/page?id=abc'), parts);
    expect([page.status, await page.text()]).toEqual([200, '<p>x']);
    expect(page.headers.get('content-security-policy')).toBe("default-src 'none'");
    expect(page.headers.get('x-content-type-options')).toBe('nosniff');
    for (const path of ['/page', '/page?id=', '/page?id=abd', '/page/abc']) {
      expect((await ask(path)).status).toBe(404);
    }
    expect((await ask('/page?id=abc', { method: 'POST' })).status).toBe(405);
  });

  it('answers no other host', async () => {
    const parts = { gate, files, onPainted: () => painted++, onFault: () => undefined };
    expect((await answerAppRequest(new Request('app://evil/'), parts)).status).toBe(404);
    expect((await answerAppRequest(new Request('file:///index.html'), parts)).status).toBe(404);
  });

  it('refuses other methods and other origins', async () => {
    expect((await ask('/', { method: 'PUT' })).status).toBe(405);
    expect((await ask('/index.html', { method: 'POST' })).status).toBe(405);
    expect((await ask('/call', { method: 'POST' })).status).toBe(405);
    const headers = { Origin: 'https://example.org' };
    expect((await ask('/painted', { method: 'POST', headers })).status).toBe(403);
    expect(painted).toBe(0);
  });

  it('takes the first paint', async () => {
    expect((await ask('/painted', { method: 'POST' })).status).toBe(204);
    expect(painted).toBe(1);
  });

  it('streams an upload to the gate', async () => {
    const answer = await upload('/upload?name=bag.json', 'x'.repeat(100_000));
    expect(await answer.json()).toEqual({ ok: true, value: 100_000 });
  });

  it('refuses an upload without a plain name, or of another type', async () => {
    expect((await upload('/upload', 'x')).status).toBe(400);
    expect((await upload('/upload?name=..%2Fa', 'x')).status).toBe(400);
    expect((await upload('/upload?name=a.json', 'x', 'text/plain')).status).toBe(415);
    expect(gate.uploads).toEqual([]);
  });

  it('cuts an upload over 200 MiB', async () => {
    const part = new Uint8Array(1024 * 1024);
    let left = 201;
    const body = new ReadableStream<Uint8Array>({
      pull: (controller) => (left-- > 0 ? controller.enqueue(part) : controller.close()),
    });
    expect((await upload('/upload?name=a.csv', body)).status).toBe(413);
    expect(gate.uploads[0]?.failed).toBe(true);
  });

  it('tells nothing of a fault but that it happened', async () => {
    gate.upload = () => Promise.reject(new Error('at /home/coach/x.ts'));
    const answer = await upload('/upload?name=a.csv', 'x');
    expect(answer.status).toBe(500);
    expect(await answer.text()).not.toContain('/home');
    expect(faults).toHaveLength(1);
  });
});
