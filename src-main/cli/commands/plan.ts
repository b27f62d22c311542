import { MAX_BAG_BYTES, readBagFile } from '../../contract/formats/read-bag.ts';
import { answerBag } from '../../worker/answer.ts';
import { readCatalogue } from '../../service/records/catalogue.ts';
import { dayOf, readFlags, type Command } from '../args.ts';
import { withBudget } from '../budget.ts';
import { EXIT, UsageError } from '../exit.ts';
import { readInput, writeWhole } from '../files.ts';
import { withStore } from '../store.ts';
import { planText } from '../text/plan-text.ts';

export const planCommand: Command = {
  name: 'plan',
  summary: 'a bag file in; ladder, findings and the cheapest mend out',
  usage: `
npm run --silent plan -- --bag FILE [--budget N] [--json] [--with-instance] [--out F]

FILE (or - for standard input) is a bag file; see README.md, "Files".

  --bag FILE          the bag
  --budget N          spend at most N, in the bag's currency (instead of the file's budget)
  --json              print the plan file as JSON instead of tables
  --with-instance     add the solver's instance, the plan's item ids and the walk-away map
  --out F             write to F instead of standard output
  --today YYYY-MM-DD  the day that retest dates count from (default: today)
  --data DIR          another data folder (your own archetypes are kept there)

Exit code 0 for every status of the plan, 2 for wrong input or use.`,

  async run(words) {
    const { values } = readFlags(words, {
      bag: { type: 'string' },
      budget: { type: 'string' },
      json: { type: 'boolean' },
      'with-instance': { type: 'boolean' },
      out: { type: 'string' },
      today: { type: 'string' },
      data: { type: 'string' },
    });
    if (values.bag === undefined) throw new UsageError('give --bag FILE');
    const today = dayOf(values.today);
    const file = withBudget(readBagFile(readInput(values.bag, 'bag file', MAX_BAG_BYTES)), values.budget);
    const catalogue = withStore(values.data, readCatalogue);
    const withInstance = values['with-instance'] === true;
    const { advice, plan } = answerBag(file, catalogue, { today, withInstance });
    const text = values.json === true ? `${JSON.stringify(plan)}\n` : planText(advice);
    if (values.out === undefined) process.stdout.write(text);
    else writeWhole(values.out, text);
    return EXIT.ok;
  },
};
