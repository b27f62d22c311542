import { readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { loadCatalogue } from '../../../db/catalogue/index.ts';
import type { BagFile } from '../../../src-main/contract/formats/bag-file.ts';
import type { Answer } from '../../../src-main/contract/calls/answers/answers.ts';
import { readBagFile } from '../../../src-main/contract/formats/read-bag.ts';
import { answerForWindow } from '../../../src-main/worker/answer-view.ts';

const ROOT = resolve(import.meta.dirname, '..', '..', '..');

export function demoBag(name: 'invented-bag' | 'range-bag' = 'invented-bag'): BagFile {
  return readBagFile(readFileSync(join(ROOT, 'db', 'demo', `${name}.json`)));
}

/** The real answer, so that what the screens make of it is tested on what they get. */
export function answerTo(bag: BagFile): Answer {
  return answerForWindow(bag, loadCatalogue(), { today: '2026-11-26', locale: 'en-GB' });
}
