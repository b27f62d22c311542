import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { FuseV1Options } from '@electron/fuses';
import { ALL_FUSES, type FuseName } from '../fuses.ts';

/** What marks the fuses in Electron's binary (docs/tutorial/fuses, "The hard way"). */
const SENTINEL = 'dL7pKGdnNz796PbbjQWNKmHXBZaB9tsX';
const SCHEMA_VERSION = 1;

/**
 * A folder in the shape of Electron's for Linux, whose binary is nothing but a fuse wire, each fuse set the wrong way.
 * It shows what the packaging does; it cannot run.
 * @param folder is made
 */
export function makeStubElectron(folder: string, version: string): void {
  mkdirSync(join(folder, 'resources'), { recursive: true });
  mkdirSync(join(folder, 'locales'));
  const names = Object.keys(ALL_FUSES) as FuseName[];
  const wire = Buffer.alloc(names.length);
  for (const name of names) wire[FuseV1Options[name]] = (ALL_FUSES[name] ? '0' : '1').charCodeAt(0);
  const before = Buffer.alloc(4096);
  const head = Buffer.from([SCHEMA_VERSION, wire.length]);
  const binary = Buffer.concat([before, Buffer.from(SENTINEL), head, wire, before]);
  writeFileSync(join(folder, 'electron'), binary, { mode: 0o755 });
  writeFileSync(join(folder, 'version'), version);
  writeFileSync(join(folder, 'LICENSE'), 'The licence of Electron.\n');
  writeFileSync(join(folder, 'LICENSES.chromium.html'), '<p>The licences of Chromium.</p>\n');
  writeFileSync(join(folder, 'locales', 'en-US.pak'), '');
}
