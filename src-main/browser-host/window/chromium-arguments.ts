import { pathToFileURL } from 'node:url';
import { QUIET } from '../../host/chromium/chromium-quiet.ts';
import type { WindowPlace } from '../../host/window-place.ts';

export type Launch = {
  profileDir: string;
  launchPage: string;
  place: WindowPlace | null;
  /** Chromium's sandbox refuses to run as root. */
  asRoot: boolean;
};

/** The command line. It holds no secret: every user of the machine can read it. */
export function chromiumArguments(launch: Launch): string[] {
  return [
    `--user-data-dir=${launch.profileDir}`,
    `--app=${pathToFileURL(launch.launchPage).href}`,
    '--remote-debugging-pipe',
    ...QUIET,
    ...placeArguments(launch.place),
    ...(launch.asRoot ? ['--no-sandbox'] : []),
  ];
}

/** What has no switch: written to the new profile before the first start. */
export const CHROMIUM_PREFERENCES = {
  alternate_error_pages: { enabled: false },
  autofill: { credit_card_enabled: false, profile_enabled: false },
  browser: { enable_spellchecking: false, show_home_button: false },
  credentials_enable_service: false,
  dns_prefetching: { enabled: false },
  net: { network_prediction_options: 2 },
  safebrowsing: { enabled: false },
  search: { suggest_enabled: false },
  signin: { allowed: false },
  spellcheck: { dictionaries: [], use_spelling_service: false },
  translate: { enabled: false },
};

const FIRST_SIZE = '--window-size=1280,900';

function placeArguments(place: WindowPlace | null): string[] {
  if (place === null) return [FIRST_SIZE];
  return [
    `--window-position=${String(place.left)},${String(place.top)}`,
    `--window-size=${String(place.width)},${String(place.height)}`,
    ...(place.maximized ? ['--start-maximized'] : []),
  ];
}
