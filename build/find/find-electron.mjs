// Where Electron's binary is. Its npm package comes without one, and its own download is outside the package registry.
import { existsSync, readFileSync } from 'node:fs';
import path from 'node:path';

/**
 * @param {string} electronPackage the folder node_modules/electron
 * @returns {string | null} the binary, or null where there is none. Does not require the package: that would download.
 */
export function findElectron(electronPackage) {
  const pathFile = path.join(electronPackage, 'path.txt');
  if (!existsSync(pathFile)) return null;
  const binary = path.join(electronPackage, 'dist', readFileSync(pathFile, 'utf8').trim());
  return existsSync(binary) ? binary : null;
}
