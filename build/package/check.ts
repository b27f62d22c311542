import { mkdirSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { ensureBuilt } from '../ensure-built.mjs';
import { ARCHIVE_CHECKS } from './checks/archive-checks.ts';
import { archFlag } from './config.ts';
import { licenceProblems, updateProblems } from './checks/folder-checks.ts';
import { fuseProblems } from './fuses.ts';
import type { Shipped } from './licences.ts';
import { writeNotice } from './notice.ts';
import { pack, ROOT } from './pack.ts';
import { readPacked } from './checks/packed.ts';
import { readProject } from './project.ts';
import { runProblems } from './checks/run-packed.ts';
import { makeStubElectron } from './checks/stub-electron.ts';

/**
 * `npm run check:package`: packs the program around a stand-in for Electron, without the network, and looks at what
 * came out. A line for each check, then their count; exit code 1 when one failed.
 */

type Check = { what: string; problems: () => string[] | Promise<string[]> };

const say = (line: string) => process.stderr.write(`${line}\n`);
const built = () => readFileSync(join(ROOT, 'out', 'built-from'), 'utf8');

/** Packs out/ as it is; again, should another start have built it anew meanwhile. */
async function packBuilt(temp: string): Promise<readonly Shipped[]> {
  const { version } = JSON.parse(
    readFileSync(join(ROOT, 'node_modules', 'electron', 'package.json'), 'utf8'),
  ) as { version: string };
  makeStubElectron(join(temp, 'electron'), version);
  const args = ['--linux', 'dir', archFlag(process.arch)];
  const folders = [`-c.directories.output=${temp}/dist`, `-c.electronDist=${temp}/electron`];
  // Whatever it should want to download, it shall fail over.
  const nowhere = 'http://127.0.0.1:9/';
  const env = {
    npm_config_offline: 'true',
    ELECTRON_MIRROR: nowhere,
    ELECTRON_BUILDER_BINARIES_MIRROR: nowhere,
  };
  for (let attempt = 1; ; attempt++) {
    await ensureBuilt(say);
    const stamp = built();
    const shipped = writeNotice(ROOT);
    const { exitCode, output } = await pack([...args, ...folders], { env });
    if (built() === stamp && exitCode === 0) return shipped;
    if (built() === stamp || attempt === 3) throw new Error(`electron-builder failed.\n${output}`);
    say('loftledger: out/ was built anew while it was packed; packing again.');
  }
}

function checksOf(temp: string, shipped: readonly Shipped[]): Check[] {
  const folder = join(
    temp,
    'dist',
    process.arch === 'x64' ? 'linux-unpacked' : `linux-${process.arch}-unpacked`,
  );
  const resources = join(folder, 'resources');
  const packed = readPacked(resources);
  const project = readProject(ROOT, shipped);
  const runFolder = join(temp, 'run');
  mkdirSync(runFolder);
  return [
    ...ARCHIVE_CHECKS.map(({ what, problems }) => ({ what, problems: () => problems(packed, project) })),
    {
      what: 'the fuses are as the policy has them',
      problems: () => fuseProblems(join(folder, 'loftledger')),
    },
    {
      what: `licences of ${String(shipped.length)} packages, Electron and Chromium lie with it`,
      problems: () => licenceProblems(folder, project),
    },
    { what: 'nothing in it looks for updates', problems: () => updateProblems(folder) },
    {
      what: 'the packed files start, open their records, plan the demo and end (Electron faked)',
      problems: () => runProblems(resources, runFolder, project),
    },
  ];
}

async function runChecks(checks: readonly Check[]): Promise<number> {
  let failed = 0;
  for (const { what, problems } of checks) {
    const found = await Promise.resolve()
      .then(problems)
      .catch((error: unknown) => [String(error)]);
    console.log(found.length === 0 ? `ok    ${what}` : `FAIL  ${what}: ${found.slice(0, 5).join('; ')}`);
    if (found.length > 0) failed++;
  }
  console.log(`${String(checks.length - failed)} passed, ${String(failed)} failed`);
  return failed === 0 ? 0 : 1;
}

async function main(): Promise<number> {
  if (process.platform !== 'linux') {
    say('check:package packs for Linux and runs what it packed: run it there.');
    return 1;
  }
  const temp = mkdtempSync(join(tmpdir(), 'loftledger-package-'));
  try {
    return await runChecks(checksOf(temp, await packBuilt(temp)));
  } catch (error) {
    console.log(`FAIL  the program can be packed: ${error instanceof Error ? error.message : String(error)}`);
    console.log('0 passed, 1 failed');
    return 1;
  } finally {
    rmSync(temp, { recursive: true, force: true });
  }
}

process.exitCode = await main();
