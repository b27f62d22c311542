import { describe, expect, it } from 'vitest';
import { readStartOptions, USAGE, WrongUse } from '../../../../src-main/host/start/options.ts';

const read = (...argv: string[]) => readStartOptions(argv, '/home/coach');

describe('readStartOptions', () => {
  it('opens the window on the user’s own data when nothing is said', () => {
    expect(read()).toEqual({ mode: 'window', dataDir: null, files: [] });
  });

  it('takes each flag', () => {
    expect(read('--no-window').mode).toBe('no-window');
    expect(read('--check').mode).toBe('check');
    expect(read('--help').mode).toBe('help');
    expect(read('--check', '-h', '--wrong').mode).toBe('help');
  });

  it('takes a folder from where the user stands', () => {
    expect(read('--data', 'mine').dataDir).toBe('/home/coach/mine');
    expect(read('--data=../mine', '--check')).toEqual({
      mode: 'check',
      dataDir: '/home/mine',
      files: [],
    });
    expect(read('--data', '/elsewhere').dataDir).toBe('/elsewhere');
  });

  it('takes files from where the user stands, before and after flags', () => {
    expect(read('my.loftledger').files).toEqual(['/home/coach/my.loftledger']);
    expect(read('../a b.json', '--data', 'd', '/x/y.csv', '--no-window')).toEqual({
      mode: 'no-window',
      dataDir: '/home/coach/d',
      files: ['/home/a b.json', '/x/y.csv'],
    });
  });

  it.runIf(process.platform !== 'win32')('takes the address of a file, as desktops give it', () => {
    expect(read('file:///home/coach/a%20b%C3%A4.loftledger', 'FILE://localhost/x.csv').files).toEqual([
      '/home/coach/a bä.loftledger',
      '/x.csv',
    ]);
  });

  it.each([
    [['file://elsewhere/x.csv'], 'no file of this machine'],
    [['file:///a%2fb'], 'no file of this machine'],
    [['file:///a%zz'], 'no file of this machine'],
    [['--wat'], '"--wat" is not understood'],
    [['--check', 'bag.json'], '--check opens no files'],
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
