import { EventEmitter } from 'node:events';
import type { App, Session, WebContents } from 'electron';
import { describe, expect, it } from 'vitest';
import { lockAllContents, lockSession } from '../../../../src-main/electron-host/policy/lockdown.ts';
import { WINDOW_URL } from '../../../../src-main/electron-host/policy/urls.ts';

/** A session that only remembers what was set on it. */
function fakeSession() {
  const set: Record<string, (...args: never[]) => unknown> = {};
  const remember = (name: string) => (handler: (...args: never[]) => unknown) => {
    set[name] = handler;
  };
  const session = {
    setPermissionRequestHandler: remember('request'),
    setPermissionCheckHandler: remember('check'),
    setDevicePermissionHandler: remember('device'),
    setDisplayMediaRequestHandler: remember('screen'),
    webRequest: { onBeforeRequest: remember('before') },
  };
  lockSession(session as unknown as Session);
  return set;
}

describe('lockSession', () => {
  const set = fakeSession();

  it('refuses every permission, asked for or looked up, and every device', () => {
    let granted: unknown = null;
    const decide = (value: boolean) => (granted = value);
    for (const permission of [
      'notifications',
      'media',
      'geolocation',
      'clipboard-read',
      'openExternal',
      'unknown',
    ]) {
      set['request']?.(...([null, permission, decide] as never[]));
      expect(granted).toBe(false);
      expect(set['check']?.(...([null, permission] as never[]))).toBe(false);
    }
    expect(set['device']?.(...([{}] as never[]))).toBe(false);
    expect(set['screen']).toBeNull();
  });

  const cancelled = (url: string) => {
    let answer: { cancel: boolean } | null = null;
    set['before']?.(...([{ url }, (given: { cancel: boolean }) => (answer = given)] as never[]));
    return (answer as { cancel: boolean } | null)?.cancel;
  };

  it.each([
    'https://example.org/',
    'http://127.0.0.1/',
    'file:///etc/passwd',
    'ws://x/',
    'app://evil/',
    'ftp://x/',
    'data:,x',
    'blob:https://x/1',
  ])('cancels a request of %s', (url) => {
    expect(cancelled(url)).toBe(true);
  });

  it.each([
    WINDOW_URL,
    'app://loftledger/assets/a.js',
    'blob:app://loftledger/1',
    'data:image/png;base64,AA==',
  ])('lets %s through', (url) => {
    expect(cancelled(url)).toBe(false);
  });
});

describe('lockAllContents', () => {
  function lockedContents() {
    const opened: string[] = [];
    const app = new EventEmitter();
    lockAllContents(app as unknown as App, (url) => opened.push(url));
    let openHandler: (details: { url: string }) => { action: string } = () => ({ action: 'unset' });
    const contents = Object.assign(new EventEmitter(), {
      setWindowOpenHandler: (handler: typeof openHandler) => (openHandler = handler),
    });
    app.emit('web-contents-created', {}, contents as unknown as WebContents);
    const prevented = (name: string, url: string) => {
      let count = 0;
      contents.emit(name, { url, preventDefault: () => count++ });
      return count === 1;
    };
    return { opened, prevented, open: (url: string) => openHandler({ url }) };
  }

  it.each(['will-navigate', 'will-frame-navigate', 'will-redirect'])('%s leads to no other page', (name) => {
    const { prevented } = lockedContents();
    for (const url of [
      'https://example.org/',
      'file:///etc/passwd',
      'app://evil/',
      'javascript:1',
      'about:blank',
    ]) {
      expect(prevented(name, url), url).toBe(true);
    }
    expect(prevented(name, WINDOW_URL)).toBe(false);
  });

  it('no webview is attached, whatever it would show', () => {
    expect(lockedContents().prevented('will-attach-webview', WINDOW_URL)).toBe(true);
  });

  it('no window is opened, and nothing handed to the system', () => {
    const { open, opened } = lockedContents();
    for (const url of ['https://example.org/', 'file:///etc/passwd', 'mailto:a@example.org', WINDOW_URL]) {
      expect(open(url)).toEqual({ action: 'deny' });
    }
    expect(opened).toEqual([]);
  });
});
