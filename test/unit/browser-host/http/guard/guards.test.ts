import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { describe, expect, it } from 'vitest';
import {
  firstRefusal,
  GUARDS,
  isPlainTarget,
  mostBytes,
  type Facts,
} from '../../../../../src-main/browser-host/http/guard/guards.ts';
import { LIMITS } from '../../../../../src-main/browser-host/http/guard/limits.ts';
import { routeOf } from '../../../../../src-main/browser-host/http/guard/routes.ts';

const HOST = '127.0.0.1:4100';

/** A request of the own window to this path, changed. */
function facts(
  path: string,
  change: Partial<Omit<Facts, 'header'>> & { headers?: Record<string, string> } = {},
): Facts {
  const { headers, ...rest } = change;
  const route = routeOf(path);
  const sent: Record<string, string> = {
    host: HOST,
    'sec-fetch-site': 'same-origin',
    ...(route.bodyType === null ? {} : { 'content-type': route.bodyType }),
    ...(route.methods.includes('POST') ? { origin: `http://${HOST}` } : {}),
    ...headers,
  };
  return {
    method: route.methods[0] ?? '',
    target: path,
    path,
    route,
    header: (name) => (sent[name] === undefined ? [] : [sent[name]]),
    ownHost: HOST,
    ownOrigin: `http://${HOST}`,
    hasSession: true,
    bringsToken: false,
    limits: LIMITS,
    ...rest,
  };
}

describe('the guards', () => {
  it('have names of their own and say what they are against', () => {
    expect(new Set(GUARDS.map(({ name }) => name)).size).toBe(GUARDS.length);
    for (const guard of GUARDS) expect(guard.against).not.toBe('');
  });

  it.each(['/', '/assets/index-Bz3_x-1.js', '/call', '/upload', '/painted', '/events'])(
    'let the own window to %s',
    (path) => {
      expect(firstRefusal(GUARDS, facts(path))).toBeNull();
    },
  );

  it('let the unused token in from anywhere, without a session, and nobody else', () => {
    const headers = { 'sec-fetch-site': 'cross-site', origin: 'null' };
    const from = facts('/open', { hasSession: false, headers });
    expect(firstRefusal(GUARDS, { ...from, bringsToken: true })).toBeNull();
    expect(firstRefusal(GUARDS, from)?.status).toBe(403);
    expect(firstRefusal(GUARDS, facts('/open', { hasSession: true }))?.status).toBe(401);
  });

  it('answer the first refusal of the list', () => {
    const everythingWrong = facts('/call', {
      method: 'TRACE',
      target: '/..',
      hasSession: false,
      headers: { host: 'evil.example', origin: 'null', 'content-type': 'text/plain' },
    });
    const statuses = [421, 400, 405, 403, 401, 415];
    for (const [i, status] of statuses.entries()) {
      const names = ['host', 'plain-path', 'method', 'origin', 'session', 'content-type'].slice(i);
      const guards = GUARDS.filter(({ name }) => names.includes(name));
      expect(firstRefusal(guards, everythingWrong)?.status).toBe(status);
    }
  });
});

describe('isPlainTarget', () => {
  it.each([
    '/',
    '/a',
    '/a/b.c',
    '/a-b_c/d.e.f',
    '/call?x=1',
    '/upload?name=bag%20(1).csv&x=',
    '/.well-known',
    '/a..b',
  ])('%s is', (target) => {
    expect(isPlainTarget(target)).toBe(true);
  });

  it.each([
    '',
    '*',
    'a',
    '//',
    '//a',
    '/a/',
    '/a//b',
    '/..',
    '/.',
    '/a/../b',
    '/a/..',
    '/...',
    '/%61',
    '/a\\b',
    '/a b',
  ])('%j is not', (target) => {
    expect(isPlainTarget(target)).toBe(false);
  });

  it.each(['/a?b#c', '/a?<', '/a?b?c', '/a?\u0000', '/a?é', '/a#b', '/\u0000'])('%j is not', (target) => {
    expect(isPlainTarget(target)).toBe(false);
  });
});

describe('mostBytes', () => {
  it('is 1 MiB for a call, 200 MiB for an upload, nothing for the rest', () => {
    const most = (path: string) => mostBytes(routeOf(path), LIMITS);
    expect(most('/call')).toBe(1_048_576);
    expect(most('/upload')).toBe(209_715_200);
    expect([most('/'), most('/painted'), most('/events'), most('/open')]).toEqual([0, 0, 0, 0]);
  });
});

it('the README has every guard, in the order in which they are asked', () => {
  const readme = readFileSync(
    resolve(import.meta.dirname, '../../../../../src-main/browser-host/README.md'),
    'utf8',
  );
  const listed = [...readme.matchAll(/^\| `([a-z-]+)` \| (\d{3}) \|/gm)].map(([, name]) => name);
  expect(listed).toEqual(GUARDS.map(({ name }) => name));
});
