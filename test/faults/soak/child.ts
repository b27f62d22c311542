// The browser host, without a window, in a process that can be asked what it holds: node --expose-gc child.ts <data folder>
import { readdirSync } from 'node:fs';
import { main } from '../../../src-main/browser-host/main.ts';

process.on('message', () => {
  (globalThis as { gc?: () => void }).gc?.();
  const { rss, heapUsed } = process.memoryUsage();
  process.send?.({ rss, heapUsed, handles: readdirSync('/proc/self/fd').length });
});
process.exitCode = await main(['--no-window', '--data', process.argv[2] ?? ''], { chromium: null });
process.disconnect();
