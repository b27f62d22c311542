/** Features of the browser around the page that would ask something of the network, or of the user. */
const FEATURES_OFF = [
  'AutofillServerCommunication',
  'CertificateTransparencyComponentUpdater',
  'DialMediaRouteProvider',
  'InterestFeedContentSuggestions',
  'MediaRouter',
  'OptimizationHints',
  'Translate',
];

/**
 * A proxy that is not there (port 1 of this machine, which only root could open) for everything but 127.0.0.1, which
 * Chromium always asks directly: whatever else it may want of the network ends here.
 */
const NOWHERE = 'http://127.0.0.1:1';

/** Switches that turn off the browser's own use of the network, and its questions at a first start. */
export const QUIET: readonly string[] = [
  `--proxy-server=${NOWHERE}`,
  '--no-first-run',
  '--no-default-browser-check',
  '--no-pings',
  '--disable-background-mode',
  '--disable-background-networking',
  '--disable-breakpad',
  '--disable-client-side-phishing-detection',
  '--disable-component-extensions-with-background-pages',
  '--disable-component-update',
  '--disable-default-apps',
  '--disable-domain-reliability',
  '--disable-extensions',
  '--disable-search-engine-choice-screen',
  '--disable-sync',
  '--password-store=basic',
  '--use-mock-keychain',
  `--disable-features=${FEATURES_OFF.join(',')}`,
];
