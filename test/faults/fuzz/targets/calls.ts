import { calls, type CallName } from '../../../../src-main/contract/calls/index.ts';
import { readFileSync } from 'node:fs';
import { checkAnswer } from '../answers.ts';
import { shapeOf, valueFor } from '../from-schema.ts';
import { broken, nastyValue, NASTY_TEXTS } from '../nasty.ts';
import { openRecords } from '../records.ts';
import { Wrong, type Target } from '../target.ts';

const NAMES = Object.keys(calls) as CallName[];
/** These put another file in the place of the records. */
const REPLACE: readonly string[] = ['backups.restore', 'files.importDatabase'];
/** Keeps its answer for the roster's list, which is no edit: the next answer writes it again. */
const CACHES: readonly string[] = ['answers.plan'];
/** Each takes long even when all is well, so it seldom is: a backup, a rebuilt file, a plan of many bags. */
const SELDOM_WHOLE: readonly string[] = [
  ...REPLACE,
  'backups.make',
  'files.exportDatabase',
  'files.checkDatabase',
  'players.erase',
  'prices.watchList',
  'prices.seenOne',
  'answers.plan',
  'answers.compare',
  'answers.flight',
  'plans.pick',
  'files.importRoster',
];

/** Every call of the contract, by the dispatch that the window's calls go through, with what IPC or JSON could bring. */
export const callsTarget: Target = {
  name: 'calls',
  weight: 34,
  casesASession: 400,
  async open() {
    const records = await openRecords();
    const { gate, watch } = records;
    await records.send('records.loftledger', readFileSync(records.file));
    return {
      async run(draw) {
        const name = draw.chance(0.01) ? (draw.pick(NASTY_TEXTS) as CallName) : draw.pick(NAMES);
        const spec = Object.hasOwn(calls, name) ? calls[name] : null;
        const whole = spec === null ? {} : valueFor(draw, shapeOf(spec.args), records.pools);
        const asIs = draw.chance(SELDOM_WHOLE.includes(name) ? 0.03 : 0.45);
        const args = asIs
          ? whole
          : draw.chance(0.03)
            ? nastyValue(draw, true)
            : broken(draw, whole, draw.chance(0.3));
        const input = draw.gives({ call: name, args });
        watch.begin(REPLACE.includes(name));
        const answer = await gate.call(input);
        checkAnswer(answer, input);
        if (!answer.ok) {
          watch.expectSame('it was refused and yet something was written', input);
          return 'refused';
        }
        if (spec?.mode === 'read' && !CACHES.includes(name))
          watch.expectSame('a call that only reads has written', input);
        const result = spec?.result.safeParse(answer.value);
        if (result?.success === false) {
          throw new Wrong(`the answer is not what the contract says: ${result.error.message}`, input);
        }
        if (spec?.mode !== 'read' && draw.chance(0.2)) await records.learn();
        return 'taken';
      },
      close: () => records.close(),
    };
  },
};
