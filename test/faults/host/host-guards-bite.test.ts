import { describe, expect, it } from 'vitest';
import { GUARDS } from '../../../src-main/browser-host/http/guard/guards.ts';
import { ask, CALL, enter, startRig, type Ask } from '../../unit/browser-host/kit.ts';

/**
 * Each guard keeps out something that the others let through: with it the attack is refused, and without it, all
 * others standing, the attack arrives. So no guard is for show, and no attack test passes for another reason.
 */
type Bite = { attack: Ask; with: number; without: number; session?: boolean };

const call = (headers: Record<string, string | null>): Ask => ({
  method: 'POST',
  target: '/call',
  body: CALL,
  headers,
});

const BITES: Record<string, Bite> = {
  'single-headers': { attack: { headers: { 'sec-fetch-site': 'cross-site' } }, with: 400, without: 200 },
  host: { attack: { headers: { Host: 'rebound.example' } }, with: 421, without: 200 },
  // Behind it the table of files knows no such path either.
  'plain-path': { attack: { target: '/%2e%2e/outside.txt' }, with: 400, without: 404 },
  method: { attack: { method: 'TRACE' }, with: 405, without: 200 },
  'fetch-site': { attack: { headers: { 'Sec-Fetch-Site': 'same-site' } }, with: 403, without: 200 },
  origin: {
    attack: call({ Origin: 'https://evil.example', 'Sec-Fetch-Site': null }),
    with: 403,
    without: 200,
  },
  session: { attack: call({}), with: 401, without: 200, session: false },
  'content-type': { attack: call({ 'Content-Type': 'text/plain' }), with: 415, without: 200 },
  // Behind it the bytes are counted: these never come.
  size: { attack: call({ 'Content-Length': '1125899906842624' }), with: 413, without: 408 },
};

const limits = { bodyIdleMs: 200, lingerMs: 200 };

describe('every guard bites', () => {
  it('and is in this table', () => {
    expect(Object.keys(BITES)).toEqual(GUARDS.map(({ name }) => name));
  });

  it.each(Object.entries(BITES))('%s', async (name, bite) => {
    const whole = await startRig({ limits });
    const holed = await startRig({ limits, guards: GUARDS.filter((guard) => guard.name !== name) });
    const statusOf = async (rig: typeof whole) => {
      const cookie = await enter(rig);
      return (await ask(rig, bite.session === false ? null : cookie, bite.attack)).status;
    };
    expect(await statusOf(whole)).toBe(bite.with);
    expect(await statusOf(holed)).toBe(bite.without);
    await whole.close();
    await holed.close();
  });
});
