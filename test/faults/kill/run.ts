import { spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import { mulberry32 } from '../../support/random.ts';
import { judge, nothingKnown, type Verdict } from './judge.ts';
import type { Line } from './protocol.ts';

export type KillOptions = {
  kills: number;
  seed: number;
  /** Data folders worked on at the same time. */
  atOnce: number;
  /** Told of each kill that something was wrong after. */
  say?: (line: string) => void;
  /** For tests of the judge: hears the killed folder before it is judged. */
  spoil?: (folder: string) => void;
};

export type KillReport = {
  kills: number;
  seed: number;
  commits: number;
  /** Rows compared with what was told, over all kills. */
  rows: number;
  files: number;
  /** Edits that were committed and whose word had not come. */
  untold: number;
  during: Record<string, number>;
  lost: number;
  damaged: number;
  half: number;
  problems: string[];
  seconds: number;
};

const CHILD = join(import.meta.dirname, 'child.ts');
/** A folder is killed so often before the next one is begun. */
const KILLS_A_FOLDER = 25;
/** One kill in so many comes while the program opens its records. */
const OPENING_SHARE = 0.15;

/** Kills the program under load, again and again, and looks each time at what is left. */
export async function runKills(options: KillOptions): Promise<KillReport> {
  const { kills, seed, atOnce, say, spoil } = options;
  const report: KillReport = {
    kills: 0,
    seed,
    commits: 0,
    rows: 0,
    files: 0,
    untold: 0,
    during: {},
    lost: 0,
    damaged: 0,
    half: 0,
    problems: [],
    seconds: 0,
  };
  const started = performance.now();
  const times = new Times();
  // Compiled once for all children.
  const cache = mkdtempSync(join(tmpdir(), 'loftledger-kill-code-'));
  let next = 0;
  const folderAfterFolder = async () => {
    while (next < kills) {
      const folder = mkdtempSync(join(tmpdir(), 'loftledger-kill-'));
      const known = nothingKnown();
      try {
        for (let n = 0; n < KILLS_A_FOLDER && next < kills; n += 1) {
          const number = next++;
          const random = mulberry32(seed * 1_000_003 + number);
          const lines = await killOnce({ folder, random, times, cache });
          spoil?.(folder);
          const verdict = judge(folder, lines, known);
          add(report, number, verdict, say);
          // Nothing more can be learnt from records that do not open.
          if (verdict.damaged.length > 0) break;
        }
      } finally {
        rmSync(folder, { recursive: true, force: true });
      }
    }
  };
  try {
    await Promise.all(Array.from({ length: atOnce }, folderAfterFolder));
  } finally {
    rmSync(cache, { recursive: true, force: true });
  }
  report.seconds = Math.round((performance.now() - started) / 100) / 10;
  return report;
}

function add(report: KillReport, number: number, verdict: Verdict, say?: (line: string) => void): void {
  report.kills += 1;
  report.commits += verdict.commits;
  report.rows += verdict.rows;
  report.files += verdict.files;
  report.untold += verdict.untold ? 1 : 0;
  report.during[verdict.during] = (report.during[verdict.during] ?? 0) + 1;
  for (const kind of ['lost', 'damaged', 'half'] as const) {
    report[kind] += verdict[kind].length;
    for (const text of verdict[kind]) {
      const problem = `kill ${String(number)}, during ${verdict.during}: ${text}`;
      report.problems.push(problem);
      say?.(problem);
    }
  }
}

/** How long each edit usually takes, in ms, so that a kill comes in its midst and not after it. */
class Times {
  readonly #usual = new Map<string, number>();
  usual(what: string, first: number): number {
    return this.#usual.get(what) ?? first;
  }
  learn(what: string, ms: number): void {
    const before = this.#usual.get(what) ?? ms;
    this.#usual.set(what, before * 0.8 + ms * 0.2);
  }
}

type OneKill = { folder: string; random: () => number; times: Times; cache: string };

/** Starts the program, kills it at a moment that chance picks, and returns all that it said. */
async function killOnce({ folder, random, times, cache }: OneKill): Promise<Line[]> {
  const whileOpening = random() < OPENING_SHARE;
  const edits = whileOpening ? 0 : 1 + Math.floor(random() * 12);
  const moment = random() * 1.1;
  const child = spawn(process.execPath, [CHILD, folder, String(Math.floor(random() * 2 ** 31))], {
    stdio: ['ignore', 'pipe', 'pipe'],
    env: { ...process.env, NODE_COMPILE_CACHE: cache },
  });
  let faults = '';
  child.stderr.setEncoding('utf8').on('data', (text: string) => (faults += text));
  const kill = () => void child.kill('SIGKILL');
  const killAfter = (ms: number) => {
    const at = performance.now() + ms;
    const last = () => {
      // The rest is spun, as a timer is no finer than a millisecond.
      while (performance.now() < at);
      kill();
    };
    if (ms < 2) last();
    else setTimeout(last, ms - 1.5);
  };
  const lines: Line[] = [];
  let since = performance.now();
  let begun = 0;
  if (whileOpening) killAfter(moment * times.usual('opening', 400));
  const ended = new Promise<{ signal: string | null }>((resolve) => {
    child.once('close', (_code, signal) => resolve({ signal }));
  });
  createInterface({ input: child.stdout }).on('line', (text) => {
    const line = readLine(text);
    if (line === null) return;
    lines.push(line);
    const now = performance.now();
    if (line.is === 'doing') {
      begun += 1;
      if (begun === edits) killAfter(moment * times.usual(line.op, 5));
    } else {
      times.learn(line.is === 'opened' ? 'opening' : line.op, now - since);
    }
    since = now;
  });
  const { signal } = await ended;
  if (signal !== 'SIGKILL') throw new Error(`the program under load ended by itself:\n${faults}`);
  return lines;
}

/** @returns null for what was cut off by the kill. */
function readLine(text: string): Line | null {
  try {
    return JSON.parse(text) as Line;
  } catch {
    return null;
  }
}
