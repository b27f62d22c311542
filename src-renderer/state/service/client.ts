import type { CallArgs, CallName, CallResult } from '../../../src-main/contract/calls/index.ts';
import type { Incoming } from '../../../src-main/contract/calls/program/incoming.ts';
import type { Bridge, CallAnswer, CallError, HostEvent } from '../../../src-main/contract/gate.ts';
import { words } from '../../words/index.ts';
import { answerOf, browserBridge } from './browser-bridge.ts';
import { sharedEvents } from './shared-events.ts';

declare global {
  // An interface, since only that merges with the library's own declaration.
  // eslint-disable-next-line @typescript-eslint/consistent-type-definitions
  interface Window {
    /** Put there by the Electron preload; absent on the browser host. */
    loftledger?: Bridge;
  }
}

/** The service said no, or could not be reached. */
export class CallFailed extends Error {
  readonly error: CallError;
  readonly isUnreachable: boolean;
  constructor(error: CallError, isUnreachable = false) {
    super(error.message);
    this.name = 'CallFailed';
    this.error = error;
    this.isUnreachable = isUnreachable;
  }
}

/** The contract's calls as functions; the screens cannot tell which host answers. */
export type Client = {
  /** @throws CallFailed */
  call<K extends CallName>(name: K, args: CallArgs<K>): Promise<CallResult<K>>;
  /** Sends a file for its preview; nothing comes in by it. @throws CallFailed */
  upload(file: Blob, name: string): Promise<Incoming>;
  onEvent(listener: (event: HostEvent) => void): () => void;
  /** After each call: whether the service was reached. */
  onReach(listener: (isReached: boolean) => void): () => void;
};

/** The one place that picks the host: Electron's bridge where the preload left one, else HTTP to our own origin. */
export function pickClient(): Client {
  const bridge = window.loftledger ?? browserBridge();
  const listeners = new Set<(isReached: boolean) => void>();
  const tell = (isReached: boolean) => {
    for (const listener of listeners) listener(isReached);
  };
  const reached = async (asked: Promise<CallAnswer>): Promise<unknown> => {
    const answer = await asked.catch(() => {
      tell(false);
      throw new CallFailed({ kind: 'bug', message: words.errors.unreachable }, true);
    });
    tell(true);
    if (!answer.ok) throw new CallFailed(answer.error);
    return answer.value;
  };
  return {
    async call<K extends CallName>(name: K, args: CallArgs<K>): Promise<CallResult<K>> {
      // The service answers in the contract's shape; its own tests hold it to that.
      return (await reached(bridge.call({ call: name, args }))) as CallResult<K>;
    },
    upload: async (file, name) => (await reached(sendFile(file, name))) as Incoming,
    onEvent: sharedEvents(bridge.onEvent),
    onReach(listener) {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
  };
}

/** Tells the host that the window stands. Nobody waits for it, so a failure changes nothing. */
export function tellPainted(): void {
  void fetch('/painted', { method: 'POST' }).catch(() => undefined);
}

/** The same on both hosts. As bytes: not one of the types that a foreign page may send. */
async function sendFile(file: Blob, name: string): Promise<CallAnswer> {
  const response = await fetch(`/upload?name=${encodeURIComponent(name)}`, {
    method: 'POST',
    headers: { 'Content-Type': 'application/octet-stream' },
    body: file,
  });
  return answerOf(response);
}
