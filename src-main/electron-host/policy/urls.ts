/** The window's own origin: a scheme of ours instead of file://, with one host. */
export const APP_SCHEME = 'app';
export const APP_HOST = 'loftledger';
export const APP_ORIGIN = `${APP_SCHEME}://${APP_HOST}`;
export const WINDOW_URL = `${APP_ORIGIN}/index.html`;

/**
 * Addresses that may be handed to the system's browser, letter for letter. None: the program names no page that it
 * would send anyone to. One that is added here has to be a constant of ours, never a text from data.
 */
const EXTERNAL_URLS: readonly string[] = [];

/** Whether an address is one of the window's own. False for what is no address. */
export function isOwnUrl(address: string): boolean {
  const url = parse(address);
  return (
    url !== null &&
    url.protocol === `${APP_SCHEME}:` &&
    url.host === APP_HOST &&
    url.username === '' &&
    url.password === ''
  );
}

export function mayOpenExternally(address: string, allowed: readonly string[] = EXTERNAL_URLS): boolean {
  return allowed.includes(address) && parse(address)?.protocol === 'https:';
}

function parse(address: string): URL | null {
  return URL.canParse(address) ? new URL(address) : null;
}
