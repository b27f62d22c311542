import { describe, expect, it } from 'vitest';
import { mostBytes, sentName } from '../../../../../src-renderer/state/files/sending.ts';
import { readUploadName } from '../../../../../src-main/host/requests.ts';

const MIB = 1024 * 1024;

describe('how much of a file is sent', () => {
  it.each([
    ['bag.json', 2],
    ['BAG.JSON', 2],
    ['shots.csv', 20],
    ['shots.tsv', 20],
    ['shots.txt', 20],
    ['all.loftledger', 200],
    // What it holds may make it one of ours: the service has the last word.
    ['backup.db', 200],
    ['noending', 200],
  ])('%s: %i MB', (name, most) => {
    expect(mostBytes(name)).toBe(most * MIB);
  });
});

describe('the name that a file is sent by', () => {
  it.each([
    ['range.csv', 'range.csv'],
    ['a\\b/c\u0000.csv', 'a_b_c_.csv'],
    ['\ud800.json', '\ufffd.json'],
    ['..', 'file'],
    ['', 'file'],
    [`${'x'.repeat(300)}.loftledger`, `${'x'.repeat(200)}…${'x'.repeat(39)}.loftledger`],
  ])('%j is %j, which both hosts take', (name, sent) => {
    expect(sentName(name)).toBe(sent);
    expect(readUploadName(sentName(name))).toBe(sent);
  });
});
