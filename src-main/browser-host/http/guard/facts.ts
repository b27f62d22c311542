import type { IncomingMessage } from 'node:http';
import type { Facts } from './guards.ts';
import type { Limits } from './limits.ts';
import { routeOf } from './routes.ts';
import type { Door } from './token.ts';

export type Asked = { facts: Facts; path: string; query: URLSearchParams };

/** What a request is and says, read once, without deciding anything. */
export function factsOf(request: IncomingMessage, own: { host: string; door: Door; limits: Limits }): Asked {
  const target = request.url ?? '';
  const cut = target.indexOf('?');
  const path = cut < 0 ? target : target.slice(0, cut);
  const query = new URLSearchParams(cut < 0 ? '' : target.slice(cut + 1));
  const route = routeOf(path);
  const facts: Facts = {
    method: request.method ?? '',
    target,
    path,
    route,
    header: (name) => sentValues(request.rawHeaders, name),
    ownHost: own.host,
    ownOrigin: `http://${own.host}`,
    hasSession: own.door.admits(request.headers.cookie),
    bringsToken: route.name === 'open' && own.door.fits(query.get('token')),
    limits: own.limits,
  };
  return { facts, path, query };
}

/** From the raw list, since Node's own table drops or joins what was sent twice. */
function sentValues(rawHeaders: readonly string[], name: string): string[] {
  const values: string[] = [];
  for (let i = 0; i + 1 < rawHeaders.length; i += 2) {
    if (rawHeaders[i]?.toLowerCase() === name) values.push(rawHeaders[i + 1] ?? '');
  }
  return values;
}
