import { join } from 'node:path';
import type { AfterPackContext, Configuration } from 'electron-builder';
import { setFuses } from './fuses.ts';

/**
 * How the program is packed, for electron-builder. Signing certificates there are none yet: macOS gets an ad-hoc
 * signature, Windows none, and the systems warn at the first start.
 */

export const CONFIG: Configuration = {
  // Never change it: Windows finds the installed program by it.
  appId: 'loftledger.app',
  productName: 'Loftledger',
  copyright: 'MIT licence',
  directories: { output: 'dist', buildResources: 'build/icons' },
  icon: 'build/icons/icon.png',

  files: [
    'package.json',
    'out/main/**',
    'out/preload/**',
    'out/renderer/**',
    // Node itself, which npm scripts run on, is an optional dependency; Electron has its own.
    '!**/node_modules/node-{linux,win}-*{,/**}',
    // Headers and sources that the driver is compiled from.
    '!**/node_modules/node-addon-api{,/**}',
    '!**/node_modules/better-sqlite3/{build,deps,src}{,/**}',
    // The driver comes compiled for every system; a package takes its own, which is why each is packed on its own
    // system. Not in a list of the system's: electron-builder would forget this one and take the whole folder.
    '!**/node_modules/better-sqlite3/prebuilds/!(${platform}-${arch}).node',
  ],
  // The driver alone lies outside, since the system's loader wants a real file; its package stays within.
  asar: { smartUnpack: false },
  asarUnpack: ['**/*.node'],
  // The driver comes compiled, for Node-API, which Electron keeps to.
  npmRebuild: false,
  extraMetadata: {
    desktopName: 'loftledger.desktop',
    // A deb must name both. There is no address yet; .invalid is nobody's (RFC 2606).
    author: { name: 'Loftledger', email: 'maintainers@loftledger.invalid' },
    homepage: 'https://loftledger.invalid/',
  },
  extraResources: [
    { from: 'out/NOTICE.txt', to: 'NOTICE.txt' },
    { from: 'LICENSE', to: 'LICENSE.txt' },
  ],
  // No updates by itself, so no file that says where they are.
  publish: null,
  fileAssociations: [
    {
      ext: 'loftledger',
      name: 'Loftledger records',
      description: 'Loftledger records',
      mimeType: 'application/x-loftledger',
      role: 'Editor',
    },
  ],
  afterPack: (context) => setFuses(programOf(context)),

  linux: {
    target: ['AppImage', 'deb'],
    executableName: 'loftledger',
    category: 'Sports',
    synopsis: 'Which gaps in a golf bag matter, and the least money that mends them',
    syncDesktopName: true,
  },
  appImage: {
    // Left alone it would start without Chromium's sandbox.
    executableArgs: [],
  },
  deb: { packageCategory: 'misc' },
  mac: {
    target: [{ target: 'dmg', arch: ['x64', 'arm64'] }],
    category: 'public.app-category.sports',
    identity: '-',
    // Not with an ad-hoc signature: it would refuse Electron's own framework.
    hardenedRuntime: false,
  },
  win: {
    target: [{ target: 'nsis', arch: ['x64'] }],
  },
  nsis: {
    oneClick: true,
    perMachine: false,
    // The records outlive the program.
    deleteAppDataOnUninstall: false,
    differentialPackage: false,
  },
};

/** The packed program: what the fuses are set in. */
export function programOf({ appOutDir, packager }: Pick<AfterPackContext, 'appOutDir' | 'packager'>): string {
  const { productFilename } = packager.appInfo;
  const system = packager.platform.nodeName;
  if (system === 'darwin') return join(appOutDir, `${productFilename}.app`);
  return join(appOutDir, system === 'win32' ? `${productFilename}.exe` : 'loftledger');
}

/**
 * electron-builder's flag for this machine's kind of processor.
 * @throws Error for one that the driver is not compiled for
 */
export function archFlag(arch: string): string {
  if (arch === 'x64' || arch === 'arm64') return `--${arch}`;
  throw new Error(
    `There is no package for ${arch} processors: the database's driver is compiled for x64 and arm64.`,
  );
}
