import type { Bridge, CallAnswer, CallRequest, HostEvent } from '../../../src-main/contract/gate.ts';
import { words } from '../../words/index.ts';

/** How long calls wait for the stream of events to open, which takes a round trip unless something is amiss. */
const MOST_WAIT_MS = 1000;

/**
 * `POST /call` and `GET /events` of our own origin. A call rejects where nobody answers. While the stream of events
 * opens, calls wait for it: what changed between their answers and its first event would never be heard of.
 */
export function browserBridge(): Bridge {
  let listening = Promise.resolve();
  return {
    async call(request) {
      await listening;
      return send(request);
    },
    onEvent(listener) {
      const { close, settled } = listen(listener);
      listening = settled;
      return close;
    },
  };
}

async function send(request: CallRequest): Promise<CallAnswer> {
  const response = await fetch('/call', {
    method: 'POST',
    headers: { 'Content-Type': 'application/json' },
    body: JSON.stringify(request),
  });
  return answerOf(response);
}

/** What a host answered, or that it cannot be read. */
export async function answerOf(response: Response): Promise<CallAnswer> {
  try {
    return (await response.json()) as CallAnswer;
  } catch {
    return { ok: false, error: { kind: 'bug', message: words.errors.unreadable(response.status) } };
  }
}

/**
 * After a lost connection, or one that came late, the events in between are gone, so a "changed" of our own making has
 * the screens read anew.
 * @returns `settled` once the stream is open, or is not to be waited for.
 */
function listen(listener: (event: HostEvent) => void): { close: () => void; settled: Promise<void> } {
  const source = new EventSource('/events');
  let lost = false;
  const settled = new Promise<void>((done) => {
    const giveUp = () => {
      lost = true;
      done();
    };
    const late = setTimeout(giveUp, MOST_WAIT_MS);
    source.addEventListener('error', giveUp);
    source.addEventListener('open', () => {
      clearTimeout(late);
      if (lost) listener({ event: 'changed', data: { call: 'reconnected' } });
      lost = false;
      done();
    });
  });
  source.addEventListener('message', ({ data }: MessageEvent<string>) => {
    listener(JSON.parse(data) as HostEvent);
  });
  return { close: () => source.close(), settled };
}
