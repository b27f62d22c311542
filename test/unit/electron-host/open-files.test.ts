import { EventEmitter } from 'node:events';
import { describe, expect, it } from 'vitest';
import { listenForFiles } from '../../../src-main/electron-host/open-files.ts';

describe('files that the system hands over', () => {
  it('wait until someone takes them, and then come at once', () => {
    const app = new EventEmitter();
    const events = listenForFiles(app as never);
    let prevented = 0;
    const open = (file: string) => app.emit('open-file', { preventDefault: () => prevented++ }, file);
    open('/a');
    open('/b');
    const taken: string[] = [];
    events.onFile((file) => taken.push(file));
    expect(taken).toEqual(['/a', '/b']);
    open('/c');
    expect(taken).toEqual(['/a', '/b', '/c']);
    // Else Electron would not take the file as handled.
    expect(prevented).toBe(3);
  });
});
