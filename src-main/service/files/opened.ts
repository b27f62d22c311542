import type { CallResult } from '../../contract/calls/index.ts';
import type { CallAnswer, OpenedFile } from '../../contract/gate.ts';
import { incomingSchema } from '../../contract/calls/program/incoming.ts';

type Waiting = CallResult<'files.opened'>[number];

/** Files that were opened from outside of the window, until a window asks for them. */
export type Opened = {
  /** Keeps a file as an upload, or why it cannot be read, for the window to show. Never rejects. */
  add(file: OpenedFile): Promise<void>;
  /** All that wait, in the order of their opening; whoever asks first has them. */
  take(): Waiting[];
};

/** More than a person opens at once; further ones are not waited for. */
const MOST_WAITING = 100;

export function createOpened(
  upload: (name: string, stream: AsyncIterable<Uint8Array>) => Promise<CallAnswer>,
): Opened {
  let waiting: Waiting[] = [];
  const kept = async (file: OpenedFile): Promise<Waiting> => {
    const { name } = file;
    if ('refused' in file) return { name, error: file.refused };
    try {
      const answer = await upload(name, file.stream);
      return answer.ok ? incomingSchema.parse(answer.value) : { name, error: answer.error };
    } catch {
      // The stream broke: a disk that was pulled out, a file that was taken away.
      const message = 'The file could not be read to its end. Check the disk it is on, and open it again.';
      return { name, error: { kind: 'refused', message } };
    }
  };
  // One after the other, so that they stand in the order in which they were opened.
  let last: Promise<void> = Promise.resolve();
  return {
    add(file) {
      last = last.then(async () => {
        const one = await kept(file);
        if (waiting.length < MOST_WAITING) waiting.push(one);
      });
      return last;
    },
    take() {
      const all = waiting;
      waiting = [];
      return all;
    },
  };
}
