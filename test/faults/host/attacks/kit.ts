import { afterAll, beforeAll, beforeEach, expect } from 'vitest';
import { ANSWER_HEADERS } from '../../../../src-main/host/headers.ts';
import {
  ask,
  CALL,
  enter,
  OUTSIDE,
  startRig,
  type Answer,
  type Ask,
  type Rig,
} from '../../../unit/browser-host/kit.ts';

/**
 * The loopback host under attack: a hostile web page, a page of another port, another user of the machine, DNS
 * rebinding, and requests that no browser would send. Raw sockets, since fetch would mend half of it.
 */
export const LIMITS = { headersMs: 300, checkEveryMs: 50, bodyIdleMs: 300, lingerMs: 300, requestMs: 5_000 };

export let rig: Rig;
export let cookie: string;

/** A host for the tests of one file, which its window has entered. */
export function useRig(): void {
  beforeAll(async () => {
    rig = await startRig({ limits: LIMITS });
    cookie = await enter(rig);
  });
  afterAll(() => rig.close());
  beforeEach(() => {
    rig.gate.calls.length = 0;
    rig.gate.uploads.length = 0;
  });
}

/** On every answer here: all headers there, and nothing of our inside in it. */
export function expectClean(answer: Answer): void {
  for (const [name, value] of Object.entries(ANSWER_HEADERS)) {
    expect(answer.headers.get(name.toLowerCase()), name).toBe(value);
  }
  for (const name of ['access-control-allow-origin', 'server', 'x-powered-by']) {
    expect(answer.headers.has(name), name).toBe(false);
  }
  expect(answer.raw).not.toMatch(/node_modules|\.ts\b|\bat .+:\d+:\d+|Error:|\/home\/|\/tmp\/|\\Users\\/);
  expect(answer.raw).not.toContain(import.meta.dirname);
  expect(answer.raw).not.toContain(OUTSIDE);
}

export async function expectRefused(
  status: number,
  change: Ask,
  as: string | null = cookie,
): Promise<Answer> {
  const answer = await ask(rig, as, change);
  expect(answer.status).toBe(status);
  expectClean(answer);
  expect(rig.gate.calls).toEqual([]);
  expect(rig.gate.uploads).toEqual([]);
  return answer;
}

export const call = (change: Ask = {}): Ask => ({ method: 'POST', target: '/call', body: CALL, ...change });
