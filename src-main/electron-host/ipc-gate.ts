import { ipcMain, type WebContents } from 'electron';
import { CALL_CHANNEL, EVENT_CHANNEL, type CallAnswer, type Gate } from '../contract/gate.ts';
import { asCallRequest } from '../host/requests.ts';
import { isOwnSender } from './policy/sender.ts';

/**
 * The gate over Electron's messages. The only file that touches ipcMain, with one channel in and one out.
 * @param onFault told of what the gate threw; the window only learns that it did.
 * @returns the way to take it down again.
 */
export function mountIpcGate(
  gate: Gate,
  window: Pick<WebContents, 'send' | 'isDestroyed'>,
  onFault: (error: unknown) => void,
): () => void {
  ipcMain.handle(CALL_CHANNEL, async (event, message: unknown): Promise<CallAnswer> => {
    if (!isOwnSender(event.senderFrame)) return refused('Only the own window may ask this.');
    const request = asCallRequest(message);
    if (request === null) return refused('A call must be {call, args}.');
    try {
      return await gate.call(request);
    } catch (error) {
      onFault(error);
      return { ok: false, error: { kind: 'bug', message: FAULT } };
    }
  });
  const stop = gate.subscribe((event) => {
    if (!window.isDestroyed()) window.send(EVENT_CHANNEL, event);
  });
  return () => {
    ipcMain.removeHandler(CALL_CHANNEL);
    stop();
  };
}

const FAULT = 'A fault in Loftledger, not in what you did. Nothing was changed.';

function refused(message: string): CallAnswer {
  return { ok: false, error: { kind: 'refused', message } };
}
