import { mkdirSync, rmdirSync, readdirSync } from 'node:fs';
import path from 'node:path';
import type { HandOverBatch } from '../../../contract/calls/answers/handover.ts';
import { exportFolderOf } from '../../../../db/files/backup.ts';
import { stampOf } from '../../../../db/files/files.ts';
import { findBag } from '../../../../db/repositories/bags/bags.ts';
import { readHandover, updateHandover } from '../../../../db/repositories/handover.ts';
import { readPlayer } from '../../../../db/repositories/bags/players.ts';
import { monthsLater } from '../../../domain/advice/rules/whole-bag/nothing-needed.ts';
import { RETEST_MONTHS } from '../../../domain/report/sections/closing.ts';
import { saidOf } from '../../call-error.ts';
import type { Context, Handlers, Subject } from '../../handler.ts';
import { printBatch, type BatchJob } from '../../handover/batch.ts';
import { documentTask, languageOf, usualPaper, type Wanted } from '../../handover/document.ts';
import { fileNamesFor } from '../../handover/file-names.ts';
import { readLetterhead, setPicture, updateLetterhead } from '../../handover/letterhead.ts';
import { documentPolicy } from '../../handover/pages.ts';
import { pictureBytes } from '../../handover/picture.ts';
import { saveWhole } from '../../handover/save.ts';
import { fileOf } from '../../records/records.ts';
import { bagStep } from '../../records/steps.ts';
import { withoutUndefined } from '../../without-undefined.ts';

export const handoverHandlers: Handlers<Subject<'handover'>> = {
  'handover.form': ({ db, today }, { bagId, locale }) => {
    const { picture, ...letterhead } = readLetterhead(db);
    const { coverNote, language, retestOn } = readHandover(db, bagId);
    return {
      letterhead: { ...letterhead, pictureBytes: picture === null ? null : pictureBytes(picture).length },
      added: {
        coverNote: coverNote ?? null,
        language: language === undefined ? null : languageOf(language, locale),
        retestOn: retestOn ?? null,
      },
      usual: {
        language: languageOf(undefined, locale),
        paper: usualPaper(locale),
        retest: monthsLater(today(), RETEST_MONTHS),
      },
    };
  },
  'handover.setLetterhead': {
    step: (patch) => ({ fields: Object.keys(patch) }),
    run: ({ db }, patch) => {
      updateLetterhead(db, withoutUndefined(patch));
      return null;
    },
  },
  'handover.setPicture': {
    step: () => ({}),
    run: ({ db }, { picture }) => {
      setPicture(db, picture);
      return null;
    },
  },
  'handover.setAdded': {
    step: ({ bagId, patch }, { db }) => ({ ...bagStep(db, bagId), fields: Object.keys(patch) }),
    run: ({ db }, { bagId, patch }) => {
      const { coverNote, ...same } = withoutUndefined(patch);
      const note = coverNote?.trim() ?? '';
      updateHandover(db, bagId, {
        ...same,
        ...(coverNote === undefined ? {} : { coverNote: note === '' ? null : note }),
      });
      return null;
    },
  },
  'handover.preview': async (context, { job, ...wanted }) => {
    const task = documentTask(context, wanted, 'html');
    const made =
      job === undefined
        ? context.answerer.handOver(task)
        : context.jobs.run(job, ({ cells }) => context.answerer.handOver({ ...task, cells }));
    const { text, title, status, style = '' } = await made;
    const page = context.pages.keep({
      type: 'text/html; charset=utf-8',
      bytes: Buffer.from(text),
      policy: documentPolicy(style),
    });
    return { page, title, status };
  },
  'handover.text': async (context, { format, ...wanted }) => {
    const { text, title } = await context.answerer.handOver(documentTask(context, wanted, format));
    const [name = ''] = fileNamesFor([`${title} ${context.today()}`], format);
    return { name, text };
  },
  'handover.pdf': async (context, wanted) => {
    const { pdf, title } = await print(context, wanted);
    const [name = ''] = fileNamesFor([`${title} ${stampOf(context.now()).slice(0, 19)}`], 'pdf');
    const folder = makeFolder(context);
    const file = path.join(folder, name);
    saveWhole(file, pdf);
    const page = context.pages.keep({ type: 'application/pdf', bytes: pdf, name });
    return { file, name, bytes: pdf.length, page };
  },
  'handover.batch': async (context, { bagIds, job, locale }) => {
    const folder = makeFolder(context, `handover-${stampOf(context.now())}`);
    const players = bagIds.map((bagId) => nameOf(context, bagId));
    const names = fileNamesFor(players, 'pdf');
    const bags = new Map(names.map((name, i) => [name, bagIds[i] ?? 0]));
    const jobs = names.map((fileName, i): BatchJob => ({
      fileName,
      page: async () => {
        const task = documentTask(context, { bagId: bagIds[i] ?? 0, locale }, 'html');
        return (await context.answerer.handOver(task)).text;
      },
    }));
    const result = await context.jobs.run(job, ({ signal, report }) =>
      printBatch(jobs, {
        printer: context.printer,
        save: (name, pdf) => saveWhole(path.join(folder, name), pdf),
        onProgress: ({ done, of }) => report(done, of),
        explain: saidOf,
        signal,
      }),
    );
    return batchAnswer(result, folder, bags);
  },
};

/** Of a player, to name a file by; a bag that has gone since is told of when its turn comes. */
function nameOf({ db }: Context, bagId: number): string {
  try {
    return readPlayer(db, findBag(db, bagId).playerId).name;
  } catch {
    return String(bagId);
  }
}

async function print(context: Context, wanted: Wanted): Promise<{ pdf: Uint8Array; title: string }> {
  const { text, title } = await context.answerer.handOver(documentTask(context, wanted, 'html'));
  return { pdf: await context.printer.print(text), title };
}

/** Private: documents name people. @throws RefusedInput for records in memory */
function makeFolder({ records }: Context, name = ''): string {
  const folder = path.join(exportFolderOf(fileOf(records)), name);
  mkdirSync(folder, { recursive: true, mode: 0o700 });
  return folder;
}

function batchAnswer(
  { saved, failed, cancelled }: Awaited<ReturnType<typeof printBatch>>,
  folder: string,
  bags: ReadonlyMap<string, number>,
): HandOverBatch {
  const bagOf = (name: string) => bags.get(name) ?? 0;
  if (saved.length === 0 && readdirSync(folder).length === 0) rmdirSync(folder);
  return {
    folder: saved.length === 0 ? null : folder,
    saved: saved.map((name) => ({ bagId: bagOf(name), name })),
    failed: failed.map(({ fileName, message }) => ({ bagId: bagOf(fileName), name: fileName, message })),
    cancelled,
  };
}
