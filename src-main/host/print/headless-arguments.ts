import { QUIET } from '../chromium/chromium-quiet.ts';

/** A Chromium without a window that prints, and does nothing else: no network, this machine's own included. */
export function headlessArguments({ profile, asRoot }: { profile: string; asRoot: boolean }): string[] {
  return [
    '--headless',
    '--remote-debugging-pipe',
    `--user-data-dir=${profile}`,
    ...QUIET,
    '--proxy-bypass-list=<-loopback>',
    '--disable-gpu',
    '--mute-audio',
    // Chromium's sandbox refuses to run as root.
    ...(asRoot ? ['--no-sandbox'] : []),
    'about:blank',
  ];
}
