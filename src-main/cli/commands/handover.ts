import { findChromium } from '../../../build/find/find-chromium.mjs';
import { MAX_BAG_BYTES, readBagFile } from '../../contract/formats/read-bag.ts';
import type { Paper } from '../../domain/report/formats/html.ts';
import { openChromiumPrinter } from '../../host/print/chromium-printer.ts';
import { readCatalogue } from '../../service/records/catalogue.ts';
import { PrintError } from '../../service/handover/printer.ts';
import { SaveError, saveWhole } from '../../service/handover/save.ts';
import {
  HANDOVER_FORMATS,
  handOverText,
  USUAL_LOCALES,
  type DocumentLanguage,
} from '../../worker/handover.ts';
import { dayOf, readFlags, type Command } from '../args.ts';
import { withBudget } from '../budget.ts';
import { EXIT, UsageError } from '../exit.ts';
import { readInput, userPath } from '../files.ts';
import { withStore } from '../store.ts';

const FORMATS = ['pdf', ...HANDOVER_FORMATS] as const;
const PAPERS: readonly Paper[] = ['a4', 'letter'];
const LANGUAGES = Object.keys(USUAL_LOCALES) as DocumentLanguage[];

export const handoverCommand: Command = {
  name: 'handover',
  summary: 'a bag file in; the document to hand over out',
  usage: `
npm run --silent handover -- --bag FILE --format pdf|md|csv|json|html --out F

FILE (or - for standard input) is a bag file; see README.md, "Files".

  --bag FILE          the bag
  --format FORMAT     pdf (needs Chromium), md, csv, json (the plan file) or html (the print page)
  --out F             write to F; only pdf must have it, the others go to standard output without
  --paper a4|letter   the paper of pdf and html (default: a4)
  --lang en|de        the language of the document (default: en)
  --budget N          spend at most N, in the bag's currency (instead of the file's budget)
  --today YYYY-MM-DD  the day that retest dates count from (default: today)
  --data DIR          another data folder (your own archetypes are kept there)

Exit code 0 when the document is made, 1 where pdf has no Chromium, 2 for wrong input or use.`,

  async run(words) {
    const { values } = readFlags(words, {
      bag: { type: 'string' },
      format: { type: 'string' },
      out: { type: 'string' },
      paper: { type: 'string' },
      lang: { type: 'string' },
      budget: { type: 'string' },
      today: { type: 'string' },
      data: { type: 'string' },
    });
    if (values.bag === undefined) throw new UsageError('give --bag FILE');
    const format = oneOf('--format', values.format, FORMATS);
    const paper = oneOf('--paper', values.paper ?? 'a4', PAPERS);
    const locale = USUAL_LOCALES[oneOf('--lang', values.lang ?? 'en', LANGUAGES)];
    if (format === 'pdf' && values.out === undefined) throw new UsageError('give --out F for a pdf');
    const today = dayOf(values.today);
    const file = withBudget(readBagFile(readInput(values.bag, 'bag file', MAX_BAG_BYTES)), values.budget);
    try {
      // Chromium starts while the answer is reckoned.
      const printer = format === 'pdf' ? openChromiumPrinter({ chromium: findChromium() }) : null;
      try {
        const catalogue = withStore(values.data, readCatalogue);
        const { text } = handOverText({
          ...{ file, catalogue, today, locale, paper },
          format: format === 'pdf' ? 'html' : format,
        });
        const content = printer ? await printer.print(text) : text;
        if (values.out === undefined) process.stdout.write(content);
        else saveWhole(userPath(values.out), content);
      } finally {
        await printer?.close();
      }
      return EXIT.ok;
    } catch (error) {
      if (error instanceof SaveError) throw new UsageError(error.message);
      if (!(error instanceof PrintError)) throw error;
      const said = error.lastWords === '' ? '' : `\nIt said: ${error.lastWords}`;
      process.stderr.write(
        `loftledger handover: ${error.message}${said}\nmd, csv, json and html need none.\n`,
      );
      return EXIT.no;
    }
  },
};

function oneOf<T extends string>(flag: string, value: string | undefined, allowed: readonly T[]): T {
  const found = allowed.find((one) => one === value);
  if (found === undefined) {
    const given = value === undefined ? 'is missing' : `${value} is not offered`;
    throw new UsageError(`${flag} ${given}. Give one of: ${allowed.join(', ')}.`);
  }
  return found;
}
