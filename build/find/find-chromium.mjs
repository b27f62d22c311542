// Where a Chromium is, for the browser host's window and for the tests. Plain JavaScript: the set-up runs it on old Nodes.
import { accessSync, constants, statSync } from 'node:fs';
import path from 'node:path';

const ON_PATH = [
  'chromium',
  'chromium-browser',
  'google-chrome-stable',
  'google-chrome',
  'microsoft-edge-stable',
  'microsoft-edge',
];

const MAC_APPS = ['Chromium', 'Google Chrome', 'Microsoft Edge'];

const WINDOWS_PROGRAMS = [
  ['Chromium', 'Application', 'chrome.exe'],
  ['Google', 'Chrome', 'Application', 'chrome.exe'],
  ['Microsoft', 'Edge', 'Application', 'msedge.exe'],
];

/**
 * The first Chromium that can be run: LOFTLEDGER_CHROMIUM where that is set (and then no other), else the usual places.
 * @param {{ env?: NodeJS.ProcessEnv, platform?: NodeJS.Platform, canRun?: (file: string) => boolean }} [place]
 * @returns {string | null} an absolute path, or null where there is none
 */
export function findChromium({ env = process.env, platform = process.platform, canRun = isProgram } = {}) {
  if (env.LOFTLEDGER_CHROMIUM) {
    const chosen = path.resolve(env.LOFTLEDGER_CHROMIUM);
    return canRun(chosen) ? chosen : null;
  }
  return usualPlaces(env, platform).find(canRun) ?? null;
}

/** @returns {string[]} */
function usualPlaces(env, platform) {
  if (platform === 'win32') {
    const roots = [env.ProgramFiles, env['ProgramFiles(x86)'], env.LOCALAPPDATA].filter(Boolean);
    return roots.flatMap((root) => WINDOWS_PROGRAMS.map((parts) => path.win32.join(root, ...parts)));
  }
  if (platform === 'darwin') {
    const roots = ['/Applications', ...(env.HOME ? [path.posix.join(env.HOME, 'Applications')] : [])];
    return roots.flatMap((root) => MAC_APPS.map((app) => `${root}/${app}.app/Contents/MacOS/${app}`));
  }
  // A snap's own path before PATH: Ubuntu's chromium-browser is a script that leads to it and hides that it is one.
  const folders = (env.PATH ?? '').split(':').filter((folder) => folder.startsWith('/'));
  return ['/snap/bin/chromium', ...ON_PATH.flatMap((name) => folders.map((folder) => `${folder}/${name}`))];
}

function isProgram(file) {
  try {
    accessSync(file, constants.X_OK);
    return statSync(file).isFile();
  } catch {
    return false;
  }
}
