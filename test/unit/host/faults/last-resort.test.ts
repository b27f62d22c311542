import { EventEmitter } from 'node:events';
import { expect, it } from 'vitest';
import { onLastResort } from '../../../../src-main/host/faults/last-resort.ts';

it('notes each error that nobody caught, and ends the program once', () => {
  const process_ = new EventEmitter();
  const noted: unknown[] = [];
  const ended: unknown[] = [];
  const log = {
    note: () => undefined,
    keepIn: () => undefined,
    fault: (what: string, error: unknown) => void noted.push([what, error]),
  };
  onLastResort(process_, log, (error) => void ended.push(error));
  const [first, second] = [new Error('one'), new Error('two')];
  process_.emit('unhandledRejection', first, Promise.resolve());
  process_.emit('uncaughtException', second, 'uncaughtException');
  expect(noted).toEqual([
    ['unhandled', first],
    ['uncaught', second],
  ]);
  expect(ended).toEqual([first]);
});
