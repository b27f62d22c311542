import { readBagFile } from '../../../../src-main/contract/formats/read-bag.ts';
import { checkAnswer } from '../answers.ts';
import type { Draw } from '../draw.ts';
import { broken, brokenBytes, brokenText, NASTY_TEXTS } from '../nasty.ts';
import { BAG_TEXT, CLUBS, PRICES_TEXT, ROSTER_TEXT, SHOTS_TEXT } from '../pools.ts';
import { openRecords, type Records } from '../records.ts';
import { Wrong, type Target } from '../target.ts';

const units = { distance: 'yd', speed: 'mph', currency: 'GBP' };

type Importer = {
  name: string;
  whole: string;
  ending: string;
  call: (draw: Draw, text: string) => [string, unknown];
};

const IMPORTERS: readonly Importer[] = [
  {
    name: 'bag file',
    whole: BAG_TEXT,
    ending: '.json',
    call: (draw, text) =>
      draw.pick([
        ['files.previewBag', { source: { text } }],
        ['files.importBag', { source: { text } }],
        ['players.importBag', { text }],
      ]),
  },
  {
    name: 'price list',
    whole: PRICES_TEXT,
    ending: '.csv',
    call: (draw, text) => {
      const options = { source: { text }, decimal: draw.pick(['.', ',']) };
      return draw.chance(0.5)
        ? ['files.previewPrices', options]
        : ['files.importPrices', { ...options, skipBad: draw.chance(0.5) }];
    },
  },
  {
    name: 'roster',
    whole: ROSTER_TEXT,
    ending: '.csv',
    call: (draw, text) => {
      const options = { source: { text }, units };
      return draw.chance(0.5)
        ? ['files.previewRoster', options]
        : ['files.importRoster', { ...options, skipBad: draw.chance(0.5), skipKnown: draw.chance(0.9) }];
    },
  },
  {
    name: 'shots',
    whole: SHOTS_TEXT,
    ending: '.csv',
    call: (draw, text) => {
      const mapping = {
        columns: { club: draw.below(3), carry: draw.below(4), spin: draw.below(9) },
        decimal: draw.pick(['.', ',']),
        distance: 'yd',
        speed: 'mph',
        clubs: { '7 iron': draw.pick(CLUBS), [draw.pick(NASTY_TEXTS).slice(0, 150)]: '7i' },
      };
      const args = { bagId: 1, text, mapping, leaveOut: draw.chance(0.5) ? [] : [2, 3, 99] };
      if (draw.chance(0.2)) return ['shots.look', { text }];
      return draw.chance(0.5)
        ? ['shots.preview', args]
        : ['shots.import', { ...args, skipBad: draw.chance(0.5), sessionOn: '2026-05-01' }];
    },
  },
];

/** A file of the kind, with its parts broken: as JSON where it is such, as text, or as bytes. */
function brokenFile(draw: Draw, { whole, ending }: Importer): string {
  if (ending === '.json' && draw.chance(0.5)) return JSON.stringify(broken(draw, JSON.parse(whole))) ?? '';
  if (draw.chance(0.15)) return Buffer.from(brokenBytes(draw, Buffer.from(whole))).toString('latin1');
  return brokenText(draw, whole);
}

async function sendBroken(records: Records, draw: Draw, importer: Importer): Promise<'taken' | 'refused'> {
  const bytes = brokenBytes(draw, Buffer.from(importer.whole));
  const name = draw.chance(0.9)
    ? `x${importer.ending}`
    : `x${draw.pick(['.exe', '', '.JSON', '.csv.json', '.txt'])}`;
  records.watch.begin();
  const answer = await records.send(name, bytes);
  const input = { name, bytes: Buffer.from(bytes).toString('latin1') };
  checkAnswer(answer, input);
  if (!answer.ok) records.watch.expectSame('an upload was refused and yet something was written', input);
  return answer.ok ? 'taken' : 'refused';
}

/** Every file that can be taken in, broken in many ways. */
export const importersTarget: Target = {
  name: 'importers',
  weight: 20,
  casesASession: 400,
  async open() {
    const records = await openRecords();
    const { gate, watch } = records;
    return {
      async run(draw) {
        const importer = draw.pick(IMPORTERS);
        if (draw.chance(0.1)) return sendBroken(records, draw, importer);
        const text = brokenFile(draw, importer);
        const [call, args] = importer.call(draw, text);
        draw.gives({ call, args });
        watch.begin();
        const answer = await gate.call({ call, args });
        checkAnswer(answer, { call, args });
        if (!answer.ok) {
          watch.expectSame('it was refused and yet something was written', { call, args });
          return 'refused';
        }
        if (call.includes('preview') || call.endsWith('.look')) {
          watch.expectSame('a look has written', { call, args });
        }
        if (call === 'players.importBag' && readBagFile(text).clubs.length > 60) {
          throw new Wrong('a bag of more clubs than fit', { call, args });
        }
        return 'taken';
      },
      close: () => records.close(),
    };
  },
};
