import { describe, expect, it } from 'vitest';
import { profileParent } from '../../../../src-main/browser-host/window/chromium.ts';
import { chromiumArguments } from '../../../../src-main/browser-host/window/chromium-arguments.ts';

const LAUNCH = { profileDir: '/d/p', launchPage: '/d/p/launch page.html', place: null, asRoot: false };

describe('chromiumArguments', () => {
  it('opens the launch page as an app window, in the profile, over pipes and no port', () => {
    const argv = chromiumArguments(LAUNCH);
    expect(argv).toContain('--user-data-dir=/d/p');
    expect(argv).toContain('--app=file:///d/p/launch%20page.html');
    expect(argv).toContain('--remote-debugging-pipe');
    expect(argv.join(' ')).not.toMatch(/remote-debugging-port|remote-allow-origins|token/);
  });

  it('turns the browser’s own traffic off', () => {
    const argv = chromiumArguments(LAUNCH);
    for (const flag of [
      '--disable-background-networking',
      '--disable-component-update',
      '--disable-sync',
      '--no-first-run',
      '--no-pings',
      '--proxy-server=http://127.0.0.1:1',
    ]) {
      expect(argv).toContain(flag);
    }
  });

  it('takes the sandbox away from root only', () => {
    expect(chromiumArguments(LAUNCH)).not.toContain('--no-sandbox');
    expect(chromiumArguments({ ...LAUNCH, asRoot: true })).toContain('--no-sandbox');
  });

  it('puts the window where it was', () => {
    const place = { left: -5, top: 7, width: 800, height: 600, maximized: true };
    const argv = chromiumArguments({ ...LAUNCH, place });
    expect(argv).toContain('--window-position=-5,7');
    expect(argv).toContain('--window-size=800,600');
    expect(argv).toContain('--start-maximized');
    expect(chromiumArguments(LAUNCH).filter((flag) => flag.startsWith('--window-position'))).toEqual([]);
  });
});

it('a snap gets its profile where it may read', () => {
  expect(profileParent('/usr/bin/chromium', '/data', '/home/c')).toBe('/data');
  expect(profileParent('/snap/bin/chromium', '/data', '/home/c')).toBe(
    '/home/c/snap/chromium/common/loftledger',
  );
});
