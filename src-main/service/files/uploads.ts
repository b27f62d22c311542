import { randomUUID } from 'node:crypto';
import { mkdtempSync, openSync, readdirSync, readFileSync, closeSync, rmSync, writeSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { guarded, StorageError } from '../../../db/errors.ts';
import { makePrivateFolder } from '../../../db/files/files.ts';
import { MOST_BYTES } from '../../contract/formats/incoming-kinds.ts';
import { RefusedInput } from '../../contract/refusal.ts';

export type Upload = { id: string; name: string; file: string; bytes: number };

/** Files that the window has sent and not used yet, private; beyond the room for them the oldest give way. */
export type Uploads = {
  /** Keeps a stream as a file. @throws RefusedInput above `mostBytes`; what the stream throws: nothing is kept then. */
  take(name: string, stream: AsyncIterable<Uint8Array>, mostBytes: number): Promise<Upload>;
  /** @throws StorageError 'missing' */
  find(id: string): Upload;
  read(id: string): Uint8Array;
  drop(id: string): void;
  close(): void;
};

/** A folder of bag files, or two databases of the largest size. */
const ROOM = { files: 500, bytes: 2 * MOST_BYTES.database };
const FOLDER = 'incoming';

/** @param dataDir the data folder, or ':memory:' for a folder of its own that goes with the service. */
export function createUploads(dataDir: string, room = ROOM): Uploads {
  const inMemory = dataDir === ':memory:';
  let folder = inMemory ? null : path.join(dataDir, FOLDER);
  const kept = new Map<string, Upload>();
  if (folder !== null) rmSync(folder, { recursive: true, force: true }); // of a run that was killed
  const open = (): string => {
    folder ??= mkdtempSync(path.join(tmpdir(), 'loftledger-incoming-'));
    makePrivateFolder(folder);
    return folder;
  };
  const drop = (id: string) => {
    const upload = kept.get(id);
    kept.delete(id);
    if (upload === undefined || folder === null) return;
    for (const name of readdirSync(folder)) {
      if (name.startsWith(id)) rmSync(path.join(folder, name), { force: true });
    }
  };
  const makeRoom = () => {
    let bytes = [...kept.values()].reduce((sum, upload) => sum + upload.bytes, 0);
    for (const old of [...kept.values()].slice(0, -1)) {
      if (kept.size <= room.files && bytes <= room.bytes) return;
      bytes -= old.bytes;
      drop(old.id);
    }
  };
  const find = (id: string): Upload => {
    const upload = kept.get(id);
    if (upload !== undefined) return upload;
    throw new StorageError('missing', `There is no upload ${id}`, 'Send the file again.', '');
  };
  return {
    find,
    drop,
    read: (id) => readFileSync(find(id).file),
    async take(name, stream, mostBytes) {
      const id = randomUUID();
      const file = path.join(open(), id);
      let bytes = 0;
      const handle = openSync(file, 'wx', 0o600);
      try {
        for await (const part of stream) {
          bytes += part.length;
          if (bytes > mostBytes) throw tooLarge(name, mostBytes);
          guarded(name, 'Keeping', () => {
            let written = 0;
            while (written < part.length) written += writeSync(handle, part, written);
          });
        }
      } catch (error) {
        rmSync(file, { force: true });
        throw error;
      } finally {
        closeSync(handle);
      }
      const upload = { id, name, file, bytes };
      kept.set(id, upload);
      makeRoom();
      return upload;
    },
    close() {
      kept.clear();
      if (folder !== null) rmSync(folder, { recursive: true, force: true });
    },
  };
}

function tooLarge(name: string, mostBytes: number): RefusedInput {
  const mb = String(Math.round(mostBytes / 1024 / 1024));
  return new RefusedInput('This file cannot be read:', [
    {
      path: name,
      value: `more than ${mb} MB`,
      message: `it is larger than ${mb} MB`,
      remedy: 'Check that it is the right file, or split it.',
    },
  ]);
}
