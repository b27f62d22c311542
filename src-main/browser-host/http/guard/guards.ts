import type { Limits } from './limits.ts';
import type { Route } from './routes.ts';

/** What the guards may know of a request: plain values, so that each guard is a function of these alone. */
export type Facts = {
  method: string;
  /** The request target as it was sent, not decoded. */
  target: string;
  path: string;
  route: Route;
  /** Every value that was sent for a header, by its name in small letters. */
  header: (name: string) => readonly string[];
  /** Ours: `127.0.0.1:port`. */
  ownHost: string;
  /** Ours: `http://127.0.0.1:port`. */
  ownOrigin: string;
  hasSession: boolean;
  /** The request is for /open and brings the launch token while it is unused. */
  bringsToken: boolean;
  limits: Limits;
};

export type Refused = { status: number; message: string; allow?: string };

export type Guard = {
  name: string;
  /** What it keeps out, for the table in the README. */
  against: string;
  check: (facts: Facts) => Refused | null;
};

/** Asked in this order; the first refusal is the answer. */
export const GUARDS: readonly Guard[] = [
  {
    name: 'single-headers',
    against: 'two values for a header that is decided on',
    check: (facts) => {
      const twice = SINGLE.find((name) => facts.header(name).length > 1);
      return twice === undefined ? null : { status: 400, message: `The header ${twice} was sent twice.` };
    },
  },
  {
    name: 'host',
    against: 'DNS rebinding: a foreign name that points at 127.0.0.1',
    check: (facts) =>
      facts.header('host')[0] === facts.ownHost
        ? null
        : { status: 421, message: 'This address is not served here. Open the window with npm start.' },
  },
  {
    name: 'plain-path',
    against: 'traversal in any spelling: only plain segments, nothing encoded, no dots-only segment',
    check: (facts) =>
      isPlainTarget(facts.target) ? null : { status: 400, message: 'The path is not a plain one.' },
  },
  {
    name: 'method',
    against: 'methods that nothing here needs, TRACE and OPTIONS (CORS preflights) included',
    check: (facts) =>
      facts.route.methods.includes(facts.method)
        ? null
        : {
            status: 405,
            message: 'This method is not answered here.',
            allow: facts.route.methods.join(', '),
          },
  },
  {
    name: 'fetch-site',
    against: 'pages of other sites and other ports, the event stream included',
    check: (facts) => {
      const site = facts.header('sec-fetch-site')[0];
      if (site === undefined || site === 'same-origin' || facts.bringsToken) return null;
      if (site === 'none' && facts.header('sec-fetch-mode')[0] === 'navigate') return null;
      return { status: 403, message: 'Only the own window may ask this.' };
    },
  },
  {
    name: 'origin',
    against: 'writes from other origins; a POST has to say where it comes from',
    check: (facts) => {
      const origin = facts.header('origin')[0];
      if (origin === undefined && facts.method !== 'POST') return null;
      if (origin === facts.ownOrigin || facts.bringsToken) return null;
      return {
        status: 403,
        message:
          origin === undefined
            ? 'A POST without Origin is not answered.'
            : 'Another origin may not ask this.',
      };
    },
  },
  {
    name: 'session',
    against: 'anyone who has not come in by the launch token, other users of the machine included',
    check: (facts) => {
      if (facts.route.name === 'open' ? facts.bringsToken : facts.hasSession) return null;
      return {
        status: 401,
        message:
          facts.route.name === 'open'
            ? 'This link was used already or is not valid. Start Loftledger again for a new one.'
            : 'No session. Open the window with npm start.',
      };
    },
  },
  {
    name: 'content-type',
    against: 'bodies that a foreign page may send without asking (forms, text/plain), and packed bodies',
    check: (facts) => {
      const wanted = facts.route.bodyType;
      if (wanted === null) return null;
      const encoding = facts.header('content-encoding')[0];
      const fits = isContentType(facts.header('content-type')[0], wanted) && encoding === undefined;
      return fits ? null : { status: 415, message: `Send this as ${wanted}.` };
    },
  },
  {
    name: 'size',
    against: 'bodies over the limit, as far as they say so beforehand (the rest is counted while read)',
    check: (facts) => {
      const most = mostBytes(facts.route, facts.limits);
      const length = Number(facts.header('content-length')[0] ?? '0');
      return length <= most
        ? null
        : { status: 413, message: `At most ${String(most)} bytes are taken here.` };
    },
  },
];

/** Headers whose value decides something here. */
const SINGLE = ['host', 'origin', 'sec-fetch-site', 'sec-fetch-mode', 'content-type', 'content-encoding'];

/** The first refusal of the list, or null when the request may pass. */
export function firstRefusal(guards: readonly Guard[], facts: Facts): Refused | null {
  for (const guard of guards) {
    const refused = guard.check(facts);
    if (refused !== null) return refused;
  }
  return null;
}

/** The body of a route in bytes: calls and uploads have their limits, nothing else has a body. */
export function mostBytes(route: Route, limits: Limits): number {
  if (route.name === 'call') return limits.callBytes;
  return route.name === 'upload' ? limits.uploadBytes : 0;
}

const PLAIN_PATH = /^(?:\/|(?:\/(?!\.+(?:\/|$))[A-Za-z0-9._-]+)+)$/;
/** What encodeURIComponent and URLSearchParams leave or make. */
const PLAIN_QUERY = /^[A-Za-z0-9._~%=&+!'()*-]*$/;

/** Nothing but letters, digits, dot, dash and underscore in the path: there is nothing left to decode or to resolve. */
export function isPlainTarget(target: string): boolean {
  const cut = target.indexOf('?');
  const path = cut < 0 ? target : target.slice(0, cut);
  return PLAIN_PATH.test(path) && (cut < 0 || PLAIN_QUERY.test(target.slice(cut + 1)));
}

function isContentType(header: string | undefined, wanted: string): boolean {
  const [type, ...parameters] = (header ?? '').toLowerCase().split(';');
  return type?.trim() === wanted && parameters.every((text) => text.trim() === 'charset=utf-8');
}
