import { fork } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { chromium } from 'playwright';
import { ensureBuilt } from '../../../build/ensure-built.mjs';
import { findChromium } from '../../../build/find/find-chromium.mjs';
import { BAG_TEXT, PRICES_TEXT } from '../fuzz/pools.ts';
import { judgeFlat, type Sample } from './flat.ts';

const HELP = `npm run soak -- [--minutes N] [--json]

Uses the program by a script for so long (default 30): calls, imports, backups, undo, and a window in Chromium that goes
from page to page. Measures the host's memory after a collection, and its open handles. Needs Linux and Chromium.
Exit code 0 when memory is flat within 10 % after the warm-up (a quarter of the time) and no handle is left open.`;

const PAGES = ['Bag', 'Ladder', 'Prices', 'Spend'];

async function soak(minutes: number): Promise<{ samples: Sample[]; rounds: number }> {
  await ensureBuilt((line) => void process.stderr.write(`${line}\n`));
  const executablePath = findChromium();
  if (executablePath === null) throw new Error('No Chromium was found.');
  const folder = mkdtempSync(join(tmpdir(), 'loftledger-soak-'));
  const host = fork(join(import.meta.dirname, 'child.ts'), [folder], {
    execArgv: ['--expose-gc'],
    stdio: ['ignore', 'pipe', 'inherit', 'ipc'],
  });
  const ended = new Promise((done) => host.once('exit', done));
  const browser = await chromium.launch({
    executablePath,
    args: [
      ...(process.getuid?.() === 0 ? ['--no-sandbox'] : []),
      '--disable-gpu',
      '--disable-background-networking',
    ],
  });
  try {
    const url = await new Promise<string>((done) =>
      host.stdout?.once('data', (part: Buffer) => done((JSON.parse(String(part)) as { url: string }).url)),
    );
    const context = await browser.newContext({ viewport: { width: 1280, height: 800 } });
    const page = await context.newPage();
    page.setDefaultTimeout(20_000);
    await page.goto(url);
    await page.getByRole('heading', { level: 1 }).waitFor();
    const call = async (name: string, args: unknown): Promise<unknown> => {
      const answer = await context.request.post(new URL('/call', url).href, {
        headers: { Origin: new URL(url).origin, 'Sec-Fetch-Site': 'same-origin' },
        data: { call: name, args },
      });
      const body = (await answer.json()) as { ok: boolean; value: unknown; error?: { message: string } };
      if (!body.ok) throw new Error(`${name}: ${body.error?.message ?? ''}`);
      return body.value;
    };
    const measure = (): Promise<Omit<Sample, 'atS'>> =>
      new Promise((done) => {
        host.once('message', (message) => done(message as Omit<Sample, 'atS'>));
        host.send('measure');
      });
    await page.getByRole('button', { name: 'Open the demo', exact: true }).click();
    await page.getByRole('link', { name: 'Ladder' }).waitFor();

    const started = performance.now();
    const samples: Sample[] = [];
    let rounds = 0;
    const everyS = Math.max(2, (minutes * 60) / 60);
    for (let next = 0; ;) {
      const atS = (performance.now() - started) / 1000;
      if (atS >= next) {
        samples.push({ atS: Math.round(atS), ...(await measure()) });
        next += everyS;
      }
      if (atS > minutes * 60) break;
      await round(call, rounds);
      await page.getByRole('link', { name: PAGES[rounds % PAGES.length] ?? 'Bag', exact: true }).click();
      rounds += 1;
    }
    return { samples, rounds };
  } finally {
    await browser.close();
    host.kill('SIGTERM');
    await ended;
    rmSync(folder, { recursive: true, force: true });
  }
}

/** One round of use, which leaves as many rows as it found. */
async function round(call: (name: string, args: unknown) => Promise<unknown>, n: number): Promise<void> {
  const opened = (await call('players.importBag', { text: BAG_TEXT })) as { playerId: number; bagId: number };
  const { bagId } = opened;
  await call('bags.updateClub', { bagId, clubId: '7i', patch: { carry: 120 + (n % 20) } });
  await call('answers.plan', { bagId });
  await call('search.all', { text: 'hybrid', limit: 10 });
  await call('files.previewPrices', { source: { text: PRICES_TEXT } });
  await call('history.undo', {});
  await call('history.redo', {});
  if (n % 10 === 0) await call('backups.make', {});
  await call('players.erase', { playerId: opened.playerId });
}

try {
  const { values } = parseArgs({
    options: {
      minutes: { type: 'string', default: '30' },
      json: { type: 'boolean', default: false },
      help: { type: 'boolean', default: false },
    },
  });
  const minutes = Number(values.minutes);
  if (values.help) process.stdout.write(`${HELP}\n`);
  else if (!(minutes > 0)) throw new Error(`--minutes ${values.minutes} is no number above 0.\n${HELP}`);
  else {
    const { samples, rounds } = await soak(minutes);
    const verdict = judgeFlat(samples);
    const mb = (bytes: number) => (bytes / 1024 / 1024).toFixed(1);
    const lines = samples.map(
      ({ atS, rss, heapUsed, handles }) =>
        `${String(atS).padStart(6)} s  ${mb(rss).padStart(7)} MB  heap ${mb(heapUsed).padStart(6)} MB  ${String(handles)} handles`,
    );
    process.stdout.write(
      values.json
        ? `${JSON.stringify({ minutes, rounds, verdict, samples }, null, 2)}\n`
        : `${lines.join('\n')}\n${String(rounds)} rounds in ${String(minutes)} minutes; after the warm-up memory ×${verdict.rssRatio.toFixed(3)}, ` +
            `heap ×${verdict.heapRatio.toFixed(3)}, handles ${String(verdict.handlesFirst)} → ${String(verdict.handlesLast)}: ${verdict.isFlat ? 'flat' : 'NOT flat'}\n`,
    );
    process.exitCode = verdict.isFlat ? 0 : 1;
  }
} catch (error) {
  process.stderr.write(`${error instanceof Error ? error.message : String(error)}\n`);
  process.exitCode = 1;
}
