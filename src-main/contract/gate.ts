import type { Refusal } from './refusal.ts';

/**
 * What stands between a window and the service, the same on both hosts. The service answers a Gate; a host only
 * carries requests to it and answers back, and knows no call by name.
 */
export type Gate = {
  /** Never rejects for wrong input: that is an answer with `ok: false`. */
  call(request: CallRequest): Promise<CallAnswer>;
  /** @returns the way to stop listening. */
  subscribe(listener: (event: HostEvent) => void): () => void;
  /** A file to import, as a stream. A stream that throws was cut short: nothing of it may be kept. */
  upload(name: string, stream: AsyncIterable<Uint8Array>): Promise<CallAnswer>;
  /** A file that the user opened from outside of the window; windows are told, and ask for it by `files.opened`. */
  open(file: OpenedFile): Promise<void>;
  /** A page that a call made for a look, by the id it answered; null for one that is no more. */
  page(id: string): Promise<GatePage | null>;
  close(): Promise<void>;
};

/** Its own name, and what it holds, or why the host cannot read it. */
export type OpenedFile = { name: string } & ({ stream: AsyncIterable<Uint8Array> } | { refused: CallError });

/**
 * A file made in memory, which the host answers at `/page?id=…`. One that is shown has a policy of its own, far
 * stricter than the window's; one without is only to be saved.
 * @property name of the file, where it is to be saved
 */
export type GatePage = { type: string; bytes: Uint8Array; policy?: string; name?: string };

export type CallRequest = { call: string; args: unknown };

export type CallError = {
  kind: 'refused' | 'not-found' | 'conflict' | 'bug';
  message: string;
  refusals?: Refusal[];
};

export type CallAnswer = { ok: true; value: unknown } | { ok: false; error: CallError };

export type HostEvent = { event: string; data: unknown };

/**
 * What the Electron preload puts on `window` as `loftledger`. On the browser host the same two are `POST /call` and
 * `GET /events`; `POST /upload?name=…`, `POST /painted` and `GET /page?id=…` are fetched on both hosts.
 */
export type Bridge = {
  call(request: CallRequest): Promise<CallAnswer>;
  onEvent(listener: (event: HostEvent) => void): () => void;
};

/** Names that preload and main share. */
export const BRIDGE_NAME = 'loftledger';
export const CALL_CHANNEL = 'loftledger:call';
export const EVENT_CHANNEL = 'loftledger:event';

/** The event by which windows learn that a file was opened from outside. */
export const OPENED_EVENT = 'opened';
