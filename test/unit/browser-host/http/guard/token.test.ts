import { describe, expect, it } from 'vitest';
import {
  cookieValues,
  createDoor,
  sameSecret,
} from '../../../../../src-main/browser-host/http/guard/token.ts';

describe('the door', () => {
  it('opens once for its token, and then admits its session', () => {
    const door = createDoor(4100);
    expect(door.fits(door.token)).toBe(true);
    const cookie = door.open(door.token);
    expect(cookie).toMatch(/^loftledger-4100=[\w-]{43}; Path=\/; HttpOnly; SameSite=Strict$/);
    expect(door.fits(door.token)).toBe(false);
    expect(door.open(door.token)).toBeNull();
    expect(door.admits(cookie?.split(';')[0])).toBe(true);
  });

  it('does not take the token as a session, or wrong tokens as the token', () => {
    const door = createDoor(4100);
    for (const wrong of [null, '', door.token.slice(1), `${door.token} `, createDoor(4100).token]) {
      expect(door.open(wrong)).toBeNull();
    }
    expect(door.admits(`loftledger-4100=${door.token}`)).toBe(false);
    expect(door.admits(undefined)).toBe(false);
    expect(door.admits('')).toBe(false);
  });

  it('has 256 bits in each secret, and new ones each time', () => {
    const doors = Array.from({ length: 20 }, () => createDoor(1));
    const secrets = doors.flatMap((door) => [door.token, door.open(door.token)?.split(/[=;]/)[1] ?? '']);
    expect(new Set(secrets).size).toBe(40);
    for (const text of secrets) expect(Buffer.from(text, 'base64url')).toHaveLength(32);
  });
});

describe('cookieValues', () => {
  it('finds every value of a name, beside others', () => {
    expect(cookieValues('a=1; b=2;a=3 ; aa=4;a', 'a')).toEqual(['1', '3']);
    expect(cookieValues('b=a=1', 'a')).toEqual([]);
    expect(cookieValues(undefined, 'a')).toEqual([]);
  });

  it('so that a page of another port cannot lock the window out with a cookie of its own', () => {
    const door = createDoor(1);
    const session = door.open(door.token)?.split(';')[0] ?? '';
    expect(door.admits(`${door.cookieName}=planted; ${session}`)).toBe(true);
  });
});

describe('sameSecret', () => {
  it.each([
    ['a', 'a', true],
    ['a', 'b', false],
    ['', 'a', false],
    ['aa', 'a', false],
  ])('%j and %j: %j', (given, wanted, same) => {
    expect(sameSecret(given, wanted)).toBe(same);
  });
});
