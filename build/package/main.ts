import { ensureBuilt } from '../ensure-built.mjs';
import { writeNotice } from './notice.ts';
import { pack, ROOT } from './pack.ts';

/**
 * `npm run package`: builds, writes the licences, and packs for this machine's system into dist/. More words go to
 * electron-builder (`npm run package -- --linux deb`). Electron's own download is needed for it.
 */
await ensureBuilt((line) => process.stderr.write(`${line}\n`));
writeNotice(ROOT);
process.exitCode = (await pack(process.argv.slice(2), { show: true })).exitCode;
