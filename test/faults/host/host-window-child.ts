import { tryLock } from '../../../db/files/lock.ts';
import { findChromium } from '../../../build/find/find-chromium.mjs';
import { runHost } from '../../../src-main/browser-host/host.ts';
import { createLog } from '../../../src-main/host/faults/log.ts';
import { fakeGate } from '../../unit/browser-host/kit.ts';

/** A start in a process of its own, so that it can be killed: argv is the built window's folder, then the flags. */
const [rendererDir = '', ...argv] = process.argv.slice(2);
const gate = fakeGate();
gate.onCall = (request) => {
  process.stderr.write(`called ${request.call}\n`);
  return Promise.resolve({ ok: true, value: null });
};
process.exitCode = await runHost({
  argv,
  env: process.env,
  standsIn: process.cwd(),
  rendererDir,
  version: '0.0.0',
  chromium: findChromium(),
  createGate: () => Promise.resolve(gate),
  tryLock,
  print: (line) => void process.stdout.write(`${line}\n`),
  say: (line) => void process.stderr.write(`${line}\n`),
  log: createLog(),
  askedToEnd: new Promise((end) => process.once('SIGTERM', () => end())),
  sinceStartMs: () => performance.now(),
});
