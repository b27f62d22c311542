import { readFileSync, statSync } from 'node:fs';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { openedPage, writeLaunchPage } from '../../../../src-main/browser-host/http/launch-page.ts';
import { makeTempDir } from '../kit.ts';

const URL_WITH_TOKEN = 'http://127.0.0.1:4100/open?token=aB-_9';

let temp: ReturnType<typeof makeTempDir>;
beforeEach(() => (temp = makeTempDir()));
afterEach(() => temp.remove());

describe('the launch page', () => {
  it('is readable by its user alone and goes on by itself, without a script', () => {
    const file = writeLaunchPage(temp.dir, URL_WITH_TOKEN);
    expect(statSync(file).mode & 0o777).toBe(0o600);
    const html = readFileSync(file, 'utf8');
    expect(html).toContain(`<meta http-equiv="refresh" content="0;url=${URL_WITH_TOKEN}">`);
    expect(html).not.toContain('<script');
  });

  it('does not write into a file that is there already', () => {
    writeLaunchPage(temp.dir, URL_WITH_TOKEN);
    expect(() => writeLaunchPage(temp.dir, URL_WITH_TOKEN)).toThrow('EEXIST');
  });

  it.each(['http://127.0.0.1/"><script>', "javascript:alert('1')", ''])('does not take %j', (url) => {
    expect(() => writeLaunchPage(temp.dir, url)).toThrow();
  });
});

it('the opened page goes on to the window', () => {
  expect(openedPage()).toContain('content="0;url=/"');
});
