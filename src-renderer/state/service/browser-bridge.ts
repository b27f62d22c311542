import type { Bridge, CallAnswer, CallRequest, HostEvent } from '../../../src-main/contract/gate.ts';
import { words } from '../../words/index.ts';

/** `POST /call` and `GET /events` of our own origin. A call rejects where nobody answers. */
export function browserBridge(): Bridge {
  return { call, onEvent };
}

async function call(request: CallRequest): Promise<CallAnswer> {
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
 * After a lost connection the events in between are gone, so a "changed" of our own making has the screens read anew.
 */
function onEvent(listener: (event: HostEvent) => void): () => void {
  const source = new EventSource('/events');
  let lost = false;
  source.addEventListener('message', ({ data }: MessageEvent<string>) => {
    listener(JSON.parse(data) as HostEvent);
  });
  source.addEventListener('error', () => (lost = true));
  source.addEventListener('open', () => {
    if (lost) listener({ event: 'changed', data: { call: 'reconnected' } });
    lost = false;
  });
  return () => source.close();
}
