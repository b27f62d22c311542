import { existsSync, mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterEach, beforeEach } from 'vitest';
import { useService } from '../kit.ts';

export const units = { distance: 'yd', speed: 'mph', currency: 'GBP' } as const;
export const text = (source: string) => ({ source: { text: source } });

/** A service whose records lie in a folder of their own, for each test. */
export function useFiles() {
  let folder = '';
  beforeEach(() => {
    folder = mkdtempSync(path.join(tmpdir(), 'loftledger-files-'));
  });
  const service = useService(() => folder);
  afterEach(() => {
    rmSync(folder, { recursive: true, force: true });
  });
  const incoming = () => path.join(folder, 'incoming');
  return {
    ...service,
    folder: () => folder,
    /** What lies in the folder for uploads. */
    incoming: () => (existsSync(incoming()) ? readdirSync(incoming()) : []),
    async upload(name: string, bytes: Uint8Array | string): Promise<string> {
      async function* parts() {
        const all = typeof bytes === 'string' ? new TextEncoder().encode(bytes) : bytes;
        for (let at = 0; at < all.length; at += 1000) yield all.slice(at, at + 1000);
      }
      const answer = await service.gate().upload(name, parts());
      if (!answer.ok) throw new Error(answer.error.message);
      return (answer.value as { upload: string }).upload;
    },
  };
}
