import type { CallAnswer, CallRequest } from '../contract/gate.ts';
import { MAX_BAG_BYTES } from '../contract/read-bag.ts';

/** Files that the window sends: a bag. Nothing is kept of one that is cut short or too large. */
export async function takeUpload(
  name: string,
  stream: AsyncIterable<Uint8Array>,
  dispatch: (request: CallRequest) => Promise<CallAnswer>,
): Promise<CallAnswer> {
  if (!/\.json$/i.test(name)) return refused('A bag file ends in .json.', 'Choose a bag file.');
  const parts: Uint8Array[] = [];
  let size = 0;
  for await (const part of stream) {
    size += part.length;
    if (size > MAX_BAG_BYTES) return refused('The file is larger than 2 MB.', 'Check that it is a bag file.');
    parts.push(part);
  }
  let text: string;
  try {
    text = new TextDecoder('utf-8', { fatal: true }).decode(Buffer.concat(parts));
  } catch {
    return refused('The file is not UTF-8 text.', 'Choose a bag file in JSON.');
  }
  return dispatch({ call: 'players.importBag', args: { text } });
}

function refused(message: string, remedy: string): CallAnswer {
  return { ok: false, error: { kind: 'refused', message: `${message} ${remedy}` } };
}
