import type { Session } from 'electron';
import { describe, expect, it } from 'vitest';
import { windowOptions } from '../../../../src-main/electron-host/window/window-options.ts';

const options = (place: Parameters<typeof windowOptions>[0]['place'] = null) =>
  windowOptions({ place, preload: '/p/preload.cjs', session: {} as Session });

describe('windowOptions', () => {
  it.each([
    ['sandbox', true],
    ['contextIsolation', true],
    ['nodeIntegration', false],
    ['nodeIntegrationInWorker', false],
    ['nodeIntegrationInSubFrames', false],
    ['webSecurity', true],
    ['allowRunningInsecureContent', false],
    ['experimentalFeatures', false],
    ['enableBlinkFeatures', ''],
    ['webviewTag', false],
    ['navigateOnDragDrop', false],
    ['spellcheck', false],
  ] as const)('%s is %j', (name, value) => {
    expect(options().webPreferences?.[name]).toBe(value);
  });

  it('leaves the place to the system at first, and then keeps it', () => {
    expect(options()).not.toHaveProperty('x');
    const place = { left: -3, top: 4, width: 800, height: 600, maximized: false };
    expect(options(place)).toMatchObject({ x: -3, y: 4, width: 800, height: 600 });
  });
});
