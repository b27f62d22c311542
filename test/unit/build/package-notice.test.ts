import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { licenceProblems, updateProblems } from '../../../build/package/checks/folder-checks.ts';
import { readShipped } from '../../../build/package/licences.ts';
import { noticeText, shippedFolders } from '../../../build/package/notice.ts';
import { makeTempDir } from '../browser-host/kit.ts';

const temp = makeTempDir();
afterAll(() => temp.remove());

const MIT = 'Permission is hereby granted, free of charge, to anyone.\nTHE SOFTWARE IS PROVIDED "AS IS".';

function put(files: Record<string, string>, under: string): string {
  for (const [name, text] of Object.entries(files)) {
    mkdirSync(join(temp.dir, under, name, '..'), { recursive: true });
    writeFileSync(join(temp.dir, under, name), text);
  }
  return join(temp.dir, under);
}
const manifest = (more: object = { license: 'ISC' }) =>
  JSON.stringify({ name: 'thing', version: '2.0.1', ...more });

describe('readShipped', () => {
  it('takes the licence and its whole text, notices after it', () => {
    const folder = put({ 'package.json': manifest(), 'license.md': ' Terms.\n', NOTICE: 'By us.\n' }, 'isc');
    const text = 'Terms.\n\nBy us.';
    expect(readShipped(folder)).toEqual({ name: 'thing', version: '2.0.1', licence: 'ISC', text });
  });

  it('knows MIT by its words where package.json says nothing', () => {
    expect(readShipped(put({ 'package.json': manifest({}), LICENSE: MIT }, 'silent')).licence).toBe('MIT');
  });

  it('refuses what cannot be shipped', () => {
    const bare = put({ 'package.json': manifest() }, 'bare');
    expect(() => readShipped(bare)).toThrow(`${bare}: no licence file`);
    const copyleft = put({ 'package.json': manifest({ license: 'GPL-3.0' }), COPYING: 'Share.' }, 'gpl');
    expect(() => readShipped(copyleft)).toThrow(`${copyleft}: licence "GPL-3.0" is not one of`);
    const unsaid = put({ 'package.json': manifest({}), LICENSE: 'All rights reserved.' }, 'unsaid');
    expect(() => readShipped(unsaid)).toThrow('licence "unknown"');
  });
});

describe('shippedFolders', () => {
  it('joins what is bundled, the natives and what they were compiled from', () => {
    const root = put(
      {
        'package.json': '{"dependencies":{"driver":"1.0.0"}}',
        'out/bundled/main.json': '["node_modules/b","node_modules/a"]',
        'out/bundled/renderer.json': '["node_modules/b","node_modules/c/node_modules/a"]',
      },
      'project',
    );
    expect(shippedFolders(root)).toEqual([
      'node_modules/a',
      'node_modules/b',
      'node_modules/c/node_modules/a',
      'node_modules/driver',
      'node_modules/node-addon-api',
    ]);
  });
});

describe('the packed folder', () => {
  const shipped = [{ name: 'thing', version: '2.0.1', licence: 'MIT', text: 'Terms of thing.' }];
  const notice = noticeText(shipped, [{ what: 'Data', terms: 'Terms of data.' }]);
  const whole = {
    'resources/LICENSE.txt': '',
    'resources/NOTICE.txt': notice,
    'LICENSE.electron.txt': '',
    'LICENSES.chromium.html': '',
  };

  it('has everything listed first, then the terms of each', () => {
    const order = ['- thing@2.0.1 (MIT)', '- Data', 'Terms of thing.', 'Terms of data.'];
    const places = order.map((line) => notice.indexOf(line));
    expect(places).toEqual([...places].sort((a, b) => a - b));
    expect(places[0]).toBeGreaterThan(0);
  });

  it('passes when whole, and names the package whose terms are missing', () => {
    const folder = put(whole, 'whole');
    expect(licenceProblems(folder, { shipped })).toEqual([]);
    const more = [...shipped, { name: 'other', version: '1.0.0' }];
    expect(licenceProblems(folder, { shipped: more })).toEqual(['NOTICE.txt lacks other@1.0.0']);
    expect(licenceProblems(folder, { shipped: [] })).toEqual(['no package is known to be shipped']);
  });

  it('fails without Chromium’s licences', () => {
    const { 'LICENSES.chromium.html': _left, ...rest } = whole;
    expect(licenceProblems(put(rest, 'lacking'), { shipped })).toEqual(['LICENSES.chromium.html is missing']);
  });

  it('fails with a place for updates in it', () => {
    expect(updateProblems(put(whole, 'no-updates'))).toEqual([]);
    const folder = put({ 'resources/app-update.yml': 'url: x' }, 'updates');
    expect(updateProblems(folder)).toEqual(['resources/app-update.yml is there']);
  });
});
