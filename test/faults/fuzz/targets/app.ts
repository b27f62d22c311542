import { answerAppRequest } from '../../../../src-main/electron-host/policy/app-requests.ts';
import { isOwnUrl } from '../../../../src-main/electron-host/policy/urls.ts';
import { asCallRequest } from '../../../../src-main/host/requests.ts';
import { asWindowPlace } from '../../../../src-main/host/window-place.ts';
import { fakeGate } from '../../../unit/browser-host/kit.ts';
import type { Draw } from '../draw.ts';
import { broken, NASTY_TEXTS, nastyValue } from '../nasty.ts';
import { Wrong, type Target } from '../target.ts';

const files = new Map([['/index.html', { bytes: Buffer.from('own page'), type: 'text/html' }]]);
const PLACE = { left: 1, top: 2, width: 800, height: 600, maximized: false };

/** What the Electron host decides on: addresses of app://, uploads by it, messages of IPC, the kept window place. */
export const appTarget: Target = {
  name: 'app:// and IPC',
  weight: 3,
  casesASession: 5_000,
  open: () =>
    Promise.resolve({
      async run(draw) {
        switch (draw.below(3)) {
          case 0:
            return ask(draw);
          case 1: {
            const message = draw.chance(0.3)
              ? nastyValue(draw, true)
              : broken(draw, { call: 'a.b', args: {} }, true);
            const request = asCallRequest(message);
            if (request === null) return 'refused';
            if (!/^[A-Za-z][\w.-]*$/.test(request.call)) throw new Wrong('taken for a call', message);
            return 'taken';
          }
          default: {
            const value = broken(draw, PLACE, true);
            const place = asWindowPlace(value);
            if (place === null) return 'refused';
            if (!Number.isInteger(place.left) || place.width < 320)
              throw new Wrong('taken for a place', value);
            return 'taken';
          }
        }
      },
      close: () => Promise.resolve(),
    }),
};

async function ask(draw: Draw): Promise<'taken' | 'refused'> {
  const base = draw.pick([
    'app://loftledger',
    'app://evil',
    'app://loftledger:1',
    'app://a@loftledger',
    'http://x',
    'APP://LOFTLEDGER',
  ]);
  const path = draw.pick([
    '/index.html',
    '/',
    '/upload?name=a.csv',
    '/painted',
    `/${draw.pick(NASTY_TEXTS).slice(0, 500)}`,
    '/../x',
  ]);
  const method = draw.pick(['GET', 'POST', 'HEAD', 'PUT', 'DELETE']);
  const url = `${base}${path}`;
  // What fetch itself does not take never gets to a handler.
  if (!URL.canParse(url) || new URL(url).username !== '') return 'refused';
  const body = method === 'GET' || method === 'HEAD' ? undefined : draw.pick(['', 'x', 'x'.repeat(5000)]);
  const type = draw.pick(['application/octet-stream', 'text/plain', 'application/json']);
  const origin = draw.pick(['app://loftledger', 'null', 'https://evil.example']);
  const gate = fakeGate();
  const response = await answerAppRequest(
    new Request(url, {
      method,
      headers: { 'content-type': type, origin },
      ...(body === undefined ? {} : { body }),
    }),
    {
      gate,
      files,
      onPainted: () => undefined,
      onFault: (error) => {
        throw error;
      },
    },
  );
  const input = { url, method, type, origin };
  if (response.status >= 500) throw new Wrong(`status ${String(response.status)}`, input);
  const text = await response.text();
  if (text === 'own page' && new URL(url).pathname !== '/index.html') throw new Wrong('another path', input);
  if (response.ok && !isOwnUrl(url)) throw new Wrong('another origin was answered', input);
  if (response.ok && method === 'POST' && origin !== 'app://loftledger')
    throw new Wrong('from another origin', input);
  if (response.headers.get('content-security-policy') === null) throw new Wrong('no policy', input);
  return response.ok ? 'taken' : 'refused';
}
