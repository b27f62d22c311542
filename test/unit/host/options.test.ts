import { describe, expect, it } from 'vitest';
import { readStartOptions, USAGE, WrongUse } from '../../../src-main/host/options.ts';

const read = (...argv: string[]) => readStartOptions(argv, '/home/coach');

describe('readStartOptions', () => {
  it('opens the window on the user’s own data when nothing is said', () => {
    expect(read()).toEqual({ mode: 'window', dataDir: null });
  });

  it('takes each flag', () => {
    expect(read('--no-window').mode).toBe('no-window');
    expect(read('--check').mode).toBe('check');
    expect(read('--help').mode).toBe('help');
    expect(read('--check', '-h', '--wrong').mode).toBe('help');
  });

  it('takes a folder from where the user stands', () => {
    expect(read('--data', 'mine').dataDir).toBe('/home/coach/mine');
    expect(read('--data=../mine', '--check')).toEqual({ mode: 'check', dataDir: '/home/mine' });
    expect(read('--data', '/elsewhere').dataDir).toBe('/elsewhere');
  });

  it.each([
    [['--wat'], '"--wat" is not understood'],
    [['bag.json'], '"bag.json" is not understood'],
    [[''], '"" is not understood'],
    [['--data'], '--data needs a folder'],
    [['--data='], '--data needs a folder'],
    [['--data', '--check'], '--data needs a folder'],
    [['--data', 'a', '--data', 'b'], '--data was given twice'],
    [['--check', '--no-window'], 'exclude each other'],
  ])('refuses %j with the usage', (argv, words) => {
    expect(() => read(...argv)).toThrow(WrongUse);
    expect(() => read(...argv)).toThrow(words);
    expect(() => read(...argv)).toThrow(USAGE);
  });
});
