import { spawn, spawnSync } from 'node:child_process';
import { readFileSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { ensureBuilt } from '../../../build/ensure-built.mjs';
import { bagFile } from '../../support/bags.ts';
import { makeTempDir } from '../../unit/browser-host/kit.ts';

/**
 * The program under a spy that writes down every socket call of the process and its threads: nothing but loopback is
 * ever reached for. (Chromium is another program; what it is seen to do is in src-main/browser-host/README.md.)
 */
const ROOT = resolve(import.meta.dirname, '..', '..', '..');
const hasSpy = process.platform === 'linux' && spawnSync('strace', ['-V']).status === 0;
const temp = makeTempDir();
beforeAll(async () => {
  await ensureBuilt(() => undefined);
});
afterAll(() => temp.remove());

it.runIf(hasSpy)('opens no socket but on 127.0.0.1 and in the data folder', async () => {
  const seen = join(temp.dir, 'seen');
  const start = [
    process.execPath,
    join(ROOT, 'build', 'start.mjs'),
    '--no-window',
    '--data',
    join(temp.dir, 'data'),
  ];
  const host = spawn('strace', ['-f', '-qq', '-e', 'trace=network', '-o', seen, ...start]);
  const url = await new Promise<string>((done, failed) => {
    host.stdout.once('data', (part: Buffer) => done((JSON.parse(String(part)) as { url: string }).url));
    host.once('exit', (code) => failed(new Error(`ended with ${String(code)}`)));
  });
  const { origin } = new URL(url);
  const cookie = (await fetch(url)).headers.get('set-cookie')?.split(';')[0] ?? '';
  const call = async (name: string, args: unknown) => {
    const headers = { Cookie: cookie, Origin: origin, 'Content-Type': 'application/json' };
    const response = await fetch(`${origin}/call`, {
      method: 'POST',
      headers,
      body: JSON.stringify({ call: name, args }),
    });
    const answer = (await response.json()) as { ok: boolean; value: { bagId: number } };
    expect(answer.ok, name).toBe(true);
    return answer.value;
  };
  const { bagId } = await call('players.openDemo', { demo: 'invented-bag' });
  for (const name of ['answers.plan', 'prices.watchList']) await call(name, { bagId });
  for (const name of ['backups.make', 'files.exportDatabase', 'history.undo']) await call(name, {});
  const ended = new Promise((done) => host.once('exit', done));
  // The spy hands a signal on to nobody: its child is asked.
  const child = readFileSync(`/proc/${String(host.pid)}/task/${String(host.pid)}/children`, 'utf8').trim();
  process.kill(Number(child.split(' ')[0]), 'SIGTERM');
  await ended;
  const lines = readFileSync(seen, 'utf8').split('\n');
  const addresses = lines.flatMap(
    (line) => /(?:inet_addr|inet_pton\(AF_INET6,)\(?\s*"([^"]+)"/.exec(line)?.[1] ?? [],
  );
  expect(addresses).toContain('127.0.0.1');
  expect([...new Set(addresses)]).toEqual(['127.0.0.1']);
  const families = new Set(lines.flatMap((line) => /\bsocket\((AF_\w+)/.exec(line)?.[1] ?? []));
  for (const family of families) expect(['AF_INET', 'AF_UNIX']).toContain(family);
});

it.runIf(!hasSpy)('the socket spy was not run: there is no strace here', ({ skip }) => {
  skip('strace is not installed');
});

const inNamespace = ['-n', 'sh', '-c', 'ip link set lo up && exec "$@"', 'sh'];
const hasNamespace =
  process.platform === 'linux' && spawnSync('unshare', [...inNamespace, 'true']).status === 0;

it.runIf(hasNamespace)('opens its window and prints where there is no network but loopback', () => {
  const alone = (...words: string[]) =>
    spawnSync('unshare', [...inNamespace, process.execPath, ...words], { encoding: 'utf8', cwd: ROOT });
  const check = alone(join(ROOT, 'build', 'start.mjs'), '--check', '--data', join(temp.dir, 'alone'));
  expect(check.stdout, check.stderr).toContain('"host":"browser"');
  const bag = join(temp.dir, 'bag.json');
  writeFileSync(bag, JSON.stringify(bagFile({ budget: { amount: 100 } })));
  const out = join(temp.dir, 'plan.pdf');
  const words = [
    'handover',
    '--bag',
    bag,
    '--format',
    'pdf',
    '--out',
    out,
    '--data',
    join(temp.dir, 'alone'),
  ];
  const print = alone(join(ROOT, 'src-main', 'cli', 'main.ts'), ...words);
  expect(print.status, print.stderr).toBe(0);
  expect(readFileSync(out).subarray(0, 5).toString()).toBe('%PDF-');
});

it.runIf(!hasNamespace)(
  'the run without a network was not made: no network namespace can be had here',
  ({ skip }) => {
    skip('unshare -n takes root and ip');
  },
);
