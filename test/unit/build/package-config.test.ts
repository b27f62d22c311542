import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { describe, expect, it } from 'vitest';
import { archFlag, CONFIG, programOf } from '../../../build/package/config.ts';

const ROOT = resolve(import.meta.dirname, '..', '..', '..');
const manifest = JSON.parse(readFileSync(join(ROOT, 'package.json'), 'utf8')) as {
  dependencies: Record<string, string>;
};

describe('the packaging', () => {
  it('makes AppImage, deb, dmg for both processors, and an installer for one user', () => {
    expect(CONFIG.linux?.target).toEqual(['AppImage', 'deb']);
    expect(CONFIG.mac?.target).toEqual([{ target: 'dmg', arch: ['x64', 'arm64'] }]);
    expect(CONFIG.win?.target).toEqual([{ target: 'nsis', arch: ['x64'] }]);
    expect(CONFIG.nsis).toMatchObject({ perMachine: false, deleteAppDataOnUninstall: false });
  });

  it('opens .loftledger files', () => {
    expect(CONFIG.fileAssociations).toMatchObject([{ ext: 'loftledger' }]);
  });

  it('compiles nothing, unpacks the driver alone, publishes nowhere', () => {
    expect(CONFIG).toMatchObject({
      npmRebuild: false,
      asar: { smartUnpack: false },
      asarUnpack: ['**/*.node'],
      publish: null,
    });
  });

  it('lists files in one place: a system’s own list would bring in the whole folder', () => {
    for (const system of [CONFIG.linux, CONFIG.mac, CONFIG.win]) expect(system).not.toHaveProperty('files');
  });

  it('never starts without the sandbox', () => {
    expect(CONFIG.appImage?.executableArgs).toEqual([]);
    expect(JSON.stringify(CONFIG)).not.toContain('no-sandbox');
  });

  it('has files for its icon and its licences', () => {
    expect(existsSync(join(ROOT, String(CONFIG.icon)))).toBe(true);
    const png = readFileSync(join(ROOT, String(CONFIG.icon)));
    // Width and height in the header of a PNG file; macOS wants 512 or more.
    expect([png.readUInt32BE(16), png.readUInt32BE(20)]).toEqual([512, 512]);
    expect(existsSync(join(ROOT, 'LICENSE'))).toBe(true);
  });

  it('ships no package but natives: whatever can be bundled is', () => {
    for (const name of Object.keys(manifest.dependencies)) {
      const files = readdirSync(join(ROOT, 'node_modules', name), { recursive: true, encoding: 'utf8' });
      expect(files.filter((file) => file.endsWith('.node')).length, name).toBeGreaterThan(0);
    }
  });
});

describe('programOf', () => {
  const at = (nodeName: string) =>
    programOf({
      appOutDir: 'dist',
      packager: { appInfo: { productFilename: 'Loftledger' }, platform: { nodeName } },
    } as Parameters<typeof programOf>[0]);

  it('finds what holds the fuses on each system', () => {
    expect(at('linux')).toBe(join('dist', 'loftledger'));
    expect(at('darwin')).toBe(join('dist', 'Loftledger.app'));
    expect(at('win32')).toBe(join('dist', 'Loftledger.exe'));
  });
});

describe('archFlag', () => {
  it('knows the processors that the driver is compiled for', () => {
    expect(archFlag('x64')).toBe('--x64');
    expect(archFlag('arm64')).toBe('--arm64');
    expect(() => archFlag('riscv64')).toThrow('riscv64');
  });
});
