import { readdirSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { describe, expect, it } from 'vitest';
import { FUSES, SECURITY_POLICY } from '../../../../src-main/electron-host/policy/security-policy.ts';

const ROOT = resolve(import.meta.dirname, '..', '..', '..', '..');

describe('the security policy', () => {
  it('has every point of the checklist once, in order', () => {
    expect(SECURITY_POLICY.map(({ point }) => point)).toEqual(Array.from({ length: 20 }, (_, i) => i + 1));
  });

  it.each(SECURITY_POLICY)('point $point says how it is met, and by which test or why without', (entry) => {
    expect(entry.met).not.toBe('');
    if ('tested' in entry.proof) {
      expect(readFileSync(join(ROOT, entry.proof.tested), 'utf8')).toContain(entry.proof.test);
    } else expect(entry.proof.stated.length).toBeGreaterThan(20);
  });

  it('has the fuses as the design has them', () => {
    const on = Object.entries(FUSES).filter(([, value]) => value);
    expect(on.map(([name]) => name)).toEqual([
      'EnableEmbeddedAsarIntegrityValidation',
      'OnlyLoadAppFromAsar',
    ]);
    expect(Object.keys(FUSES)).toHaveLength(7);
  });
});

describe('the code', () => {
  const folder = join(ROOT, 'src-main');
  const sources = readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.ts'))
    .map((name) => ({ name, text: readFileSync(join(folder, name), 'utf8') }));
  const filesWith = (pattern: RegExp) =>
    sources.filter(({ text }) => pattern.test(text)).map(({ name }) => name);

  it('touches ipcMain in one file', () => {
    expect(filesWith(/^import .*\bipcMain\b/m)).toEqual(['electron-host/ipc-gate.ts']);
  });

  it('touches ipcRenderer in the preload only', () => {
    expect(filesWith(/^import .*\bipcRenderer\b/m)).toEqual(['preload.ts']);
  });

  it('hands addresses to the system in one place', () => {
    expect(filesWith(/shell\.openExternal/)).toEqual([
      'electron-host/host.ts',
      'electron-host/policy/security-policy.ts',
    ]);
  });
});
