import type { DocumentLanguage, Paper } from '../../contract/calls/answers/handover.ts';
import { documentLanguageSchema } from '../../contract/calls/answers/handover.ts';
import type { BagTask } from '../../worker/bag-task.ts';
import { readHandover } from '../../../db/repositories/handover.ts';
import { readPlan } from '../../../db/repositories/plans.ts';
import { missing } from '../../../db/statement.ts';
import { USUAL_LOCALES, type HandOverFormat, type HandOverTask } from '../../worker/handover.ts';
import type { Context } from '../handler.ts';
import { questionKept, questionOf } from '../answers/question.ts';
import { recordSchema } from '../answers/plan-records.ts';
import { readLetterhead } from './letterhead.ts';

/** Which document: of the plan as it is now, or of a record of what was picked. */
export type Wanted = { bagId: number; record?: number | undefined; locale?: string | undefined };

/** All that a document is set from. @throws StorageError 'missing' */
export function documentTask(context: Context, wanted: Wanted, format: HandOverFormat): HandOverTask {
  const { db } = context;
  const { bagId, record } = wanted;
  const { name, contact, paper, picture } = readLetterhead(db);
  const { coverNote, language, retestOn } = readHandover(db, bagId);
  const hasLetterhead = name !== '' || contact !== '' || picture !== null;
  const question = questionOf(context, bagId);
  const told = record === undefined ? question : pickOf(context, bagId, record);
  return {
    ...question,
    file: told.file,
    reckoning: told.reckoning,
    locale: localeOf(language, wanted.locale),
    format,
    paper: paper ?? usualPaper(wanted.locale),
    ...(picture === null ? {} : { picture }),
    ...('items' in told ? { items: told.items } : {}),
    said: {
      ...(hasLetterhead ? { letterhead: { name, contact } } : {}),
      ...(coverNote === undefined ? {} : { coverNote }),
      ...(retestOn === undefined ? {} : { retestOn }),
      ...('picked' in told ? { picked: told.picked } : {}),
    },
  };
}

type Told = Pick<BagTask, 'file' | 'reckoning'> & {
  items: readonly string[];
  picked: NonNullable<HandOverTask['said']>['picked'] & object;
};

/** The record's own snapshot, so that it says what was picked and not what the bag has become. */
function pickOf({ db }: Context, bagId: number, id: number): Told {
  const plan = readPlan(db, id);
  const record = recordSchema.safeParse(plan.output);
  const kept = questionKept(plan.input);
  if (plan.bagId !== bagId || !record.success || kept === null) throw missing(db, 'record of a pick', id);
  const { why, side } = record.data;
  return {
    ...kept,
    items: side.items,
    picked: { name: plan.name ?? '', why, day: plan.madeAt.slice(0, 10) },
  };
}

/** The language that was chosen for the bag, else the window's, else English. */
export function languageOf(chosen: string | undefined, locale: string | undefined): DocumentLanguage {
  const wanted = documentLanguageSchema.safeParse(chosen ?? locale?.split('-')[0]?.toLowerCase());
  return wanted.success ? wanted.data : 'en';
}

/** Figures are written as in the window's country where the document is in the window's language. */
function localeOf(chosen: string | undefined, locale: string | undefined): string {
  const language = languageOf(chosen, locale);
  return locale?.split('-')[0]?.toLowerCase() === language ? locale : USUAL_LOCALES[language];
}

/** Countries that print on Letter paper; from memory. */
const LETTER = new Set(['US', 'CA', 'MX', 'PH', 'CL', 'CO', 'CR', 'GT', 'PA', 'PR', 'SV', 'VE']);

export function usualPaper(locale: string | undefined): Paper {
  if (locale === undefined) return 'a4';
  return LETTER.has(new Intl.Locale(locale).maximize().region ?? '') ? 'letter' : 'a4';
}
