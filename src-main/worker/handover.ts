import { RefusedInput, shownValue } from '../contract/refusal.ts';
import type { Advice } from '../domain/advice/advise.ts';
import type { Watcher } from '../domain/advice/effort.ts';
import { PickGone } from '../domain/advice/plan/picked.ts';
import { csv } from '../domain/report/formats/csv.ts';
import { handOver, type HandOverOptions } from '../domain/report/document.ts';
import { html, pageStyle, type Paper } from '../domain/report/formats/html.ts';
import { markdown } from '../domain/report/formats/markdown.ts';
import type { BagTask } from './bag-task.ts';
import { answerBag } from './answer.ts';

/** `json` is the plan file. */
export const HANDOVER_FORMATS = ['md', 'csv', 'json', 'html'] as const;
export type HandOverFormat = (typeof HANDOVER_FORMATS)[number];

/** The language that a document is written in → where its figures are written when nothing else is said. */
export const USUAL_LOCALES: Readonly<Record<'en' | 'de', string>> = { en: 'en-GB', de: 'de-DE' };
export type DocumentLanguage = keyof typeof USUAL_LOCALES;

export type HandOverTask = BagTask & {
  /** BCP 47: language of the texts, formats of the figures. */
  locale: string;
  format: HandOverFormat;
  paper: Paper;
  /** The letterhead's picture, as a `data:` address. */
  picture?: string;
  /** Item ids, where the document is told of a pick; `said.picked` tells of it. */
  items?: readonly string[];
  said?: Pick<HandOverOptions, 'letterhead' | 'coverNote' | 'retestOn' | 'picked'>;
};

/** @property style what stands in the page's one style element, for its policy; only of html. */
export type HandOverText = {
  text: string;
  title: string;
  player: string;
  status: Advice['status'];
  style?: string;
};

/**
 * One bag → its document as text, in whatever format. @throws RefusedInput for a bag that cannot be planned, or a pick
 * whose clubs are gone; SolveStopped when the watcher ended it.
 */
export function handOverText(task: HandOverTask, watcher?: Watcher): HandOverText {
  const { file, catalogue, today, locale, reckoning, items, paper, picture } = task;
  const { advice, plan } = refusingGone(() =>
    answerBag(file, catalogue, {
      // The plan file is for programs: its stages have English names.
      ...{
        today,
        withInstance: false,
        reckoning,
        locale: task.format === 'json' ? USUAL_LOCALES.en : locale,
      },
      ...(items ? { picked: items } : {}),
      ...(watcher ? { watcher } : {}),
    }),
  );
  const document = handOver(advice, { today, locale, currency: file.units.currency, ...task.said });
  const { title, player } = document;
  const made = { title, player, status: advice.status };
  switch (task.format) {
    case 'json':
      return { ...made, text: `${JSON.stringify(plan)}\n` };
    case 'md':
      return { ...made, text: markdown(document) };
    case 'csv':
      return { ...made, text: csv(document) };
    case 'html':
      return {
        ...made,
        text: html(document, { paper, ...(picture === undefined ? {} : { picture }) }),
        style: pageStyle(document, paper),
      };
  }
}

function refusingGone<T>(work: () => T): T {
  try {
    return work();
  } catch (error) {
    if (!(error instanceof PickGone)) throw error;
    const refusal = {
      path: '$.record',
      value: shownValue(error.item),
      message: 'the catalogue of today has no such club, or the player can no longer use it',
      remedy: 'Print the plan of now, or pick again on the page Side by side.',
    };
    throw new RefusedInput('This pick cannot be printed:', [refusal]);
  }
}
