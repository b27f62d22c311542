import type { Answer } from '../../../src-main/contract/calls/answers/answers.ts';
import type { Formats } from '../../state/format/formats.ts';
import { words } from '../../words/index.ts';

type Evidence = Answer['plan']['findings'][number]['evidence'][number];

/** Figure, value, range and source of each row of evidence, as one line of text and its source. */
export function evidenceLines(
  evidence: readonly Evidence[],
  formats: Formats,
): { text: string; source: string }[] {
  return evidence.map(({ figure, value, range, source }) => ({
    text: words.findings.figure(
      figure,
      typeof value === 'number' ? formats.number(value) : value,
      range ? `${formats.number(range[0])}–${formats.number(range[1])}` : null,
    ),
    source,
  }));
}
