import { globSync } from 'node:fs';
import { expect, test } from 'vitest';
import { de } from '../../../../../src-renderer/words/de/index.ts';
import { englishLeft } from './english-left.ts';
import { sourceTexts } from './source-texts.ts';

const FILES = globSync([
  'src-main/contract/**/*.ts',
  'src-main/service/**/*.ts',
  'src-main/worker/*.ts',
  'src-main/domain/player/shots/shot-rows.ts',
  'src-main/host/start/opened-files.ts',
  'src-main/host/print/*.ts',
  'db/**/*.ts',
]).sort();

/** Texts that no window shows. */
const ELSEWHERE = /^db\/(?:catalogue|demo)\/|^db\/migration-files/;

test.each(FILES.filter((file) => !ELSEWHERE.test(file)))('what %s refuses has its German', (file) => {
  const untold = sourceTexts(file).filter(
    ({ spellings }) =>
      !spellings.some((text) => {
        const german = de.refused.said(text);
        return german !== text && englishLeft(german) === null;
      }),
  );
  expect(untold.map(({ at, spellings }) => `${at} ${spellings[0] ?? ''}`)).toEqual([]);
});
