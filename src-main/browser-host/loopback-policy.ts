/**
 * Who might attack the loopback host, how each is kept out, and the test that plays him: `test` stands in a title of
 * that file. What guards there are, and in which order they are asked, is in guards.ts.
 */
export type LoopbackLine = {
  attacker: string;
  met: string;
  proof: { tested: string; test: string } | { stated: string };
};

const TOKEN = 'test/faults/host/attacks/token.test.ts';
const ORIGINS = 'test/faults/host/attacks/origins.test.ts';
const REQUESTS = 'test/faults/host/attacks/requests.test.ts';
const WINDOW = 'test/faults/host/host-window.test.ts';

export const LOOPBACK_POLICY: readonly LoopbackLine[] = [
  {
    attacker: 'another machine of the network',
    met: 'The server listens on 127.0.0.1 alone.',
    proof: { tested: ORIGINS, test: 'listens on 127.0.0.1 alone' },
  },
  {
    attacker: 'another user or program of this machine, without the token',
    met: '256 random bits for the token and the session, compared in constant time; 401 without.',
    proof: { tested: TOKEN, test: 'without the token' },
  },
  {
    attacker: 'whoever saw the token later',
    met: 'It opens once.',
    proof: { tested: TOKEN, test: 'replayed is refused, and gives no cookie' },
  },
  {
    attacker: 'a user who reads the process list, or the profile',
    met: 'The token goes by a page of mode 0600 in a folder of mode 0700, gone once used; no argument holds it.',
    proof: { tested: WINDOW, test: 'gets the token by a private page' },
  },
  {
    attacker: 'a web page whose name is made to point at 127.0.0.1 (DNS rebinding)',
    met: 'Any Host but 127.0.0.1 and the port is 421.',
    proof: { tested: ORIGINS, test: 'DNS rebinding and other hosts' },
  },
  {
    attacker: 'a hostile web page that posts, fetches, embeds or listens',
    met: 'Origin and Sec-Fetch-Site are checked on every request, only JSON is taken, there is no CORS.',
    proof: { tested: 'test/faults/host/hostile-page.test.ts', test: 'learns nothing and does nothing' },
  },
  {
    attacker: 'a page served on another port of this machine, with whom cookies are shared',
    met: 'The same; Sec-Fetch-Site same-site is refused.',
    proof: { tested: ORIGINS, test: 'a page served on another port cannot read the events' },
  },
  {
    attacker: 'another user of this machine who looks for the records',
    met: 'The data folder is 0700, its files 0600.',
    proof: { tested: 'test/faults/host/hostile-page.test.ts', test: 'reads neither the records' },
  },
  {
    attacker: 'a script that steals the session',
    met: 'The cookie is HttpOnly and SameSite=Strict.',
    proof: { tested: TOKEN, test: 'gives a cookie that scripts and other sites cannot use' },
  },
  {
    attacker: 'a path that leads out of the window’s folder',
    met: 'Paths are keys of a table of what was read at the start; only plain ones are looked up.',
    proof: { tested: REQUESTS, test: 'traversal' },
  },
  {
    attacker: 'methods that nothing needs (TRACE, CONNECT, preflights)',
    met: '405.',
    proof: { tested: REQUESTS, test: 'methods' },
  },
  {
    attacker: 'oversize and malformed requests, smuggling',
    met: '1 MiB a call, 200 MiB an upload, 16 KiB of headers; what cannot be read is 400.',
    proof: { tested: REQUESTS, test: 'malformed and oversize' },
  },
  {
    attacker: 'slow and greedy connections',
    met: 'Times for headers, bodies and silence; limits for connections, streams and uploads.',
    proof: { tested: REQUESTS, test: 'slow and greedy' },
  },
  {
    attacker: 'whoever reads answers for the inside (stacks, paths)',
    met: 'A fault is told without its cause.',
    proof: { tested: REQUESTS, test: 'faults of ours' },
  },
  {
    attacker: 'guards that are there for show',
    met: 'Each is taken out once, and its attack gets in.',
    proof: { tested: 'test/faults/host/host-guards-bite.test.ts', test: 'every guard bites' },
  },
  {
    attacker: 'text in the records that is HTML',
    met: 'The content security policy allows no inline script, frame, form or other origin.',
    proof: {
      tested: 'test/faults/host/host-window.test.ts',
      test: 'says why and is 1 when the window never paints',
    },
  },
  {
    attacker: 'broken input of any kind',
    met: 'Seeded fuzz of the server with the real service behind it.',
    proof: { tested: 'test/faults/fuzz.test.ts', test: 'broken input for $name' },
  },
  {
    attacker: 'the superuser, or a program of the same user',
    met: 'Not kept out.',
    proof: {
      stated: 'Whoever may read the user’s files may read the records themselves; no token helps there.',
    },
  },
];
