import { readFileSync } from 'node:fs';
import { checkAnswer } from '../answers.ts';
import { brokenBytes } from '../nasty.ts';
import { openRecords } from '../records.ts';
import type { Target } from '../target.ts';

/** Whole records to take in, with bytes broken. */
export const databasesTarget: Target = {
  name: 'database files',
  weight: 1,
  casesASession: 100,
  async open() {
    const records = await openRecords();
    const exported = await records.gate.call({ call: 'files.exportDatabase', args: {} });
    if (!exported.ok) throw new Error(exported.error.message);
    const whole = readFileSync((exported.value as { file: string }).file);
    return {
      async run(draw) {
        const bytes = brokenBytes(draw, whole);
        draw.gives(Buffer.from(bytes).toString('base64'));
        const sent = await records.send('records.loftledger', bytes);
        checkAnswer(sent, 'a database file');
        const { upload } = sent.ok ? (sent.value as { upload: string }) : { upload: '' };
        const call = draw.chance(0.8) ? 'files.checkDatabase' : 'files.importDatabase';
        records.watch.begin(true);
        const answer = await records.gate.call({ call, args: { upload } });
        const input = { call, bytes: Buffer.from(bytes).toString('base64') };
        checkAnswer(answer, input);
        if (!answer.ok || call === 'files.checkDatabase') {
          records.watch.expectSame('the records are not as they were', input);
        }
        return answer.ok ? 'taken' : 'refused';
      },
      close: () => records.close(),
    };
  },
};
