/** A proxy that is not there, so that whatever Chromium may want of the network ends on this machine. */
const NOWHERE = 'http://127.0.0.1:1';

const FEATURES_OFF = [
  'AutofillServerCommunication',
  'CertificateTransparencyComponentUpdater',
  'MediaRouter',
  'OptimizationHints',
  'Translate',
];

/** A Chromium without a window that prints, and does nothing else: no network, no extensions, no updates. */
export function headlessArguments({ profile, asRoot }: { profile: string; asRoot: boolean }): string[] {
  return [
    '--headless',
    '--remote-debugging-pipe',
    `--user-data-dir=${profile}`,
    `--proxy-server=${NOWHERE}`,
    '--proxy-bypass-list=<-loopback>',
    '--no-first-run',
    '--no-default-browser-check',
    '--no-pings',
    '--disable-background-networking',
    '--disable-breakpad',
    '--disable-component-update',
    '--disable-default-apps',
    '--disable-domain-reliability',
    '--disable-extensions',
    '--disable-gpu',
    '--disable-sync',
    '--mute-audio',
    '--password-store=basic',
    '--use-mock-keychain',
    `--disable-features=${FEATURES_OFF.join(',')}`,
    // Chromium's sandbox refuses to run as root.
    ...(asRoot ? ['--no-sandbox'] : []),
    'about:blank',
  ];
}
