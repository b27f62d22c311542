import { createHash, randomBytes, timingSafeEqual } from 'node:crypto';

/**
 * The way in: a launch token that opens once, for the session secret that the cookie then carries. Both have 256
 * random bits. There is one session a start: whoever opened first is in, and nobody after.
 */
export type Door = {
  readonly token: string;
  readonly cookieName: string;
  /** True for the right token while it is unused; using it up is `open`. */
  fits(token: string | null): boolean;
  /** Uses the token up. @returns the Set-Cookie value, or null when it does not fit (any more). */
  open(token: string | null): string | null;
  /** Whether a Cookie header carries the session. */
  admits(cookieHeader: string | undefined): boolean;
};

/** @param port is in the cookie's name, since cookies ignore ports and two starts would overwrite each other's. */
export function createDoor(port: number): Door {
  const token = secret();
  const session = secret();
  const cookieName = `loftledger-${String(port)}`;
  let used = false;
  const fits = (given: string | null) => !used && given !== null && sameSecret(given, token);
  return {
    token,
    cookieName,
    fits,
    open(given) {
      if (!fits(given)) return null;
      used = true;
      return `${cookieName}=${session}; Path=/; HttpOnly; SameSite=Strict`;
    },
    admits: (header) => cookieValues(header, cookieName).some((value) => sameSecret(value, session)),
  };
}

function secret(): string {
  return randomBytes(32).toString('base64url');
}

/** In constant time, whatever the lengths: digests of both are compared. */
export function sameSecret(given: string, wanted: string): boolean {
  const digest = (text: string) => createHash('sha256').update(text).digest();
  return timingSafeEqual(digest(given), digest(wanted));
}

/** Every value that a Cookie header gives to this name (a page of another port can add its own beside ours). */
export function cookieValues(header: string | undefined, name: string): string[] {
  if (header === undefined) return [];
  const values: string[] = [];
  for (const part of header.split(';')) {
    const cut = part.indexOf('=');
    if (cut > 0 && part.slice(0, cut).trim() === name) values.push(part.slice(cut + 1).trim());
  }
  return values;
}
