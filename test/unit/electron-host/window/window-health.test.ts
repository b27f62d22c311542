import { EventEmitter } from 'node:events';
import type { App, BrowserWindow } from 'electron';
import { describe, expect, it } from 'vitest';
import { watchChildren, watchWindow } from '../../../../src-main/electron-host/window/window-health.ts';
import { hostWords } from '../../../../src-main/electron-host/words.ts';

/** A window that only writes down what is done to it. */
function rig() {
  const done: string[] = [];
  const window = Object.assign(new EventEmitter(), {
    reload: () => done.push('reload'),
    destroy: () => done.push('destroy'),
    webContents: Object.assign(new EventEmitter(), {
      forcefullyCrashRenderer: () => done.push('end the renderer'),
    }),
  });
  const questions: { answer: (button: number) => void; signal: AbortSignal; buttons: string[] }[] = [];
  let nowMs = 0;
  const { gaveUp } = watchWindow(window as unknown as BrowserWindow, {
    log: {
      note: (what, facts) =>
        done.push(`log ${what}${facts === undefined ? '' : ` ${JSON.stringify(facts)}`}`),
      fault: () => undefined,
      keepIn: () => undefined,
    },
    words: hostWords('en-GB'),
    ask: ({ signal, buttons }) => {
      const asked = Promise.withResolvers<number>();
      questions.push({ answer: asked.resolve, signal, buttons });
      return asked.promise;
    },
    tell: (text) => done.push(`tell ${text.slice(0, 22)}`),
    nowMs: () => nowMs,
  });
  const crash = (reason = 'crashed') =>
    window.webContents.emit('render-process-gone', {}, { reason, exitCode: 11 });
  const done_ = () => done.splice(0);
  return { window, questions, gaveUp, crash, done: done_, pass: (ms: number) => (nowMs += ms) };
}

const settled = () => new Promise((resolve) => setTimeout(resolve, 0));

describe('a window that crashed', () => {
  it('is loaded anew, and given up when it crashes a fourth time within a minute', () => {
    const { crash, done, gaveUp } = rig();
    for (let n = 0; n < 3; n += 1) {
      crash('oom');
      expect(done()).toEqual(['log window-gone {"reason":"oom","exitCode":11}', 'reload']);
    }
    expect(gaveUp()).toBe(false);
    crash();
    expect(done()).toEqual([
      'log window-gone {"reason":"crashed","exitCode":11}',
      'tell The window has crashed',
      'destroy',
    ]);
    expect(gaveUp()).toBe(true);
    crash();
    expect(done()).not.toContain('reload');
  });

  it('is loaded anew ever again when it seldom does', () => {
    const { crash, done, pass, gaveUp } = rig();
    for (let n = 0; n < 10; n += 1) {
      crash();
      pass(25_000);
      expect(done()).toContain('reload');
    }
    expect(gaveUp()).toBe(false);
  });

  it('is not one that ended well', () => {
    const { crash, done } = rig();
    crash('clean-exit');
    expect(done()).toEqual(['log window-gone {"reason":"clean-exit","exitCode":11}']);
  });
});

describe('a window that does not answer', () => {
  it('is asked about once; the user may wait', async () => {
    const { window, questions, done } = rig();
    window.emit('unresponsive');
    window.emit('unresponsive');
    expect(questions).toHaveLength(1);
    expect(questions[0]?.buttons).toEqual(['Wait', 'Load anew']);
    questions[0]?.answer(0);
    await settled();
    expect(done()).toEqual(['log window-unresponsive', 'log window-asked {"answer":"wait"}']);
    window.emit('unresponsive');
    expect(questions).toHaveLength(2);
  });

  it('is loaded anew when the user says so, by ending its process', async () => {
    const { window, questions, crash, done } = rig();
    window.emit('unresponsive');
    questions[0]?.answer(1);
    await settled();
    expect(done()).toContain('end the renderer');
    crash('killed');
    expect(done()).toContain('reload');
  });

  it('that answers again is asked about no longer', async () => {
    const { window, questions, done } = rig();
    window.emit('unresponsive');
    window.emit('responsive');
    expect(questions[0]?.signal.aborted).toBe(true);
    questions[0]?.answer(1);
    await settled();
    expect(done()).toEqual(['log window-unresponsive', 'log window-responsive']);
  });
});

it('the end of Chromium’s other processes is noted', () => {
  const app = new EventEmitter();
  const noted: unknown[] = [];
  watchChildren(app as unknown as App, {
    note: (...line) => void noted.push(line),
    fault: () => undefined,
    keepIn: () => undefined,
  });
  app.emit('child-process-gone', {}, { type: 'GPU', reason: 'crashed', exitCode: 139 });
  app.emit(
    'child-process-gone',
    {},
    { type: 'Utility', reason: 'killed', exitCode: 9, serviceName: 'network' },
  );
  expect(noted).toEqual([
    ['child-gone', { type: 'GPU', reason: 'crashed', exitCode: 139, name: undefined }],
    ['child-gone', { type: 'Utility', reason: 'killed', exitCode: 9, name: 'network' }],
  ]);
});
